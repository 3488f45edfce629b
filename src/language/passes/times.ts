import { type Quantity, type State, wordAt } from '../state.ts';
import { list } from '../words/list.ts';
import { roundTheClock } from './round-the-clock.ts';
import { hasTime, isLoad, ownersOf } from './time-owners.ts';

const isTime = (quantity: Quantity): boolean => quantity.unit.dimension === 'time' && !quantity.taken;
const lasting = list('last lasts survive through thru hold least do good');

/** Sorts the times: sun hours, how often, days the question is for, hours and minutes that a load runs. */
export function times(state: State): void {
  const { facts, quantities } = state;
  for (const quantity of quantities) {
    if (quantity.taken) continue;
    if (quantity.unit.dimension === 'sun') {
      facts.peakSunHours = quantity.value;
      quantity.taken = 'sun';
    } else if (isTime(quantity) && isSunTime(state, quantity)) {
      facts.peakSunHours = quantity.value;
      quantity.taken = 'sun';
    }
  }
  for (const quantity of quantities)
    if (isTime(quantity) && quantity.per === '' && quantity.unit.factor >= 24 && !isEvery(state, quantity))
      duration(state, quantity);
  for (const quantity of quantities) if (isTime(quantity)) ofLoads(state, quantity);
  for (const quantity of quantities)
    if (quantity.unit.symbol === 'times' && !quantity.taken) often(state, quantity);
  roundTheClock(state);
}

const isSunTime = (state: State, { at, unit, value }: Quantity): boolean =>
  unit.symbol === 'h' &&
  value <= 14 &&
  (wordAt(state, at + 1) === 'sun' ||
    ((wordAt(state, at + 1) === 'of' || wordAt(state, at + 1) === 'good') &&
      /^(sun|sunshine|sunlight|full|good|strong|direct|decent|bright)$/.test(wordAt(state, at + 2))));

/** "every 2 days": how often, not how long. */
const isEvery = (state: State, { at }: Quantity): boolean =>
  /^(every|in|within|since)$/.test(wordAt(state, at - 1)) && wordAt(state, at - 1) !== 'in';

function duration(state: State, quantity: Quantity): void {
  const { facts } = state;
  quantity.taken = 'duration';
  if (quantity.value <= 0) return;
  if (facts.durationH !== undefined && (quantity.isWeak || !state.isWeakDuration)) return;
  facts.durationH = quantity.value;
  state.isWeakDuration = quantity.isWeak;
}

/** "Turn it off at night for 10 hrs", "off for 8 hours": how long before the time the word may stand. */
const mostToOff = 6;

/** Hours that a thing stays off: the rest of the day it runs. */
function isOff(state: State, { at, value, unit }: Quantity): boolean {
  if (unit.symbol !== 'h' || value <= 0 || value >= 24) return false;
  for (let i = at - 1; i >= Math.max(0, at - mostToOff); i--) {
    if (state.sentences[i] !== state.sentences[at]) return false;
    if (wordAt(state, i) === 'off')
      return i + 1 === at || /^(for|at|overnight|during|about|around|all)$/.test(wordAt(state, i + 1));
  }
  return false;
}

/** Hours or minutes: of the load beside them, of a group of loads, else of the whole question. */
function ofLoads(state: State, quantity: Quantity): void {
  const { facts, things } = state;
  const segment = state.segments[quantity.at]!;
  const isDay = quantity.per === 'day';
  if (isOff(state, quantity)) {
    quantity.taken = 'load';
    const own = things.findLast(one => isLoad(one) && one.at < quantity.at && !hasTime(one));
    if (own) own.hours = 24 - quantity.value;
    else state.hoursOff = quantity.value;
    return;
  }
  const isWhole = lasting.has(wordAt(state, quantity.at - 1)) && !isDay;
  const isOfStarter = state.cues.has('starter') && !isDay;
  const loads = things.filter(one => isLoad(one));
  if (!isOfStarter && !isWhole && quantity.value <= 24 && loads.length > 0) {
    const owners = ownersOf(state, quantity, loads, segment);
    for (const one of owners) {
      if (quantity.unit.factor < 1) one.minutes = round(quantity.value * 60);
      else one.hours = quantity.value;
      // "The compressor runs 12 hours": of running, no duty cycle goes on top.
      if (isOfCompressor(state, quantity)) one.dutyPercent = 100;
      if (quantity.unit.factor >= 24) one.hours = 24;
    }
    if (owners.length > 0) {
      quantity.taken = 'load';
      return;
    }
  }
  // "12.4 after 12 hours off charge": how long it has rested.
  if (facts.volts !== undefined && quantity.unit.factor <= 1) {
    quantity.taken = 'rest';
    return;
  }
  if (!isDay && quantity.value > 0 && (facts.durationH === undefined || state.isWeakDuration)) {
    facts.durationH = quantity.value;
    state.isWeakDuration = false;
    quantity.taken = 'duration';
  }
}

const isOfCompressor = (state: State, { at }: Quantity): boolean =>
  [2, 3, 4, 5].some(
    step => wordAt(state, at - step) === 'compressor' && state.sentences[at - step] === state.sentences[at],
  );

const round = (value: number): number => Math.round(value * 1000) / 1000;

/** "4 mins, 5 times a day". */
function often(state: State, quantity: Quantity): void {
  const one =
    state.things.findLast(t => isLoad(t) && t.at < quantity.at && hasTime(t)) ??
    state.things.find(t => isLoad(t) && hasTime(t));
  if (!one) return;
  quantity.taken = 'load';
  if (one.minutes > 0) one.minutes = round(one.minutes * quantity.value);
  else if (one.hours > 0) one.hours = Math.min(24, one.hours * quantity.value);
}
