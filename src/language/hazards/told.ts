import { lately } from '#basics/lately.ts';
import { present } from '#basics/present.ts';
import { areaOfGauge } from '#quantity/gauge.ts';
import type { HazardCode } from '#rig/hazard-codes.ts';
import { meaningOf } from './features.ts';
import {
  alikeSizes,
  ampacityA,
  batteryCurrentA,
  lighterSocketA,
  starterShare,
  usualStarterAh,
} from './limits.ts';

interface ToldLoad {
  readonly name?: string;
  readonly count?: number;
  readonly currentA?: number;
  readonly powerW?: number;
  readonly startsPowerW?: number;
  readonly hoursPerDay?: number;
  readonly hoursOnce?: number;
  readonly supply?: 'dc' | 'ac';
}

interface ToldBattery {
  readonly count?: number;
  readonly capacityAh?: number;
  readonly chemistry?: string;
  readonly voltageV?: number;
  readonly ageYears?: number;
  readonly role?: string;
  readonly maxCurrentA?: number;
}

/** What is known of a question: the message's facts (contract, section 5) with what memory adds. */
export interface Told {
  readonly loads?: readonly ToldLoad[];
  readonly batteries?: readonly ToldBattery[];
  readonly arrangement?: string;
  readonly solar?: readonly object[];
  readonly chargers?: readonly { readonly kind?: string; readonly currentA?: number }[];
  readonly alternatorA?: number;
  readonly inverter?: { readonly powerW?: number };
  readonly cable?: { readonly areaMm2?: number; readonly awg?: number; readonly currentA?: number };
  readonly fuseA?: number;
  readonly systemVoltageV?: number;
  readonly ambientC?: number;
  readonly durationH?: number;
  readonly drivingHoursPerDay?: number;
  readonly days?: readonly { readonly drivingH?: number }[];
  readonly targetChargePercent?: number;
  readonly without?: readonly string[];
  readonly removed?: readonly string[];
  /** Whether frost was told in words, or is likely from place, month and height. */
  readonly frost?: boolean;
  /** Whether place and month are known, and far from frost. */
  readonly isMild?: boolean;
  /** Whether the question is about charging or choosing what will be charged, where the facts alone don't say it. */
  readonly asksCharge?: boolean;
}

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

function isColdCharge(told: Told): boolean {
  const isCold = told.frost === true || (told.ambientC !== undefined && told.ambientC <= 0);
  const isLithium = !!told.batteries?.some(b => b.chemistry === 'lfp');
  const isCharged =
    told.asksCharge === true ||
    !!told.chargers?.length ||
    !!told.solar?.length ||
    told.targetChargePercent !== undefined ||
    (told.drivingHoursPerDay ?? 0) > 0 ||
    !!told.days?.some(day => (day.drivingH ?? 0) > 0);
  return isCold && isLithium && isCharged;
}

/** A lithium bank's own volts for the trade's 12, 24 or 48 V. */
const lithiumVolts = (tradeV: number): number => Math.max(1, Math.round(tradeV / 12.8)) * 12.8;

/** The copper of the cable that was told, mm². */
const areaOf = ({ cable }: Told): number | undefined =>
  cable?.areaMm2 ?? (cable?.awg === undefined ? undefined : areaOfGauge(cable.awg));

/** By so much a cable or fuse must be passed to be named: tables differ by less, and a start is short. */
const clearly = 1.25;

