import { all, self, writer } from '../propose/candidates.ts';
import * as slot from '../propose/slots.ts';
import type { Mention } from '../recognise/mention.ts';
import { speakers } from '../words/en/people.ts';
import type { State } from './state.ts';

type Row = Record<string, unknown>;

/** What one message states, literally: the shape of the contract's `understood`. */
export interface Stated {
  loads?: Row[];
  batteries?: Row[];
  solar?: Row[];
  chargers?: Row[];
  claims?: { who: string; value: number; unit: string }[];
  [key: string]: unknown;
}

const round = (value: number): number => Math.round(value * 1e6) / 1e6;

const attributes: Readonly<Record<number, string>> = {
  [slot.loadCurrent]: 'currentA', [slot.loadPower]: 'powerW', [slot.loadStart]: 'startsPowerW', [slot.loadCharge]: 'chargeAhPerDay', [slot.loadEnergy]: 'energyWhPerDay',
  [slot.loadHours]: 'hoursPerDay', [slot.loadMinutes]: 'minutesPerDay', [slot.loadOnce]: 'hoursOnce', [slot.loadDuty]: 'dutyPercent', [slot.loadAverage]: 'isAverage',
  [slot.supplyAc]: 'supply', [slot.supplyDc]: 'supply',
  [slot.capacity]: 'capacityAh', [slot.batteryEnergy]: 'energyWh', [slot.batteryChemistry]: 'chemistry', [slot.batteryRole]: 'role', [slot.batteryVolts]: 'voltageV',
  [slot.batteryLevel]: 'stateOfChargePercent', [slot.batteryUsedShare]: 'stateOfChargePercent', [slot.batteryAge]: 'ageYears', [slot.batteryLimit]: 'maxCurrentA',
  [slot.solarPower]: 'powerW', [slot.solarController]: 'controller', [slot.solarOpenVolts]: 'openCircuitV',
  [slot.chargerCurrent]: 'currentA', [slot.chargerPower]: 'powerW', [slot.count]: 'count',
};

/** Facts that stand by themselves: where they go, with a kind behind a colon for what the slot itself tells. */
const plain: Readonly<Record<number, readonly [group: string, key: string]>> = {
  [slot.alternatorCurrent]: ['', 'alternatorA'], [slot.inverterPower]: ['inverter', 'powerW'], [slot.inverterSurge]: ['inverter', 'surgeW'],
  [slot.cableLength]: ['cable', 'lengthM'], [slot.cableRound]: ['cable', 'lengthM'], [slot.cableArea]: ['cable', 'areaMm2'], [slot.cableAwg]: ['cable', 'awg'], [slot.cableAuto]: ['cable', 'autoCableMm'],
  [slot.cableCurrent]: ['cable', 'currentA'], [slot.cableDrop]: ['cable', 'dropLimitPercent'], [slot.fuse]: ['', 'fuseA'], [slot.useCharge]: ['', 'dailyUseAh'], [slot.useEnergy]: ['', 'dailyUseWh'],
  [slot.systemVolts]: ['', 'systemVoltageV'], [slot.volts]: ['', 'volts'], [slot.voltsRest]: ['', 'volts'], [slot.voltsLoad]: ['', 'volts'], [slot.voltsCharging]: ['', 'volts'],
  [slot.currentOut]: ['', 'netCurrentA'], [slot.currentIn]: ['', 'netCurrentA'], [slot.chargeUsed]: ['', 'chargeUsedAh'], [slot.chargeLeft]: ['', 'chargeLeftAh'],
  [slot.target]: ['', 'targetChargePercent'], [slot.depth]: ['', 'depthOfDischargePercent'], [slot.depthFloor]: ['', 'depthOfDischargePercent'],
  [slot.duration]: ['', 'durationH'], [slot.driving]: ['', 'drivingHoursPerDay'], [slot.ambient]: ['', 'ambientC'], [slot.month]: ['', 'month'],
};
const taken: Readonly<Record<number, string>> = { [slot.voltsRest]: 'rest', [slot.voltsLoad]: 'load', [slot.voltsCharging]: 'charging' };
const named: Readonly<Record<number, string>> = { [slot.sky]: 'sky', [slot.shade]: 'shade', [slot.mount]: 'mount', [slot.arrangement]: 'arrangement', [slot.place]: 'place', [slot.until]: 'until' };

const nameOf = (m: Mention): Row => (m.kind === 'thing' || m.kind === 'noun' || m.kind === 'inverter' || m.kind === 'charger' ? { name: m.text } : {});
export const whoOf = (m: Mention | undefined): string => (!m || speakers.has(m.text) ? 'i' : (m.raw ?? m.text));

const claimUnit = (m: Mention): string => (m.kind === 'number' ? '' : m.unit === 'm' && m.dimension === 'length' ? 'm' : (m.unit ?? ''));

const nowhere: ReadonlySet<number> = new Set();

/**
 * The facts that a decided state tells.
 * @param onMains loads (by their mentions) that run on mains
 * @param spokenOf the thing of the talk before that a figure without a name is of
 */
