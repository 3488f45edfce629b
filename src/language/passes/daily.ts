import { type Quantity, type State, type Thing, wordAt } from '../state.ts';
import { list } from '../words/list.ts';
import { mismatch } from './batteries.ts';
import { isPutBack } from './refill.ts';

const made = list(`
  making makes make gives giving get gets getting produces producing harvest harvesting bringing brings
  puts putting yields yielding generates generating collects
`);
const used = list('we i our use using usage consumption burn need budget total replace for');

/** Charge and energy told for a day: of one load, of the whole rig, or made by the panels. */
export function daily(state: State): void {
  for (const quantity of state.quantities) {
    if (quantity.taken) continue;
    const { dimension } = quantity.unit;
    if (
      quantity.per === 'day' &&
      (dimension === 'charge' || dimension === 'energy' || dimension === 'current' || dimension === 'power')
    )
      ofDay(state, quantity);
    else if (
      (dimension === 'charge' || dimension === 'current' || dimension === 'energy') &&
      isPutBack(state, quantity) &&
      !hasSource(state, quantity)
    )
      refill(state, quantity);
  }
  bareOfDay(state);
}

const using = list('using use uses burn burning need another extra');
const another = list('another extra uses');

/** Camps that count by the day use so much, Ah. */
const [leastDayAh, mostDayAh] = [10, 400];

/** "we're using about 45 a day": amp hours, where nothing else tells the use. */
function bareOfDay(state: State): void {
  const { facts, tokens, things } = state;
  if (facts.dailyUseAh !== undefined || facts.dailyUseWh !== undefined) return;
  const loads = things.filter(one => one.kind === 'load' && !one.isDropped);
  const [only] = loads;
  if (loads.length > 1 || (only && (only.currentA > 0 || only.powerW > 0 || only.perDayAh > 0))) return;
  for (const [i, { kind, value }] of tokens.entries()) {
    if (kind !== 'number' || value < leastDayAh || value > mostDayAh) continue;
    const isDay = /^(a|per|each|every)$/.test(wordAt(state, i + 1)) && wordAt(state, i + 2) === 'day';
    const leads = only ? another : using;
    const isUse = [1, 2].some(step => leads.has(wordAt(state, i - step)));
    if (!isUse || !(isDay || wordAt(state, i + 1) === 'daily')) continue;
    if (only) only.perDayAh = value;
    else facts.dailyUseAh = value;
    tokens[i]!.isKnown = true;
    return;
  }
}

/** A current beside a charger is the charger's, also where something is put back. */
const hasSource = (state: State, quantity: Quantity): boolean =>
  quantity.unit.dimension === 'current' &&
  state.things.some(one => one.kind === 'charger' && one.at - quantity.at > 0 && one.at - quantity.at <= 2);

function refill(state: State, quantity: Quantity): void {
  quantity.taken = 'refill';
  if (quantity.unit.dimension === 'energy') {
    state.facts.dailyUseWh = quantity.value;
    return;
  }
  state.facts.chargeNeededAh = quantity.value;
  if (quantity.unit.dimension === 'current')
    mismatch(state, quantity, 'charge to put back', `${quantity.value} Ah`);
}

/** "12ah a day for the diesel heater": the thing that it is for. */
function forThing(state: State, { at }: Quantity): Thing | undefined {
  const isArticle = /^(the|my|our|a)$/.test(wordAt(state, at + 2));
  if (wordAt(state, at + 1) !== 'for' || !isArticle) return undefined;
  return state.things.find(
    one => one.kind === 'load' && one.at === at + 3 && one.currentA === 0 && one.powerW === 0,
  );
}

function ofDay(state: State, quantity: Quantity): void {
  const { facts, things, segments } = state;
  const isEnergy = quantity.unit.dimension === 'energy' || quantity.unit.dimension === 'power';
  const segment = segments[quantity.at]!;
  let isMade = false;
  let isWhole = false;
  for (let i = quantity.at - 1; i >= 0 && i >= quantity.at - 4 && segments[i] === segment; i--) {
    if (made.has(wordAt(state, i))) isMade = true;
    if (used.has(wordAt(state, i))) isWhole = true;
  }
  quantity.taken = 'daily';
  if (isMade && state.cues.has('solar')) {
    if (isEnergy) facts.solarWhPerDay = quantity.value;
    else facts.solarAhPerDay = quantity.value;
    return;
  }
  if (quantity.unit.dimension === 'current') mismatch(state, quantity, 'daily use', `${quantity.value} Ah`);
  const load = things.findLast(
    one =>
      one.kind === 'load' &&
      !one.isDropped &&
      one.currentA === 0 &&
      one.powerW === 0 &&
      one.segment === segment,
  );
  const other = forThing(state, quantity);
  if (other) {
    if (isEnergy) other.perDayWh = quantity.value;
    else other.perDayAh = quantity.value;
  } else if (load && !isWhole) {
    if (isEnergy) load.perDayWh = quantity.value;
    else load.perDayAh = quantity.value;
  } else if (isEnergy) facts.dailyUseWh = quantity.value;
  else facts.dailyUseAh = quantity.value;
}
