/** Small networks over sparse features, trained by AdaGrad: deterministic, in plain typed arrays. */

/** Numbers from a seed (mulberry32). */
export function seeded(seed: number): () => number {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), a | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A table of parameters with its sums of squared gradients. */
export class Parameters {
  readonly w: Float32Array;
  readonly g: Float32Array;
  /** Only the rows that are kept, at their new places; what was averaged is forgotten. */
  rows(size: number, to: Int32Array): Parameters {
    const count = to.reduce((n, t) => Math.max(n, t + 1), 0);
    const out = new Parameters(count * size, 0, () => 0);
    to.forEach((t, r) => {
      if (t < 0) return;
      out.w.set(this.w.subarray(r * size, (r + 1) * size), t * size);
      out.g.set(this.g.subarray(r * size, (r + 1) * size), t * size);
    });
    return out;
  }
  constructor(size: number, scale: number, random: () => number) {
    this.w = new Float32Array(size);
    this.g = new Float32Array(size);
    if (scale > 0) for (let i = 0; i < size; i++) this.w[i] = (random() * 2 - 1) * scale;
  }
  #sum: Float64Array | undefined;
  #times = 0;
  /** Adds the parameters as they are now to their average. */
  note(): void {
    this.#sum ??= new Float64Array(this.w.length);
    for (let i = 0; i < this.w.length; i++) this.#sum[i]! += this.w[i]!;
    this.#times++;
  }
  /** Puts the average in their place: steadier than where the last step happened to end. */
  settle(): void {
    if (this.#sum) for (let i = 0; i < this.w.length; i++) this.w[i] = this.#sum[i]! / this.#times;
  }
  /** One step of a row from `from` on against its gradients, and a little towards nought. */
  stepRow(from: number, gradients: Float32Array, l2: number, rate: number): void {
    const { w, g } = this;
    for (let d = 0; d < gradients.length; d++) {
      const at = from + d;
      const gradient = gradients[d]! + l2 * w[at]!;
      const squares = g[at]! + gradient * gradient;
      g[at] = squares;
      w[at]! -= (rate * gradient) / (Math.sqrt(squares) + 1e-6);
    }
  }
  /** One step against a gradient. */
  step(i: number, gradient: number, rate: number): void {
    const g = this.g[i]! + gradient * gradient;
    this.g[i] = g;
    this.w[i]! -= (rate * gradient) / (Math.sqrt(g) + 1e-6);
  }
}
