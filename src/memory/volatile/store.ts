import type { Memory } from '#conversation/memory.ts';
import { emptyMemory } from '#conversation/memory.ts';
import type { AnswerLink, Claimed, Loaded, Pruned, Tally, UpdateLease } from '#conversation/memory-store.ts';
import { ClaimLost, StaleRevision } from '#conversation/memory-store.ts';
import { readOwn, writeMemory } from '../document.ts';
import { dayOf, defaultReleaseAfterMs, type KeptStore, type StoreOptions } from '../kept.ts';
import { merge } from '../merge.ts';
import { Queue } from '../queue.ts';
import { Tallies } from '../tallies.ts';

interface Row {
  readonly revision: number;
  readonly text: string;
  readonly day: number;
  /** The day from which it is to go, where the bot has left. */
  readonly dropDay?: number;
}

interface ClaimRow {
  at: number;
  isFree: boolean;
  isUnsent?: boolean;
  isDone: boolean;
  chat?: string;
  reply?: string;
  sent?: AnswerLink;
}

/** A store that lives as long as the process: for tests and for `ask`. Nothing is sealed, nothing is written. */
export class VolatileStore implements KeptStore {
  readonly #memories = new Map<string, Row>();
  readonly #claims = new Map<number, ClaimRow>();
  readonly #moves = new Map<string, string>();
  readonly #queue = new Queue();
  readonly #tallies = new Tallies();
  readonly #releaseAfterMs: number;
  readonly #now: () => number;
  #revision = 0;

  constructor(options: StoreOptions = {}) {
    this.#releaseAfterMs = options.releaseAfterMs ?? defaultReleaseAfterMs;
    this.#now = options.now ?? Date.now;
  }

