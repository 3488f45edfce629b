import type { DatabaseSync } from 'node:sqlite';

/**
 * Commits together what is asked for in one turn of the event loop: under load that is one commit for many
 * messages, and a lone message waits for no one. Each call settles only after its commit, so what it tells is kept.
 */
export class Group {
  readonly #db: DatabaseSync;
  #open: Promise<void> | undefined;

  constructor(db: DatabaseSync) {
    this.#db = db;
  }

  /** Runs a single statement, or a `whole`, within the group. */
  async run<T>(work: () => T): Promise<T> {
    this.#open ??= this.#begin();
    const open = this.#open;
    const result = work();
    await open;
    return result;
  }

  /** Several statements: all of them or nothing, while the rest of the group stands. */
  whole<T>(work: () => T): T {
    this.#db.exec('SAVEPOINT one');
    try {
      const result = work();
      this.#db.exec('RELEASE one');
      return result;
    } catch (error) {
      // A full disk may have ended the whole transaction by itself.
      if (this.#db.isTransaction) this.#db.exec('ROLLBACK TO one; RELEASE one');
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
          this.#db.exec('COMMIT');
          resolve();
        } catch (error) {
          if (this.#db.isTransaction) this.#db.exec('ROLLBACK');
          reject(error);
        }
      });
    });
    // Each call waits for it and tells; one whose own work failed does not.
    committed.catch(() => undefined);
    return committed;
  }
}
