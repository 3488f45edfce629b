/**
 * Arrays of numbers cut from a few large ones. Each typed array of its own is a piece of memory to get and give back,
 * which costs as much as what a net does with it; a message needs some forty.
 */
export class Slab {
  readonly #most: number;
  #floats: Float64Array | undefined;
  #used = 0;

  /** @param most how many numbers are got at a time */
  constructor(most: number) {
    this.#most = most;
  }

  /** So many numbers, all 0. */
  take(count: number): Float64Array {
    if (!this.#floats || this.#used + count > this.#floats.length) {
      this.#floats = new Float64Array(Math.max(count, this.#most));
      this.#used = 0;
    }
    const from = this.#used;
    this.#used += count;
    return this.#floats.subarray(from, this.#used);
  }
}
