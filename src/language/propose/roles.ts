import type { Dimension } from '#quantity/units.ts';
import type { Mention, MentionKind } from '../recognise/mention.ts';
import { answersOf } from './answers.ts';
import { ofLabel } from './label-slots.ts';
import { slotsOfRuledOut } from './ruled-out.ts';
import {
  alternatorCurrent,
  alternatorFixed,
  alternatorSmart,
  ambient,
  arrangement,
  batteryAge,
  batteryChemistry,
  batteryCount,
  batteryEnergy,
  batteryLevel,
  batteryLimit,
  batteryRole,
  batteryUsedShare,
  batteryVolts,
  cableArea,
  cableAuto,
  cableAwg,
  cableCurrent,
  cableDrop,
  cableLength,
  cableRound,
  capacity,
  chargeLeft,
  chargerCurrent,
  chargerDcdc,
  chargerGenerator,
  chargerIsolator,
  chargerMains,
  chargerPower,
  chargeUsed,
  claim,
  claimPercent,
  claims,
  count,
  currentIn,
  currentOut,
  depth,
  depthFloor,
  driving,
  duration,
  fuse,
  inverterPower,
  inverterSurge,
  inverterWave,
  load,
  loadAverage,
  loadCharge,
  loadCurrent,
  loadDuty,
  loadEnergy,
  loadHours,
  loadMinutes,
  loadOnce,
  loadPower,
  loadStart,
  month,
  mount,
  panelCount,
  place,
  removed,
  same,
  shade,
  sky,
  solarController,
  solarOpenVolts,
  solarPower,
  sunCharge,
  sunEnergy,
  sunHours,
  systemVolts,
  target,
  until,
  useCharge,
  useEnergy,
  volts,
  voltsCharging,
  voltsLoad,
  voltsRest,
} from './slots.ts';

/** Which slots an amount of a dimension may fill. */
const byDimension: Partial<Record<Dimension, readonly number[]>> = {
  current: [
    loadCurrent,
    chargerCurrent,
    cableCurrent,
    fuse,
    alternatorCurrent,
    currentOut,
    currentIn,
    batteryLimit,
    // "A 100 amp lithium", "90 amps left": amp hours, said short.
    capacity,
    chargeLeft,
    chargeUsed,
    claim,
  ],
  charge: [
    capacity,
    loadCharge,
    useCharge,
    sunCharge,
    chargeUsed,
    chargeLeft,
    // "Draws 1 amp hour", "a 25Ah charger": amps, said long.
    loadCurrent,
    chargerCurrent,
    claim,
  ],
  power: [loadPower, loadStart, solarPower, inverterPower, inverterSurge, chargerPower, claim],
  energy: [batteryEnergy, loadEnergy, useEnergy, sunEnergy, claim],
  voltage: [batteryVolts, systemVolts, volts, voltsRest, voltsLoad, voltsCharging, solarOpenVolts, claim],
  time: [duration, loadHours, loadMinutes, loadOnce, driving, claim],
  length: [cableLength, cableRound, cableAuto, claim],
  area: [cableArea, claim],
  gauge: [cableAwg, claim],
  temperature: [ambient],
  percent: [batteryLevel, batteryUsedShare, target, depth, depthFloor, loadDuty, cableDrop, claim],
  distance: [],
  other: [],
  sun: [sunHours],
};
/** "45 Wh an hour" is 45 W, "2 Ah an hour" 2 A. */
const anHour: Partial<Record<Dimension, readonly number[]>> = {
  charge: [loadCurrent, chargerCurrent, currentOut, currentIn, claim],
  energy: [loadPower, claim],
  // "20 minutes an hour": a third of the time.
  time: [loadDuty, duration, claim],
};
const ofNumber: readonly number[] = [
  count,
  batteryCount,
  panelCount,
  loadCurrent,
  loadPower,
  capacity,
  batteryEnergy,
  solarPower,
  inverterPower,
  inverterSurge,
  loadStart,
  chargerCurrent,
  fuse,
  cableArea,
  cableLength,
  cableAwg,
  cableCurrent,
  volts,
  voltsRest,
  voltsLoad,
  voltsCharging,
  batteryLevel,
  target,
  depth,
  depthFloor,
  duration,
  loadHours,
  loadMinutes,
  loadOnce,
  driving,
  useCharge,
  useEnergy,
  sunCharge,
  sunHours,
  currentOut,
  currentIn,
  ambient,
  chargeUsed,
  chargeLeft,
  loadCharge,
  loadEnergy,
  batteryAge,
  batteryVolts,
  systemVolts,
  solarOpenVolts,
  loadDuty,
  alternatorCurrent,
  batteryLimit,
  ...claims,
];
const byKind: Partial<Record<MentionKind, readonly number[]>> = {
  thing: [load, same, removed],
  noun: [load, same, place],
  level: [batteryLevel, target, depthFloor, claimPercent],
  always: [loadHours, loadAverage],
  inverter: [load, removed],
  solar: [removed],
  monitor: [load, same, removed],
  regulator: [load, same],
  chemistry: [batteryChemistry],
  role: [batteryRole],
  controller: [solarController],
  wave: [inverterWave],
  arrangement: [arrangement],
  mount: [mount, batteryLevel],
  sky: [sky],
  shade: [shade],
  month: [month],
  place: [place],
  clock: [until],
  average: [loadAverage, loadHours],
};
const chargerOf: Readonly<Record<string, number>> = {
  dcdc: chargerDcdc,
  isolator: chargerIsolator,
  mains: chargerMains,
  generator: chargerGenerator,
};
const years: readonly number[] = [batteryAge];
const months: readonly number[] = [duration, batteryAge];
const cold: readonly number[] = [ambient];
const areaToo: readonly number[] = [cableArea];
const placeOnly: readonly number[] = [place];
const thingOrPlace: readonly number[] = [load, same, removed, place];
const leadAcid: readonly number[] = [batteryChemistry];
const rateSlots: Readonly<Record<string, readonly number[]>> = { allday: [loadHours], week: [duration] };
const spanSlots: readonly number[] = [until, duration, loadHours, loadOnce, driving];

