import { decimals } from '#quantity/round.ts';
import type { Assumed } from './answer.ts';
import { english, type Speech } from './speech.ts';
import { assumptionLabels } from './words/en.ts';

/** "50 %" for a share of one, else the number with its unit. */
export function amount(value: number, unit: string, words: Speech = english): string {
  if (unit === '' && value >= 0 && value <= 1) return `${decimals(value * 100, 0)} %`;
  if (unit === '%') return `${decimals(value, 0)} %`;
  if (unit === 'days')
    return `${words.significant(value)} ${words.say('unit-days', 'days', { count: value })}`;
  return unit ? `${words.significant(value)} ${unit}` : words.significant(value);
}

const labelOf = (name: string): string =>
  assumptionLabels[name] ?? name.replace(/([A-Z])/g, ' $1').toLowerCase();

/** One assumption for people: "usable share of the battery 50 % (AGM, common practice)". */
export const printAssumed = (a: Assumed, words: Speech = english): string =>
  `${labelOf(a.name)} ${amount(a.value, a.unit, words)} (${a.why})`;
