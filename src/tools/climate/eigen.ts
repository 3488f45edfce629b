import { present } from '#basics/present.ts';

const sweeps = 60;
const smallest = 1e-15;

/** Turns rows and columns p and q of a symmetric matrix so that their common entry becomes nought. */
function turn(A: number[][], V: number[][], p: number, q: number): void {
  const theta = (present(present(A[q])[q]) - present(present(A[p])[p])) / (2 * present(present(A[p])[q]));
  const t = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
  const c = 1 / Math.sqrt(t * t + 1);
  const s = t * c;
  const mix = (row: number[]) => {
    const [x, y] = [present(row[p]), present(row[q])];
    row[p] = c * x - s * y;
    row[q] = s * x + c * y;
  };
  A.forEach(mix);
  const [rowP, rowQ] = [present(A[p]), present(A[q])];
  for (let k = 0; k < A.length; k++) {
    const [x, y] = [present(rowP[k]), present(rowQ[k])];
    rowP[k] = c * x - s * y;
    rowQ[k] = s * x + c * y;
  }
  V.forEach(mix);
}

/**
 * Eigenvectors of a symmetric matrix, that of the greatest eigenvalue first, by cyclic Jacobi rotations (Golub &
 * Van Loan, Matrix Computations, 8.5). Each is turned so that its largest entry is positive: the same every time.
 */
export function eigenvectors(symmetric: readonly (readonly number[])[]): number[][] {
  const A = symmetric.map(row => [...row]);
  const V = A.map((_, i) => A.map((_, j) => (i === j ? 1 : 0)));
  for (let sweep = 0; sweep < sweeps; sweep++)
    for (let p = 0; p < A.length; p++)
      for (let q = p + 1; q < A.length; q++)
        if (Math.abs(present(present(A[p])[q])) > smallest) turn(A, V, p, q);
  return A.map((_, i) => i)
    .sort((a, b) => present(present(A[b])[b]) - present(present(A[a])[a]))
    .map(i => {
      const vector = V.map(row => present(row[i]));
      const largest = vector.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
      return vector.map(x => (largest < 0 ? -x : x));
    });
}
