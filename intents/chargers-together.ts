import { bankIn } from '#engine/battery/bank.ts';
import { limitsOf } from '#engine/battery/limits.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { decimals, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import type { Aside } from './asides.ts';
import { chemistryName } from './words.ts';

// Several chargers on one battery at once.

/** Chargers of one kind told by their number are this many at most: a bigger figure is something else. */
const mostAlike = 4;

/** "Two 60 A DC-DCs": what they give together, by the number before their amps; undefined: none is told so. */
function alikeA(mentions: readonly Mention[]): number | undefined {
  const at = mentions.findIndex(({ dimension }) => dimension === 'current');
  const [number, amps] = [mentions[at - 1], mentions[at]];
  if (!amps || number?.kind !== 'number' || number.to !== amps.from) return undefined;
  const isCount = Number.isInteger(number.value) && number.value > 1 && number.value <= mostAlike;
  const isOnly = !mentions.slice(at + 1).some(({ dimension }) => dimension === 'current');
  return isCount && isOnly ? number.value * amps.value : undefined;
}

/** What all chargers told give together, and what the battery told should take, A; undefined: no battery of a size. */
export function together(facts: Facts, mentions: readonly Mention[] = []) {
  const bank = bankIn(facts);
  if (!bank) return undefined;
  const eachA = (facts.chargers ?? []).reduce((sum, { currentA = 0 }) => sum + currentA, 0);
  return {
    label: `${significant(bank.capacityAh)} Ah ${chemistryName(bank.chemistry)}`,
    takesA: Math.min(limitsOf(bank).chargeA, bank.maxCurrentA ?? Number.POSITIVE_INFINITY),
    givenA: alikeA(mentions) ?? eachA,
  };
}

const isSized = (facts: Facts): boolean => (together(facts)?.givenA ?? 0) > 0;
const isDriven = ({ chargers = [] }: Facts): boolean => chargers.some(({ kind }) => kind === 'dcdc');

const atOnce = {
  spots: [
    'at_once|same_time|in_the_same_time|all_together|together|in_parallel charge|chargers|both|all|solar|booster|dcdc|dcdcs|dc_dc|dc_dcs -batteries',
    'two|three|couple|pair|both dcdc|dcdcs|dc_dc|dc_dcs|dc_chargers|boosters on_it|on_that|on_there|at_once|together|same_time -batteries -how_long',
  ],
  hasAnyFigures: true,
  says: (facts: Facts, mentions: readonly Mention[]) => {
    const { label = '', takesA = 0, givenA = 0 } = together(facts, mentions) ?? {};
    return givenA > takesA
      ? `No: their ${decimals(givenA, 0)} A is over the ${decimals(takesA, 0)} A that ${label} should take.`
      : `Yes, all at once: their ${decimals(givenA, 0)} A is within the ${decimals(takesA, 0)} A that ${label} takes.`;
  },
} as const;

/** Whether chargers may all be on at once: their sum against what the battery takes. Common practice. */
export const chargersTogether: readonly Aside[] = [
  {
    ...atOnce,
    name: 'dcdcs-together',
    when: facts => isSized(facts) && isDriven(facts),
    lines: [
      'Each keeps to its own volts and eases off near full. Seldom do all give their full amps at once.',
      'The alternator gives all of that and a bit more: keep it to half of its rating, 50 A off 100 A.',
    ],
    cautions: ['alternator-share', 'fuse-at-battery'],
  },
  {
    ...atOnce,
    name: 'chargers-together',
    when: isSized,
    lines: [
      'Each keeps to its own volts and eases off near full. Seldom do all give their full amps at once.',
    ],
    cautions: ['fuse-at-battery'],
  },
];
