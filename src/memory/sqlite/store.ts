import { randomInt } from 'node:crypto';
import type { Memory } from '#conversation/memory.ts';
import { emptyMemory } from '#conversation/memory.ts';
import type { AnswerLink, Claimed, Loaded, Pruned, Tally, UpdateLease } from '#conversation/memory-store.ts';
import { ClaimLost, StaleRevision } from '#conversation/memory-store.ts';
import { readOwn, writeMemory } from '../document.ts';
import type { StoreOptions } from '../kept.ts';
import {
  aboutMemory,
  aboutReply,
  dayOf,
  defaultReleaseAfterMs,
  freeRun,
  type KeptStore,
  newRevision,
} from '../kept.ts';
import type { KeySource } from '../keys.ts';
import { merge } from '../merge.ts';
import { Queue } from '../queue.ts';
import type { Vault } from '../seal.ts';
import { Tallies } from '../tallies.ts';
import { along } from './along.ts';
import { explain, type File, openFile } from './file.ts';
import { Group } from './group.ts';
import type { Ledger } from './ledger.ts';
import { rotate } from './rotate.ts';
import { prepareAll, type Statements } from './statements.ts';
import { openVault, type Sealing } from './vault.ts';

export interface SqliteOptions extends StoreOptions {
  /** Sync each commit to the disk. */
  readonly isFull?: boolean;
  /** How long to wait for another process's lock (ms, default 2 s). */
  readonly busyMs?: number;
}

type Gone = Readonly<Record<string, unknown>>;

/** Rows of chats held ready. */
const mostRows = 5000;

/** Opens the store of one file. @throws Error in one line; nothing is overwritten then */
export const openSqlite = (path: string, keys: KeySource, options: SqliteOptions = {}): SqliteStore => {
  const file = openFile(path, options.isFull ?? false, options.busyMs ?? 2000);
  try {
    return new SqliteStore(path, file, openVault(file.db, keys, options.isAccepting), options);
  } catch (error) {
    file.close();
    throw explain(error, path);
  }
};

/** Memories in one SQLite file, for one process. Synchronous inside: a load or a save takes microseconds. */
export class SqliteStore implements KeptStore {
  readonly #path: string;
  readonly #file: File;
  readonly #vault: Vault;
  readonly #ledger: Ledger;
  readonly #sql: Statements;
  readonly #queue = new Queue();
  readonly #tallies = new Tallies();
  readonly #group: Group;
  readonly #releaseAfterMs: number;
  readonly #now: () => number;
  /** Tells this process's claims from an earlier one's, which is dead: the file lets one process in. */
  readonly #run = randomInt(1, 2 ** 31);

  /** The rows of chats in use, followed over a move. */
  readonly #rows = new Map<string, Buffer>();

  constructor(path: string, file: File, { vault, ledger }: Sealing, options: StoreOptions) {
    this.#path = path;
    this.#file = file;
    this.#vault = vault;
    this.#ledger = ledger;
    this.#sql = prepareAll(file.db);
    this.#group = new Group(file.db, along(ledger, this.#sql));
    this.#releaseAfterMs = options.releaseAfterMs ?? defaultReleaseAfterMs;
    this.#now = options.now ?? Date.now;
  }

  /** Turns a failure into a rejection of one clear line. */
  async #do<T>(work: () => T): Promise<T> {
    try {
      return await this.#group.run(work);
    } catch (error) {
      throw explain(error, this.#path);
    }
  }

  /** The same for what only reads: it waits for nothing. */
  async #look<T>(work: () => T): Promise<T> {
    try {
      return work();
    } catch (error) {
      throw explain(error, this.#path);
    }
  }

  /** The row of a chat: its hash, or that of the id it moved to. */
  #row(chat: string): Buffer {
    const held = this.#rows.get(chat);
    if (held) return held;
    const hash = this.#vault.hash(chat);
    const moved = this.#sql.target.get(hash);
    const row = moved ? Buffer.from(moved.target as Uint8Array) : hash;
    if (this.#rows.size >= mostRows) this.#rows.clear();
    this.#rows.set(chat, row);
    return row;
  }

