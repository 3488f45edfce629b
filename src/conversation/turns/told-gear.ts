import type { IntentName } from '#answer/answer.ts';
import { gearIn, hasGear } from '#rig/gear.ts';
import { hasDraw, isSameName } from '#rig/merge.ts';
import type { Stated } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { ownFrame, ownKey } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { leastSure } from '../unsure/sureness.ts';
import { factsIn, readingsOf } from '../unsure/two-readings.ts';
import { isOwning, opensAsking } from './asking.ts';
import { asksItself, isPutAsQuestion, standsAlone } from './lean.ts';
import { idle, isToldCloser } from './retake.ts';

// What a line tells of gear without asking anything: that is kept.

/** As likely as this, a message that asks nothing tells of gear. */
const leastTold = 0.4;

/** An unsure message taken for one question, where that is likely enough. */
function unsureOf(heard: Heard, name: IntentName): Heard | undefined {
  if (heard.certainty >= leastSure) return undefined;
  const reading = readingsOf(heard).find(
    ({ intent, probability }) => intent === name && probability >= leastTold,
  );
  return reading && { ...heard, intent: name, facts: factsIn(reading.stated, heard) };
}

/** As likely as this, what somebody says they have is told to be kept. */
const leastOwned = 0.1;

/** Whether gear is told with its size: "it's on an MPPT" says more of what was spoken of. */
const isSized = ({ batteries, solar, loads, dailyUseAh, dailyUseWh, inverter, chargers }: Stated): boolean =>
  [dailyUseAh, dailyUseWh, inverter?.powerW].some(one => one !== undefined) ||
  !!batteries?.some(({ capacityAh, energyWh }) => (capacityAh ?? energyWh) !== undefined) ||
  !!solar?.some(({ powerW }) => powerW !== undefined) ||
  !!chargers?.some(({ currentA, powerW }) => (currentA ?? powerW) !== undefined) ||
  !!loads?.some(hasDraw);

/** Whether a message only says what is its writer's, all of it gear: that is kept, whatever could be worked out of it. */
function isOwned(heard: Heard): boolean {
  const keys = Object.keys(heard.facts);
  const isGear = keys.length > 0 && Object.keys(gearIn(heard.facts)).length === keys.length;
  if (!isGear || !isSized(heard.facts) || !isOwning(heard) || !standsAlone(heard)) return false;
  const rig = readingsOf(heard).find(({ intent }) => intent === 'rig');
  return (rig?.probability ?? 0) >= leastOwned;
}

/** Words that open what somebody says they have. */
const havingFirst: ReadonlySet<string> = new Set(
  'my mine our ours ive weve got forgot running carrying'.split(' '),
);

/** "A day" is as much of what is told as of what is asked. */
const asksElse = ({ cues }: Heard): boolean =>
  cues.has('question-mark') || [...cues].some(cue => cue.startsWith('ask-') && cue !== 'ask-total');

/** "My inverter is 1000 W", "forgot my fan": gear told by who has asked nothing is told to be kept. */
function toldOfOwn(memory: Memory, message: Message, heard: Heard): Heard | undefined {
  const [first = '', next] = heard.recognised.words.filter(word => !idle.has(word));
  const isHaving =
    havingFirst.has(first) || (['i', 'we'].includes(first) && ['have', 'got', 'use'].includes(next ?? ''));
  const { owner, removed } = heard;
  const isOfOther =
    (owner !== undefined && owner !== 'me' && owner !== 'us') ||
    heard.recognised.mentions.some(({ kind, from }) => kind === 'person' && from <= 1);
  // "Same fridge here"; "same but AGM" asks once more what was asked.
  const isSame =
    first === 'same' &&
    !heard.recognised.words.includes('but') &&
    heard.possessions?.some(one => one.isSame) === true;
  if (!(isHaving || isSame) || isOfOther || removed.length > 0 || message.onto || asksElse(heard))
    return undefined;
  if (opensAsking(heard) || ownFrame(memory.frames, message.from) || heard.claims.length > 0)
    return undefined;
  const rig = readingsOf(heard).find(({ intent }) => intent === 'rig');
  const facts = rig ? factsIn(rig.stated, heard) : heard.facts;
  const isGear = Object.keys(facts).every(key => key in gearIn(facts));
  if (!isGear || !(isSame || isSized(facts))) return undefined;
  return { ...heard, intent: 'rig', facts, corrects: undefined, options: [], certainty: leastSure };
}

const takingOut: ReadonlySet<string> = new Set('undo remove delete scrap sold lost drop ditch'.split(' '));

/** "Undo the fan", "sold the kettle": out of one's own rig, of which nothing was asked. */
function takenOut(memory: Memory, { from, kind, onto }: Message, heard: Heard): Heard | undefined {
  const [first = ''] = heard.recognised.words.filter(word => !idle.has(word));
  const loads = memory.rigs[ownKey(from, kind)]?.loads ?? [];
  const isThere = heard.removed.some(name => loads.some(load => isSameName(load.name, name)));
  if (!takingOut.has(first) || !isThere || onto || ownFrame(memory.frames, from) || isPutAsQuestion(heard))
    return undefined;
  return { ...heard, intent: 'rig', facts: {}, options: [], certainty: leastSure };
}

/**
 * What an unsure message tells of gear, where it asks nothing: noting it can be taken back, and asking whether it was
 * a question would only be in the way.
 */
export function toldGear(memory: Memory, message: Message, heard: Heard): Heard | undefined {
  const isKept = heard.cues.has('save') && hasGear(gearIn(heard.facts)) && !isPutAsQuestion(heard);
  if (isKept && heard.intent !== 'rig') return { ...heard, intent: 'rig', options: [] };
  if (isOwned(heard))
    return { ...heard, intent: 'rig', options: [], certainty: Math.max(heard.certainty, leastSure) };
  const own = toldOfOwn(memory, message, heard) ?? takenOut(memory, message, heard);
  if (own) return own;
  const before = ownFrame(memory.frames, message.from);
  if (before && before === memory.frames.at(-1) && isToldCloser(heard.facts, before.facts)) return undefined;
  const isAskedLast = isPutAsQuestion(heard) && (asksItself(heard) || heard.recognised.words.at(-1) === '?');
  const rig = isAskedLast ? undefined : unsureOf(heard, 'rig');
  return rig && hasGear(gearIn(rig.facts)) ? rig : undefined;
}

/** An amount and the unit that it is wanted in ("60 W in amps") are a question of their own, whatever was asked before. */
export function toldUnits(heard: Heard): Heard | undefined {
  return heard.conversion === undefined ? undefined : unsureOf(heard, 'convert');
}
