import { present } from '#basics/present.ts';
import type { Token } from '../lex/lex.ts';
import { numeralAt } from '../lex/numbers.ts';
import type { Mention } from './mention.ts';
import {
  articles,
  classOf,
  currencies,
  dims,
  hasSign,
  inBase,
  type Phrases,
  rateNouns,
  spans,
  unitAt,
  variantsOf,
} from './unit-at.ts';
import { doubtfulUnits, unitLexicon } from './units.ts';

/** Units that are told by themselves before "and a half". */
const halved: ReadonlySet<string> = new Set([
  'hour',
  'day',
  'week',
  'night',
  'month',
  'year',
  'metre',
  'meter',
]);

/** The end of an "and a half" that starts at a token. */
const halfEnd = (words: Phrases, at: number): number | undefined =>
  words.wordAt(at) === 'and' && words.wordAt(at + 1) === 'a' && words.wordAt(at + 2) === 'half'
    ? at + 3
    : undefined;

/** Words that say of a stretch of time that nothing is missing. */
const wholes: ReadonlySet<string> = new Set(['full', 'solid', 'straight', 'clear']);

/** An amount or a number that starts at a token, or undefined. */
export function amountAt(tokens: readonly Token[], words: Phrases, at: number): Mention | undefined {
  const token = present(tokens[at]);
  // "AWG 8", "B&S 6".
  if (
    token.kind === 'word' &&
    (token.text === 'awg' || token.text === 'gauge') &&
    tokens[at + 1]?.kind === 'number'
  ) {
    const numeral = numeralAt(tokens, at + 1)!;
    const gauge = gaugeOf(tokens, at + 1) ?? { value: numeral.value, end: numeral.end };
    if (
      // "Tank gauge .1 A" draws.
      Number.isInteger(gauge.value) &&
      (tokens[gauge.end]?.kind !== 'word' ||
        !unitLexicon.find(words, gauge.end) ||
        words.wordAt(gauge.end) === 'a')
    )
      return make(token, at, gauge.end, {
        value: gauge.value,
        told: gauge.value,
        unit: 'AWG',
        cls: 'AWG',
        dimension: 'gauge',
      });
  }
  const gauge = gaugeOf(tokens, at);
  if (gauge) {
    const unit = unitAt(tokens, words, gauge.end);
    if (!unit)
      return make(token, at, gauge.end, {
        value: gauge.value,
        told: gauge.value,
        unit: 'AWG',
        cls: 'AWG',
        dimension: 'gauge',
      });
    if (unit?.unit.dimension === 'gauge')
      return make(token, at, unit.end, {
        value: gauge.value,
        told: gauge.value,
        unit: 'AWG',
        cls: 'AWG',
        dimension: 'gauge',
      });
  }
  const numeral = numeralAt(tokens, at);
  if (!numeral) {
    // "A week", "an hour".
    if (token.kind === 'word' && articles.has(token.text)) {
      const unit = unitAt(tokens, words, at + 1);
      const half =
        unit &&
        (words.wordAt(unit.end) === 'and' || words.wordAt(unit.end) === 'n') &&
        (words.wordAt(unit.end + 1) === 'a' || words.wordAt(unit.end + 1) === 'half')
          ? words.wordAt(unit.end + (words.wordAt(unit.end + 1) === 'a' ? 2 : 1))
          : '';
      const part = half === 'half' ? 0.5 : half === 'quarter' ? 0.25 : 0;
      if (unit && part > 0 && spans.has(unit.spelled)) {
        const end = unit.end + (words.wordAt(unit.end + 1) === 'a' ? 3 : 2);
        return make(token, at, end, {
          value: inBase(unit.unit, 1 + part),
          told: 1 + part,
          unit: unit.unit.symbol,
          cls: classOf(unit.unit, unit.spelled),
          ...dims(unit.unit, unit.spelled),
        });
      }
      // "A full week", "one solid day".
      const long = wholes.has(words.wordAt(at + 1)) ? unitAt(tokens, words, at + 2) : undefined;
      if (long?.unit.dimension === 'time' && spans.has(long.spelled))
        return make(token, at, long.end, {
          value: inBase(long.unit, 1),
          told: 1,
          unit: long.unit.symbol,
          cls: `1${classOf(long.unit, long.spelled)}`,
          ...dims(long.unit, long.spelled),
        });
      if (unit && spans.has(unit.spelled) && !present(tokens[at + 1]).isGlued)
        return make(token, at, unit.end, {
          value: inBase(unit.unit, 1),
          told: 1,
          unit: unit.unit.symbol,
          cls: `1${classOf(unit.unit, unit.spelled)}`,
          ...dims(unit.unit, unit.spelled),
        });
    }
    if (
      token.kind === 'word' &&
      (token.text === 'the' ||
        token.text === 'this' ||
        token.text === 'all' ||
        token.text === 'whole' ||
        token.text === 'next')
    ) {
      const at2 =
        words.wordAt(at + 1) === 'whole' ||
        words.wordAt(at + 1) === 'full' ||
        words.wordAt(at + 1) === 'entire'
          ? at + 2
          : at + 1;
      if (words.wordAt(at2) === 'week')
        return make(token, at, at2 + 1, {
          value: 168,
          told: 1,
          unit: 'weeks',
          cls: '1week',
          dimension: 'time',
        });
    }
    if (token.kind === 'word') {
      const unit = unitAt(tokens, words, at);
      // "Day and a half?", "hour and a half a day".
      if (unit && halved.has(unit.spelled) && halfEnd(words, unit.end) !== undefined)
        return make(token, at, halfEnd(words, unit.end)!, {
          value: inBase(unit.unit, 1.5),
          told: 1.5,
          unit: unit.unit.symbol,
          cls: classOf(unit.unit, unit.spelled),
          ...dims(unit.unit, unit.spelled),
        });
      if (unit && /^week$|weekend|wkend|fortnight|bank holiday/.test(unit.spelled))
        return make(token, at, unit.end, {
          value: inBase(unit.unit, 1),
          told: 1,
          unit: unit.unit.symbol,
          cls: unit.spelled === 'week' ? '1week' : '1weekend',
          ...dims(unit.unit, unit.spelled),
        });
    }
    return undefined;
  }
  let unitFrom = numeral.end;
  // "half a kilowatt hour", "100 or so amp hours", "5 full days", "2 whole hours".
  if (
    (words.wordAt(unitFrom) === 'of' ||
      words.wordAt(unitFrom) === 'full' ||
      words.wordAt(unitFrom) === 'whole' ||
      words.wordAt(unitFrom) === 'more' ||
      words.wordAt(unitFrom) === 'extra' ||
      words.wordAt(unitFrom) === 'good' ||
      words.wordAt(unitFrom) === 'solid' ||
      words.wordAt(unitFrom) === 'straight' ||
      words.wordAt(unitFrom) === 'odd') &&
    unitAt(tokens, words, unitFrom + 1)
  ) {
    const ahead = unitAt(tokens, words, unitFrom + 1)!;
    if (ahead.unit.dimension === 'time' && !doubtfulUnits.has(ahead.spelled)) unitFrom++;
  }
  if (
    (words.wordAt(unitFrom) === 'a' || (words.wordAt(unitFrom) === 'the' && numeral.value === 0.5)) &&
    (numeral.value === 0.5 || numeral.value === 0.25 || numeral.value === 0.75) &&
    unitAt(tokens, words, unitFrom + 1) &&
    (words.wordAt(unitFrom) === 'the' || !rateNouns.has(words.wordAt(unitFrom + 1)))
  )
    unitFrom++;
  const isMoney =
    currencies.has(tokens[at - 1]?.text ?? '') || currencies.has(tokens[numeral.end]?.text ?? '');
  const unit = isMoney ? undefined : unitAt(tokens, words, unitFrom);
  const isNegative = hasSign(tokens, at);
  const signed = isNegative ? -1 : 1;
  if (!unit)
    return make(token, at, numeral.end, {
      kind: isMoney ? 'amount' : 'number',
      value: numeral.value,
      told: numeral.value,
      // What is told with a minus and no unit is read off a screen: amps out, or degrees.
      cls: isMoney ? 'money' : isNegative ? 'num:minus' : 'num',
      ...(isMoney ? { dimension: 'other' as const, unit: 'money' } : {}),
      isNegative,
      variants: variantsOf(numeral, undefined),
    });
  const isBelow = unit.spelled.includes('below');
  const after =
    words.wordAt(unit.end) === 'and' &&
    words.wordAt(unit.end + 1) === 'a' &&
    words.wordAt(unit.end + 2) === 'half' &&
    unit.unit.dimension === 'time' &&
    Number.isInteger(numeral.value);
  if (after) {
    const value = numeral.value + 0.5;
    return make(token, at, unit.end + 3, {
      value: inBase(unit.unit, value),
      told: value,
      unit: unit.unit.symbol,
      cls: classOf(unit.unit, unit.spelled),
      ...dims(unit.unit, unit.spelled),
    });
  }
  return make(token, at, unit.end, {
    value: inBase(
      unit.unit,
      numeral.value * (unit.unit.dimension === 'temperature' ? (isBelow ? -1 : signed) : 1),
    ),
    told: numeral.value,
    unit: unit.unit.symbol,
    cls: classOf(unit.unit, unit.spelled),
    ...dims(unit.unit, unit.spelled),
    isNegative,
    variants: variantsOf(numeral, unit.unit),
  });
}

/** "2/0", "00": gauges past zero; 2/0 is −1 as the rig keeps it. */
function gaugeOf(
  tokens: readonly Token[],
  at: number,
): { readonly value: number; readonly end: number } | undefined {
  const [a, b, c] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  if (a?.kind !== 'number') return undefined;
  if (b?.text === '/' && c?.kind === 'number' && c.value === 0 && a.value >= 1 && a.value <= 4)
    return { value: 1 - a.value, end: at + 3 };
  if (/^0{2,4}$/.test(a.text)) return { value: 1 - a.text.length, end: at + 1 };
  return undefined;
}

function make(token: Token, from: number, to: number, more: Partial<Mention>): Mention {
  return {
    kind: 'amount',
    key: more.unit ?? '',
    cls: '',
    text: token.text,
    from,
    to,
    value: 0,
    told: 0,
    variants: [],
    ...more,
  };
}
