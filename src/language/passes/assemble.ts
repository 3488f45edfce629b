import { isSameName } from '#rig/merge.ts';
import type { Battery, Charger, Load, Solar } from '#rig/rig.ts';
import { type State, type Thing, textAt, wordAt } from '../state.ts';
import { weakNames } from '../words/en/common.ts';

const mostAmount = 1e7;
const rounded = (value: number): number => Math.round(value * 1e6) / 1e6;

/** Makes facts of the things with what was found to belong to them. */
export function assemble(state: State): void {
  const { facts, things } = state;
  const batteries: Battery[] = [];
  const solar: Solar[] = [];
  const chargers: Charger[] = [];
  for (const one of things) {
    if (one.isDropped) continue;
    if (one.kind === 'load') load(state, one);
    else if (one.kind === 'battery') battery(one, batteries);
    else if (one.kind === 'solar') panel(one, solar);
    else if (one.kind === 'charger') charger(state, one, chargers);
    else if (one.kind === 'inverter') inverter(state, one);
    else if (one.kind === 'fuse' && one.currentA > 0) state.fuseA = one.currentA;
  }
  sameAgain(state);
  if (state.loads.length > 0) facts.loads = state.loads;
  // "two batteries, a 100Ah AGM and a 120Ah lithium": the two are those told behind.
  const told = batteries.findIndex(one => one.count > 1 && Object.keys(one).length === 1);
  const others = batteries.reduce((sum, one, i) => sum + (i === told ? 0 : one.count), 0);
  if (told >= 0 && batteries.length > 1 && others === batteries[told]!.count) batteries.splice(told, 1);
  const [several, one] = batteries;
  // "It has 2 batteries, each one 105Ah AGM."
  if (batteries.length === 2 && told === 0 && one!.count === 1 && /\beach\b/i.test(state.text))
    batteries.splice(0, 2, { ...one!, count: several!.count });
  if (batteries.length > 0) facts.batteries = batteries.slice(0, 20);
  if (solar.length > 0) facts.solar = solar.slice(0, 20);
  if (chargers.length > 0) facts.chargers = chargers.slice(0, 10);
}

/** "What does my CPAP use for 8 hours? It's 1.6 A": named once more without a figure, it's the same thing. */
function sameAgain(state: State): void {
  for (const [i, bare] of [...state.bareLoads.entries()].reverse()) {
    const at = state.loads.findIndex(one => isSameName(one.name, bare.name));
    if (at < 0) continue;
    const own = state.loads[at]!;
    if (own.hoursPerDay === undefined && own.minutesPerDay === undefined)
      state.loads[at] = { ...bare, ...own, count: Math.max(own.count, bare.count) };
    state.bareLoads.splice(i, 1);
  }
}

/** No 12 V thing but a motor takes so much. */
const leastAcW = 600;
const motors = /winch|motor|jack|compressor|slide/;
const isAc = (one: Thing): boolean =>
  !one.isDc &&
  (one.isAc ||
    (one.appliance?.supply === 'ac' && !one.currentA) ||
    (one.powerW >= leastAcW && !motors.test(one.name)));

function load(state: State, one: Thing): void {
  const made: Load = {
    name: one.name.slice(0, 60),
    count: Math.max(1, Math.min(1000, one.count)),
    supply: isAc(one) ? 'ac' : 'dc',
  };
  if (one.currentA > 0 && one.currentA < mostAmount) made.currentA = rounded(one.currentA);
  if (one.powerW > 0 && one.powerW < mostAmount) made.powerW = rounded(one.powerW);
  if (one.perDayAh > 0) made.chargeAhPerDay = one.perDayAh;
  if (one.perDayWh > 0) made.energyWhPerDay = one.perDayWh;
  if (one.hours >= 0 && one.hours <= 24) made.hoursPerDay = rounded(one.hours);
  if (one.minutes >= 0 && one.minutes <= 1440) made.minutesPerDay = one.minutes;
  if (one.dutyPercent >= 0) made.dutyPercent = one.dutyPercent;
  const hasDraw = made.currentA || made.powerW || made.chargeAhPerDay || made.energyWhPerDay;
  if (made.powerW && (one.isInput || wordAt(state, one.end + 1) === 'input')) made.isInput = true;
  if (one.isAverage && (made.currentA || made.powerW)) made.isAverage = true;
  if (hasDraw) {
    if (state.loads.length < 60) state.loads.push(made);
  } else if (!state.bareLoads.some(other => other.name === made.name) && isMeant(state, one))
    state.bareLoads.push(made);
}

