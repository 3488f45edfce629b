import { randomInt } from 'node:crypto';
import type { Claim, Claimed, Loaded, Memory, Pruned, Sent } from '#conversation/memory.ts';
import { ClaimLost, emptyMemory, StaleRevision } from '#conversation/memory.ts';
import { readMemory, writeMemory } from '../document.ts';
import type { StoreOptions } from '../kept.ts';
import {
  aboutMemory,
  aboutReply,
  dayOf,
  defaultReleaseAfterMs,
  type KeptStore,
  newRevision,
} from '../kept.ts';
import type { KeySource } from '../keys.ts';
import { merge } from '../merge.ts';
import { Queue } from '../queue.ts';
import type { Vault } from '../seal.ts';
import { explain, type File, openFile } from './file.ts';
import { Group } from './group.ts';
import { rotate } from './rotate.ts';
import { prepareAll, type Statements } from './statements.ts';
import { openVault } from './vault.ts';

export interface SqliteOptions extends StoreOptions {
  /** Sync each commit to the disk. */
  readonly isFull?: boolean;
  /** How long to wait for another process's lock (ms, default 2 s). */
  readonly busyMs?: number;
}

/** Opens the store of one file. @throws Error in one line; nothing is overwritten then */
export const openSqlite = (path: string, keys: KeySource, options: SqliteOptions = {}): SqliteStore => {
  const file = openFile(path, options.isFull ?? false, options.busyMs ?? 2000);
  try {
    return new SqliteStore(path, file, openVault(file.db, keys), options);
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
  readonly #sql: Statements;
  readonly #queue = new Queue();
  readonly #group: Group;
  readonly #releaseAfterMs: number;
  readonly #now: () => number;
  /** Tells this process's claims from an earlier one's, which is dead: the file lets one process in. */
  readonly #run = randomInt(1, 2 ** 31);

  constructor(path: string, file: File, vault: Vault, options: StoreOptions) {
    this.#path = path;
    this.#file = file;
    this.#group = new Group(file.db);
    this.#vault = vault;
    this.#sql = prepareAll(file.db);
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
    const hash = this.#vault.hash(chat);
    const moved = this.#sql.target.get(hash);
    return moved ? Buffer.from(moved.target as Uint8Array) : hash;
  }

  #read(row: Buffer): Loaded | undefined {
    const found = this.#sql.load.get(row);
    if (!found) return undefined;
    const text = this.#vault.open(found.sealed as Uint8Array, aboutMemory(row));
    return { memory: readMemory(text), revision: found.revision as number };
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
      const sealed = this.#vault.seal(text, aboutMemory(row));
      const day = dayOf(this.#now());
      const next = revision === 0 ? newRevision() : revision + 1;
      const write = (): number => {
        if (update) this.#close(chat, update);
        const { changes } =
          revision === 0
            ? this.#sql.insert.run(next, day, sealed, row)
            : this.#sql.update.run(next, day, sealed, row, revision);
        if (changes === 0) throw new StaleRevision('saved in between');
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
        this.#sql.retarget.run(target, old);
        this.#sql.moved.run(old, target, day);
        this.#sql.remove.run(old);
        if (!memory) return;
        const merged = other ? merge(other.memory, memory.memory) : memory.memory;
        const sealed = this.#vault.seal(writeMemory(merged), aboutMemory(target));
        if (other) this.#sql.update.run(other.revision + 1, day, sealed, target, other.revision);
        else this.#sql.insert.run(newRevision(), day, sealed, target);
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
          this.#sql.remove.run(id);
          this.#sql.unmove.run(id);
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

  claim(update: number, at: number): Promise<Claim> {
    return this.#do((): Claim => {
      if (this.#sql.take.run(update, this.#run, at).changes === 1) return { state: 'new' };
      const found = this.#sql.taken.get(update);
      if (found?.is_done) return { state: 'done', answer: (found.answer as string | null) ?? undefined };
      if (found?.run === this.#run && (found.at as number) > at - this.#releaseAfterMs)
        return { state: 'busy' };
      this.#sql.retake.run(this.#run, at, update);
      const reply = found?.reply as Uint8Array | null;
      return { state: 'again', reply: reply ? this.#vault.open(reply, aboutReply(update)) : undefined };
    });
  }

  finish(update: number, sent?: Sent): Promise<void> {
    return this.#do(() => {
      const chat = sent ? this.#vault.hash(sent.chat) : null;
      this.#sql.finish.run(chat, sent?.question ?? null, sent?.answer ?? null, update);
    });
  }

  release(update: number): Promise<void> {
    return this.#do(() => void this.#sql.release.run(update, this.#run));
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

  prune(before: { readonly claims: number; readonly chats?: number }): Promise<Pruned> {
    return this.#do(() => {
      const claims = Number(this.#sql.pruneClaims.run(before.claims).changes);
      const today = dayOf(this.#now());
      this.#sql.pruneMovesOfLeft.run(today);
      const left = Number(this.#sql.pruneLeft.run(today).changes);
      if (before.chats === undefined) return { claims, chats: left };
      const chats = left + Number(this.#sql.pruneChats.run(dayOf(before.chats)).changes);
      this.#sql.pruneMoves.run(dayOf(before.chats));
      return { claims, chats };
    });
  }

  rotate(): Promise<number> {
    return this.#do(() => this.#group.whole(() => rotate(this.#file.db, this.#vault)));
  }

  async close(): Promise<void> {
    if (!this.#file.db.isOpen) return;
    await this.#group.settled();
    this.#file.close();
  }
}
