import { randomInt } from 'node:crypto';
import type { Pool, QueryConfig, QueryResult } from 'pg';
import type { Memory } from '#conversation/memory.ts';
import { emptyMemory } from '#conversation/memory.ts';
import type { AnswerLink, Claimed, Loaded, Pruned, Tally, UpdateLease } from '#conversation/memory-store.ts';
import { ClaimLost, Damaged, StaleRevision } from '#conversation/memory-store.ts';
import { readOwn, writeMemory } from '../document.ts';
import type { KeptStore, StoreOptions } from '../kept.ts';
import { aboutMemory, aboutReply, dayOf, defaultReleaseAfterMs, freeRun, newRevision } from '../kept.ts';
import type { KeySource } from '../keys.ts';
import { Queue } from '../queue.ts';
import type { Vault } from '../seal.ts';
import { Locks } from './locks.ts';
import { move, target } from './move.ts';
import { explain, makePool, migrate, settings, together } from './pool.ts';
import { rotate } from './rotate.ts';
import { sql } from './statements.ts';
import { openVault } from './vault.ts';

export interface PostgresOptions extends StoreOptions {
  /** The schema that holds the tables (default `billywatt`); letters, digits and _ only. */
  readonly schema?: string;
  /** Connections for queries (default 10); locks take one more, and up to four while chats are contended. */
  readonly connections?: number;
}

/** Opens the store of a server and brings its tables up to date. @throws Error in one line */
export const openPostgres = async (
  url: string,
  keys: KeySource,
  options: PostgresOptions = {},
): Promise<PostgresStore> => {
  const schema = options.schema ?? 'billywatt';
  if (!/^[a-z_][a-z0-9_]{0,62}$/.test(schema)) throw new Error('a schema is named by letters, digits and _');
  const config = settings(url, schema);
  const pool = makePool(config, options.connections ?? 10);
  try {
    await migrate(pool, schema);
    const run = randomInt(1, 2 ** 31);
    return new PostgresStore(pool, new Locks(config, run), await openVault(pool, keys), run, options);
  } catch (error) {
    await pool.end();
    throw explain(error);
  }
};

/** Memories on a PostgreSQL server, for any number of processes. */
export class PostgresStore implements KeptStore {
  readonly #pool: Pool;
  readonly #locks: Locks;
  readonly #vault: Vault;
  readonly #run: number;
  readonly #queue = new Queue();
  readonly #releaseAfterMs: number;
  readonly #now: () => number;

  constructor(pool: Pool, locks: Locks, vault: Vault, run: number, options: StoreOptions) {
    this.#pool = pool;
    this.#locks = locks;
    this.#vault = vault;
    this.#run = run;
    this.#releaseAfterMs = options.releaseAfterMs ?? defaultReleaseAfterMs;
    this.#now = options.now ?? Date.now;
  }

