import type { AnswerLink, MemoryStore } from '#conversation/memory-store.ts';

/** A database that is down for a day owes no more than this; what is beyond waits for its claim to run out. */
const mostKept = 10_000;

/**
 * What the store could not be told while it was down: that an update is answered, or given back. It is told first
 * thing when the update comes again to this process; so nothing is said twice, and nothing waits for a claim to run
 * out. Lives in memory: after a crash the claim itself tells.
 */
export class PendingAcks {
  readonly #finish = new Map<number, AnswerLink | undefined>();
  /** Whether it is known that nothing was sent. */
  readonly #release = new Map<number, boolean>();
  readonly #store: MemoryStore;

  constructor(store: MemoryStore) {
    this.#store = store;
  }

  /** Tells the store what is owed of this update. @returns whether nothing else is left to do */
  async pay(update: number): Promise<boolean> {
    if (this.#finish.has(update)) {
      await this.finish(update, this.#finish.get(update));
      return true;
    }
    const isUnsent = this.#release.get(update);
    if (isUnsent !== undefined) await this.release(update, isUnsent);
    return false;
  }

  async finish(update: number, sent: AnswerLink | undefined): Promise<void> {
    if (this.#finish.size < mostKept) this.#finish.set(update, sent);
    await this.#store.finish(update, sent);
    this.#finish.delete(update);
  }

  async release(update: number, isUnsent = false): Promise<void> {
    if (this.#release.size < mostKept) this.#release.set(update, isUnsent);
    await this.#store.release(update, isUnsent);
    this.#release.delete(update);
  }
}
