import { toBase } from '#quantity/quantity.ts';
import { type Quantity, type State, textAt, wordAt } from '../state.ts';
import { type Token, token } from '../token.ts';
import { timesWords } from '../words/en/numbers.ts';
import { bareTime } from './bare-times.ts';
import { compound, isTimesSign, negative, trailingCount } from './quantity-parts.ts';
import { perAt, rate } from './rates.ts';
import { type Reading, unitAt } from './unit-at.ts';
import { timesPerDay } from './unit-words.ts';

/** Joins numbers and units to quantities: "2x100ah", "1.1-1.3 A", "6h30", "40ah a day", "a weekend", "twice a day". */
export function quantities(state: State): void {
  const out: Token[] = [];
  const length = state.tokens.length;
  for (let i = 0; i < length; ) {
    const found = quantityFrom(state, i, out);
    if (found === undefined) {
      out.push(state.tokens[i]!);
      i++;
    } else i = found;
  }
  state.tokens = out;
}

/** Reads a quantity at `at`, pushes its token and returns where to go on; undefined where there is none. */
function quantityFrom(state: State, at: number, out: Token[]): number | undefined {
  const first = state.tokens[at]!;
  if (state.quantities.length >= mostQuantities) return undefined;
  if (first.kind === 'word') return times(state, at, out) ?? time(state, at, out);
  if (first.kind !== 'number') return undefined;
  if (out.at(-1)?.text === '$') return undefined;
  return multiplied(state, at, out) ?? plain(state, at, out, 0);
}

/** No message means more; the rest stays numbers, and later passes stay quick. */
const mostQuantities = 120;

/** "2x100ah", "2 x 3w", "2 100ah", "3 times 100w"; also "5 times a day", "3x daily" and a trailing "x3". */
function multiplied(state: State, at: number, out: Token[]): number | undefined {
  const count = state.tokens[at]!;
  if (!Number.isInteger(count.value) || count.value < 1 || count.value > 100) return undefined;
  const word = textAt(state, at + 1);
  let next = at + 1;
  if (isTimesSign(word) || word === 'times' || word === 'off' || word === 'lots' || word === 'of') {
    const per = perAt(state, at + 2);
    if (per && per.per === 'day' && word !== '*')
      return push(state, out, at, per.end, timesPerDay, count.value, 'day', 0);
    next = at + 2;
    if (wordAt(state, next) === 'of') next++;
  } else if (count.value > 30) return undefined;
  if (state.tokens[next]?.kind !== 'number' || (next === at + 1 && state.tokens[next]!.isGlued))
    return undefined;
  const end = plain(state, next, out, count.value);
  if (end === undefined) return undefined;
  out.at(-1)!.from = count.from;
  return end;
}

/** A number, or a range of two, with its unit. */
function plain(state: State, at: number, out: Token[], count: number): number | undefined {
  const low = state.tokens[at]!;
  let [number, end] = [low, at + 1];
  const joint = textAt(state, at + 1);
  if (joint === '-' || joint === 'to' || joint === 'or' || joint === '~') {
    const high = state.tokens[at + 2];
    if (high?.kind === 'number' && high.value > low.value && unitAt(state, at + 3, high))
      [number, end] = [high, at + 3];
  }
  const isRange = number !== low;
  const read = unitAt(state, end, number);
  if (!read) return isRange ? undefined : shared(state, at, out);
  if (isRange && read.unit.dimension === 'percent') return undefined;
  return push(state, out, at, read.end, read.unit, read.value, '', count, isRange ? low.value : undefined);
}

/** "a 75 and a 100 amp hour agm": the first number has the unit of the second. */
function shared(state: State, at: number, out: Token[]): number | undefined {
  if (wordAt(state, at + 1) !== 'and') return undefined;
  const next = /^(an?|one)$/.test(wordAt(state, at + 2)) ? at + 3 : at + 2;
  const other = state.tokens[next];
  const value = state.tokens[at]!.value;
  if (other?.kind !== 'number' || value < 20) return undefined;
  const read = unitAt(state, next + 1, other);
  if (read?.unit.symbol !== 'Ah') return undefined;
  return push(state, out, at, at + 1, read.unit, value, '', 0);
}

function time(state: State, at: number, out: Token[]): number | undefined {
  const read = bareTime(state, at, out.at(-1));
  if (!read) return undefined;
  const end = push(state, out, at, read.end, read.unit, read.value, '', 0);
  state.quantities.at(-1)!.isWeak = read.isWeak;
  return end;
}

/** "once a day", "twice daily". */
function times(state: State, at: number, out: Token[]): number | undefined {
  const value = timesWords[wordAt(state, at)];
  if (value === undefined) return undefined;
  const per = perAt(state, at + 1);
  return per?.per === 'day' ? push(state, out, at, per.end, timesPerDay, value, 'day', 0) : undefined;
}

function push(
  state: State,
  out: Token[],
  at: number,
  end: number,
  unit: Reading['unit'],
  value: number,
  per: Quantity['per'],
  count: number,
  low?: number,
): number {
  const made: Quantity = {
    at: out.length,
    value: toBase(value, unit),
    unit,
    per,
    count,
    isEach: false,
    isRange: low !== undefined,
    low: low ?? value,
    isWeak: false,
    taken: '',
  };
  let next = end;
  if (unit !== timesPerDay) {
    next = compound(state, made, next);
    next = rate(state, made, next);
  }
  if (/^(each|apiece|ea|every|either)$/.test(wordAt(state, next))) {
    made.isEach = true;
    next++;
    if (made.per === '') next = rate(state, made, next);
  }
  next = trailingCount(state, made, next);
  negative(state, made, at, out);
  const first = state.tokens[at]!;
  const last = state.tokens[next - 1]!;
  const joined = token(
    'quantity',
    '',
    state.text.slice(first.from, last.to),
    state.quantities.length,
    first.from,
    last.to,
    first.isGlued,
  );
  joined.isKnown = true;
  made.at = out.length;
  out.push(joined);
  state.quantities.push(made);
  return next;
}
