import { present } from '#basics/present.ts';
import { baseSymbol, type Unit } from '#quantity/units.ts';
import type { Token } from '../lex/lex.ts';
import type { Numeral } from '../lex/numbers.ts';
import type { Mention, Variant } from './mention.ts';
import { doubtfulUnits, unitLexicon } from './units.ts';

/** The tokens of a message as the lexicons see them. */
export interface Phrases {
  readonly length: number;
  wordAt(index: number): string;
}

export const phrasesOf = (tokens: readonly Token[], words: readonly string[]): Phrases => ({
  length: tokens.length,
  wordAt: index => words[index] ?? '',
});

export const currencies: ReadonlySet<string> = new Set(['$', '£', '€', '¥', '₹', '₱']);
export const articles: ReadonlySet<string> = new Set(['a', 'an', 'one', 'another']);
export const spans: ReadonlySet<string> = new Set([
  'hour',
  'hours',
  'hr',
  'min',
  'week',
  'fortnight',
  'weekend',
  'wkend',
  'day',
  'night',
  'month',
  'minute',
  'amp',
  'volt',
  'watt',
  'long weekend',
  'year old',
  'yr old',
  'month old',
  'kilowatt hour',
  'kilowatt',
  'metre',
  'meter',
  'horsepower',
]);
export const rateNouns: ReadonlySet<string> = new Set([
  'day',
  'night',
  'hour',
  'evening',
  'week',
  'arvo',
  'morning',
  'month',
  'charge',
  'time',
  'go',
  'bit',
  'piece',
  'lot',
  'year',
  'minute',
]);

export interface UnitFound {
  readonly unit: Unit;
  readonly spelled: string;
  readonly end: number;
}

/** The unit that stands at a token, where it is meant as one. */
export function unitAt(tokens: readonly Token[], words: Phrases, at: number): UnitFound | undefined {
  const token = tokens[at];
  if (!token) return undefined;
  const found = unitLexicon.find(words, at);
  if (!found) return undefined;
  // "Two AGM 100's" are no feet, nor is "two 'deep cycle' ones".
  if (token.text === "'" && (!token.isGlued || (tokens[at + 1]?.text === 's' && tokens[at + 1]?.isGlued)))
    return undefined;
  const { value: unit, length } = found;
  let spelled = '';
  for (let i = 0; i < length; i++) spelled += (i > 0 ? ' ' : '') + words.wordAt(at + i);
  // "-15 w/ inverter on" is with it, "lithium 100 min 20%" at least.
  if (spelled === 'w' && !token.isGlued && words.wordAt(at + 1) === '/') return undefined;
  if (spelled === 'min' && !token.isGlued && isShare(tokens, at + 1)) return undefined;
  if (length === 1 && doubtfulUnits.has(spelled)) {
    const next = words.wordAt(at + 1);
    if (
      spelled === 'a' &&
      !token.isGlued &&
      (!token.isCapital || rateNouns.has(next)) &&
      (rateNouns.has(next) || (next !== '' && next !== 'fridge'))
    ) {
      // "35 a day"; "fridge 2 a, lights 1 a" are amps.
      // "0.18 A day and night" is a current.
      const isAlways = token.isCapital && words.wordAt(at + 2) === 'and' && next === 'day';
      if (rateNouns.has(next) && !isAlways) return undefined;
    }
    if ((spelled === 'in' || spelled === 'below') && !token.isGlued)
      return spelled === 'below' &&
        /^(?:outside|tonight|zero|[,.?;]|and|here|out|in|this|overnight|celsius|at|when)?$/.test(next)
        ? { unit, spelled, end: at + length }
        : undefined;
    if ((spelled === 'square' || spelled === 'squares') && words.wordAt(at + 1) === 'foot') return undefined;
    if ((spelled === 's' || spelled === 'y' || spelled === 'ours') && !token.isGlued) return undefined;
    // "Two AGM 100s": several of that size.
    if (spelled === 's' && isOfMany(tokens[at - 1]?.value ?? 0)) return undefined;
  }
  // "100 Ah", "5 A h": the longest is found already; "amp" before "hour" too.
  return { unit, spelled, end: at + length };
}

/** Whether a share is told at a token: "20%". */
const isShare = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.kind === 'number' && /^(?:%|percent)$/.test(tokens[at + 1]?.text ?? '');

/** From so many on a glued "s" makes no seconds but a plural, and of the volts of batteries: "two 12s". */
const leastOfMany = 45;
const isOfMany = (value: number): boolean => value >= leastOfMany || value === 12 || value === 24;

export const dims = (
  unit: Unit,
  spelled: string,
): Pick<Mention, 'dimension' | 'otherDimension' | 'spelled'> => ({
  dimension: unit.dimension,
  spelled,
  ...(spelled === 'm' ? { otherDimension: 'time' as const } : {}),
});

export const isNight = (spelled: string): boolean => /^(?:nights?|nites?|sleeps?)$/.test(spelled);

/** Class of an amount: its unit's symbol; nights and other spans keep their own. */
export const classOf = (unit: Unit, spelled: string): string =>
  spelled === 'm'
    ? 'm?'
    : isNight(spelled)
      ? 'night'
      : unit.dimension === 'other'
        ? unit.symbol || 'other'
        : isOneClass.has(unit.dimension) && unit.symbol !== 'mm'
          ? baseSymbol[unit.dimension]
          : unit.symbol;

/** Dimensions whose units are one to the reader: 1.5 kW is said as 1,500 W is. A millimetre is a thickness, a metre a way. */
export const isOneClass: ReadonlySet<string> = new Set([
  'current',
  'charge',
  'power',
  'energy',
  'length',
  'temperature',
]);

export const inBase = (unit: Unit, value: number): number => value * unit.factor + (unit.offset ?? 0);

export function variantsOf(numeral: Numeral, unit: Unit | undefined): Variant[] {
  const base = (value: number) => (unit ? inBase(unit, value) : value);
  const out: Variant[] = numeral.others
    .filter(v => v >= 1000)
    .map(value => ({ why: 'thousands' as const, value: base(value) }));
  if (numeral.product)
    out.push({ why: 'product', value: base(numeral.product.value), count: numeral.product.count });
  return out;
}

export const hasSign = (tokens: readonly Token[], at: number): boolean => {
  const sign = tokens[at - 1];
  if (!sign) return false;
  if (sign.text === '-')
    return (
      !sign.isGlued ||
      tokens[at - 2] === undefined ||
      present(tokens[at - 2]).kind === 'sign' ||
      present(tokens[at - 2]).kind === 'word'
    );
  return sign.text === 'minus' || sign.text === 'negative';
};