  async #do<T>(work: () => Promise<T>): Promise<T> {
    try {
      return await work();
    } catch (error) {
      throw explain(error);
    }
  }

  #query(query: QueryConfig): Promise<QueryResult> {
    return this.#do(() => this.#pool.query(query));
  }

  /** The inputs that close a claim. */
  #closing(chat: string, { update, reply }: Claimed): unknown[] {
    const sealed = reply === undefined ? null : this.#vault.seal(reply, aboutReply(update));
    return [this.#vault.hash(chat), sealed, reply === undefined, update, this.#run];
  }

  async load(chat: string): Promise<Loaded> {
    const hash = this.#vault.hash(chat);
    const { rows } = await this.#query(sql('load', hash));
    const { target: movedTo, seal, sealed } = rows[0];
    if (movedTo) this.#vault.checkMove(hash, movedTo, seal);
    if (!sealed) return { memory: emptyMemory(), revision: 0 };
    const revision = Number(rows[0].revision);
    const text = this.#vault.open(sealed, aboutMemory(movedTo ?? hash, revision));
    return { memory: readOwn(text), revision };
  }

  async save(chat: string, memory: Memory, revision: number, update?: Claimed): Promise<number> {
    const text = writeMemory(memory);
    const closing = update ? this.#closing(chat, update) : [];
    const next = revision === 0 ? newRevision() : revision + 1;
    const statement = `${revision === 0 ? 'insert' : 'update'}${update ? 'AndMark' : ''}` as const;
    const write = async (row: Buffer): Promise<boolean> => {
      const sealed = this.#vault.seal(text, aboutMemory(row, next));
      const values = [row, next, dayOf(this.#now()), sealed, revision, ...closing];
      const { rowCount, rows } = await this.#query(sql(statement, ...values));
      if (update && !rows[0].is_mine) throw new ClaimLost('the update is not ours any more');
      return update ? rows[0].is_written : rowCount === 1;
    };
    const row = this.#vault.hash(chat);
    if (await write(row)) return next;
    const now = await this.#do(() => target(this.#pool, this.#vault, row));
    if (now !== row && (await write(now))) return next;
    throw new StaleRevision('saved in between');
  }

  async withLock<T>(chat: string, work: () => Promise<T>): Promise<T> {
    const done: T[] = [];
    const doing = async (): Promise<void> => void done.push(await work());
    // Our own calls queue here, in order; the database only settles between processes.
    const hold = (row: Buffer): Promise<void> =>
      this.#queue.run(row.toString('hex'), async () => {
        const movedTo = await this.#locks.hold(row, doing);
        if (movedTo) await hold(movedTo);
      });
    await hold(this.#vault.hash(chat));
    return done[0] as T;
  }

  move(from: string, to: string): Promise<void> {
    const [old, now] = [this.#vault.hash(from), this.#vault.hash(to)];
    return this.#do(() => move(this.#pool, this.#vault, old, now, dayOf(this.#now())));
  }

  forget(chat: string, update?: Claimed): Promise<void> {
    const hash = this.#vault.hash(chat);
    return this.#do(() =>
      together(this.#pool, async client => {
        // A move made from outside leads nowhere, and goes.
        const row = await target(client, this.#vault, hash).catch(error => {
          if (error instanceof Damaged) return hash;
          throw error;
        });
        await client.query('DELETE FROM moves WHERE old = $1', [hash]);
        await client.query(sql('forgetClaims', row));
        await client.query(sql('remove', row));
        await client.query(sql('unmove', row));
        if (!update) return;
        const { rowCount } = await client.query(sql('mark', ...this.#closing(chat, update)));
        if (rowCount === 0) throw new ClaimLost('the update is not ours any more');
      }),
    );
  }

  async leave(chat: string, dropAt: number): Promise<void> {
    await this.#query(sql('leave', this.#vault.hash(chat), dayOf(dropAt)));
  }

  async rejoin(chat: string): Promise<void> {
    await this.#query(sql('leave', this.#vault.hash(chat), null));
  }

  async claim(update: number, at: number): Promise<UpdateLease> {
    // Before the first claim the run's lock must stand, or others would think us dead.
    await this.#do(() => this.#locks.session());
    if ((await this.#query(sql('take', update, this.#run, at))).rowCount === 1) return { state: 'new' };
    const retaken = await this.#query(sql('retake', update, this.#run, at, at - this.#releaseAfterMs));
    if (retaken.rowCount === 1) {
      const { reply, former } = retaken.rows[0];
      return {
        state: 'again',
        reply: reply ? this.#vault.open(reply, aboutReply(update)) : undefined,
        ...(former === freeRun.unsent && { isUnsent: true }),
      };
    }
    const { rows } = await this.#query(sql('taken', update));
    return rows[0]?.is_done ? { state: 'done', answer: rows[0].answer ?? undefined } : { state: 'busy' };
  }

  async finish(update: number, sent?: AnswerLink): Promise<void> {
    const chat = sent ? this.#vault.hash(sent.chat) : null;
    await this.#query(sql('finish', update, chat, sent?.question ?? null, sent?.answer ?? null));
  }

  async release(update: number, isUnsent = false): Promise<void> {
    await this.#query(sql('release', update, this.#run, isUnsent ? freeRun.unsent : freeRun.back));
  }

  async answerTo(chat: string, question: string): Promise<string | undefined> {
    return (await this.#query(sql('answerTo', this.#vault.hash(chat), question))).rows[0]?.answer;
  }

  async answersIn(chat: string): Promise<ReadonlySet<string>> {
    const { rows } = await this.#query(sql('answersIn', this.#vault.hash(chat)));
    return new Set(rows.map(row => row.answer as string));
  }

  async tally(at: number, one: Tally, within?: Tally) {
    const inputs = [one, ...(within ? [within] : [])].flatMap(({ what, most }) => [
      this.#vault.hash(`tally ${what}`),
      most,
    ]);
    const { rows } = await this.#query(sql(within ? 'tallyBoth' : 'tally', at, ...inputs));
    const [{ count, within: second }] = rows;
    return { count, ...(second != null && { within: second }) };
  }

  async due(): Promise<readonly number[]> {
    const { rows } = await this.#query(sql('due'));
    return rows.map(row => Number(row.update_id));
  }

  async prune(before: { readonly claims: number; readonly chats?: number }): Promise<Pruned> {
    await this.#query(sql('pruneTallies', this.#now()));
    const claims = (await this.#query(sql('pruneClaims', before.claims))).rowCount ?? 0;
    const left = (await this.#query(sql('pruneLeft', dayOf(this.#now())))).rowCount ?? 0;
    if (before.chats === undefined) return { claims, chats: left };
    const unused = (await this.#query(sql('pruneChats', dayOf(before.chats)))).rowCount ?? 0;
    await this.#query(sql('pruneMoves', dayOf(before.chats)));
    return { claims, chats: left + unused };
  }

  rotate(): Promise<number> {
    return this.#do(() => rotate(this.#pool, this.#vault));
  }

  async close(): Promise<void> {
    if (this.#pool.ended) return;
    await Promise.all([this.#locks.close(), this.#pool.end()]);
  }
}
