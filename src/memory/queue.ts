/** Runs work one at a time a key, in the order of the calls; keys don't wait for each other. */
export class Queue {
  readonly #tails = new Map<string, Promise<unknown>>();

  /** @returns what the work returns; a failure reaches its own caller only */
  async run<T>(key: string, work: () => Promise<T>): Promise<T> {
    const before = this.#tails.get(key);
    const mine = before ? before.then(work, work) : work();
    this.#tails.set(key, mine);
    try {
      return await mine;
    } finally {
      // Forget the key once its last work is done: a bot sees any number of chats.
      if (this.#tails.get(key) === mine) this.#tails.delete(key);
    }
  }
}
