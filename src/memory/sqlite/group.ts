import type { DatabaseSync } from 'node:sqlite';
import { StoreFailed } from '#conversation/memory-store.ts';

/** What is kept along with each commit, and goes back with what is undone. */
export interface Along {
  /** Called before a commit, within it. */
  write(): void;
  /** The commit stands. */
  kept(): void;
  /** The state now. */
  mark(): () => void;
  /** All that was not committed is undone. */
  undo(): void;
}

const nothing: Along = { write() {}, kept() {}, mark: () => () => {}, undo() {} };

/**
 * Commits together what is asked for in one turn of the event loop: under load that is one commit for many
 * messages, and a lone message waits for no one. Each call settles only after its commit, so what it tells is kept.
 */
export class Group {
  readonly #db: DatabaseSync;
  readonly #along: Along;
  #open: Promise<void> | undefined;

  constructor(db: DatabaseSync, along = nothing) {
    this.#db = db;
    this.#along = along;
  }

  /** Runs a single statement, or a `whole`, within the group. */
  async run<T>(work: () => T): Promise<T> {
    this.#open ??= this.#begin();
    const open = this.#open;
    // A full disk may have ended the whole transaction by itself: nothing more may be written as if it stood.
    if (!this.#db.isTransaction) throw new StoreFailed('what was written beside it failed');
    const result = work();
    await open;
    return result;
  }

  /** Several statements: all of them or nothing, while the rest of the group stands. */
  whole<T>(work: () => T): T {
    const back = this.#along.mark();
    this.#db.exec('SAVEPOINT one');
    try {
      const result = work();
      this.#db.exec('RELEASE one');
      return result;
    } catch (error) {
      // A full disk may have ended the whole transaction by itself.
      if (this.#db.isTransaction) this.#db.exec('ROLLBACK TO one; RELEASE one');
      back();
      throw error;
    }
  }

  /** Settles when nothing is open any more. */
  async settled(): Promise<void> {
    await this.#open?.catch(() => undefined);
  }

  #begin(): Promise<void> {
    this.#db.exec('BEGIN IMMEDIATE');
    const committed = new Promise<void>((resolve, reject) => {
      setImmediate(() => {
        this.#open = undefined;
        try {
          this.#along.write();
          this.#db.exec('COMMIT');
          this.#along.kept();
          resolve();
        } catch (error) {
          if (this.#db.isTransaction) this.#db.exec('ROLLBACK');
          this.#along.undo();
          reject(error);
        }
      });
    });
    // Each call waits for it and tells; one whose own work failed does not.
    committed.catch(() => undefined);
    return committed;
  }
}
