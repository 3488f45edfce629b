import {
  type Quantity,
  quantityAt,
  type State,
  saidOf,
  spanOf,
  type Thing,
  thing,
  wordAt,
} from '../state.ts';
import { add } from './draws.ts';
import { bySegment, match } from './elements.ts';
import { isPutBack } from './refill.ts';

const isQuantity = (one: Quantity | Thing): one is Quantity => 'unit' in one;
const isCharge = (quantity: Quantity): boolean =>
  quantity.per === '' && (quantity.unit.dimension === 'charge' || quantity.unit.dimension === 'energy');
const isEmpty = (one: Thing): boolean => one.chargeAh < 0 && one.energyWh === 0;
/** Cells of power banks: what their mAh are counted at. */
const cellV = 3.7;
/** Up to here "Ah" said of an appliance is taken for amps. */
const mostDrawAh = 12;
/** From here "A" said of a battery is taken for Ah. */
const leastBatteryA = 5;

const mayTake = (one: Thing, _quantity: Quantity): boolean => one.kind === 'battery' && isEmpty(one);

function give(one: Thing, quantity: Quantity): void {
  if (quantity.unit.symbol === 'mAh') one.energyWh = quantity.value * cellV;
  else if (quantity.unit.dimension === 'energy') one.energyWh = quantity.value;
  else one.chargeAh = quantity.value;
  if (quantity.count && !one.count) one.count = quantity.count;
  quantity.taken = 'battery';
}

/** "2 x 6v 220Ah": the count stands before the volts. */
function countBefore(state: State, quantity: Quantity): number {
  const volts = quantityAt(state, quantity.at - 1);
  return quantity.count || (volts?.unit.dimension === 'voltage' ? volts.count : 0);
}

/** Gives Ah and Wh to batteries, sets right what was said in the wrong unit, and makes batteries of the rest. */
export function batteries(state: State): void {
  for (const quantity of state.quantities)
    if (isCharge(quantity)) quantity.count = countBefore(state, quantity);
  for (const one of state.things) if (one.kind === 'battery') ampsOfBattery(state, one);
  for (const one of state.things) if (one.kind === 'load' && isDevice(one)) deviceBattery(state, one);
  const groups = bySegment(state, one =>
    isQuantity(one)
      ? isCharge(one) && !isPutBack(state, one)
      : one.kind === 'battery' || one.kind === 'charger' || one.kind === 'load',
  );
  for (const group of groups) {
    const own = group.filter(element => element.quantity || element.thing?.kind === 'battery');
    const hasBattery = own.some(element => element.thing);
    const left = hasBattery ? match(own, mayTake, give) : own.flatMap(element => element.quantity ?? []);
    for (const quantity of left) {
      if (
        !hasBattery &&
        wrongUnit(
          state,
          quantity,
          group.flatMap(element => element.thing ?? []),
        )
      )
        continue;
      const last = state.things.findLast(
        one => one.at < quantity.at && one.kind === 'battery' && isEmpty(one) && !one.isDropped,
      );
      if (
        last &&
        state.sentences[quantity.at]! - state.sentences[last.at]! <= 1 &&
        !isAnother(state, last, quantity)
      )
        give(last, quantity);
      else {
        const battery = thing('battery', quantity.at, quantity.at + 1, 'battery');
        give(battery, quantity);
        add(state, battery);
      }
    }
  }
  join(state);
}

const isDevice = ({ name, isDropped }: Thing): boolean => name.endsWith(' battery') && !isDropped;
const mostToSize = 4;

/** "6 camera batteries, 16 Wh each": what it takes to fill them, a day. */
function deviceBattery(state: State, one: Thing): void {
  const size = state.quantities.find(
    ({ at, taken, unit }) =>
      !taken &&
      unit.dimension === 'energy' &&
      (at === one.at - 1 || (at >= one.end && at <= one.end + mostToSize)),
  );
  if (!size) return;
  one.perDayWh = size.value;
  if (!one.count && size.count) one.count = size.count;
  size.taken = 'load';
}

/** "agm or 100ah": not of the one before. */
const isAnother = (state: State, last: Thing, quantity: Quantity): boolean => {
  for (let i = last.end; i < quantity.at; i++)
    if (/^(or|vs|versus|against)$/.test(wordAt(state, i))) return true;
  return false;
};

/** "a 100A battery", "105 amp agm": a battery's size is told in Ah. */
function ampsOfBattery(state: State, one: Thing): void {
  let before = one.at - 1;
  if (quantityAt(state, before)?.unit.dimension === 'voltage') before--;
  while (/^(deep|cycle|old|new|big|sealed|house|spare|second)$/.test(wordAt(state, before))) before--;
  const quantity =
    quantityAt(state, before) ??
    (wordAt(state, one.end) === 'of' ? quantityAt(state, one.end + 1) : undefined);
  if (
    quantity?.unit.dimension !== 'current' ||
    quantity.taken ||
    quantity.value < leastBatteryA ||
    quantity.per
  )
    return;
  if (/^(draw|drain|load|current|charge|charging)$/.test(wordAt(state, one.end))) return;
  one.chargeAh = quantity.value;
  if (quantity.count) one.count = quantity.count;
  quantity.taken = 'battery';
  mismatch(state, quantity, one.name, `${quantity.value} Ah`);
}

