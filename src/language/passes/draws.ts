import { type Quantity, quantityAt, type State, type Thing, textAt, thing, wordAt } from '../state.ts';
import { plainWords } from '../words/en/common.ts';
import { bySegment, match } from './elements.ts';
import { vocabulary } from './vocabulary.ts';

const isDraw = (quantity: Quantity): boolean =>
  quantity.per !== 'day' && (quantity.unit.dimension === 'current' || quantity.unit.dimension === 'power');
const isQuantity = (one: Quantity | Thing): one is Quantity => 'unit' in one;

/** Which kinds of things have a current, and which a power. */
const kindsWithCurrent = new Set<Thing['kind']>(['load', 'charger', 'fuse', 'other', 'cable']);
const kindsWithPower = new Set<Thing['kind']>(['load', 'solar', 'inverter', 'charger', 'other']);

const isFree = (one: Thing): boolean => one.currentA === 0 && one.powerW === 0;

/** "Pulls 1450 W through the inverter": what goes through it, not what it is rated for. */
const isThrough = (state: State, one: Thing, { at }: Quantity): boolean =>
  at < one.at &&
  /^(pulls|pull|draws|draw|uses|takes|needs|sucks)$/.test(wordAt(state, at - 1)) &&
  [1, 2].some(step => /^(through|thru|via|from|off|on)$/.test(wordAt(state, one.at - step)));

/** May the thing have this current or power? A cable or a fuse only one that stands right beside it. */
function mayTake(state: State, one: Thing, quantity: Quantity): boolean {
  if (!isFree(one)) return false;
  const kinds = quantity.unit.dimension === 'current' ? kindsWithCurrent : kindsWithPower;
  if (!kinds.has(one.kind)) return false;
  if (one.kind === 'charger' && one.gear?.charger === 'isolator') return false;
  if (one.kind === 'solar' && one.gear?.controller && quantity.unit.dimension !== 'power') return false;
  if (one.kind === 'inverter' && isThrough(state, one, quantity)) return false;
  if (one.kind === 'load' || one.kind === 'solar' || one.kind === 'charger' || one.kind === 'inverter')
    return true;
  return quantity.at === one.at - 1 || (one.kind === 'fuse' && quantity.at === one.end);
}

export function give(one: Thing, quantity: Quantity): void {
  if (quantity.unit.dimension === 'current') one.currentA = quantity.value;
  else one.powerW = quantity.value;
  if (quantity.count && !one.count) one.count = quantity.count;
  if (quantity.per === 'hour' && quantity.unit.dimension === 'power') one.isAverage = true;
  quantity.taken = one.kind;
}

/** Gives amps and watts to loads, panels, chargers, inverters; makes loads and panels of those that name none. */
export function draws(state: State): void {
  screens(state);
  mainsWord(state);
  motorWord(state);
  mainsAmps(state);
  bmsAmps(state);
  shared(state);
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
  bareWatts(state);
}

/** Ratings of inverters and draws of mains things, W. */
const [leastBareW, mostBareW] = [50, 6000];

/** "My inverter's a 1000", "add the grinder, 250": watts without the word, of what is rated in watts. */
function bareWatts(state: State): void {
  const areWatts = /\ball (in )?watts\b/i.test(state.text);
  const isOfInverter = areWatts || /^(inverter-check|generator)$/.test(state.context.lastIntent ?? '');
  for (const one of state.things) {
    const isInverter = one.kind === 'inverter';
    if (one.isDropped || !isFree(one) || (!isInverter && !(one.kind === 'load' && isOfInverter))) continue;
    let at = one.end;
    while (at < one.end + 3 && /^(a|an|is|s|are|only|about|just|,|-|=|:)$/.test(textAt(state, at))) at++;
    const number = state.tokens[at];
    const isPlain = number?.kind === 'number' && number.value >= leastBareW && number.value <= mostBareW;
    if (!isPlain || number.isKnown || /^(of|%|x)$/.test(textAt(state, at + 1))) continue;
    one.powerW = number.value;
    number.isKnown = true;
    number.text = 'watts';
  }
}

