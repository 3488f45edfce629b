import { present } from '#basics/present.ts';
import type { Facts } from '#rig/rig.ts';
import { contestOfPair } from '../contests.ts';
import { defineIntent } from '../define-intent.ts';
import { type Need, needLoads } from '../needs.ts';
import { sunFacts } from '../sun.ts';
import { hasUse } from '../use.ts';
import { replyOf } from '../weighed.ts';
import { answerComparison, names } from './answer.ts';
import { computeComparison } from './compute.ts';
import { pairIn, pairNamed } from './pairs/pairs-table.ts';
import { pairingOf } from './sides.ts';

/** A day's use, or two sides that are told with their sizes. */
const needUse: Need = {
  ...needLoads,
  anyOf: [...needLoads.anyOf, 'batteries', 'solar', 'chargers'],
  holds: facts => hasUse(facts) || pairingOf(facts, false, names) !== undefined,
};

/** This or that: two batteries, panels, chargers or loads, or two ways to the same end. */
export const compare = defineIntent({
  name: 'compare',
  title: 'Which of the two is better?',
  takes: [
    ...sunFacts,
    'loads',
    'dailyUseAh',
    'dailyUseWh',
    'chargers',
    'alternator',
    'inverter',
    'drivingHoursPerDay',
    'targetChargePercent',
    'chargeNeededAh',
    'depthOfDischargePercent',
    'durationH',
    'without',
  ],
  needs: [
    {
      anyOf: ['batteries', 'solar', 'chargers', 'loads'],
      ask: 'both sides with their sizes (say “100Ah AGM or 60Ah lithium, fridge 1.2A”)',
      holds: facts => pairingOf(facts, hasUse(facts), names) !== undefined,
    },
  ],
  subjectIn: (words, text) => pairIn(words, text),
  contest: contestOfPair,
  needsOn: subject => (pairNamed(subject)?.isOfUse ? [needUse] : []),
  reply: (facts, setting) => {
    // What this message tells is held against each other; what is remembered only fills in the rest.
    const told = Object.fromEntries(
      Object.entries(facts).filter(([key]) => !setting.recalled.has(key as keyof Facts)),
    ) as Facts;
    const own = pairingOf(told, hasUse(facts), names);
    const pair = pairNamed(setting.subject);
    const isWeighable = pair !== undefined && (!pair.isOfUse || hasUse(facts));
    if (isWeighable && (!own || pair.isFirst(told, facts)))
      return replyOf(facts, pair.weigh({ facts, at: setting.at, mainsV: setting.mainsV }));
    const pairing = own
      ? { ...own, sides: own.sides.map(side => ({ ...side, facts: { ...facts, ...side.facts } })) }
      : present(pairingOf(facts, hasUse(facts), names));
    return answerComparison(facts, computeComparison(pairing, setting));
  },
});
