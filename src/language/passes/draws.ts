import { type Quantity, type State, type Thing, textAt, thing, wordAt } from '../state.ts';
import { bySegment, match } from './elements.ts';
import { give, isDraw, isFree } from './giving.ts';

const isQuantity = (one: Quantity | Thing): one is Quantity => 'unit' in one;

/** Which kinds of things have a current, and which a power. */
const kindsWithCurrent = new Set<Thing['kind']>(['load', 'charger', 'fuse', 'other', 'cable']);
const kindsWithPower = new Set<Thing['kind']>(['load', 'solar', 'inverter', 'charger', 'other']);

/** "Pulls 1450 W through the inverter": what goes through it, not what it is rated for. */
const isThrough = (state: State, one: Thing, { at }: Quantity): boolean =>
  at < one.at &&
  /^(pulls|pull|draws|draw|uses|takes|needs|sucks)$/.test(wordAt(state, at - 1)) &&
  [1, 2].some(step => /^(through|thru|via|from|off|on)$/.test(wordAt(state, one.at - step)));

/** "Will the inverter start a 550 W grinder": of the load that comes right behind. */
const isOfNext = (state: State, { at }: Quantity): boolean =>
  /^(a|an|the|my|our)$/.test(wordAt(state, at - 1)) &&
  state.things.some(one => one.kind === 'load' && one.at === at + 1 && isFree(one));

/** May the thing have this current or power? A cable or a fuse only one that stands right beside it. */
function mayTake(state: State, one: Thing, quantity: Quantity): boolean {
  if (!isFree(one)) return false;
  const kinds = quantity.unit.dimension === 'current' ? kindsWithCurrent : kindsWithPower;
  if (!kinds.has(one.kind)) return false;
  if (one.kind === 'charger' && one.gear?.charger === 'isolator') return false;
  if (one.kind === 'solar' && one.gear?.controller && quantity.unit.dimension !== 'power') return false;
  if (one.kind === 'inverter' && (isThrough(state, one, quantity) || isOfNext(state, quantity))) return false;
  if (one.kind === 'load' || one.kind === 'solar' || one.kind === 'charger' || one.kind === 'inverter')
    return true;
  return quantity.at === one.at - 1 || (one.kind === 'fuse' && quantity.at === one.end);
}

/** Gives amps and watts to loads, panels, chargers, inverters; makes loads and panels of those that name none. */
export function draws(state: State): void {
  const groups = bySegment(state, one => (isQuantity(one) ? isDraw(one) : one.kind !== 'battery'));
  let before: Thing[] = [];
  for (const [i, group] of groups.entries()) {
    const left = match(group, (one, quantity) => mayTake(state, one, quantity), give);
    const here = group.flatMap(element => element.thing ?? []);
    for (const quantity of left) {
      if (here.some(one => !isFree(one) && near(one, quantity))) quantity.taken = 'again';
      else toNeighbour(state, quantity, before, here.length === 0 ? groups[i + 1] : undefined);
    }
    if (here.length > 0) before = [...before.slice(-2), ...here];
  }
  for (const quantity of state.quantities) if (!quantity.taken && isDraw(quantity)) alone(state, quantity);
}

/** The same draw said once more in the other unit ("4 A, 48 W fridge"). */
const near = (one: Thing, quantity: Quantity): boolean =>
  one.kind === 'load' &&
  one.currentA > 0 !== (quantity.unit.dimension === 'current') &&
  Math.abs(one.at - quantity.at) < 6;

type Group = ReturnType<typeof bySegment>[number];

/** A part without a thing: "fridge, 1.2A" looks back, "1.2A, fridge" forward. */
function toNeighbour(
  state: State,
  quantity: Quantity,
  before: readonly Thing[],
  after: Group | undefined,
): void {
  const sentence = state.sentences[quantity.at]!;
  const last = before.at(-1);
  if (last && isFree(last) && mayTake(state, last, quantity) && sentence - state.sentences[last.at]! <= 1) {
    give(last, quantity);
    return;
  }
  if (last?.kind === 'solar' || last?.kind === 'other') {
    const earlier = before.findLast(one => one.kind === 'solar' && mayTake(state, one, quantity));
    if (earlier && last.kind === 'solar') {
      give(earlier, quantity);
      return;
    }
  }
  const next = after?.[0]?.thing;
  const hasOwn = after?.some(element => element.quantity);
  if (next && !hasOwn && mayTake(state, next, quantity) && state.sentences[next.at] === sentence)
    give(next, quantity);
}

