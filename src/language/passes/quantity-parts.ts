import { toBase } from '#quantity/quantity.ts';
import { type Quantity, type State, textAt, wordAt } from '../state.ts';
import type { Token } from '../token.ts';
import { perAt } from './rates.ts';
import { unitAt } from './unit-at.ts';
import { day } from './unit-words.ts';

export const isTimesSign = (text: string): boolean => text === 'x' || text === '*';

/** "1h 30m", "6h30", "2 days 3 hours", "an hour and a half". */
export function compound(state: State, made: Quantity, at: number): number {
  // "The long weekend, 3 days": the same said again.
  if (made.unit.dimension !== 'time' || made.unit.factor > 24) return at;
  const next = state.tokens[at];
  if (
    next?.kind === 'word' &&
    next.text === 'and' &&
    wordAt(state, at + 1) === 'a' &&
    wordAt(state, at + 2) === 'half'
  ) {
    made.value += made.unit.factor / 2;
    return at + 3;
  }
  const number = next?.text === 'and' ? state.tokens[at + 1] : next;
  if (number?.kind !== 'number') return at;
  const from = number === next ? at : at + 1;
  if (
    made.unit.symbol === 'h' &&
    number.isGlued &&
    number.text.length === 2 &&
    number.value < 60 &&
    !unitAt(state, from + 1, number)
  ) {
    made.value += number.value / 60;
    return from + 1;
  }
  const read = unitAt(state, from + 1, number, made.unit);
  const isSmaller =
    read?.unit.dimension === 'time' && read.unit.factor < made.unit.factor && made.unit !== day;
  if (!isSmaller || (made.unit.symbol !== 'h' && made.unit.symbol !== 'days') || number.value >= 60)
    return at;
  made.value = toBase(made.value + toBase(read.value, read.unit), { ...made.unit, factor: 1 });
  return read.end;
}

/** "100ah x 2", "3w x4", "6w each 2": how many comes last. */
export function trailingCount(state: State, made: Quantity, at: number): number {
  const isSign = isTimesSign(textAt(state, at));
  const number = state.tokens[isSign ? at + 1 : at];
  if (number?.kind !== 'number' || !Number.isInteger(number.value) || number.value < 1 || number.value > 50)
    return at;
  if (!isSign && (!made.isEach || made.unit.dimension === 'time')) return at;
  const after = isSign ? at + 2 : at + 1;
  if (unitAt(state, after, number) || perAt(state, after)) return at;
  made.count = number.value;
  return after;
}

/** "-10C", "minus 5 degrees". */
export function negative(state: State, made: Quantity, at: number, out: Token[]): void {
  const before = out.at(-1);
  if (!before || made.unit.dimension === 'time') return;
  const isMinus =
    (before.text === '-' && state.tokens[at]!.isGlued && !before.isGlued) ||
    (before.text === 'minus' && made.unit.dimension === 'temperature');
  if (!isMinus) return;
  made.value = toBase(-state.tokens[at]!.value, made.unit);
  before.isKnown = true;
}