/** "a 20Ah dcdc", "fridge 1.2Ah": amps are meant. */
function wrongUnit(state: State, quantity: Quantity, things: readonly Thing[]): boolean {
  if (quantity.unit.symbol !== 'Ah') return false;
  const charger = things.find(
    one =>
      one.kind === 'charger' &&
      one.currentA === 0 &&
      one.gear?.charger !== 'isolator' &&
      one.at - quantity.at > 0 &&
      one.at - quantity.at <= 2,
  );
  const load = things.find(
    one =>
      one.kind === 'load' && one.currentA === 0 && one.powerW === 0 && Math.abs(one.at - quantity.at) <= 5,
  );
  const owner = charger ?? (quantity.value <= mostDrawAh ? load : undefined);
  if (!owner) return false;
  owner.currentA = quantity.value;
  quantity.taken = owner.kind;
  mismatch(state, quantity, owner.name, `${quantity.value} A`);
  return true;
}

export function mismatch(state: State, quantity: Quantity, thingName: string, repair: string): void {
  state.issues.push({
    code: 'unit-mismatch',
    span: spanOf(state, quantity.at),
    data: { thing: thingName, said: saidOf(state, quantity.at), repair },
  });
}

/** Joins words for one battery: "leisure battery … AGM", "100ah deep cycle, lithium". */
function join(state: State): void {
  let last: Thing | undefined;
  for (const one of state.things) {
    if (one.kind !== 'battery' || one.isDropped) continue;
    if (last && isSame(state, last, one)) {
      merge(last, one);
      one.isDropped = true;
    } else last = one;
  }
}

function isSame(state: State, last: Thing, one: Thing): boolean {
  if (!isEmpty(last) && !isEmpty(one)) return false;
  // "House bank is 4 x 6V 225Ah flooded": one number counts both words.
  const isOneCount = one.count === last.count && one.segment === last.segment;
  if (one.count > 0 && last.count > 0 && !isOneCount) return false;
  const [a, b] = [last.gear, one.gear];
  if (a?.chemistry && b?.chemistry && a.chemistry !== b.chemistry && !isFiner(a.chemistry, b.chemistry))
    return false;
  if (a?.role && b?.role && a.role !== b.role) return false;
  if (state.sentences[one.at]! - state.sentences[last.at]! > 2) return false;
  if (a?.role === 'starter' && one.segment !== last.segment && !b?.chemistry) return isEmpty(one) && !b?.role;
  if (b?.role === 'starter' && one.segment !== last.segment)
    return a?.role === undefined && !a?.chemistry && isEmpty(last);
  for (let i = last.end; i < one.at; i++)
    if (
      /^(or|vs|versus|v|against|over|than|versus|to|replace)$/.test(wordAt(state, i)) &&
      (b?.chemistry || !isEmpty(one))
    )
      return false;
  // "the battery's at 40 %, 120ah agm": first how full, then what it is.
  if (!a?.chemistry && !a?.role && last.count === 0 && isEmpty(last) && shareBetween(state, last, one))
    return true;
  // "100ah agm … house battery": said again of the same, unless it brings a size of its own elsewhere.
  return one.segment === last.segment || isEmpty(one);
}

function shareBetween(state: State, last: Thing, one: Thing): boolean {
  let isShare = false;
  for (let i = last.end; i < one.at; i++) {
    if (/^(another|second|other|and|plus|new|spare|to)$/.test(wordAt(state, i))) return false;
    if (quantityAt(state, i)?.unit.dimension === 'percent') isShare = true;
  }
  return isShare;
}

const isFiner = (a: string, b: string): boolean =>
  (a === 'lead-acid' && b !== 'lfp') || (b === 'lead-acid' && a !== 'lfp');

function merge(last: Thing, one: Thing): void {
  const chemistry =
    last.gear?.chemistry && last.gear.chemistry !== 'lead-acid'
      ? last.gear.chemistry
      : (one.gear?.chemistry ?? last.gear?.chemistry);
  const role = last.gear?.role ?? one.gear?.role;
  const base = last.gear ?? one.gear;
  if (base) last.gear = { ...base, chemistry, role };
  if (isEmpty(last)) {
    last.chargeAh = one.chargeAh;
    last.energyWh = one.energyWh;
  }
  last.count = last.count || one.count;
  last.voltageV = last.voltageV || one.voltageV;
  last.percent = last.percent < 0 ? one.percent : last.percent;
}
