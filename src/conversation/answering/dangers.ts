import { factsOf } from '#intents/facts.ts';
import { isFrostLikely, isMildLikely } from '#intents/frost.ts';
import type { Intent } from '#intents/intent.ts';
import { whereFacts } from '#intents/sun.ts';
import { meaningOf } from '#language/hazards/features.ts';
import { hazardsOf, ruledOut, type Told } from '#language/hazards/told.ts';
import { type HazardCode, hazardCodes } from '#rig/hazard-codes.ts';
import type { Stated } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { fill } from '../kept/recall.ts';
import { isAsking } from '../turns/asking.ts';
import { isHotJoint, isHotPlug } from './hot-plug.ts';
import { outOf } from './ruled-out.ts';

/** Questions whose answer is about putting charge in. */
const charging: ReadonlySet<string> = new Set(['charge-time', 'charge-path', 'solar-yield', 'generator']);
/** What is looked up of the gear and the weather known, whatever the question takes. */
const circumstances = [
  'batteries',
  'arrangement',
  'ambientC',
  'systemVoltageV',
  'inverter',
  ...whereFacts,
] as const;
/** Sources of charge count only where this message is about them: a panel on the roof is no charging in the frost. */
const sources = ['solar', 'chargers', 'drivingHoursPerDay', 'days', 'targetChargePercent'] as const;
/** Talk that is of no gear: what is remembered shows no danger in it. */
const isIdle = ({ takes }: Intent, told: Stated): boolean =>
  takes.length === 0 && Object.keys(told).length === 0;

/** Lithium where the month told brings frost, with no temperature told. */
const isCold = (known: Stated): boolean =>
  known.ambientC === undefined &&
  known.batteries?.some(battery => battery.chemistry === 'lfp') === true &&
  isFrostLikely(factsOf(known));

/**
 * The dangers of the question that a message turns or asks to see again: they are still there, unless what is told
 * now takes them away.
 * @param facts all that the question goes by now
 */
export function stillThere(
  { hazards = [] }: { readonly hazards?: readonly HazardCode[] | undefined },
  { facts: told, removed }: Heard,
  facts: Stated,
): readonly HazardCode[] {
  if (Object.keys(told).length === 0 && removed.length === 0) return hazards;
  const out = ruledOut({ ...facts, removed });
  const isLead = facts.batteries?.every(({ chemistry }) => chemistry !== undefined && chemistry !== 'lfp');
  return hazards.filter(code => !out.includes(code) && !(code === 'cold-charge' && isLead));
}

/** The dangers of two lists, the most urgent first. */
export const withDangers = (
  all: readonly HazardCode[],
  more: readonly HazardCode[],
): readonly HazardCode[] =>
  more.length === 0 ? all : hazardCodes.filter(code => all.includes(code) || more.includes(code));

/** The dangers that the words of a message show and no fact rules out. */
function notRuledOut(heard: Heard, told: Told, concepts: readonly string[]): readonly HazardCode[] {
  const { hazards } = heard;
  if (hazards.length === 0) return hazards;
  const isOnlyTold = !isAsking(heard) && !heard.cues.has('question-mark');
  const out = outOf(told, new Set(concepts), isOnlyTold);
  return hazards.filter(code => !out.includes(code));
}

/**
 * The dangers of a message, the most urgent first: those that its words show and no fact rules out, and those that
 * its facts show together with what is remembered.
 * @param told the facts that the question goes by before memory fills in
 * @param memory what is remembered, nearest first
 */
export function dangersIn(
  text: string,
  heard: Heard,
  intent: Intent,
  told: Stated,
  memory: readonly (Stated | undefined)[],
): readonly HazardCode[] {
  const { hazards: ofWords, removed } = heard;
  const meaning = meaningOf(text);
  const concepts = meaning.map(({ concept }) => concept);
  // A lesson, and a cable told with its current, are of nothing that is remembered to run.
  const isOfItself = told.loads || told.cable?.currentA !== undefined || intent.name === 'learn';
  const spoken = isOfItself ? told : fill(told, intent.takes, memory).facts;
  const known = isIdle(intent, told) ? told : fill(told, circumstances, memory).facts;
  const all: Told = {
    ...known,
    ...(spoken.loads && { loads: spoken.loads }),
    ...Object.fromEntries(sources.map(key => [key, told[key]])),
    removed,
    frost: concepts.includes('frost') || isCold(known),
    // Of use only against what words show: the climate is not asked for every message.
    isMild: ofWords.includes('cold-charge') && isMildLikely(factsOf(known)),
    asksCharge: charging.has(intent.name) || ofWords.includes('cold-charge'),
  };
  const found = new Set([...notRuledOut(heard, all, concepts), ...hazardsOf(all)]);
  if (isHotJoint(meaning)) found.add('over-current');
  // A plug or lead that gets hot in use is unplugged; nobody has to run from it.
  if (found.has('battery-fire') && isHotPlug(meaning)) {
    found.delete('battery-fire');
    found.add('over-current');
  }
  return hazardCodes.filter(code => found.has(code));
}
