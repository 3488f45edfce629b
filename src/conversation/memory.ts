import { z } from 'zod';
import { intentNames } from '#answer/answer.ts';
import { fits } from '#rig/fits.ts';
import { hazardCodes } from '#rig/hazard-codes.ts';
import { factsSchema, rigSchema } from '#rig/rig.ts';

/** Version of the stored document; `upgrade.ts` reads older ones forwards. */
export const memoryVersion = 2;

const claimSchema = z.strictObject({ who: z.string(), value: z.number(), unit: z.string() });

/** Questions kept of a chat, newest last. */
export const framesKept = 6;

/** Units that answers are told in, where they aren't metres, degrees Celsius and mm². */
const unitsSchema = z.strictObject({
  length: z.literal('ft').optional(),
  temperature: z.literal('F').optional(),
  cable: z.literal('awg').optional(),
});

/** A question asked: whose, when, and its facts, so that "what if lithium" can change one of them. */
export const frameSchema = z.strictObject({
  intent: z.enum(intentNames),
  /** All that it went by, whatever came from where. */
  facts: factsSchema,
  claims: z.array(claimSchema).max(20),
  /** Whose rig it went by, where that is not the asker's. */
  owner: z.string().max(60).optional(),
  /** Who asked, in small letters. */
  from: z.string().max(60),
  at: z.number(),
  /** When the amps or volts among its facts were read, where it lends them from a question before. */
  readAt: z.number().optional(),
  /** Time of the question that it turned. */
  onto: z.number().optional(),
  /** What was to be converted, so that "and at 24 V" can change it. */
  conversion: z
    .strictObject({
      value: z.number(),
      unit: z.string().max(20),
      to: z.string().max(20).optional(),
      voltageV: z.number().optional(),
      hours: z.number().optional(),
    })
    .optional(),
  /** What of its facts memory filled in, and the cues of its words: asked for again, it is answered by the same. */
  recalled: z.array(z.string().max(40)).max(60).optional(),
  cues: z.array(z.string().max(40)).max(80).optional(),
  /** It asked whether something does ("will 160 W keep it going?"): what turns it asks that too. */
  isCheck: z.boolean().optional(),
  /** What its words were about beyond the facts: a symptom, a pair. */
  subject: z.string().max(40).optional(),
  /** What it was told in, where that isn't the usual. */
  units: unitsSchema.optional(),
  /** Dangers that it spoke of: what turns it is told of them too. */
  hazards: z.array(z.enum(hazardCodes)).max(hazardCodes.length).optional(),
  /** What the question back was about, where the bot asked one: the names of the missing needs. */
  asked: z.array(z.string()).max(10).optional(),
});
export type Frame = z.infer<typeof frameSchema>;

/** What the lines before leave for the reading of the next: the shape of the reader's `Talk`. */
export const talkSchema = z.strictObject({
  /** Things last spoken of, the likeliest to be meant last. */
  things: z.array(z.string().max(60)).max(60).optional(),
  lastIntent: z.string().max(30).optional(),
  lastKeys: z.array(z.string().max(40)).max(60).optional(),
  lastValues: z
    .array(z.tuple([z.string().max(60), z.number()]))
    .max(24)
    .optional(),
  asked: z.array(z.string().max(40)).max(60).optional(),
  /** What the last two lines look like, in a few signs each. */
  said: z.array(z.string().max(40)).max(24).optional(),
  lastFrom: z.string().max(60).optional(),
  lastWriter: z.string().max(60).optional(),
  /** What each of the last people asked, the latest last. */
  asks: z
    .array(z.tuple([z.string().max(60), z.string().max(30)]))
    .max(6)
    .optional(),
  at: z.number(),
});

/** Two readings that somebody was asked to choose between. */
export const choiceSchema = z.strictObject({
  at: z.number(),
  options: z
    .array(z.strictObject({ say: z.string().max(80), intent: z.enum(intentNames), facts: factsSchema }))
    .max(3),
});

