import { present } from '#basics/present.ts';
import { without } from '#basics/without.ts';
import type { Cable, Charger, Stated, StatedBattery, StatedLoad, StatedSolar } from './rig.ts';

/**
 * How new facts meet old ones. `state`: said of the same gear, later word wins. `add`: comes on top.
 * `change`: replaces, and keeps what the new word leaves open ("make it 200 Ah" stays AGM).
 */
export type MergeMode = 'state' | 'add' | 'change';

const singular = (name: string): string => name.toLowerCase().replaceAll('-', ' ').replace(/s$/, '');
/** Whether two names mean one thing: "lights" and "light", "e-bike" and "e bike". */
export const isSameName = (a: string, b: string): boolean => singular(a) === singular(b);

const drawKeys = ['currentA', 'powerW', 'energyWhPerDay', 'chargeAhPerDay'] as const;
const timeKeys = ['hoursPerDay', 'minutesPerDay', 'hoursOnce'] as const;
/** Whether it was told what a load draws. */
export const hasDraw = (load: StatedLoad): boolean => drawKeys.some(key => load[key] !== undefined);

/**
 * A load with what is said of it now; its draw stays where none is said.
 * @param isOther another value is put for the same figure, which is meant as it was: an average stays one
 */
export function patchLoad(old: StatedLoad, said: StatedLoad, isOther: boolean): StatedLoad {
  const isSameFigure = isOther && drawKeys.some(key => old[key] !== undefined && said[key] !== undefined);
  const drawn = without(old, ...drawKeys);
  let kept = !hasDraw(said) ? old : isSameFigure ? drawn : without(drawn, 'isAverage', 'dutyPercent');
  if (timeKeys.some(key => said[key] !== undefined)) kept = without(kept, ...timeKeys);
  return { ...kept, ...said };
}

/** Whether a name is the last word of another: "machine" of "coffee machine". */
export const isShortFor = (short: string, name: string): boolean =>
  singular(name).endsWith(` ${singular(short)}`);

/** Whether one name is the other with more said of it: "diesel heater" after "heater". */
function isKindOf(a: string, b: string): boolean {
  const [short = '', long = ''] = [a, b].map(singular).sort((x, y) => x.length - y.length);
  return short !== '' && long.endsWith(` ${short}`);
}

/** Loads: one of the same name is replaced, another joins. What is changed for another kind of it is replaced too. */
function mergeLoads(old: readonly StatedLoad[], said: readonly StatedLoad[], mode: MergeMode): StatedLoad[] {
  const merged = [...old];
  for (const load of said) {
    const named = merged.findIndex(l => isSameName(l.name, load.name));
    const isOther = mode === 'change' && named < 0 && hasDraw(load);
    // "The machine, ten minutes a day" is the coffee machine.
    const short = named < 0 && !hasDraw(load) ? merged.findIndex(l => isShortFor(load.name, l.name)) : -1;
    const at = isOther ? merged.findIndex(l => isKindOf(l.name, load.name)) : named;
    if (short >= 0) {
      const old = present(merged[short]);
      merged[short] = patchLoad(old, { ...load, name: old.name }, mode === 'change');
    } else if (at < 0) merged.push(load);
    else merged[at] = patchLoad(present(merged[at]), load, mode === 'change');
  }
  return merged;
}

const hasSize = (b: StatedBattery): boolean => b.capacityAh !== undefined || b.energyWh !== undefined;
const isStarter = (b: StatedBattery): boolean => b.role === 'starter';

/** Batteries: with a size they replace (or join), without one they only colour those known. */
export function mergeBatteries(
  old: readonly StatedBattery[],
  said: readonly StatedBattery[],
  mode: MergeMode,
): StatedBattery[] {
  if (old.length === 0) return [...said];
  if (mode === 'add' && said.every(hasSize)) return [...old, ...said];
  if (said.some(hasSize)) {
    const lent = mode === 'change' ? old.find(b => !isStarter(b))?.chemistry : undefined;
    const fresh = said.map(b => (b.chemistry || !lent || isStarter(b) ? b : { ...b, chemistry: lent }));
    return [...old.filter(b => isStarter(b) && !said.some(isStarter)), ...fresh];
  }
  if (said.length > 1) return [...said];
  const [{ count, ...rest }] = said as [StatedBattery];
  // "Two of those" says how many, "what if only one" too; a bare "lithium" doesn't say one.
  const least = mode === 'change' ? 1 : 2;
  const patch = count !== undefined && count >= least && old.length === 1 ? { ...rest, count } : rest;
  return old.map(b =>
    isStarter(b) === isStarter(present(said[0])) || present(said[0]).role === undefined
      ? { ...b, ...patch }
      : b,
  );
}

