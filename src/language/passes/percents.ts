import { type Quantity, type State, saidOf, spanOf, type Thing, thing, wordAt } from '../state.ts';
import { list } from '../words/list.ts';
import { add } from './draws.ts';

const dropWords = list('drop loss max maximum');
const dutyWords = list('duty cycle cycles working runs running time cycling');
const shadeWords = list('shade shaded shading');
const cloudWords = list('cloud clouds');
const otherShares = list('humidity efficient efficiency off sure power discount chance slope grade');
const depthWords = list('dod deep depth usable discharge');
const goalWords = list('to reach until till til hit');
const downWords = list('down dropped drop drops fell fallen gone is its drained sits close due come');
const drainWords = list(
  'run take taken taking drain draining discharge discharging let go going it them running use used',
);
const takeWords = list('take run let drain discharge until');
const belowWords = list('below under than');
const goneWords = list('gone used discharged flat');
const onlyWords = list('only');
const useWords = list('use used using');
/** A share up to here, said of a cable, is a drop. */
const mostDropPercent = 10;

/** Shares: how full, how full it shall be, how deep one goes, how often a thing runs, what drop is allowed. */
export function percents(state: State): void {
  for (const quantity of state.quantities)
    if (quantity.unit.dimension === 'percent' && !quantity.taken) share(state, quantity);
}

/** Whether a word of the set stands within `from`…`to` tokens of `at`. */
function near(state: State, at: number, from: number, to: number, words: ReadonlySet<string>): boolean {
  for (let i = at + from; i <= at + to; i++) if (i !== at && words.has(wordAt(state, i))) return true;
  return false;
}

function share(state: State, quantity: Quantity): void {
  const { facts } = state;
  const { at, value } = quantity;
  // "Call it 75 percent", of how long the fridge runs.
  const isOfUse =
    state.context.lastIntent === 'energy-budget' && !state.things.some(one => one.kind === 'battery');
  if (isOfUse && value > 0 && value <= 100 && !state.cues.has('charge')) return;
  quantity.taken = 'percent';
  if (value < 0 || value > 100) {
    const data = { thing: 'charge', said: saidOf(state, at) };
    state.issues.push({ code: 'absurd-value', span: spanOf(state, at), data });
  } else if (isDrop(state, at, value)) {
    if (value > 0) state.dropPercent = value;
  } else if (near(state, at, -3, 4, dutyWords) && !state.cues.has('charge') && dutyOf(state, at, value)) {
    // taken by the load that runs so much of the time
  } else if (near(state, at, -3, 3, shadeWords)) {
    facts.shade = value >= 75 ? 'heavy' : value > 0 ? 'half' : 'none';
  } else if (near(state, at, -1, 3, cloudWords)) {
    facts.sky = value > 70 ? 'overcast' : value > 20 ? 'mixed' : 'sunny';
  } else if (!near(state, at, -2, 2, otherShares)) charge(state, at, value);
}

function isDrop(state: State, at: number, value: number): boolean {
  if (value > 50) return false;
  const hasSize = state.quantities.some(
    ({ unit }) => unit.dimension === 'length' || unit.dimension === 'area' || unit.dimension === 'gauge',
  );
  const isCable =
    hasSize ||
    state.cues.has('cable') ||
    state.cues.has('ask-drop') ||
    state.context.lastIntent === 'cable-size';
  if (!isCable) return false;
  return (
    near(state, at, -3, 3, dropWords) ||
    (value <= mostDropPercent && !state.things.some(one => one.kind === 'battery'))
  );
}

/** Gives a share of the time to the load before it, or the only one; false where there is none. */
export function dutyOf(state: State, at: number, value: number): boolean {
  const load =
    state.things.findLast(one => one.kind === 'load' && one.at < at) ??
    state.things.find(one => one.kind === 'load');
  if (load) load.dutyPercent = value;
  return load !== undefined;
}

/** A share of a battery: how deep it may go, where charging shall end, or how full it is. */
function charge(state: State, at: number, value: number): void {
  const { facts } = state;
  const goal = goalOf(state, at);
  if (near(state, at, -3, 4, depthWords) && value > 0) facts.depthOfDischargePercent = value;
  else if (goal === 'down' || near(state, at, -4, -1, belowWords)) deep(state, 100 - value);
  else if (goal === 'up') facts.targetChargePercent = value;
  else if (goneWords.has(wordAt(state, at + 1)) && value > 0) setCharge(state, at, 100 - value);
  else if (near(state, at, -4, -1, onlyWords) && near(state, at, -4, 3, useWords)) deep(state, value);
  else setCharge(state, at, value);
}

const deep = (state: State, value: number): void => {
  if (value > 0) state.facts.depthOfDischargePercent = value;
};

/** "to 80 %" with charging is up; "run it down to 20 %", "how long till 20 %" is down; "dropped to 60 %" is where it is. */
function goalOf(state: State, at: number): 'up' | 'down' | undefined {
  if (!goalWords.has(wordAt(state, at - 1))) return undefined;
  const { cues, things } = state;
  const isCharging =
    cues.has('charge') ||
    cues.has('drive') ||
    cues.has('charger') ||
    things.some(one => one.kind === 'charger');
  if (downWords.has(wordAt(state, at - 2))) {
    const isDrained = wordAt(state, at - 2) === 'down' && drainWords.has(wordAt(state, at - 3));
    const isThere = /^(is|its|was|already|now)$/.test(wordAt(state, at - 4));
    return isDrained && !isThere && !isCharging ? 'down' : undefined;
  }
  if (isCharging) return 'up';
  const isEmptying = near(state, at, -6, -2, takeWords) || cues.has('ask-how-long') || cues.has('last');
  return isEmptying ? 'down' : 'up';
}

/** Puts a state of charge onto the battery that stands nearest; one is made where none is named. */
export function setCharge(state: State, at: number, value: number): void {
  const owner = nearestBattery(state, at);
  if (owner) owner.percent = value;
  else {
    const battery = thing('battery', at, at + 1, 'battery');
    battery.percent = value;
    add(state, battery);
  }
}

/** The battery that a word at `at` is about: one just behind it in its part, else the last before. */
export function nearestBattery(state: State, at: number): Thing | undefined {
  const all = state.things.filter(one => one.kind === 'battery' && !one.isDropped);
  const before = all.findLast(one => one.at < at);
  const after = all.find(one => one.at > at);
  const isOwn = before && state.segments[before.at] === state.segments[at];
  return after && after.at - at <= 5 && !isOwn ? after : (before ?? after);
}
