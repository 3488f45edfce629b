import type { Token } from '../lex/lex.ts';
import { numeralAt } from '../lex/numbers.ts';
import type { Mention } from './mention.ts';

import { type Phrases, unitAt } from './unit-at.ts';

/** A stretch of time told as "ten minutes", "1 min", or as a bare number. */
interface Stretch {
  readonly hours?: number;
  readonly told: number;
  readonly end: number;
}

/** Longer than this (h) nothing that cycles runs or rests: "on 10 hours, off 14" is the time of day. */
const longestH = 6;

function stretchAt(tokens: readonly Token[], words: Phrases, at: number): Stretch | undefined {
  const numeral = numeralAt(tokens, at);
  if (!numeral || numeral.value <= 0) return undefined;
  const unit = unitAt(tokens, words, numeral.end);
  if (!unit) return { told: numeral.value, end: numeral.end };
  if (unit.unit.dimension !== 'time') return undefined;
  return { told: numeral.value, hours: numeral.value * unit.unit.factor, end: unit.end };
}

const outOf: ReadonlySet<string> = new Set([
  'in',
  'of',
  'out',
  'outta',
  'every',
  'each',
  'any',
  'the',
  'per',
  'an',
]);
const hours: ReadonlySet<string> = new Set(['hour', 'hr']);
const rests: ReadonlySet<string> = new Set(
  'stops stop rests rest sleeps sleep off pauses pause idle idles silent quiet stopped resting'.split(' '),
);
const joins: ReadonlySet<string> = new Set([',', 'then', 'and', 'for', '/', 'about', '&', '+', 'on', ';']);

/** Past the words of a set, four at most; whether one of them was there. */
function past(words: Phrases, at: number, some: ReadonlySet<string>): number {
  let end = at;
  while (end < at + 4 && some.has(words.wordAt(end))) end++;
  return end;
}

/** "One minute in four", "ten minutes out of every thirty": the second is of the first one's unit where it has none. */
function shareOf(
  tokens: readonly Token[],
  words: Phrases,
  on: Stretch,
): readonly [number, number] | undefined {
  const from = past(words, on.end, outOf);
  if (from === on.end || on.hours === undefined) return undefined;
  const lead = words.wordAt(on.end);
  // "10 minutes the 2nd day", "5 minutes each 2 h" may be times of use.
  if (lead !== 'in' && lead !== 'out' && lead !== 'outta' && !(lead === 'of' && from > on.end + 1))
    return undefined;
  // "15 minutes in the hour", "12 minutes out of every hour".
  const whole = hours.has(words.wordAt(from))
    ? { told: 1, hours: 1, end: from + 1 }
    : stretchAt(tokens, words, from);
  if (!whole) return undefined;
  const wholeH = whole.hours ?? (whole.told * on.hours) / on.told;
  return wholeH > on.hours && wholeH <= longestH ? [on.hours / wholeH, whole.end] : undefined;
}

/** "Works 20 min, stops 40", "20 min on, 40 off". */
function restOf(
  tokens: readonly Token[],
  words: Phrases,
  on: Stretch,
): readonly [number, number] | undefined {
  if (on.hours === undefined) return undefined;
  const from = past(words, on.end, joins);
  const isLed = rests.has(words.wordAt(from));
  const off = stretchAt(tokens, words, isLed ? past(words, from + 1, joins) : from);
  if (!off) return undefined;
  const isFollowed = rests.has(words.wordAt(off.end));
  if (!isLed && !isFollowed) return undefined;
  const offH = off.hours ?? (off.told * on.hours) / on.told;
  if (on.hours + offH > longestH) return undefined;
  return [on.hours / (on.hours + offH), isLed ? off.end : off.end + 1];
}

/** The share of the time that a thing runs, told by its turns: "one minute in four", "20 min on, 40 off". A per cent. */
export function dutyAt(tokens: readonly Token[], words: Phrases, at: number): Mention | undefined {
  const on = stretchAt(tokens, words, at);
  if (!on) return undefined;
  const found = shareOf(tokens, words, on) ?? restOf(tokens, words, on);
  if (!found) return undefined;
  const [share, end] = found;
  const percent = Math.round(share * 1000) / 10;
  return {
    kind: 'amount',
    key: '%',
    cls: '%duty',
    text: '%',
    from: at,
    to: end,
    value: percent,
    told: percent,
    unit: '%',
    dimension: 'percent',
    variants: [],
  };
}
