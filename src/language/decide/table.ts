import type { FeatureList } from './feature-list.ts';
import { IntMap } from './int-map.ts';

/** Turns four signed bytes into four from 0 to 255, each 128 more. */
const lift = 0x80808080 | 0;
const evenBytes = 0x00ff00ff;
/** So many lifted bytes fit into 16 bits at least. */
const mostOpen = 256;

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
  /** The same bytes in fours, where a row is made of whole ones. */
  readonly #fours: Int32Array | undefined;
  /** Sums of rows under way: of the bytes at even places and of those at odd ones, two to a number of 32 bits. */
  readonly #even: Int32Array;
  readonly #odd: Int32Array;
  /** For each row the last sum that took it. */
  readonly #last: Int32Array;
  #sum = 0;

  constructor(index: IntMap, rows: Int8Array, size: number, scale: number) {
    this.index = index;
    this.rows = rows;
    this.size = size;
    this.scale = scale;
    this.#last = new Int32Array(rows.length / size);
    const fours = size % 4 === 0 ? size / 4 : 0;
    // Copied where the bytes don't start at a multiple of four.
    if (fours > 0 && rows.byteOffset % 4 !== 0) this.rows = rows.slice();
    if (fours > 0) this.#fours = new Int32Array(this.rows.buffer, this.rows.byteOffset, this.rows.length / 4);
    this.#even = new Int32Array(fours);
    this.#odd = new Int32Array(fours);
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
    const { index } = this;
    let open = 0;
    for (let k = 0; k < count; k++) {
      const row = index.get(values[k]!);
      if (row < 0) continue;
      open = this.#addRow(row, into, open);
    }
    this.#close(into, open);
  }

  /** Adds the rows of features to `into`, each once. */
  addOnce({ values, count }: FeatureList, into: Int32Array): void {
    const { index } = this;
    const last = this.#last;
    const sum = ++this.#sum;
    let open = 0;
    for (let k = 0; k < count; k++) {
      const row = index.get(values[k]!);
      if (row < 0 || last[row] === sum) continue;
      last[row] = sum;
      open = this.#addRow(row, into, open);
    }
    this.#close(into, open);
  }

  /**
   * Adds a row: four bytes by two additions, each byte lifted by 128 so that none is negative and none borrows of its
   * neighbour. @returns how many rows the sums under way hold now
   */
  #addRow(row: number, into: Int32Array, open: number): number {
    const fours = this.#fours;
    if (!fours) {
      const { rows, size } = this;
      for (let d = 0, from = row * size; d < size; d++) into[d]! += rows[from + d]!;
      return 0;
    }
    const even = this.#even;
    const odd = this.#odd;
    const n = even.length;
    for (let w = 0, from = row * n; w < n; w++) {
      const lifted = fours[from + w]! ^ lift;
      even[w]! += lifted & evenBytes;
      odd[w]! += (lifted >>> 8) & evenBytes;
    }
    if (open + 1 < mostOpen) return open + 1;
    this.#close(into, open + 1);
    return 0;
  }

  /** Moves the sums under way into `into`. */
  #close(into: Int32Array, open: number): void {
    if (open === 0) return;
    const even = this.#even;
    const odd = this.#odd;
    const lifts = 128 * open;
    for (let w = 0, d = 0; w < even.length; w++, d += 4) {
      into[d]! += (even[w]! & 0xffff) - lifts;
      into[d + 1]! += (odd[w]! & 0xffff) - lifts;
      into[d + 2]! += (even[w]! >>> 16) - lifts;
      into[d + 3]! += (odd[w]! >>> 16) - lifts;
      even[w] = 0;
      odd[w] = 0;
    }
  }

  /** The weights of features in a table with one column together, as often as they are listed, in units of `scale`. */
  sum(features: Iterable<number>): number {
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
