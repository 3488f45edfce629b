import { present } from '#basics/present.ts';
import type { Facts } from '#rig/rig.ts';
import { answerAside, withAsides } from '../asides.ts';
import { contestOfPair } from '../contests.ts';
import { defineIntent } from '../define-intent.ts';
import type { RequestContext } from '../intent.ts';
import { type Need, needLoads } from '../needs.ts';
import { sunFacts } from '../sun.ts';
import { hasUse } from '../use.ts';
import { replyOf } from '../weighed.ts';
import { answerComparison, names } from './answer.ts';
import { compareAsides } from './asides-table.ts';
import { computeComparison } from './compute.ts';
import { namedAsides } from './names-table.ts';
import { pairIn, pairNamed } from './pairs/pairs-table.ts';
import { pairingOf } from './sides.ts';

/** What is told of a pair where no day's use is known. */
const inGeneral: Readonly<Record<string, string>> = {
  'panel-generator': 'generator-or-solar',
  grow: 'battery-or-solar',
  'battery-panel': 'battery-or-solar',
};

/** A day's use, or two sides that are told with their sizes. */
const needUse: Need = {
  ...needLoads,
  anyOf: [...needLoads.anyOf, 'batteries', 'solar', 'chargers'],
  holds: facts => hasUse(facts) || pairingOf(facts, false, names) !== undefined,
};

/** What is held against each other: a pair that is known by its name, and two things that are told. */
function weighedIn(facts: Facts, { recalled, subject }: RequestContext) {
  // What this message tells is held against each other; what is remembered only fills in the rest.
  const told = Object.fromEntries(
    Object.entries(facts).filter(([key]) => !recalled.has(key as keyof Facts)),
  ) as Facts;
  const pair = pairNamed(subject);
  return {
    told,
    own: pairingOf(told, hasUse(facts), names),
    pair: pair && (!pair.isOfUse || hasUse(facts)) ? pair : undefined,
  };
}

/** Two things told by name alone are weighed by what sets them apart, where that is known. */
function isWeighed(facts: Facts, setting: RequestContext): boolean {
  const { own, pair } = weighedIn(facts, setting);
  const isByName = own?.measure === 'dailyUse' && !facts.loads?.some(load => load.currentA ?? load.powerW);
  return pair !== undefined || (own !== undefined && !isByName);
}

const ofTwo = defineIntent({
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
      key: 'need-sides',
      holds: facts => pairingOf(facts, hasUse(facts), names) !== undefined,
    },
  ],
  subjectIn: pairIn,
  contest: contestOfPair,
  needsOn: subject => (pairNamed(subject)?.isOfUse ? [needUse] : []),
  // A pair that hangs on a day's use is told in general without one.
  guess: (_told, { subject = '' }) => {
    const general = compareAsides.find(({ name }) => name === inGeneral[subject]);
    return general && answerAside(general, {});
  },
  reply: (facts, setting) => {
    const { told, own, pair } = weighedIn(facts, setting);
    if (pair && (!own || pair.isFirst(told, facts)))
      return replyOf(facts, pair.weigh({ facts, at: setting.at, mainsV: setting.mainsV }));
    const pairing = own
      ? { ...own, sides: own.sides.map(side => ({ ...side, facts: { ...facts, ...side.facts } })) }
      : present(pairingOf(facts, hasUse(facts), names));
    return answerComparison(facts, computeComparison(pairing, setting));
  },
});

/**
 * This or that: two batteries, panels, chargers or loads, or two ways to the same end; and ways that no figure of theirs
 * decides.
 */
export const compare = withAsides(ofTwo, [...namedAsides, ...compareAsides], (_, facts, setting) =>
  isWeighed(facts, setting),
);
