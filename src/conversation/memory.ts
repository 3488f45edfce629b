import { z } from 'zod';
import { intentNames } from '#answer/answer.ts';
import { fits } from '#rig/fits.ts';
import { hazardCodes } from '#rig/hazard-codes.ts';
import { factsSchema, rigSchema } from '#rig/rig.ts';

/** Version of the stored document; `upgrade.ts` reads older ones forwards. */
export const memoryVersion = 2;

const claimSchema = z.strictObject({ who: z.string(), value: z.number(), unit: z.string() });

/** A claim as a chat keeps it until it is old: of a number or a side ("yes", "lithium"), and of which question. */
const ofQuestion = {
  /** Time of the question; absent: nothing had been asked. */
  of: z.number().optional(),
  at: z.number().optional(),
  /** The bot has said who is right. */
  isSettled: z.boolean().optional(),
};
const sideKeptSchema = z.strictObject({
  who: z.string().max(60),
  says: z.string().max(20),
  /** What of the trade it is a side of, by the bot's own name for that; absent: of a question. */
  maxim: z.string().max(40).optional(),
  ...ofQuestion,
});
const claimKeptSchema = z.strictObject({ ...claimSchema.shape, ...ofQuestion });
export type SideKept = z.infer<typeof sideKeptSchema>;
export type ClaimKept = z.infer<typeof claimKeptSchema>;

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
  /** What of its facts its asker took from others. */
  lent: z
    .array(z.strictObject({ who: z.string().max(60), facts: factsSchema }))
    .max(4)
    .optional(),
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
  /** Mains volts told with it, V. */
  mainsV: z.number().optional(),
  /** Dangers that it spoke of: what turns it is told of them too. */
  hazards: z.array(z.enum(hazardCodes)).max(hazardCodes.length).optional(),
  /** What the question back was about, where the bot asked one: the names of the missing needs. */
  asked: z.array(z.string()).max(10).optional(),
  /** What of that its asker said not to know: the keys of those needs. */
  untold: z.array(z.string().max(40)).max(10).optional(),
});
export type Frame = z.infer<typeof frameSchema>;

/** What the lines before leave for the reading of the next: the shape of the reader's `Talk`. */
const talkSchema = z.strictObject({
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
  /** What the last two lines meant as dangers go, in the bot's own words for it. */
  meant: z.array(z.string().max(40)).max(24).optional(),
  lastFrom: z.string().max(60).optional(),
  lastWriter: z.string().max(60).optional(),
  /** Who was last named by somebody else: "she" is that person. */
  named: z.string().max(60).optional(),
  /** What each of the last people asked, the latest last. */
  asks: z
    .array(z.tuple([z.string().max(60), z.string().max(30)]))
    .max(6)
    .optional(),
  /**
   * The last lines, each by whom and with the hashes of its words, to the base of 36: nothing can be read from them but
   * whether a word was there.
   */
  lines: z
    .array(z.tuple([z.string().max(60), z.string().max(200)]))
    .max(3)
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
const forgettingSchema = z.strictObject({
  from: z.string().max(60),
  at: z.number(),
  request: z.strictObject({ which: z.enum(['rig', 'chat', 'me']), owner: z.string().max(60).optional() }),
});

/** The step back: rigs as they were before somebody's last change; null where there was none. */
const undoSchema = z.strictObject({
  from: z.string().max(60),
  at: z.number(),
  rigs: z.record(z.string().max(60), rigSchema.nullable()),
});

/** What readings have taught of a rig (`engine/learn/state.ts`): numbers of a fixed count, no texts. */
const learnedSchema = z.strictObject({
  at: z.number(),
  mean: z.tuple([z.number(), z.number(), z.number(), z.number(), z.number()]),
  cov: z.array(z.number()).length(15),
  readings: z.number().int().min(0),
  odd: z.strictObject({ at: z.number(), missing: z.number() }).optional(),
  /** Marks of the loads, the battery and the panels that it was learnt of: other ones are not known by it. */
  gear: z.array(z.number()).length(3),
  /** The factors on draw and sun that were last told to the chat. */
  said: z.tuple([z.number(), z.number()]).optional(),
});

const lessonSchema = z.strictObject({
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
  /** Under whose name the rig is kept that somebody shares; their own: they called it ours. */
  shared: z.record(z.string().max(60), z.string().max(60)).optional(),
  /** What was learnt of a rig from its readings, by owner as above; gone with the rig. */
  learned: z.record(z.string().max(60), learnedSchema).optional(),
  /** Things said in passing that belong to the talk and not to a rig (days, driving, sky). */
  passing: factsSchema.optional(),
  /** When something was last said in passing (ms since 1970). */
  passingAt: z.number().optional(),
  /** Who said it, in small letters: their readings and days are nobody else's. */
  passingFrom: z.string().max(60).optional(),
  /** The questions asked lately, newest last. */
  frames: z.array(frameSchema).max(framesKept),
  talk: talkSchema.optional(),
  choice: choiceSchema.optional(),
  forgetting: forgettingSchema.optional(),
  undo: undoSchema.optional(),
  /** Claims heard lately, for "who is right". */
  claims: z.array(z.union([claimKeptSchema, sideKeptSchema])).max(20),
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
