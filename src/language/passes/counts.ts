import { quantityAt, type State, type Thing, textAt, wordAt } from '../state.ts';
import { list } from '../words/list.ts';

/** What may stand between a number and what it counts: "two big 100 W panels", "two of the same flooded batteries". */
const fillers = list(`
  of the same identical new old big small little x * my our more other used cheap sealed portable folding
  flat good matching extra spare second hand bright dim usb times lots led usual normal standard those
  these different volt large flexible fixed rigid solid off each deep cycle house x
`);
const countable = new Set<Thing['kind']>(['load', 'battery', 'solar']);
const most = 400;
/** No camp has so many batteries, and few have smaller ones. */
const leastSizeAh = 40;

/** How many there are of a thing: a number before it ("2 lights", "four 12v 100ah lithium") or after ("lamps x3"). */
export function counts(state: State): void {
  ofThem(state);
  for (const [i, one] of state.things.entries()) {
    if (!countable.has(one.kind) || one.count > 0) continue;
    const floor = state.things[i - 1]?.end ?? 0;
    one.count = before(state, one.at, floor) || after(state, one.end);
    if (one.kind === 'battery' && one.chargeAh < 0) sizeBehind(state, one);
    // "three 100 lithiums", "two hundred of lithium": so many are a size.
    if (one.kind === 'battery' && one.count >= leastSizeAh && one.chargeAh < 0) {
      one.chargeAh = one.count;
      one.count = earlier(state, one.at);
    }
  }
}

/** "Trail cameras, 3 of them", "the tablets, four of them": of the thing just before; alone, of the one before in the talk. */
function ofThem(state: State): void {
  for (let i = 0; i < state.tokens.length; i++) {
    const number = state.tokens[i]!;
    if (number.kind !== 'number' || !isCount(number.value)) continue;
    const isOf = wordAt(state, i + 1) === 'of' && /^(them|those|these|em)$/.test(wordAt(state, i + 2));
    const isAt = /^(at|@)$/.test(textAt(state, i + 1)) && quantityAt(state, i + 2)?.isEach === true;
    if (!isOf && !isAt) continue;
    const own = state.things.findLast(one => countable.has(one.kind) && one.end <= i);
    if (own && !own.isDropped && i - own.end <= mostToCount) {
      if (own.count === 0) own.count = take(state, i);
    } else if (isOf && state.things.length === 0) state.countSaid = take(state, i);
  }
}

const mostToCount = 2;

/** No battery that people carry is larger. */
const mostSizeAh = 600;

/** "AGM 110, 1.2A fridge": a size without its unit, where none is told with it. */
function sizeBehind(state: State, one: Thing): void {
  const number = state.tokens[one.end];
  const next = state.tokens[one.end + 1];
  if (number?.kind !== 'number' || number.isClock || !Number.isInteger(number.value)) return;
  if (number.value < leastSizeAh || number.value > mostSizeAh || (next && next.kind !== 'sign')) return;
  if (next && !/^[,.;?!\n]$/.test(next.text)) return;
  if (state.quantities.some(q => q.unit.dimension === 'charge' || q.unit.dimension === 'energy')) return;
  one.chargeAh = number.value;
  number.isKnown = true;
  number.text = 'count';
}

function before(state: State, at: number, floor: number): number {
  let [quantities, words] = [0, 0];
  for (let i = at - 1; i >= floor; i--) {
    const token = state.tokens[i]!;
    // "group 27" is a size of case.
    if (token.kind === 'number' && wordAt(state, i - 1) === 'group') {
      i--;
      continue;
    }
    if (token.kind === 'number')
      return isCount(token.value) && !token.isClock && words < 4 ? take(state, i) : 0;
    if (token.kind === 'quantity') {
      const quantity = quantityAt(state, i)!;
      if (quantity.unit.dimension === 'time' || ++quantities > 2) return 0;
      if (quantity.count) return quantity.count;
    } else if (fillers.has(token.text)) words++;
    else return 0;
  }
  return 0;
}

/** "three 100 lithiums": the number before the size. */
function earlier(state: State, at: number): number {
  for (let i = at - 2; i >= at - 4; i--) {
    const token = state.tokens[i];
    if (
      token?.kind === 'number' &&
      token.text !== 'count' &&
      isCount(token.value) &&
      token.value < leastSizeAh
    )
      return take(state, i);
    if (!token || !fillers.has(token.text)) return 0;
  }
  return 0;
}

/** "lamps x3", "lights (2)". */
function after(state: State, end: number): number {
  const sign = textAt(state, end);
  const number = state.tokens[end + 1];
  if (number?.kind !== 'number' || !isCount(number.value)) return 0;
  if (sign === 'x' || sign === '*' || (sign === '(' && textAt(state, end + 2) === ')'))
    return wordAt(state, end + 2) === 'a' ? 0 : take(state, end + 1);
  return 0;
}

const isCount = (value: number): boolean => Number.isInteger(value) && value >= 1 && value <= most;
const take = (state: State, at: number): number => {
  const token = state.tokens[at]!;
  token.isKnown = true;
  token.text = 'count';
  return token.value;
};