const mostFromBms = 4;

/** "100A bms", "the bms is rated 100 amps": what it lets through, no load. */
function bmsAmps(state: State): void {
  for (const one of state.things) {
    if (!one.gear?.cues.includes('bms')) continue;
    const own = state.quantities.find(
      ({ at, taken, unit }) =>
        !taken &&
        unit.dimension === 'current' &&
        at >= one.at - 2 &&
        at < one.end + mostFromBms &&
        state.segments[at] === one.segment &&
        !state.things.some(other => other.kind === 'load' && other.at === at + 1),
    );
    if (own) own.taken = 'bms';
  }
}

/** "Monitor 40 W": with a draw of its own it is a screen. */
function screens(state: State): void {
  for (const one of state.things) {
    if (one.name !== 'monitor' && one.name !== 'monitors') continue;
    const near = [
      quantityAt(state, one.end),
      quantityAt(state, one.end + 1),
      quantityAt(state, one.at - 1),
      quantityAt(state, one.end + 4),
    ];
    if (!near.some(quantity => quantity?.unit.dimension === 'power')) continue;
    one.kind = 'load';
    one.name = 'monitor';
    one.gear = undefined;
    state.cues.delete('monitor');
  }
}

/** "A 60 W mains telly": what kind of telly, and no thing of its own. */
function mainsWord(state: State): void {
  for (const [i, one] of state.things.entries()) {
    const next = state.things[i + 1];
    if (!one.gear?.cues.includes('mains') || one.kind !== 'other') continue;
    if (next?.kind !== 'load' || next.at !== one.end) continue;
    one.isDropped = true;
    next.isAc = true;
  }
}

/** "The grinder is a 550 W motor": what is in it, and no second thing. */
function motorWord(state: State): void {
  for (const [i, one] of state.things.entries()) {
    const owner = state.things[i - 1];
    if (one.name !== 'motor' || owner?.kind !== 'load' || owner.isDropped || !isFree(owner)) continue;
    const watts = quantityAt(state, one.at - 1);
    if (!watts || watts.taken || !isDraw(watts) || state.sentences[owner.at] !== state.sentences[one.at])
      continue;
    one.isDropped = true;
    give(owner, watts);
  }
}

/** "60A mains": a charger that nobody names. */
function mainsAmps(state: State): void {
  if (state.things.some(one => one.kind === 'charger')) return;
  for (const one of state.things) {
    const quantity = quantityAt(state, one.at - 1);
    if (!one.gear?.cues.includes('mains') || quantity?.unit.dimension !== 'current' || quantity.taken)
      continue;
    one.kind = 'charger';
    one.isAc = true;
  }
}

/** "3A of lights and fans": one draw for both; the second is not left to be guessed. */
function shared(state: State): void {
  for (const [i, one] of state.things.entries()) {
    const next = state.things[i + 1];
    if (
      one.kind !== 'load' ||
      next?.kind !== 'load' ||
      next.at !== one.end + 1 ||
      wordAt(state, one.end) !== 'and'
    )
      continue;
    if (wordAt(state, one.at - 1) !== 'of' || !quantityAt(state, one.at - 2) || quantityAt(state, next.end))
      continue;
    next.isDropped = true;
    one.name = `${one.name} and ${next.name}`;
  }
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
    : thing('load', quantity.at, quantity.at + 1, nameBefore(state, quantity.at) ?? 'load');
  give(made, quantity);
  add(state, made);
}

/** "My recorder, 0.25 A": a word right before that nobody knows is what the load is called. */
function nameBefore(state: State, at: number): string | undefined {
  const before = /^[,:-]$/.test(textAt(state, at - 1)) ? at - 2 : at - 1;
  const word = wordAt(state, before);
  const isName =
    word.length >= 4 && !vocabulary.has(word) && !plainWords.has(word) && !state.tokens[before]!.isKnown;
  return isName && !word.endsWith('s') && !word.endsWith('ing') ? word : undefined;
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
