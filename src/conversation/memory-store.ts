import type { Memory } from './memory.ts';

/** A memory as loaded: the document and the revision to save against. */
export interface Loaded {
  readonly memory: Memory;
  /** 0: nothing is stored. Else opaque; it never comes back after `forget`. */
  readonly revision: number;
}

/** Thrown by `save` when somebody else saved in between. Load again and redo. */
export class StaleRevision extends Error {
  override readonly name = 'StaleRevision';
}

/** Thrown by `load` when what is stored of the chat can't be read any more. `forget` takes it away. */
export class Damaged extends Error {
  override readonly name = 'Damaged';
}

/** Thrown by any call when the database itself fails: full, locked, gone. What was asked for can be tried again later. */
export class StoreFailed extends Error {
  override readonly name = 'StoreFailed';
}

/** Thrown by `save` and `forget` when another process has taken the update over. Drop the work: it does it. */
export class ClaimLost extends Error {
  override readonly name = 'ClaimLost';
}

/** An update closed together with a change of memory. */
export interface Claimed {
  readonly update: number;
  /**
   * The reply about to be sent, as the transport wants it back. It is kept (sealed) until `finish`, so that
   * after a crash it is sent without changing the memory twice. Absent: nothing follows, the update is done.
   */
  readonly reply?: string;
}

/** Which message answered which, so that an edited question edits its answer. Ids only, no texts. */
export interface AnswerLink {
  readonly chat: string;
  readonly question?: string;
  readonly answer: string;
}

/** Something that is counted a minute at a time, and how many of it have room. */
export interface Tally {
  /** Any name for it; a store writes a keyed hash of that at most. */
  readonly what: string;
  readonly most: number;
}

/** What `claim` found. */
export type UpdateLease =
  /** Nobody had it: process it. */
  | { readonly state: 'new' }
  /** A crash broke it off: process it; with a `reply` the memory is saved already and only the reply is due. */
  | {
      readonly state: 'again';
      readonly reply?: string;
      /** It is known that the reply was not sent: its taker gave it back before. */
      readonly isUnsent?: boolean;
    }
  /** In work elsewhere: leave it, and don't acknowledge it. */
  | { readonly state: 'busy' }
  /** Answered before, by the message `answer`. */
  | { readonly state: 'done'; readonly answer?: string };

/**
 * Where memories live. Every store behaves alike: `tests/memory/conformance.ts` runs on each.
 * All calls may reject with a plain Error whose message is one clear line without chat ids or names.
 *
 * The life of an update, safe against a crash between any two steps:
 * `withLock(chat)` { `claim` → `load` → converse → `save(…, { update, reply })` → send → `finish(update, sent)` }.
 * Killed before `save`: nothing changed, it comes 'again'. After `save`: 'again' with its reply. After the send
 * and before `finish`: 'again' with its reply too, for nobody could note the message's id; the transport looks
 * whether it stands there. Later: 'done'.
 */
export interface MemoryStore {
  /** The chat's memory, or an empty one at revision 0. @throws Damaged where it can't be read any more */
  load(chat: string): Promise<Loaded>;
  /**
   * Keeps the memory and, where given, closes the update in the same transaction.
   * @returns the new revision
   * @throws StaleRevision when `revision` is not the stored one; ClaimLost when the update is not ours any more
   */
  save(chat: string, memory: Memory, revision: number, update?: Claimed): Promise<number>;
  /**
   * Runs the work while no other work for this chat runs, in this process or another on the same data; first
   * come, first served. Don't nest. Should the database drop the lock, `revision` still prevents a lost update.
   */
  withLock<T>(chat: string, work: () => Promise<T>): Promise<T>;
  /**
   * Moves a chat's memory to another id (group → supergroup) and reads the old id as the new one ever after.
   * Idempotent. Where both have a memory, what the new chat has wins and the old one fills the gaps.
   */
  move(from: string, to: string): Promise<void>;
  /** Deletes all that is kept of a chat, replies not sent yet and former ids included. */
  forget(chat: string, update?: Claimed): Promise<void>;
  /**
   * Marks a chat that the bot has been shut out of: from `dropAt` (ms since 1970) on, `prune` drops it. Any
   * later `save` takes the mark off, and so does `rejoin`.
   */
  leave(chat: string, dropAt: number): Promise<void>;
  /** Takes the mark of `leave` off. */
  rejoin(chat: string): Promise<void>;
  /**
   * Takes an update for processing. Each id is given to one caller only, across restarts and instances, until
   * it is finished; when its taker died, gave it back, or kept it too long, it is given once more, as 'again'.
   * @param at now, in ms since 1970
   */
  claim(update: number, at: number): Promise<UpdateLease>;
  /** Marks an update as answered and drops its kept reply. */
  finish(update: number, sent?: AnswerLink): Promise<void>;
  /**
   * Gives a claim back after a failure: the next `claim` gets it as 'again'. Nothing where it's done or lost.
   * @param isUnsent nothing of it was sent
   */
  release(update: number, isUnsent?: boolean): Promise<void>;
  /**
   * Counts one more, together with all processes on the same data. A tally begins anew a minute after its first; the
   * first one beyond its `most` starts that minute again, so that the limit holds for a whole one from there. It may
   * be lost at a restart.
   * @param at now, in ms since 1970
   * @param within counted too while the first has room
   * @returns how many it makes of the first, and of the second where that was counted
   */
  tally(
    at: number,
    one: Tally,
    within?: Tally,
  ): Promise<{ readonly count: number; readonly within?: number }>;
  /** The updates whose reply is kept and not known to have gone out, oldest first: what a start has to look at. */
  due(): Promise<readonly number[]>;
  /** The id of the message that answered this message of this chat, while its claim is kept. */
  answerTo(chat: string, question: string): Promise<string | undefined>;
  /** The ids of all messages of this chat that are noted as answers, while their claims are kept. */
  answersIn(chat: string): Promise<ReadonlySet<string>>;
  /**
   * Drops claims taken before `claims`, chats not saved since the day of `chats` (ms since 1970), and chats
   * marked by `leave` whose day has come.
   * Keep claims for 48 h or more: Telegram repeats for 24 h, people edit for 48 h.
   */
  prune(before: { readonly claims: number; readonly chats?: number }): Promise<Pruned>;
  close(): Promise<void>;
}

/** How many of each `prune` dropped. */
export interface Pruned {
  readonly claims: number;
  readonly chats: number;
}
