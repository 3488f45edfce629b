/** Cells for each key at least: fuller look-ups go on too long, emptier ones leave the processor's cache. */
const leastRoom = 1.5;

/**
 * Integers by integers, values from 0 on: open addressing in one typed array, key and value side by side. A look-up
 * costs a quarter of a `Map`'s, and reading is mostly look-ups. Keys must be well mixed in their low bits.
 */
export class IntMap {
  #cells: Int32Array;
  #mask: number;
  #size = 0;

  /** @param expected how many keys it will hold, about */
  constructor(expected = 8) {
    const room = 2 ** Math.ceil(Math.log2(Math.max(8, expected * leastRoom)));
    this.#cells = IntMap.#empty(room);
    this.#mask = room - 1;
  }

  static #empty(room: number): Int32Array {
    return new Int32Array(room * 2).fill(-1);
  }

  /** Keys by their places in a list without repeats. */
  static numbering(keys: Int32Array): IntMap {
    const out = new IntMap(keys.length);
    const cells = out.#cells;
    const mask = out.#mask;
    for (let n = 0; n < keys.length; n++) {
      let at = keys[n]! & mask;
      while (cells[at * 2 + 1]! >= 0) at = (at + 1) & mask;
      cells[at * 2] = keys[n]!;
      cells[at * 2 + 1] = n;
    }
    out.#size = keys.length;
    return out;
  }

  static from(entries: Iterable<readonly [number, number]>, expected?: number): IntMap {
    const out = new IntMap(expected);
    for (const [key, value] of entries) out.set(key, value);
    return out;
  }

  get size(): number {
    return this.#size;
  }

  /** The value of a key, −1 where there is none. */
  get(key: number): number {
    const cells = this.#cells;
    const mask = this.#mask;
    let at = key & mask;
    for (;;) {
      const value = cells[at * 2 + 1]!;
      if (value < 0 || cells[at * 2] === key) return value;
      at = (at + 1) & mask;
    }
  }

  set(key: number, value: number): void {
    const cells = this.#cells;
    let at = key & this.#mask;
    while (cells[at * 2 + 1]! >= 0 && cells[at * 2] !== key) at = (at + 1) & this.#mask;
    if (cells[at * 2 + 1]! < 0) this.#size++;
    cells[at * 2] = key;
    cells[at * 2 + 1] = value;
    if (this.#size * 1.4 > this.#mask) this.#grow();
  }

  clear(): void {
    if (this.#size === 0) return;
    this.#cells.fill(-1);
    this.#size = 0;
  }

  #grow(): void {
    const old = [...this.entries()];
    const room = (this.#mask + 1) * 2;
    this.#cells = IntMap.#empty(room);
    this.#mask = room - 1;
    this.#size = 0;
    for (const [key, value] of old) this.set(key, value);
  }

  *entries(): Generator<[key: number, value: number]> {
    const cells = this.#cells;
    for (let i = 0; i < cells.length; i += 2) if (cells[i + 1]! >= 0) yield [cells[i]!, cells[i + 1]!];
  }
}