/** An everyday word counts as a thing only with an article or a time. */
const isMeant = (state: State, one: Thing): boolean =>
  one.hours >= 0 ||
  one.minutes >= 0 ||
  one.count > 0 ||
  (one.currentA === 0 &&
    one.powerW === 0 &&
    (!weakNames.has(one.name) || /^(the|a|my|our|an)$/.test(wordAt(state, one.at - 1))));

function battery(one: Thing, batteries: Battery[]): void {
  const { gear } = one;
  const made: Battery = { count: Math.max(1, Math.min(100, one.count)) };
  if (one.chargeAh >= 0 && one.chargeAh < 1e6) made.capacityAh = rounded(one.chargeAh);
  if (one.energyWh > 0 && one.energyWh < mostAmount) made.energyWh = rounded(one.energyWh);
  if (gear?.chemistry) made.chemistry = gear.chemistry;
  if (one.voltageV > 0) made.voltageV = one.voltageV;
  if (one.percent >= 0) made.stateOfChargePercent = one.percent;
  if (Object.keys(made).length === 1 && one.count === 0) return;
  if (gear?.role) made.role = gear.role;
  batteries.push(made);
}

function panel(one: Thing, solar: Solar[]): void {
  const controller = one.gear?.controller;
  const last = solar.at(-1);
  if (controller && one.powerW === 0) {
    const target = last && !last.controller ? last : undefined;
    if (target) target.controller = controller;
    else if (!last) solar.push({ count: 1, controller });
    return;
  }
  if (one.powerW <= 0) {
    if (one.count > 1 && !last) solar.push({ count: one.count });
    return;
  }
  const made: Solar = {
    count: Math.max(1, Math.min(200, one.count)),
    powerW: rounded(one.powerW),
    ...(controller ? { controller } : {}),
  };
  if (last && last.powerW === undefined) solar[solar.length - 1] = { ...last, ...made };
  else solar.push(made);
}

function charger(state: State, one: Thing, chargers: Charger[]): void {
  const kind = one.gear?.charger ?? kindOf(state, one);
  const made: Charger = { kind };
  if (one.currentA > 0) made.currentA = rounded(one.currentA);
  if (one.powerW > 0 && kind !== 'isolator') made.powerW = rounded(one.powerW);
  const last = chargers.at(-1);
  if (made.currentA === undefined && made.powerW === undefined) {
    // Named only: a fact where it is told as had, not where it is asked about.
    const isAsked =
      state.cues.has('ask-which') ||
      state.cues.has('ask-compare') ||
      state.cues.has('ask-what-size') ||
      state.cues.has('ask-what-is') ||
      /^(or|vs|versus)$/.test(textAt(state, one.at - 1)) ||
      kind === 'mains';
    if (kind === 'generator' || isAsked || chargers.length > 0 || state.cues.has('ask-why')) return;
    chargers.push(made);
    return;
  }
  if (last && last.currentA === undefined && last.powerW === undefined && last.kind !== 'generator') {
    chargers[chargers.length - 1] =
      last.kind === made.kind || !one.gear?.charger ? { ...made, kind: last.kind } : made;
    if (last.kind !== made.kind && one.gear?.charger) chargers.push(last);
  } else chargers.push(made);
}

/** A plain "charger": on mains unless the talk is of driving or the alternator. */
function kindOf(state: State, one: Thing): Charger['kind'] {
  const { cues } = state;
  if (one.isAc || cues.has('mains') || cues.has('generator')) return 'mains';
  return cues.has('alternator') || cues.has('drive') ? 'dcdc' : 'mains';
}

function inverter(state: State, one: Thing): void {
  const wave = one.gear?.wave;
  if (one.powerW <= 0 && !wave) return;
  const old = state.facts.inverter;
  const isSurge = /^(surge|peak)$/.test(wordAt(state, one.at - 1));
  state.facts.inverter = {
    ...old,
    ...(one.powerW > 0 && !isSurge && old?.powerW === undefined ? { powerW: rounded(one.powerW) } : {}),
    ...(isSurge && one.powerW > 0 ? { surgeW: rounded(one.powerW) } : {}),
    ...(wave ? { wave } : {}),
  };
}