/** Currents asked of a thing against what it may carry, wherever both are known. */
function isOverCurrent(told: Told): boolean {
  const house = (told.batteries ?? []).filter(b => b.role !== 'starter');
  const limits = house.flatMap(b =>
    b.maxCurrentA === undefined ? [] : [b.maxCurrentA * (told.arrangement === 'series' ? 1 : (b.count ?? 1))],
  );
  const voltageV = lithiumVolts(told.systemVoltageV ?? house.find(b => b.voltageV)?.voltageV ?? 12);
  const loads = (told.loads ?? []).filter(load => !told.removed?.includes(load.name ?? ''));
  const isAc = (load: ToldLoad): boolean =>
    load.supply === 'ac' || (load.supply === undefined && told.inverter !== undefined);
  const powers = loads.flatMap(load =>
    load.powerW !== undefined && isAc(load)
      ? [Math.max(load.powerW, load.startsPowerW ?? 0) * (load.count ?? 1)]
      : [],
  );
  const powerW = powers.length > 0 ? Math.max(...powers) : (told.inverter?.powerW ?? 0);
  const dcA = Math.max(
    0,
    ...loads.flatMap(load =>
      load.currentA !== undefined && !isAc(load) ? [load.currentA * (load.count ?? 1)] : [],
    ),
  );
  const drawA = Math.max(powerW > 0 ? batteryCurrentA(powerW, voltageV) : 0, dcA);
  if (
    limits.length > 0 &&
    (drawA > sum(limits) ||
      (told.chargers ?? []).some(c => c.currentA !== undefined && c.currentA > sum(limits)))
  )
    return true;
  const area = areaOf(told);
  if (area !== undefined && (told.cable?.currentA ?? 0) > ampacityA(area)) return true;
  if (area !== undefined && told.fuseA !== undefined && told.fuseA > ampacityA(area)) return true;
  const throughA = Math.max(told.inverter === undefined ? 0 : batteryCurrentA(powerW, voltageV), dcA);
  if (area !== undefined && throughA > clearly * ampacityA(area)) return true;
  const isOnFuse = area === undefined && loads.length <= 1 && told.fuseA !== undefined;
  if (isOnFuse && throughA > clearly * (told.fuseA ?? Infinity)) return true;
  const bankAh = sum(
    house.flatMap(b => (b.chemistry === 'lfp' ? [(b.capacityAh ?? 0) * (b.count ?? 1)] : [])),
  );
  const isBare = !!told.chargers?.some(c => c.kind === 'isolator') || !!told.without?.includes('dcdc');
  return told.alternatorA !== undefined && isBare && bankAh > 0;
}

const isLead = (chemistry: string): boolean => chemistry !== 'lfp';

/** Batteries side by side that are unlike: chemistry, age or size. */
function isMixed({ batteries = [], arrangement }: Told): boolean {
  if (arrangement !== 'parallel' || batteries.length < 2) return false;
  const kinds = new Set(batteries.flatMap(b => (b.chemistry === undefined ? [] : [b.chemistry])));
  const sizes = batteries.flatMap(b => (b.capacityAh === undefined ? [] : [b.capacityAh]));
  const ages = batteries.map(b => b.ageYears ?? 0);
  const isOtherKind = kinds.size > 1 && !([...kinds].every(isLead) && kinds.has('lead-acid'));
  return (
    isOtherKind ||
    (sizes.length > 1 && Math.max(...sizes) > alikeSizes * Math.min(...sizes)) ||
    Math.max(...ages) - Math.min(...ages) >= 1
  );
}

/** Which part of the starter battery the loads take, where there is no other battery for them. */
function starterShareOf({ batteries = [], loads = [], durationH }: Told): number | undefined {
  const starter = batteries.find(b => b.role === 'starter');
  if (!starter || batteries.some(b => b.role === 'house')) return undefined;
  const takenAh = sum(
    loads.map(load => {
      const currentA = (load.currentA ?? (load.powerW ?? 0) / 12) * (load.count ?? 1);
      return currentA * (load.hoursOnce ?? durationH ?? load.hoursPerDay ?? 0);
    }),
  );
  return takenAh / (starter.capacityAh ?? usualStarterAh);
}

/** Whether draw and hours of all that runs are told: what is not told could take the rest of the battery. */
const isAllTold = ({ loads = [], durationH }: Told): boolean =>
  loads.every(
    load =>
      (load.currentA ?? load.powerW) !== undefined &&
      (load.hoursOnce ?? durationH ?? load.hoursPerDay) !== undefined,
  );

/** Whether what something is called means that somebody's health hangs on it. */
const meansMedical = lately(name => meaningOf(name).some(({ concept }) => concept === 'medical'));

/** Whether something told keeps somebody well. */
export const isMedicalTold = ({ loads = [], removed = [] }: Told): boolean =>
  loads.some(({ name = '' }) => !removed.includes(name) && meansMedical(name));

/** The dangers that facts and memory show, whatever words they were told in. */
export function hazardsOf(told: Told): readonly HazardCode[] {
  const found: HazardCode[] = [];
  if (isOverCurrent(told)) found.push('over-current');
  if (isColdCharge(told)) found.push('cold-charge');
  if (isMixed(told)) found.push('mixed-parallel');
  if (isMedicalTold(told)) found.push('medical');
  if ((starterShareOf(told) ?? 0) > starterShare) found.push('starter-flat');
  return found;
}

