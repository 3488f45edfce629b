import { hasDraw, isSameName } from '#rig/merge.ts';
import type { Stated, StatedLoad } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { ownFrame } from '../kept/recall.ts';
import type { Frame, Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { leastSure } from '../unsure/sureness.ts';
import { factsIn, readingsOf } from '../unsure/two-readings.ts';
import { asTurn } from './as-turn.ts';
import { opensAsking } from './asking.ts';
import { isPair } from './lean.ts';

// "Say it's running 60 % of the time", "it's the 2 kW one, 10 hours": the thing just asked about, told closer.

/** Questions of what something takes or how long it lasts. */
const ofUse: ReadonlySet<string> = new Set([
  'energy-budget',
  'run-time',
  'trip',
  'battery-size',
  'solar-size',
  'starter-reserve',
]);
/** What such a line is read as besides. */
const besides: ReadonlySet<string> = new Set([
  'rig',
  'none',
  'unclear',
  'settle',
  'battery-size',
  'run-time',
  'energy-budget',
]);
const mostWords = 18;
/** Less likely than this a reading is none of it. */
const leastLikely = 0.1;
/** What is told of the thing; gear beside it is told to be kept. */
const closer: ReadonlySet<string> = new Set(['loads', 'durationH', 'ambientC']);

/** The load of a question that one told is; "load" is the only one there is. */
function sameIn(before: readonly StatedLoad[], { name }: StatedLoad): StatedLoad | undefined {
  const [only] = before;
  if (name === 'load' && only && before.length === 1) return only;
  return before.find(one => isSameName(one.name, name));
}

/** A figure of the thing itself, or its share of the time. */
const isSized = (load: StatedLoad): boolean =>
  hasDraw(load) || (load.dutyPercent ?? load.hoursPerDay ?? load.minutesPerDay) !== undefined;

/** What some facts tell closer of things that a question was of; undefined where they tell anything else. */
function closerOf({ facts: before, intent }: Frame, told: Stated): Stated | undefined {
  const loads = told.loads ?? [];
  const known = before.loads ?? [];
  if (Object.keys(told).some(key => !closer.has(key)) || loads.length === 0) return undefined;
  const named = loads.map(load => {
    const same = sameIn(known, load);
    return same && isSized(load) ? { ...load, name: same.name } : undefined;
  });
  if (named.some(load => load === undefined)) return undefined;
  const { durationH, ...rest } = told;
  const [one, other] = named as StatedLoad[];
  // "10 hours" of a day's use are hours of each day.
  const isHabit = durationH !== undefined && durationH < 24 && intent === 'energy-budget';
  if (!isHabit || !one || other || one.hoursPerDay !== undefined)
    return { ...told, loads: named as StatedLoad[] };
  return { ...rest, loads: [{ ...one, hoursPerDay: durationH }] };
}

/** A line that tells more of the thing that its writer has just asked about, as a turn of that question. */
export function toldCloser(memory: Memory, message: Message, heard: Heard): Heard {
  const own = ownFrame(memory.frames, message.from);
  if (!own || own !== memory.frames.at(-1) || !ofUse.has(own.intent)) return heard;
  const isElse =
    (!besides.has(heard.intent) && heard.certainty >= leastSure) ||
    heard.corrects ||
    heard.removed.length > 0;
  if (isElse || heard.words > mostWords || heard.cues.has('save') || heard.issues.length > 0) return heard;
  const isAsking =
    heard.cues.has('question-mark') ||
    opensAsking(heard) ||
    [...heard.cues].some(cue => cue.startsWith('ask-') && cue !== 'ask-total');
  if (isAsking) return heard;
  const reading = readingsOf(heard).find(
    ({ intent, probability, stated }) =>
      probability >= leastLikely &&
      (isPair(intent, own.intent) || intent === 'rig') &&
      closerOf(own, factsIn(stated, heard)) !== undefined,
  );
  const facts = reading && closerOf(own, factsIn(reading.stated, heard));
  if (!facts) return heard;
  return asTurn(heard, { intent: own.intent, facts });
}
