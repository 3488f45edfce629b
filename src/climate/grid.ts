/** How a grid lies on the globe: centres of its cells, rows from the south, columns once round from the west. */
export interface Lay {
  readonly southDeg: number;
  readonly westDeg: number;
  readonly stepDeg: number;
  readonly rows: number;
  readonly cols: number;
}

/** Patterns over the columns of a table (months) and, cell by cell, how much there is of each. */
export interface Patterns extends Lay {
  /** The mean of each column. */
  readonly mean: readonly number[];
  /** A pattern a row, each over all columns. */
  readonly basis: readonly (readonly number[])[];
  /** What one step of a stored number is worth. */
  readonly quantum: number;
}

export interface Grid extends Patterns {
  /** A plane for each pattern. */
  readonly planes: readonly Int16Array[];
}

/** The four cells about a point and what each counts. */
export interface Spot {
  readonly cells: readonly [number, number, number, number];
  readonly shares: readonly [number, number, number, number];
}

const wrap = (col: number, cols: number): number => ((col % cols) + cols) % cols;

/** Bilinear between cell centres; beyond the first and last row those hold. */
export function spotOf(lay: Lay, latitudeDeg: number, longitudeDeg: number): Spot {
  const y = Math.min(lay.rows - 1, Math.max(0, (latitudeDeg - lay.southDeg) / lay.stepDeg));
  const x = (longitudeDeg - lay.westDeg) / lay.stepDeg;
  const row = Math.min(lay.rows - 2, Math.floor(y));
  const [fy, fx] = [y - row, x - Math.floor(x)];
  const west = wrap(Math.floor(x), lay.cols);
  const east = wrap(west + 1, lay.cols);
  const south = row * lay.cols;
  const north = south + lay.cols;
  return {
    cells: [south + west, south + east, north + west, north + east],
    shares: [(1 - fy) * (1 - fx), (1 - fy) * fx, fy * (1 - fx), fy * fx],
  };
}

/** The value of a column of the table (month 0 first) at a spot. */
export function valueAt(grid: Grid, { cells, shares }: Spot, column: number): number {
  let sum = 0;
  for (let k = 0; k < grid.planes.length; k++) {
    const plane = grid.planes[k] as Int16Array;
    const share =
      (plane[cells[0]] as number) * shares[0] +
      (plane[cells[1]] as number) * shares[1] +
      (plane[cells[2]] as number) * shares[2] +
      (plane[cells[3]] as number) * shares[3];
    sum += share * (grid.basis[k]?.[column] as number);
  }
  return (grid.mean[column] as number) + grid.quantum * sum;
}

/** The cell that a point lies in. */
export function cellOf(lay: Lay, latitudeDeg: number, longitudeDeg: number): number {
  const row = Math.round((latitudeDeg - lay.southDeg) / lay.stepDeg);
  const col = Math.round((longitudeDeg - lay.westDeg) / lay.stepDeg);
  return Math.min(lay.rows - 1, Math.max(0, row)) * lay.cols + wrap(col, lay.cols);
}
