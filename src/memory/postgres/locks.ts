import type { Client, ClientConfig, Pool, QueryResult } from 'pg';
import { Queue } from '../queue.ts';
import { connect, explain, makePool } from './pool.ts';

/** Namespace of the locks that say "this process lives"; chats use the one-number kind of lock instead. */
const runSpace = 0x4257;

/** Longest wait for a chat another process holds (ms); a stuck holder's own time-outs end sooner. */
const longestWaitMs = 30_000;

const tryLock = `SELECT target, CASE WHEN target IS NULL THEN pg_try_advisory_lock($2::bigint) END AS is_held
  FROM (SELECT (SELECT target FROM moves WHERE old = $1) AS target) AS moved`;
const lock = 'SELECT pg_advisory_lock($1::bigint)';
const unlock = 'SELECT pg_advisory_unlock($1::bigint)';

/** What became of a try: held, with its release; or the chat has moved; or another process holds it. */
type Tried = { release: () => Promise<unknown> } | { movedTo: Buffer } | undefined;

/** The number that stands for a chat among advisory locks. @param row the hash of the chat */
const lockKey = (row: Buffer): string => row.readBigInt64BE(0).toString();

/** Keeps the database's failures apart from the work's own, which pass unchanged. */
const failed = (error: unknown): never => {
  throw explain(error);
};

/**
 * Locks between processes: advisory locks of one session a process, so any number of chats costs one
 * connection. The session also holds a lock on the run itself, by which others see that we live: the server
 * drops it with the connection, however the process died. Needs a direct connection or session pooling.
 */
export class Locks {
  readonly #config: ClientConfig;
  readonly #run: number;
  readonly #waiters: Pool;
  /** One question at a time on the session: the driver wants its callers to queue. */
  readonly #line = new Queue();
  #session: Promise<Client> | undefined;
  #isClosed = false;

  constructor(config: ClientConfig, run: number) {
    this.#config = config;
    this.#run = run;
    const waiting = { statement_timeout: 0, query_timeout: 0, lock_timeout: longestWaitMs };
    this.#waiters = makePool({ ...config, ...waiting }, 4);
  }

  async #open(): Promise<Client> {
    const client = await connect(this.#config);
    try {
      // A dead machine sends no goodbye: let the server ask, and free the locks in half a minute.
      await client.query('SET tcp_keepalives_idle = 10; SET tcp_keepalives_interval = 5');
      await client.query('SET tcp_keepalives_count = 4');
      await client.query('SELECT pg_advisory_lock($1::int, $2::int)', [runSpace, this.#run]);
      return client;
    } catch (error) {
      await client.end().catch(() => undefined);
      throw error;
    }
  }

  /** The session that holds our locks; opened again where it was lost. */
  async session(): Promise<Client> {
    if (this.#isClosed) throw new Error('it is closed');
    if (this.#session) return this.#session;
    const opening = this.#open();
    this.#session = opening;
    const lost = (): void => {
      if (this.#session === opening) this.#session = undefined;
    };
    opening.then(client => client.on('end', lost), lost);
    return opening;
  }

  async #try(row: Buffer): Promise<Tried> {
    const session = await this.session();
    const ask = (name: string, text: string, ...values: unknown[]): Promise<QueryResult> =>
      this.#line.run('', () => session.query({ name, text, values }));
    const { rows } = await ask('try-lock', tryLock, row, lockKey(row));
    const { target, is_held } = rows[0];
    if (target) return { movedTo: target };
    if (!is_held) return undefined;
    return { release: () => ask('unlock', unlock, lockKey(row)) };
  }

  /**
   * Waits in the server's own queue, first come first served, on a connection of its own.
   * @returns undefined when the work has been done, else where the chat has moved to meanwhile
   */
  async #wait(row: Buffer, work: () => Promise<void>): Promise<Buffer | undefined> {
    const client = await this.#waiters.connect().catch(failed);
    try {
      await client.query(lock, [lockKey(row)]).catch(failed);
      const { rows } = await client.query('SELECT target FROM moves WHERE old = $1', [row]).catch(failed);
      if (!rows[0]) await work();
      return rows[0]?.target;
    } finally {
      const isBroken = await client.query(unlock, [lockKey(row)]).then(
        () => false,
        () => true,
      );
      // Closing the connection frees the lock where unlocking failed.
      client.release(isBroken);
    }
  }

  /**
   * Runs the work under the chat's lock; the caller keeps this process's own calls for a chat in a row.
   * @returns undefined when the work has been done, else where the chat has moved to
   */
  async hold(row: Buffer, work: () => Promise<void>): Promise<Buffer | undefined> {
    const tried = await this.#try(row).catch(failed);
    if (!tried) return this.#wait(row, work);
    if ('movedTo' in tried) return tried.movedTo;
    try {
      await work();
      return undefined;
    } finally {
      // A failure means that the session is gone, and the lock with it.
      await tried.release().catch(() => undefined);
    }
  }

  async close(): Promise<void> {
    this.#isClosed = true;
    const session = await this.#session?.catch(() => undefined);
    await Promise.all([session?.end(), this.#waiters.end()]);
  }
}

/** SQL that tells whether the process of the given run is gone. @param run the SQL of its number */
export const isGone = (run: string): string => `pg_try_advisory_xact_lock_shared(${runSpace}, ${run})`;