  /** Notes rows that went, as a statement returns them. @returns how many */
  #gone(rows: readonly Gone[]): number {
    for (const { chat, revision, old, target } of rows) {
      if (chat) this.#ledger.memory(chat as Uint8Array, revision as number);
      else this.#ledger.move(old as Uint8Array, target as Uint8Array);
    }
    this.#rows.clear();
    return rows.length;
  }

  #read(row: Buffer): Loaded | undefined {
    const found = this.#sql.load.get(row);
    if (!found) return undefined;
    const revision = found.revision as number;
    const text = this.#vault.open(found.sealed as Uint8Array, aboutMemory(row, revision));
    return { memory: readOwn(text), revision };
  }

  /** @throws ClaimLost */
  #close(chat: string, update: Claimed): void {
    const { reply } = update;
    const sealed = reply === undefined ? null : this.#vault.seal(reply, aboutReply(update.update));
    const isDone = reply === undefined ? 1 : 0;
    const marked = this.#sql.mark.run(this.#vault.hash(chat), sealed, isDone, update.update, this.#run);
    if (marked.changes === 0) throw new ClaimLost('the update is not ours any more');
  }

  load(chat: string): Promise<Loaded> {
    return this.#look(() => this.#read(this.#row(chat)) ?? { memory: emptyMemory(), revision: 0 });
  }

  save(chat: string, memory: Memory, revision: number, update?: Claimed): Promise<number> {
    return this.#do(() => {
      const text = writeMemory(memory);
      const row = this.#row(chat);
      const day = dayOf(this.#now());
      const next = revision === 0 ? newRevision() : revision + 1;
      const sealed = this.#vault.seal(text, aboutMemory(row, next));
      const write = (): number => {
        if (update) this.#close(chat, update);
        const { changes } =
          revision === 0
            ? this.#sql.insert.run(next, day, sealed, row)
            : this.#sql.update.run(next, day, sealed, row, revision);
        if (changes === 0) throw new StaleRevision('saved in between');
        if (revision !== 0) this.#ledger.memory(row, revision);
        this.#ledger.memory(row, next);
        return next;
      };
      return update ? this.#group.whole(write) : write();
    });
  }

  withLock<T>(chat: string, work: () => Promise<T>): Promise<T> {
    return this.#look(() => this.#row(chat).toString('hex')).then(row => this.#queue.run(row, work));
  }

  move(from: string, to: string): Promise<void> {
    return this.#do(() =>
      this.#group.whole(() => {
        const [old, target] = [this.#row(from), this.#row(to)];
        if (old.equals(target)) return;
        const [memory, other] = [this.#read(old), this.#read(target)];
        const day = dayOf(this.#now());
        for (const one of this.#sql.aliases.all(old)) {
          this.#ledger.move(one.old as Uint8Array, old);
          this.#ledger.move(one.old as Uint8Array, target);
        }
        this.#sql.retarget.run(target, old);
        this.#gone(this.#sql.unmove.all(old));
        this.#sql.moved.run(old, target, day);
        this.#ledger.move(old, target);
        this.#gone(this.#sql.remove.all(old));
        if (!memory) return;
        const merged = other ? merge(other.memory, memory.memory) : memory.memory;
        const next = other ? other.revision + 1 : newRevision();
        const sealed = this.#vault.seal(writeMemory(merged), aboutMemory(target, next));
        if (other) this.#sql.update.run(next, day, sealed, target, other.revision);
        else this.#sql.insert.run(next, day, sealed, target);
        if (other) this.#ledger.memory(target, other.revision);
        this.#ledger.memory(target, next);
      }),
    );
  }

  forget(chat: string, update?: Claimed): Promise<void> {
    return this.#do(() =>
      this.#group.whole(() => {
        const row = this.#row(chat);
        const former = this.#sql.aliases.all(row).map(one => one.old as Uint8Array);
        for (const id of [row, ...former]) {
          this.#sql.forgetClaims.run(id);
          this.#gone([...this.#sql.remove.all(id), ...this.#sql.unmove.all(id)]);
        }
        if (update) this.#close(chat, update);
      }),
    );
  }

  leave(chat: string, dropAt: number): Promise<void> {
    return this.#do(() => void this.#sql.leave.run(dayOf(dropAt), this.#row(chat)));
  }

  rejoin(chat: string): Promise<void> {
    return this.#do(() => void this.#sql.leave.run(null, this.#row(chat)));
  }

  claim(update: number, at: number): Promise<UpdateLease> {
    return this.#do((): UpdateLease => {
      if (this.#sql.take.run(update, this.#run, at).changes === 1) return { state: 'new' };
      const found = this.#sql.taken.get(update);
      if (found?.is_done) return { state: 'done', answer: (found.answer as string | null) ?? undefined };
      if (found?.run === this.#run && (found.at as number) > at - this.#releaseAfterMs)
        return { state: 'busy' };
      this.#sql.retake.run(this.#run, at, update);
      const reply = found?.reply as Uint8Array | null;
      return {
        state: 'again',
        reply: reply ? this.#vault.open(reply, aboutReply(update)) : undefined,
        ...(found?.run === freeRun.unsent && { isUnsent: true }),
      };
    });
  }

  finish(update: number, sent?: AnswerLink): Promise<void> {
    return this.#do(() => {
      const chat = sent ? this.#vault.hash(sent.chat) : null;
      this.#sql.finish.run(chat, sent?.question ?? null, sent?.answer ?? null, update);
    });
  }

  release(update: number, isUnsent = false): Promise<void> {
    const run = isUnsent ? freeRun.unsent : freeRun.back;
    return this.#do(() => void this.#sql.release.run(run, update, this.#run));
  }

  answerTo(chat: string, question: string): Promise<string | undefined> {
    return this.#look(
      () => this.#sql.answerTo.get(this.#vault.hash(chat), question)?.answer as string | undefined,
    );
  }

  answersIn(chat: string): Promise<ReadonlySet<string>> {
    return this.#look(() => {
      const rows = this.#sql.answersIn.all(this.#vault.hash(chat));
      return new Set(rows.map(row => row.answer as string));
    });
  }

  due(): Promise<readonly number[]> {
    return this.#look(() => this.#sql.due.all().map(row => Number(row.update_id)));
  }

  async tally(at: number, one: Tally, within?: Tally) {
    return this.#tallies.note(at, one, within);
  }

  prune(before: { readonly claims: number; readonly chats?: number }): Promise<Pruned> {
    return this.#do(() => {
      const claims = Number(this.#sql.pruneClaims.run(before.claims).changes);
      const today = dayOf(this.#now());
      this.#gone(this.#sql.pruneMovesOfLeft.all(today));
      const left = this.#gone(this.#sql.pruneLeft.all(today));
      if (before.chats === undefined) return { claims, chats: left };
      const chats = left + this.#gone(this.#sql.pruneChats.all(dayOf(before.chats)));
      this.#gone(this.#sql.pruneMoves.all(dayOf(before.chats)));
      return { claims, chats };
    });
  }

  rotate(): Promise<number> {
    return this.#do(() => this.#group.whole(() => rotate(this.#file.db, this.#vault, this.#ledger.sealed())));
  }

  async close(): Promise<void> {
    if (!this.#file.db.isOpen) return;
    await this.#group.settled();
    this.#file.close();
  }
}
