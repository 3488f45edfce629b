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

/** What a thing or a place is called in a language: "Kühlschrank"; as it came where there is no name for it. */
export const nameOf = (name: string, words: Speech, kind: 'thing' | 'place' = 'thing'): string =>
  words === english ? name : (words.find(`${kind}-${slug(name)}`) ?? name);

/** Endings of assumptions about one load: "fridge running time". */
const ofLoad = /^(.+?)\d? (running time|power|input factor|hours a day)$/;

function labelOf(name: string, words: Speech): string {
  const [, thing, what] = ofLoad.exec(name) ?? [];
  const foreign =
    thing && what
      ? words.find(`label-of-${what.replaceAll(' ', '-')}`, { thing: nameOf(thing, words) })
      : words.find(`label-${name}`);
  return foreign ?? assumptionLabels[name] ?? name.replace(/([A-Z])/g, ' $1').toLowerCase();
}

const kinds = /\b(AGM|gel|flooded|lithium|LFP|lead-acid)\b/;
const climate = /^average \w+ by climate tables/;

/** Why it was assumed; undefined where the language has no words for it. The engine gives its reasons in English. */
function whyOf(why: string, words: Speech): string | undefined {
  if (words === english) return why;
  if (climate.test(why)) return words.find('why-climate-tables');
  const [, thing] = /^typical (.+)$/.exec(why) ?? [];
  const exact = words.find(`why-${slug(why)}`);
  if (exact !== undefined) return exact;
  if (thing) return words.find('why-typical', { thing: nameOf(thing, words) });
  const [kind] = kinds.exec(why) ?? [];
  if (!kind) return undefined;
  const name = words.find(`kind-${slug(kind)}`) ?? kind;
  return words.find(`why-${slug(why.replace(kind, 'x'))}`, { kind: name });
}

const slug = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll(/['’]/g, '')
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '');

/** One assumption for people: "usable share of the battery 50 % (AGM, common practice)". */
export function printAssumed(a: Assumed, words: Speech = english): string {
  const why = whyOf(a.why, words);
  return `${labelOf(a.name, words)} ${amount(a.value, a.unit, words)}${why === undefined ? '' : ` (${why})`}`;
}