export function assemble(state: State, onMains: ReadonlySet<number> = nowhere, spokenOf?: string): Stated {
  const { mentions, slots, owners, values } = state;
  const out: Stated = {};
  const rows = new Map<number, Row>();
  const of = (list: 'loads' | 'batteries' | 'solar' | 'chargers', at: number, base: Row): Row => {
    const row = base;
    (out[list] ??= []).push(row);
    rows.set(at, row);
    return row;
  };
  const loads = state.loads();
  for (const i of loads) {
    const named = nameOf(mentions[i]!);
    const base = named.name === undefined && spokenOf !== undefined ? { name: spokenOf } : named;
    of('loads', i, onMains.has(i) ? { ...base, supply: 'ac' } : base);
  }
  const batteries = state.batteries();
  // Kinds and levels that stand alone colour one battery.
  for (const i of batteries) of('batteries', i, {});
  for (const i of state.panels()) of('solar', i, {});
  for (const i of state.chargers()) {
    const kind = slot.chargerKinds[slots[i]!];
    of('chargers', i, kind ? { kind } : { kind: 'mains' });
  }
  const nearestRow = (anchors: readonly number[], at: number): Row | undefined => {
    let best: number | undefined;
    for (const a of anchors) if (best === undefined || Math.abs(a - at) < Math.abs(best - at)) best = a;
    return best === undefined ? undefined : rows.get(best);
  };
  const without: string[] = [];
  const removed: string[] = [];
  for (let i = 0; i < slots.length; i++) {
    const s = slots[i]!;
    if (s <= slot.same) continue;
    const m = mentions[i]!;
    const value = round(values[i]!);
    const owner = owners[i]!;
    const attribute = attributes[s];
    if (attribute) {
      const told: unknown = s === slot.loadAverage ? true : s === slot.supplyAc ? 'ac' : s === slot.supplyDc ? 'dc' : s === slot.batteryChemistry || s === slot.batteryRole || s === slot.solarController ? m.key : value;
      const kindRow = slot.slots[s]!;
      if (owner === all) {
        const group = kindRow.owner === 'load' ? loads : kindRow.owner === 'battery' ? batteries : state.panels();
        for (const at of group) rows.get(at)![attribute] ??= told;
      } else if (owner === self) rows.get(i)![attribute] = told;
      else if (owner >= 0) {
        const row = rows.get(owner) ?? rowOfKind(state, owner, rows, batteries, out);
        if (row) row[attribute] = told;
      } else {
        const row = nearestRow(batteries, i) ?? of('batteries', i, {});
        row[attribute] = told;
      }
      const variant = state.variants[i]! >= 0 ? m.variants[state.variants[i]!] : undefined;
      if (variant?.why === 'product') (rows.get(owner === self ? i : owner) ?? {}).count = variant.count;
      continue;
    }
    const fact = plain[s];
    if (fact) {
      const [group, key] = fact;
      const into = group ? ((out[group] as Row | undefined) ?? (out[group] = {})) : (out as Row);
      (into as Row)[key] = value;
      if (s === slot.cableRound) (into as Row).isRoundTrip = true;
      if (taken[s]) out.voltsTaken = taken[s];
    } else if (s === slot.shade) out.shade = true;
    else if (named[s]) out[named[s]!] = s === slot.place ? (m.raw ?? m.key) : m.key;
    else if (s === slot.without) without.push(m.key);
    else if (s === slot.removed) removed.push(m.text);
    else if (s === slot.inverterWave) ((out.inverter as Row | undefined) ?? (out.inverter = {} as Row)) && ((out.inverter as Row).wave = m.key);
    else if (s === slot.alternatorSmart) out.alternator = 'smart';
    else if (s === slot.alternatorFixed) out.alternator = 'fixed';
    else if (slot.claims.has(s)) {
      const v = state.variants[i]! >= 0 ? m.variants[state.variants[i]!] : undefined;
      const scale = m.told !== 0 && Number.isFinite(m.told) ? m.value / m.told : 1;
      const told = v ? v.value / scale : m.told;
      (out.claims ??= []).push({ who: owner === writer ? 'i' : whoOf(mentions[owner]), value: round(m.isNegative && m.dimension === 'temperature' ? -told : told), unit: s === slot.claim ? claimUnit(m) : slot.slots[s]!.name.slice(6) });
    }
  }
  if (mentions.some((m, i) => m.kind === 'inverter' && slots[i] !== slot.load)) out.inverter ??= {};
  if (out.claims) {
    const unit = out.claims.find(c => c.unit !== '')?.unit;
    if (unit) for (const c of out.claims) if (c.unit === '') c.unit = unit;
  }
  if (without.length > 0) out.without = [...new Set(without)];
  if (removed.length > 0) out.removed = [...new Set(removed)];
  return out;
}

/** The row of a thing that owns a count and has no row of its own: "two lithiums" counts what that word colours. */
function rowOfKind(state: State, owner: number, rows: ReadonlyMap<number, Row>, batteries: readonly number[], out: Stated): Row | undefined {
  const m = state.mentions[owner]!;
  if (m.kind === 'solar') {
    const [first] = state.panels();
    if (first !== undefined) return rows.get(nearestOf(state.panels(), owner)!);
    const row: Row = {};
    (out.solar ??= []).push(row);
    return row;
  }
  if (m.kind === 'chemistry' || m.kind === 'battery' || m.kind === 'role') {
    const to = state.owners[owner]!;
    if (to >= 0 && rows.get(to)) return rows.get(to);
    const near = nearestOf(batteries, owner);
    if (near !== undefined) return rows.get(near);
    const row: Row = {};
    (out.batteries ??= []).push(row);
    return row;
  }
  return undefined;
}

const nearestOf = (anchors: readonly number[], at: number): number | undefined => {
  let best: number | undefined;
  for (const a of anchors) if (best === undefined || Math.abs(a - at) < Math.abs(best - at)) best = a;
  return best;
};
