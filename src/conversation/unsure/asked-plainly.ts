import { intentNamed } from '#intents';
import type { Stated } from '#rig/rig.ts';
import { isEmergency } from '../answering/safe.ts';
import type { Heard } from '../hear.ts';
import { aboutBefore, ownFrame } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { askedInFigures, askedInWords } from '../questions.ts';
import { isAsking } from '../turns/asking.ts';
import { isBotCalled } from '../turns/called.ts';
import { anotherSideOf } from '../turns/of-answer.ts';
import { leastSure } from './sureness.ts';
import type { Two } from './two-readings.ts';

/** Nothing more of the reading counts, and nothing of it is unsure. */
const settled = {
  claims: [],
  removed: [],
  corrects: undefined,
  certainty: 1,
  options: [],
} as const satisfies Partial<Heard>;

/**
 * A plain question asked by a message's very words, of which nothing is worked out: in place of what would be asked
 * back, or of a sum that would not answer it. Undefined where it asks none, where a danger is seen, and where the bot's
 * own words or a wish are what it is.
 */
export function askedPlainly(
  memory: Memory,
  message: Message,
  heard: Heard,
  reading: 'torn' | 'weak' | 'sure',
): Heard | undefined {
  if (heard.hazards.length > 0 || heard.issues.length > 0 || heard.forgetting || heard.undo) return undefined;
  // What reading is torn over asks something, whatever its words.
  const isPut =
    reading === 'torn' ||
    message.text.includes('?') ||
    isAsking(heard) ||
    heard.cues.has('ask-what-is') ||
    isBotCalled(heard, message);
  if (!isPut) return undefined;
  // "Which one do I need?" of what was just judged asks nothing in general.
  const own = ownFrame(memory.frames, message.from);
  if (own && anotherSideOf(own, heard) === heard.intent) return undefined;
  const asked = askedInWords(heard, aboutBefore(memory, message));
  if (!asked || (reading === 'sure' && !asked.isSure)) return undefined;
  const { intent } = asked;
  return {
    ...heard,
    intent,
    facts: {},
    ...settled,
  };
}

/**
 * What a message's words and figures ask together ("12.6 last night, 12.3 this morning: how much did we use"), whatever
 * it was read as; undefined where they don't, in an emergency, and where the bot's own words or a wish are what it is.
 */
export function askedByFigures(heard: Heard): Heard | undefined {
  if (isEmergency(heard.hazards) || heard.issues.length > 0 || heard.forgetting || heard.undo)
    return undefined;
  const asked = askedInFigures(heard);
  if (!asked) return undefined;
  const { intent, subject, takes } = asked;
  const facts = Object.fromEntries(
    Object.entries(heard.facts).filter(([key]) => takes.includes(key as keyof Stated)),
  ) as Stated;
  return { ...heard, intent, subject, facts, ...settled };
}

/**
 * The likelier of two questions that reading is torn between, where the words ask something beside its sum ("is it normal",
 * "where does it go"): undefined where they don't, and in a danger.
 */
export function askedBeside(heard: Heard, { text }: Message, two: Two | undefined): Heard | undefined {
  if (!two || heard.hazards.length > 0) return undefined;
  const [first] = two.options;
  if (intentNamed(first.intent).subjectIn?.(heard.recognised.words, text) === undefined) return undefined;
  return {
    ...heard,
    intent: first.intent,
    facts: first.facts,
    claims: [],
    certainty: leastSure,
    options: [],
  };
}