/** A draw that names nothing: watts under the sun are a panel, else it is a load. */
function alone(state: State, quantity: Quantity): void {
  const { cues, facts } = state;
  const isPower = quantity.unit.dimension === 'power';
  if (isPower && isSolar(state, quantity)) {
    const panel = thing('solar', quantity.at, quantity.at + 1, 'panel');
    give(panel, quantity);
    add(state, panel);
    return;
  }
  const isCableTalk =
    cues.has('cable') ||
    cues.has('ask-drop') ||
    state.quantities.some(
      q => q.unit.dimension === 'area' || q.unit.dimension === 'gauge' || q.unit.dimension === 'length',
    );
  const isOfCable = !isPower && (isCableTalk || (cues.has('fuse') && !cues.has('load')));
  if (isOfCable) {
    const hasOwn = state.things.some(one => one.kind === 'charger' && one.currentA > 0);
    if (!state.cableA && !hasOwn) state.cableA = quantity.value;
    quantity.taken = 'cable';
    return;
  }
  const hasBattery =
    cues.has('battery') ||
    cues.has('lfp') ||
    cues.has('agm') ||
    cues.has('gel') ||
    state.quantities.some(q => q.unit.dimension === 'charge') ||
    cues.has('ask-how-long') ||
    cues.has('starter');
  const isLoad =
    hasBattery ||
    /^(nonstop|steady|constant|continuous|draw|all)$/.test(textAt(state, quantity.at + 1)) ||
    quantity.per === 'hour' ||
    facts.durationH !== undefined ||
    cues.has('ask-total') ||
    (state.claims.length > 0 && cues.has('statement')) ||
    isAsked(state);
  if (!isLoad) return;
  const made = isCharging(state)
    ? { ...thing('charger', quantity.at, quantity.at + 1, 'charger'), isAc: true }
    : thing('load', quantity.at, quantity.at + 1, 'load');
  give(made, quantity);
  add(state, made);
}

/** "How long to charge 100Ah at 20A": what goes in, where no charger is named and nothing runs. */
const isCharging = ({ cues, things }: State): boolean =>
  cues.has('charge') &&
  !cues.has('no-charge') &&
  !cues.has('inverter') &&
  !things.some(one => one.kind === 'charger' || one.kind === 'load' || one.kind === 'solar');

const isAsked = (state: State): boolean => state.cues.has('inverter') || state.cues.has('generator');

function isSolar(state: State, quantity: Quantity): boolean {
  const { cues, things } = state;
  if (things.some(one => one.kind === 'solar' && one.powerW > 0 && !one.isDropped)) return false;
  if (cues.has('inverter') || quantity.per === 'hour') return false;
  if (cues.has('solar') || cues.has('sun')) return true;
  return (
    /^(roof|pop|bonnet|hood|awning)$/.test(wordAt(state, quantity.at + 3)) ||
    wordAt(state, quantity.at + 2) === 'roof' ||
    state.facts.month !== undefined ||
    state.facts.place !== undefined ||
    state.facts.sky !== undefined ||
    state.facts.peakSunHours !== undefined ||
    (cues.has('ask-yield') && !cues.has('load')) ||
    /^(solar-yield|solar-size|trip)$/.test(state.context.lastIntent ?? '')
  );
}

/** Puts a thing that no word names into its place among the others. */
export function add(state: State, one: Thing): void {
  one.segment = state.segments[one.at]!;
  const index = state.things.findIndex(other => other.at > one.at);
  if (index < 0) state.things.push(one);
  else state.things.splice(index, 0, one);
}