/** Panels: with watts they replace (or join), without they only tell more of those known: how many, the controller, the volts. */
export function mergeSolar(
  old: readonly StatedSolar[],
  said: readonly StatedSolar[],
  mode: MergeMode,
): StatedSolar[] {
  if (old.length === 0) return [...said];
  if (said.every(s => s.powerW !== undefined)) {
    if (mode === 'add') return [...old, ...said];
    const controller = present(old[0]).controller;
    return said.map(s => (controller && !s.controller ? { ...s, controller } : s));
  }
  const [patch = {}] = said.filter(s => s.controller ?? s.openCircuitV ?? s.count);
  const { count, controller, openCircuitV } = patch;
  const isCounted = count !== undefined && count > 1 && old.length === 1;
  return old.map(s => ({
    ...s,
    ...(controller && { controller }),
    ...(openCircuitV !== undefined && { openCircuitV }),
    ...(isCounted && { count }),
  }));
}

function mergeChargers(old: readonly Charger[], said: readonly Charger[]): Charger[] {
  const merged = [...old];
  for (const charger of said) {
    const at = merged.findIndex(c => c.kind === charger.kind);
    if (at < 0) merged.push(charger);
    else {
      const hasRating = charger.currentA !== undefined || charger.powerW !== undefined;
      merged[at] = {
        ...(hasRating ? without(present(merged[at]), 'currentA', 'powerW') : present(merged[at])),
        ...charger,
      };
    }
  }
  return merged;
}

const gauges = ['areaMm2', 'awg', 'autoCableMm'] as const;
function mergeCable(old: Cable, said: Cable): Cable {
  const kept = gauges.some(key => said[key] !== undefined) ? without(old, ...gauges) : old;
  return { ...kept, ...said };
}

/** Facts that tell one thing in two ways: one of them told anew takes the other's place. */
const twoWays = [
  ['days', 'drivingPlanH'],
  ['days', 'drivingHoursPerDay'],
  ['chargeUsedAh', 'chargeLeftAh'],
  ['durationH', 'until'],
] as const satisfies readonly (readonly [keyof Stated, keyof Stated])[];

/** Lays newly said facts over older ones; a later word wins, and nothing unsaid is touched. */
export function mergeFacts(old: Stated, said: Stated, mode: MergeMode = 'state'): Stated {
  const merged: Stated = { ...old, ...said };
  if (said.loads) {
    merged.loads = mergeLoads(old.loads ?? [], said.loads, mode);
    if (said.dailyUseAh === undefined) delete merged.dailyUseAh;
    if (said.dailyUseWh === undefined) delete merged.dailyUseWh;
  } else if (said.dailyUseAh !== undefined || said.dailyUseWh !== undefined) {
    delete merged.loads;
    delete merged[said.dailyUseAh === undefined ? 'dailyUseAh' : 'dailyUseWh'];
  }
  if (said.batteries) merged.batteries = mergeBatteries(old.batteries ?? [], said.batteries, mode);
  if (said.solar) merged.solar = mergeSolar(old.solar ?? [], said.solar, mode);
  if (said.chargers) merged.chargers = mergeChargers(old.chargers ?? [], said.chargers);
  if (said.inverter) merged.inverter = { ...old.inverter, ...said.inverter };
  if (said.cable) merged.cable = mergeCable(old.cable ?? {}, said.cable);
  // Two ways to tell the same: the later one counts.
  for (const [one, other] of twoWays) {
    if (said[one] !== undefined && said[other] === undefined) delete merged[other];
    if (said[other] !== undefined && said[one] === undefined) delete merged[one];
  }
  if (said.place !== undefined) {
    merged.latitudeDeg = said.latitudeDeg;
    merged.longitudeDeg = said.longitudeDeg;
  }
  return merged;
}

/** Words for gear that can be taken out of a rig as a whole. */
const gearWords = new Map<string, readonly (keyof Stated)[]>([
  ['solar', ['solar', 'solarAhPerDay', 'solarWhPerDay']],
  ['alternator', ['alternator', 'alternatorA']],
  ['fuse', ['fuseA']],
  ['panel', ['solar', 'solarAhPerDay', 'solarWhPerDay']],
  ['battery', ['batteries']],
  ['inverter', ['inverter']],
  ['cable', ['cable']],
  ['place', ['place', 'latitudeDeg', 'longitudeDeg']],
]);

/** Takes things out by name: a load, a charger's kind, or a whole sort of gear. Unknown names change nothing. */
export function removeFrom(facts: Stated, names: readonly string[]): Stated {
  let left = { ...facts };
  for (const name of names) {
    if (left.loads)
      left.loads = left.loads.filter(
        l => !isSameName(l.name, name) && !singular(l.name).split(' ').includes(singular(name)),
      );
    if (left.chargers)
      left.chargers = left.chargers.filter(
        c => c.kind !== name && !(name === 'charger' && c.kind !== 'generator'),
      );
    const keys = gearWords.get(singular(name));
    if (keys) left = without(left, ...keys);
  }
  return left;
}