  #chat(chat: string): string {
    return this.#moves.get(chat) ?? chat;
  }

  /** The claim to close with a change. @throws ClaimLost */
  #ours(update: Claimed | undefined): ClaimRow | undefined {
    if (!update) return undefined;
    const row = this.#claims.get(update.update);
    if (!row || row.isDone || row.isFree) throw new ClaimLost('the update is not ours any more');
    return row;
  }

  #close(row: ClaimRow | undefined, chat: string, update: Claimed | undefined): void {
    if (!row) return;
    row.chat = chat;
    row.reply = update?.reply;
    row.isDone = update?.reply === undefined;
  }

  async load(chat: string): Promise<Loaded> {
    const row = this.#memories.get(this.#chat(chat));
    return row
      ? { memory: readOwn(row.text), revision: row.revision }
      : { memory: emptyMemory(), revision: 0 };
  }

  async save(chat: string, memory: Memory, revision: number, update?: Claimed): Promise<number> {
    const text = writeMemory(memory);
    const claim = this.#ours(update);
    const key = this.#chat(chat);
    if ((this.#memories.get(key)?.revision ?? 0) !== revision) throw new StaleRevision('saved in between');
    this.#close(claim, chat, update);
    this.#revision += 1;
    this.#memories.set(key, { revision: this.#revision, text, day: dayOf(this.#now()) });
    return this.#revision;
  }

  withLock<T>(chat: string, work: () => Promise<T>): Promise<T> {
    return this.#queue.run(this.#chat(chat), work);
  }

  async move(from: string, to: string): Promise<void> {
    const [old, target] = [this.#chat(from), this.#chat(to)];
    if (old === target) return;
    const [row, other] = [this.#memories.get(old), this.#memories.get(target)];
    for (const [alias, now] of this.#moves) if (now === old) this.#moves.set(alias, target);
    this.#moves.set(old, target);
    this.#memories.delete(old);
    if (!row) return;
    const text = other ? writeMemory(merge(readOwn(other.text), readOwn(row.text))) : row.text;
    this.#revision += 1;
    this.#memories.set(target, { revision: this.#revision, text, day: dayOf(this.#now()) });
  }

  async forget(chat: string, update?: Claimed): Promise<void> {
    const claim = this.#ours(update);
    const key = this.#chat(chat);
    const ids = new Set([key, chat]);
    for (const [alias, now] of this.#moves) if (now === key) ids.add(alias);
    for (const id of ids) {
      this.#moves.delete(id);
      this.#memories.delete(id);
    }
    for (const row of this.#claims.values()) {
      if (!row.chat || !ids.has(row.chat)) continue;
      row.chat = row.reply = row.sent = undefined;
    }
    this.#close(claim, chat, update);
  }

  async leave(chat: string, dropAt: number): Promise<void> {
    const row = this.#memories.get(this.#chat(chat));
    if (row) this.#memories.set(this.#chat(chat), { ...row, dropDay: dayOf(dropAt) });
  }

  async rejoin(chat: string): Promise<void> {
    const row = this.#memories.get(this.#chat(chat));
    if (row) this.#memories.set(this.#chat(chat), { ...row, dropDay: undefined });
  }

  async claim(update: number, at: number): Promise<UpdateLease> {
    const row = this.#claims.get(update);
    if (!row) {
      this.#claims.set(update, { at, isFree: false, isDone: false });
      return { state: 'new' };
    }
    if (row.isDone) return { state: 'done', answer: row.sent?.answer };
    if (!row.isFree && row.at > at - this.#releaseAfterMs) return { state: 'busy' };
    row.at = at;
    row.isFree = false;
    const { isUnsent } = row;
    row.isUnsent = false;
    return { state: 'again', reply: row.reply, ...(isUnsent && { isUnsent }) };
  }

  async finish(update: number, sent?: AnswerLink): Promise<void> {
    const row = this.#claims.get(update);
    if (!row) return;
    row.isDone = true;
    row.reply = undefined;
    row.sent = sent ?? row.sent;
    row.chat = sent?.chat ?? row.chat;
  }

  async release(update: number, isUnsent = false): Promise<void> {
    const row = this.#claims.get(update);
    if (row && !row.isDone) Object.assign(row, { isFree: true, isUnsent });
  }

  async answerTo(chat: string, question: string): Promise<string | undefined> {
    let found: ClaimRow | undefined;
    for (const row of this.#claims.values()) {
      if (row.sent?.chat !== chat || row.sent.question !== question) continue;
      if (!found || row.at >= found.at) found = row;
    }
    return found?.sent?.answer;
  }

  async answersIn(chat: string): Promise<ReadonlySet<string>> {
    return new Set(
      [...this.#claims.values()].flatMap(({ sent }) => (sent?.chat === chat ? sent.answer : [])),
    );
  }

  async due(): Promise<readonly number[]> {
    return [...this.#claims]
      .filter(([, { reply, isDone }]) => reply !== undefined && !isDone)
      .sort(([, a], [, b]) => a.at - b.at)
      .map(([update]) => update);
  }

  async tally(at: number, one: Tally, within?: Tally) {
    return this.#tallies.note(at, one, within);
  }

  async prune(before: { readonly claims: number; readonly chats?: number }): Promise<Pruned> {
    const pruned = { claims: 0, chats: 0 };
    for (const [update, row] of this.#claims) {
      if (row.at < before.claims && this.#claims.delete(update)) pruned.claims += 1;
    }
    const day = before.chats === undefined ? Number.NEGATIVE_INFINITY : dayOf(before.chats);
    const today = dayOf(this.#now());
    for (const [chat, row] of this.#memories) {
      const isGone = row.dropDay !== undefined && row.dropDay <= today;
      if (isGone) for (const [alias, now] of this.#moves) if (now === chat) this.#moves.delete(alias);
      if ((isGone || row.day < day) && this.#memories.delete(chat)) pruned.chats += 1;
    }
    return pruned;
  }

  async rotate(): Promise<number> {
    return 0;
  }

  async close(): Promise<void> {}
}