/** A wish to forget that waits for a yes: whose, and since when (ms since 1970). */
export const forgettingSchema = z.strictObject({
  from: z.string().max(60),
  at: z.number(),
  request: z.strictObject({ which: z.enum(['rig', 'chat', 'me']), owner: z.string().max(60).optional() }),
});

/** The step back: rigs as they were before somebody's last change; null where there was none. */
export const undoSchema = z.strictObject({
  from: z.string().max(60),
  at: z.number(),
  rigs: z.record(z.string().max(60), rigSchema.nullable()),
});

/** What readings have taught of a rig (`engine/learn/state.ts`): numbers of a fixed count, no texts. */
export const learnedSchema = z.strictObject({
  at: z.number(),
  mean: z.array(z.number()).length(5),
  cov: z.array(z.number()).length(15),
  readings: z.number().int().min(0),
  odd: z.strictObject({ at: z.number(), missing: z.number() }).optional(),
  /** Marks of the loads, the battery and the panels that it was learnt of: other ones are not known by it. */
  gear: z.array(z.number()).length(3),
  /** The factors on draw and sun that were last told to the chat. */
  said: z.array(z.number()).length(2).optional(),
});

export const lessonSchema = z.strictObject({
  step: z.number().int().min(0),
  isQuiz: z.boolean(),
  done: z.array(z.number().int()).max(60),
  isOpen: z.boolean(),
});
export type LessonProgress = z.infer<typeof lessonSchema>;

/** Everything kept of one chat: no texts of messages, only what was understood. */
export const memorySchema = z.strictObject({
  version: z.literal(memoryVersion),
  /** Rigs by owner: "" is the chat's own, else a person's name in lower case. */
  rigs: z.record(z.string().max(60), rigSchema),
  /** What was learnt of a rig from its readings, by owner as above; gone with the rig. */
  learned: z.record(z.string().max(60), learnedSchema).optional(),
  /** Things said in passing that belong to the talk and not to a rig (days, driving, sky). */
  passing: factsSchema.optional(),
  /** When something was last said in passing (ms since 1970). */
  passingAt: z.number().optional(),
  /** The questions asked lately, newest last. */
  frames: z.array(frameSchema).max(framesKept),
  talk: talkSchema.optional(),
  choice: choiceSchema.optional(),
  forgetting: forgettingSchema.optional(),
  undo: undoSchema.optional(),
  /** Claims heard lately, for "who is right". */
  claims: z.array(claimSchema).max(20),
  lessons: z.record(z.string().max(60), lessonSchema),
  /** Names that are told apart, by a mark of the person that only the transport can make and that is no id. */
  people: z.record(z.string().max(40), z.string().max(60)).optional(),
  settings: z.strictObject({
    mainsV: z.number().optional(),
    /** Whether pictures come without being asked for; absent: they do. */
    pictures: z.boolean().optional(),
    /** Whether a person was told that voice notes and their like can't be read. */
    isWordlessTold: z.boolean().optional(),
    /** Whether pictures are on dark ground; absent: on light. */
    isDark: z.boolean().optional(),
    /** What the chat asked answers to be told in; absent: metres, °C, mm². */
    units: unitsSchema.optional(),
  }),
});
export type Memory = z.infer<typeof memorySchema>;
/** Whether a document is one, without what is wrong with it. */
export const isMemory = fits(memorySchema);

/** A chat of which nothing is known. Always a fresh object. */
export const emptyMemory = (): Memory => ({
  version: memoryVersion,
  rigs: {},
  frames: [],
  claims: [],
  lessons: {},
  settings: {},
});

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
export interface Sent {
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
export type Claim =
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
  claim(update: number, at: number): Promise<Claim>;
  /** Marks an update as answered and drops its kept reply. */
  finish(update: number, sent?: Sent): Promise<void>;
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
