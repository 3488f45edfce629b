import { decimals } from '#quantity/round.ts';
import type { Assumed } from './answer.ts';
import { english, type Speech } from './speech.ts';
import { assumptionSays, thingSays } from './words/assumptions.ts';
import { assumptionLabels } from './words/en.ts';

/** "50 %" for a share of one, else the number with its unit. */
export function amount(value: number, unit: string, words: Speech = english): string {
  if (unit === '' && value >= 0 && value <= 1) return `${decimals(value * 100, 0)} %`;
  if (unit === '%') return `${decimals(value, 0)} %`;
  if (unit === 'h' && value < 1) return `${decimals(value * 60, 0)} ${words.say('unit-minutes', 'min')}`;
  if (unit === 'days')
    return `${words.significant(value)} ${words.say('unit-days', 'days', { count: value })}`;
  return unit ? `${words.significant(value)} ${unit}` : words.significant(value);
}

const labelOf = (name: string): string =>
  assumptionLabels[name] ?? name.replace(/([A-Z])/g, ' $1').toLowerCase();

/** One assumption in full, as it stands beside the working: "usable share of the battery 50 % (AGM, common practice)". */
export const printAssumed = (a: Assumed, words: Speech = english): string =>
  `${labelOf(a.name)} ${amount(a.value, a.unit, words)} (${a.why})`;

/** A line of assumptions is no longer than this, so that it takes two lines of a phone. */
const mostChars = 92;
/** How many assumptions an answer names: those that matter most. */
const mostNamed = 2;

/** Without the number behind it by which a second thing of a name is told. */
function unnumbered(name: string): string {
  let end = name.length;
  while (end > 0 && /\d/.test(name.charAt(end - 1))) end--;
  return name.slice(0, end);
}

/** One assumption as people say it: "using 50 % of the battery", "a 40 L fridge". */
function sayAssumed(a: Assumed, words: Speech): string {
  const value = amount(a.value, a.unit, words);
  const row = assumptionSays[a.name];
  if (!row) {
    const [ending, says] = thingSays.find(([end]) => a.name.endsWith(end)) ?? [];
    if (ending === undefined || says === undefined) return `${labelOf(a.name)} ${value}`;
    const thing = unnumbered(a.name.slice(0, -ending.length));
    return words.say(`assumed${ending}`, says, { thing, value });
  }
  const text = typeof row === 'string' ? row : a.value === 1 ? row.whole : row.part;
  return words.say(`assumed-${a.name}`, text, { value });
}

/** Assumptions that say it all by themselves. */
const plain: ReadonlySet<string> = new Set([
  'loadedVoltage',
  'conductorC',
  'timeConstant',
  'fullAt',
  'strandFactor',
  'dropLimit',
  'cableAirC',
  'batteryTemperature',
  'inverterEfficiency',
  'chargerOutput',
]);

/** How the works begin that a reason names. They stand beside the working. */
const works = [', common practice', 'common practice', ', textbook range', ', by IEC', ', ABYC'];

/** Where it is from, short: without the works. */
function reasonOf(why: string): string {
  const [first = ''] = why.split('; ');
  if (first.startsWith('typical ')) return 'typical';
  const ends = works.map(work => first.indexOf(work)).filter(at => at >= 0);
  return first.slice(0, Math.min(first.length, ...ends));
}

/**
 * What was assumed, in one line: the reasons stay as far as they fit, the first ones first. Of those that matter most,
 * what a line of the answer says already is left out; "" where it says them all.
 */
export function shortAssumed(
  assumed: readonly Assumed[],
  words: Speech = english,
  said: readonly string[] = [],
): string {
  const named = assumed.slice(0, mostNamed).filter(({ name }) => !said.includes(name));
  const print = (withReason: number): string =>
    named
      .map((a, i) => {
        const said = sayAssumed(a, words);
        const reason = i < withReason && !plain.has(a.name) ? reasonOf(a.why) : '';
        return reason === '' || said.includes(reason) ? said : `${said} (${reason})`;
      })
      .join('; ');
  for (let withReason = named.length; withReason > 0; withReason--)
    if (print(withReason).length <= mostChars) return print(withReason);
  return print(0);
}
