import type { Unit } from '#quantity/units.ts';
import { type State, textAt, wordAt } from '../state.ts';
import type { Token } from '../token.ts';
import { list } from '../words/list.ts';
import { hasCableTalk, letter } from './unit-letters.ts';
import { day, unit, unitLexicon } from './unit-words.ts';

export interface Reading {
  readonly unit: Unit;
  /** In `unit`. */
  readonly value: number;
  readonly end: number;
}

const awg = unit('AWG');
const kilowatt = unit('kW');
const kilometre = unit('km');
/** What may stand between a number and a time: "three full days". */
const fillers = list(`
  full whole solid more straight good or odd extra hot cloudy rainy sunny overcast long cold winter summer
  other wet grey consecutive another different driving dark
`);
const gearWords = list('inverter invertor generator genny pure modified');

/** The unit that follows `number` at token `at`; `after` is the larger unit of a compound ("1h 30m"). */
export function unitAt(state: State, at: number, number: Token, after?: Unit): Reading | undefined {
  let from = at;
  if (textAt(state, from) === '-' && state.tokens[from + 1]?.kind === 'word') from++;
  const gauge = namedGauge(state, at, number);
  if (gauge) return gauge;
  const first = state.tokens[from];
  if (!first || number.isClock) return undefined;
  const found = unitLexicon.find(state, from);
  if (!found) return filled(state, from, number) ?? ofTime(state, from, number);
  const end = from + found.length;
  const single = found.length === 1 ? letter(state, from, number, found.value, after) : found.value;
  if (!single) return undefined;
  if (single === awg && number.value > 40) return undefined;
  if (
    number.raw.length === 5 &&
    number.raw[1] === '.' &&
    (single.symbol === 'W' || single.symbol === 'Wh' || single.symbol === 'mAh')
  )
    return { unit: single, value: number.value * 1000, end }; // "2.000 W" as written on the continent
  if (single.dimension === 'gauge' && number.value === 0 && number.text.length > 1)
    return { unit: single, value: 1 - number.text.length, end };
  return { unit: single, value: number.value, end };
}

/** "8ga", "#8", "awg 8", "2/0 awg", "1/0", "5k" before an inverter. */
function namedGauge(state: State, at: number, number: Token): Reading | undefined {
  const here = state.tokens[at];
  const previous = number.kind === 'number' ? before(state, at - 1) : '';
  if (
    here?.text === '/' &&
    here.isGlued &&
    number.value >= 1 &&
    number.value <= 4 &&
    textAt(state, at + 1) === '0'
  ) {
    const found = unitLexicon.find(state, at + 2);
    const isNamed = found?.value === awg;
    if (isNamed || hasCableTalk(state))
      return { unit: awg, value: 1 - number.value, end: isNamed ? at + 2 + found.length : at + 2 };
  }
  if (
    (previous === 'awg' || previous === 'b&s' || previous === 'gauge' || previous === '#') &&
    number.value <= 40 &&
    !unitLexicon.find(state, at)
  )
    return { unit: awg, value: number.value, end: at };
  if (here?.kind === 'word' && here.text === 'k' && here.isGlued) {
    if (gearWords.has(wordAt(state, at + 1))) return { unit: kilowatt, value: number.value, end: at + 1 };
    return { unit: kilometre, value: number.value, end: at + 1 };
  }
  return undefined;
}

const before = (state: State, at: number): string => textAt(state, at - 1);

/** "three full days", "5 long nights". */
function filled(state: State, at: number, number: Token): Reading | undefined {
  if (!fillers.has(wordAt(state, at))) return undefined;
  let next = at + 1;
  if (fillers.has(wordAt(state, next)) || wordAt(state, next) === 'and') next++;
  const found = unitLexicon.find(state, next);
  const isTime = found?.value.dimension === 'time' || found?.value.dimension === 'sun';
  return isTime && wordAt(state, next).length > 1
    ? { unit: found.value, value: number.value, end: next + found.length }
    : undefined;
}

/** "¾ of a day", "a third of the night": only of parts. */
function ofTime(state: State, at: number, number: Token): Reading | undefined {
  if (!(number.value > 0 && number.value < 1)) return undefined;
  let next = at;
  if (wordAt(state, next) === 'of') next++;
  if (wordAt(state, next) === 'a' || wordAt(state, next) === 'an') next++;
  if (next === at) return undefined;
  const found = unitLexicon.find(state, next);
  return found && found.value !== day && found.value.dimension !== 'time'
    ? undefined
    : found && { unit: found.value, value: number.value, end: next + found.length };
}
