import { intentNamed } from '#intents';
import { factsOf } from '#intents/facts.ts';
import type { Intent } from '#intents/intent.ts';
import { hasCapacity } from '#intents/needs.ts';
import { hasUse } from '#intents/use.ts';
import type { Cue } from '#language/words/en/cues.ts';
import type { Stated } from '#rig/rig.ts';
import type { Heard } from './hear.ts';
import type { Frame, Memory } from './memory.ts';
import type { Message } from './message.ts';
import { personKey } from './recall.ts';

/** How much of a question before goes into this one: all of it, what still holds, where and when alone, or nothing. */
export type Extent = 'all' | 'gear' | 'circumstances' | 'none';

export interface Lean {
  readonly frame?: Frame;
  readonly extent: Extent;
}

/** Words that turn what was asked before. */
const turns: readonly Cue[] = ['what-if', 'make-it', 'and-with', 'same-again', 'correction'];
/** Words that turn it where the message has no rig of its own. */
const weakTurns: readonly Cue[] = [...turns, 'without', 'only', 'add', 'remove'];

const isPair = (a: string, b: string): boolean =>
  a === b || [a, b].every(name => name === 'run-time' || name === 'trip' || name === 'energy-budget');

/** Whether a message tells its own use and its own battery: it stands for itself then. */
export function isSetup(told: Stated): boolean {
  const facts = factsOf(told);
  return hasUse(facts) && hasCapacity(facts);
}

/** Whether what is told is enough to answer by itself. */
export const isWhole = ({ takes, needs }: Intent, told: Stated): boolean =>
  takes.some(key => told[key] !== undefined) &&
  needs.safeParse(Object.fromEntries(Object.entries(told).filter(([key]) => takes.includes(key as never))))
    .success;

/** The question that a message may lean on: the one replied to, else the speaker's last, else the chat's. */
function frameFor({ frames }: Memory, { onto, from }: Message, intent: string): Frame | undefined {
  if (onto) return onto;
  const last = frames.at(-1);
  const own = frames.findLast(frame => frame.from === personKey(from));
  if (!own || !last || own === last) return own ?? last;
  // What waits for an answer takes it from anybody; and who speaks of the chat's question means that.
  const isOpen = last.asked !== undefined && isPair(last.intent, intent);
  // Somebody else has told what one's own question waited for.
  const isGoneOn = own.asked !== undefined && last.onto === own.at;
  return isOpen || isGoneOn || (!isPair(own.intent, intent) && isPair(last.intent, intent)) ? last : own;
}

/** How far a message leans on the talk. */
export function leanOf(memory: Memory, message: Message, heard: Heard, intent: Intent): Lean {
  const frame = frameFor(memory, message, intent.name);
  if (!frame) return { extent: 'none' };
  const { cues, facts, removed, corrects, owner } = heard;
  const isOwn = frame.from === personKey(message.from);
  const isTold = Object.keys(facts).length > 0;
  const isSlip = corrects !== undefined || removed.length > 0;
  const isTurn = message.onto !== undefined || isSlip || weakTurns.some(cue => cues.has(cue));
  if (isSetup(facts)) {
    const isPlainTurn = isOwn && (isSlip || turns.some(cue => cues.has(cue))) && owner === undefined;
    if (isPlainTurn && isPair(frame.intent, intent.name)) return { frame, extent: 'all' };
    return isOwn && owner === undefined ? { frame, extent: 'circumstances' } : { extent: 'none' };
  }
  // "And mine?", "Kim's rig": the same question of other gear.
  if (owner !== undefined) return { frame, extent: 'circumstances' };
  if (intent.name === 'settle') return { frame, extent: 'all' };
  const isSame = isPair(frame.intent, intent.name);
  // What somebody else was asked for is answered by a figure, not by another whole question.
  const isAnother = frame.asked === undefined || hasUse(factsOf(facts));
  if (isTold && !isTurn && isWhole(intent, facts) && !isOwn && isAnother) return { extent: 'none' };
  // What only got a question back is all still meant.
  if (isSame || (frame.asked !== undefined && isOwn)) return { frame, extent: 'all' };
  // "What size would we need instead": for as long as before.
  const isInstead =
    !isTold && intentNamed(intent.name).takes.includes('durationH') && cues.has('ask-what-size');
  return { frame, extent: isInstead ? 'all' : 'gear' };
}

/** What one asks for anew each time: a span, a goal, a reading. */
const goals: ReadonlySet<string> = new Set([
  'durationH',
  'until',
  'days',
  'targetChargePercent',
  'chargeNeededAh',
  'volts',
  'voltsTaken',
]);
const circumstances: ReadonlySet<string> = new Set([
  'place',
  'latitudeDeg',
  'longitudeDeg',
  'month',
  'sky',
  'skyLastDays',
  'ambientC',
  'altitudeM',
]);
/** With other gear the same question: how long, to where, when. */
const asked: ReadonlySet<string> = new Set([
  ...goals,
  ...circumstances,
  'drivingHoursPerDay',
  'drivingPlanH',
  'without',
]);

const only = (facts: Stated, holds: (key: string) => boolean): Stated =>
  Object.fromEntries(Object.entries(facts).filter(([key]) => holds(key))) as Stated;

/** The facts of the question leant on that go into this one. */
export function lentBy({ frame, extent }: Lean, owner: string | undefined): Stated | undefined {
  if (!frame || extent === 'none') return undefined;
  if (extent === 'all') return frame.facts;
  if (extent === 'gear') return only(frame.facts, key => !goals.has(key));
  return only(frame.facts, key => (owner === undefined ? circumstances : asked).has(key));
}