/** Several batteries side by side of one kind and about one size, none of a told age. */
function isAlike({ batteries = [], arrangement }: Told): boolean {
  const kinds = new Set(batteries.map(b => b.chemistry));
  const sizesAh = batteries.map(b => b.capacityAh ?? Number.NaN);
  const hasAges = batteries.some(b => b.ageYears !== undefined);
  const isSeveral = batteries.length > 1 || (batteries[0]?.count ?? 1) > 1;
  return (
    arrangement === 'parallel' &&
    isSeveral &&
    !hasAges &&
    kinds.size === 1 &&
    Math.max(...sizesAh) <= alikeSizes * Math.min(...sizesAh)
  );
}

/** So little out of a starter battery that no start is in doubt, common practice. */
const littleShare = 0.15;

/** Whether an inverter carries all that is told to run on it, with nothing else told that could be passed, at 1 C at most. */
export function isWithinInverter({
  batteries = [],
  loads = [],
  inverter,
  cable,
  fuseA,
  alternatorA,
}: Told): boolean {
  const isOther =
    cable !== undefined ||
    fuseA !== undefined ||
    alternatorA !== undefined ||
    batteries.some(b => b.maxCurrentA !== undefined);
  if (inverter?.powerW === undefined || loads.length === 0 || isOther) return false;
  if (!loads.every(load => load.powerW !== undefined)) return false;
  const powerW = sum(loads.map(load => (load.powerW ?? 0) * (load.count ?? 1)));
  const bankAh = sum(batteries.map(b => (b.capacityAh ?? 0) * (b.count ?? 1)));
  const voltageV = lithiumVolts(batteries.find(b => b.voltageV)?.voltageV ?? 12);
  return powerW <= inverter.powerW && (bankAh === 0 || batteryCurrentA(powerW, voltageV) <= bankAh);
}

/** Whether fuse and cable are told, and the cable carries the fuse. */
export function isWithinCable(told: Told): boolean {
  const areaMm2 = areaOf(told);
  return areaMm2 !== undefined && told.fuseA !== undefined && told.fuseA <= ampacityA(areaMm2);
}

/** Of a lighter socket's rating what runs on it for hours; common practice. */
const lighterShare = 0.8;

/** Whether all that is told to run is told with its draw, and a lighter socket carries it together. */
export function isWithinLighter({ loads = [], inverter, fuseA }: Told): boolean {
  const currents = loads.map(
    ({ currentA, powerW, supply, count = 1 }) =>
      count *
      (currentA ??
        (powerW === undefined
          ? Infinity
          : supply === 'ac' || inverter !== undefined
            ? batteryCurrentA(powerW)
            : powerW / 12)),
  );
  return loads.length > 0 && sum(currents) <= lighterShare * Math.min(lighterSocketA, fuseA ?? Infinity);
}

/** Whether a limit and what is asked of it are both told, and the limit holds. */
function isWithinLimits(told: Told): boolean {
  const { batteries = [], loads = [], chargers = [], inverter, cable, fuseA } = told;
  const isDrawn =
    inverter?.powerW !== undefined ||
    loads.some(load => load.powerW !== undefined || load.currentA !== undefined) ||
    (chargers.length === 1 && present(chargers[0]).currentA !== undefined && !told.solar?.length);
  const isOfBattery = batteries.some(b => b.maxCurrentA !== undefined) && isDrawn && fuseA === undefined;
  const isOfCable = areaOf(told) !== undefined && (cable?.currentA ?? fuseA) !== undefined;
  const isOfFuse =
    fuseA !== undefined &&
    loads.length === 1 &&
    present(loads[0]).currentA !== undefined &&
    batteries.length === 0;
  return (cable === undefined ? isOfBattery || isOfFuse : isOfCable) && !isOverCurrent(told);
}

/**
 * The dangers that facts rule out, although the words of a message may sound like them: a limit that holds, a
 * temperature above freezing, hardly anything taken from the starter.
 */
export function ruledOut(told: Told): readonly HazardCode[] {
  const found: HazardCode[] = [];
  if (isWithinLimits(told)) found.push('over-current');
  const isWarm = told.ambientC === undefined ? told.isMild === true : told.ambientC >= 3;
  const isMild = isWarm && told.frost !== true;
  const kinds = (told.batteries ?? []).flatMap(b => b.chemistry ?? []);
  if (isMild || (kinds.length > 0 && kinds.every(isLead))) found.push('cold-charge');
  if (isAlike(told)) found.push('mixed-parallel');
  const share = starterShareOf(told);
  if (share !== undefined && share > 0 && share <= littleShare && isAllTold(told)) found.push('starter-flat');
  return found;
}
