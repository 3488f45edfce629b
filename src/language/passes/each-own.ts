import { type Quantity, quantityAt, type State, type Thing, textAt, thing, wordAt } from '../state.ts';
import { list } from '../words/list.ts';
import { add } from './draws.ts';
import { give } from './giving.ts';

const drawVerbs = list(
  'averages average averaging avg draws draw pulls pull uses use takes take about around at is',
);
const others = list('other second');
const mostApart = 4;
/** No load of ordinary size takes more amps; from here on a bare number beside a mains appliance is watts. */
const [mostA, leastAcW] = [30, 100];

const isDraw = (quantity: Quantity | undefined): quantity is Quantity =>
  !!quantity &&
  !quantity.taken &&
  (quantity.unit.dimension === 'current' || quantity.unit.dimension === 'power');

/** Draws told one by one: "2 fridges, one 1.2A the other 0.9A"; and those whose unit goes without saying. */
export function eachOwn(state: State): void {
  for (const one of [...state.things])
    if ((one.kind === 'load' || one.kind === 'solar') && one.count === 2) split(state, one);
  bare(state);
}

/** Two of a kind with a draw each become two loads. */
function split(state: State, one: Thing): void {
  if (quantityAt(state, one.at - 1)) return;
  for (let i = one.end; i < state.tokens.length; i++) {
    // "one 1.2A" may have been read as one times 1.2 A.
    const own = quantityAt(state, i);
    const isOne = /^(one|1)$/.test(textAt(state, i)) || own?.count === 1;
    const first = isOne ? (isDraw(own) ? own : drawSoon(state, i + 1)) : undefined;
    if (!first || (one.kind === 'solar' && first.unit.dimension !== 'power')) continue;
    const next = state.things.find(other => other.kind === one.kind && other.at > first.at);
    const otherAt = state.tokens.findIndex((_, k) => k > first.at && others.has(wordAt(state, k)));
    const second = otherAt < 0 ? undefined : drawSoon(state, otherAt + 1);
    if (!second && !next) return;
    one.count = 1;
    give(one, first);
    if (!second) return;
    const twin = thing(one.kind, otherAt, otherAt + 1, one.name);
    twin.appliance = one.appliance;
    twin.gear = one.gear;
    twin.count = 1;
    give(twin, second);
    add(state, twin);
    return;
  }
}

function drawSoon(state: State, from: number): Quantity | undefined {
  for (let i = from; i < from + mostApart; i++) {
    const quantity = quantityAt(state, i);
    if (isDraw(quantity)) return quantity;
    if (others.has(wordAt(state, i)) || state.things.some(one => one.at === i && one.kind === 'load'))
      return undefined;
  }
  return undefined;
}

/** "the freezer averages 1.9" beside a fridge in amps; "toaster 850 and kettle 1500" on an inverter. */
function bare(state: State): void {
  const isAmps = state.quantities.some(q => q.unit.dimension === 'current' && q.value <= mostA);
  for (const one of state.things) {
    if (one.kind !== 'load' || one.isDropped || one.currentA > 0 || one.powerW > 0) continue;
    let at = one.end;
    while (at < one.end + 2 && drawVerbs.has(wordAt(state, at))) at++;
    const token = state.tokens[at];
    if (token?.kind !== 'number' || token.isClock || token.text === 'count' || token.text === 'date')
      continue;
    if (/^[-/x:*]$/.test(textAt(state, at + 1)) || state.things.some(other => other.at === at + 1)) continue;
    const isMains = one.appliance?.supply === 'ac' && token.value >= leastAcW && state.cues.has('inverter');
    const isLikeOther = isAmps && at > one.end && token.value > 0 && token.value <= mostA;
    if (isMains) one.powerW = token.value;
    else if (isLikeOther) one.currentA = token.value;
    else continue;
    if (/^(av|avg)/.test(wordAt(state, at - 1))) one.isAverage = true;
    token.isKnown = true;
    token.text = 'draw';
  }
}