/** The slots that a mention may fill, besides none. */
export function slotsOf(m: Mention): readonly number[] {
  if (m.kind === 'word') return answersOf(m.text);
  if (m.label) return ofLabel[m.label];
  if (m.kind === 'amount') {
    if (m.unit === 'years' || (m.unit === 'months' && m.spelled?.endsWith('old'))) return years;
    if (m.unit === 'months') return months;
    const own = (m.rate === 'hour' && anHour[m.dimension!]) || (byDimension[m.dimension!] ?? []);
    if (m.unit === 'mm') return [...own, ...areaToo];
    // "Minus ten nights" are cold; "- 3 days" may be a stay after a dash.
    if (m.isNegative && m.dimension === 'time') return [...cold, ...own];
    return m.otherDimension ? [...own, ...(byDimension[m.otherDimension] ?? [])] : own;
  }
  if (m.kind === 'number') return ofNumber;
  if (m.kind === 'clock') return m.variants.length > 0 ? spanSlots : byKind.clock!;
  if (m.kind === 'charger')
    return m.key === 'any'
      ? [chargerMains, chargerDcdc, same, load]
      : m.key === 'mains'
        ? [chargerMains, same, load]
        : [chargerOf[m.key]!, same];
  if (m.kind === 'cable') return m.key === 'lead-acid' ? leadAcid : [];
  if (m.kind === 'rate') return rateSlots[m.key] ?? [];
  // "Not to get the generator wet": it is there all the same.
  if (m.kind === 'without') return slotsOfRuledOut(m.key);
  if (m.kind === 'person') return m.isLed ? placeOnly : [];
  if (m.kind === 'thing' && m.isLed) return thingOrPlace;
  if (m.kind === 'mains') return [chargerMains, same];
  if (m.kind === 'alternator')
    return m.key === 'smart' ? [alternatorSmart] : m.key === 'fixed' ? [alternatorFixed] : [];
  return byKind[m.kind] ?? [];
}

/** In which turn a mention is decided: things before their figures, figures before what colours them. */
export function turnOf(m: Mention): number {
  switch (m.kind) {
    case 'thing':
    case 'noun':
    case 'inverter':
    case 'monitor':
    case 'regulator':
      return 0;
    case 'charger':
    case 'mains':
    case 'alternator':
      return 1;
    case 'amount':
      return m.dimension === 'charge' ||
        m.dimension === 'energy' ||
        m.dimension === 'power' ||
        m.dimension === 'current'
        ? 2
        : m.dimension === 'voltage' || m.dimension === 'percent' || m.unit === 'years'
          ? 6
          : 3;
    case 'clock':
    case 'always':
    case 'rate':
      return 3;
    case 'number':
      return 4;
    case 'chemistry':
    case 'controller':
      return 5;
    case 'role':
    case 'level':
    case 'average':
      return 6;
    default:
      return 7;
  }
}
