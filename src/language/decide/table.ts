import type { FeatureList } from './feature-list.ts';
import { IntMap } from './int-map.ts';

/**
 * Weights over sparse features: for each feature a row of `size` bytes, each `scale` apart. Rows are summed as
 * integers: exact in any order, so that parts of a sum can be kept and shared.
 */
export class Table {
  readonly size: number;
  readonly scale: number;
  readonly rows: Int8Array;
  /** Feature → row. */
  readonly index: IntMap;
  /** For each row the last sum that took it. */
  readonly #last: Int32Array;
  #sum = 0;

  constructor(index: IntMap, rows: Int8Array, size: number, scale: number) {
    this.index = index;
    this.rows = rows;
    this.size = size;
    this.scale = scale;
    this.#last = new Int32Array(rows.length / size);
  }

  /** Rounds learned weights to bytes. */
  static of(index: ReadonlyMap<number, number>, values: Float32Array, size: number): Table {
    let top = 1e-9;
    for (const v of values) top = Math.max(top, Math.abs(v));
    const scale = top / 127;
    return new Table(
      IntMap.from(index, index.size),
      Int8Array.from(values, v => Math.round(v / scale)),
      size,
      scale,
    );
  }

  /** Adds the rows of features to `into`, as often as they are listed. */
  add({ values, count }: FeatureList, into: Int32Array): void {
    const { index, rows, size } = this;
    for (let k = 0; k < count; k++) {
      const row = index.get(values[k]!);
      if (row < 0) continue;
      const from = row * size;
      for (let d = 0; d < size; d++) into[d]! += rows[from + d]!;
    }
  }

  /** Adds the rows of features to `into`, each once. */
  addOnce({ values, count }: FeatureList, into: Int32Array): void {
    const { index, rows, size } = this;
    const last = this.#last;
    const sum = ++this.#sum;
    for (let k = 0; k < count; k++) {
      const row = index.get(values[k]!);
      if (row < 0 || last[row] === sum) continue;
      last[row] = sum;
      const from = row * size;
      for (let d = 0; d < size; d++) into[d]! += rows[from + d]!;
    }
  }

  /** The weights of features in a table with one column together, as often as they are listed, in units of `scale`. */
  sum(features: readonly number[]): number {
    let sum = 0;
    for (const feature of features) sum += this.weight(feature);
    return sum;
  }

  /** The weight of one feature in a table with one column, in units of `scale`. */
  weight(feature: number): number {
    const row = this.index.get(feature);
    return row < 0 ? 0 : this.rows[row]!;
  }
}
