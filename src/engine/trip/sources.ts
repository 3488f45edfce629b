import type { Assumption } from '#quantity/range.ts';
import type { Charger } from '#rig/rig.ts';
import type { Trace } from '#rule/trace.ts';
import type { Bank } from '../battery/bank.ts';
import { chemistryRow } from '../battery/tables.ts';
import { type Source, sourceAssumptions, sourceCurrentA } from '../charging/source.ts';
import { chargeRow } from '../charging/tables.ts';
import type { Values } from '../explore.ts';
import {
  dailyYield,
  hourlyShares,
  type SolarCase,
  type SolarValues,
  solarAssumptions,
} from '../solar/model.ts';
import type { Drive } from './balance.ts';
import { drivingFromHour, lowSunShare } from './tables.ts';

/** What the panels are known to bring on a trip. */
export interface TripSun {
  /** Rating of all panels, W. */
  readonly powerW?: number;
  /** A day's yield where told, Ah. */
  readonly ahPerDay?: number;
  readonly sun: SolarCase;
  /** The sky word is for this many days at the end only; before, the average of the climate. */
  readonly skyLastDays?: number;
}

/** Driving of a trip: the same every day, or a plan by day. */
export interface TripDriving {
  readonly hoursPerDay?: number;
  readonly planH?: readonly number[];
  /** What charges while driving; an isolator where nobody said. */
  readonly charger?: Charger;
  readonly alternator?: 'smart' | 'fixed';
}

const lastDays = ' on the last days';
/** The sun before the last days that a sky word is for. */
const before = (trip: TripSun): SolarCase => (trip.skyLastDays ? { ...trip.sun, sky: undefined } : trip.sun);

/** What is taken for granted of the sun; the last days' own sky under names of their own. */
export function sunAssumptions(trip: TripSun): Assumption[] {
  if (trip.ahPerDay !== undefined && !trip.skyLastDays) return [];
  const main = solarAssumptions(before(trip));
  const tail = trip.skyLastDays ? solarAssumptions(trip.sun) : [];
  const own = tail.filter(
    a => !main.some(b => b.name === a.name && b.value === a.value && b.high === a.high),
  );
  return [...main, ...own.map(a => ({ ...a, name: `${a.name}${lastDays}` }))];
}

/** The values for the last days: their own where they have some. */
const tailValues = (values: SolarValues): SolarValues => ({
  ...values,
  ...Object.fromEntries(
    Object.entries(values).flatMap(([name, value]) =>
      name.endsWith(lastDays) ? [[name.slice(0, -lastDays.length), value]] : [],
    ),
  ),
});

/** Shares of a day's sun by the hour as a camp sees it; without a place the day of the equator. */
function campShares(sun: SolarCase): readonly number[] {
  const shares = hourlyShares(sun.latitudeDeg ?? 0, sun.month ?? 3);
  const seen = shares.map(share => Math.max(0, share - lowSunShare));
  const sum = seen.reduce((a, b) => a + b, 0);
  return sum > 0 ? seen.map(share => share / sum) : shares;
}

/** Ah on offer in each hour of a day, by the hours left to the end of the trip; and an average day's yield. */
export function sunByHour(
  trip: TripSun | undefined,
  voltageV: number,
  values: SolarValues,
  trace?: Trace,
): { readonly byHour: (leftH: number) => readonly number[]; readonly dayAh: number } {
  const none = { byHour: () => dark, dayAh: 0 };
  if (!trip) return none;
  const shares = campShares(trip.sun);
  const spread = (dayAh: number) => shares.map(share => share * dayAh);
  const yieldOf = (sun: SolarCase, v: SolarValues, t?: Trace): number =>
    dailyYield({ ...sun, powerW: trip.powerW ?? 100, nominalVoltageV: voltageV }, v, t).dailyYieldAh;
  const isTold = trip.ahPerDay !== undefined;
  if (!isTold && !trip.powerW) return none;
  const usual = isTold && !trip.skyLastDays ? 0 : yieldOf(before(trip), values, isTold ? undefined : trace);
  const dayAh = trip.ahPerDay ?? usual;
  const main = spread(dayAh);
  if (!trip.skyLastDays) return { byHour: () => main, dayAh };
  // A told yield is for the usual sky; the last days bring the same share of it as a panel would.
  const share = usual > 0 ? yieldOf(trip.sun, tailValues(values)) / usual : 1;
  const tail = spread(dayAh * share);
  const tailH = trip.skyLastDays * 24;
  return { byHour: leftH => (leftH <= tailH + 1e-9 ? tail : main), dayAh };
}

const dark: readonly number[] = Array<number>(24).fill(0);

/** Whether there is any driving at all. */
export const drives = (driving: TripDriving | undefined): boolean =>
  !!driving && (!!driving.hoursPerDay || !!driving.planH?.some(h => h > 0));

/** The charger behind the engine as the charging model takes it. */
const sourceOf = (driving: TripDriving | undefined, bank: Bank): Source => ({
  ...(driving?.charger ?? { kind: 'isolator' }),
  alternator: driving?.alternator,
  row: chargeRow(bank.chemistry),
  blocks: bank.voltageV / chemistryRow(bank.chemistry).nominalV,
});

/** What is taken for granted of the charger behind the engine. */
export const drivingAssumptions = (driving: TripDriving | undefined, bank: Bank): Assumption[] =>
  drives(driving) ? sourceAssumptions(sourceOf(driving, bank)) : [];

/** The current (A) on offer while driving. Assumptions without a value have their likely one. */
export function drivingA(
  driving: TripDriving | undefined,
  bank: Bank,
  values: Values,
  trace?: Trace,
): number {
  if (!drives(driving)) return 0;
  const source = sourceOf(driving, bank);
  const likely = Object.fromEntries(sourceAssumptions(source).map(a => [a.name, a.value]));
  return sourceCurrentA(source, { ...likely, ...values }, trace);
}

/** The driving of a day of the trip (day 0 first). */
export function driveOn(driving: TripDriving | undefined): (day: number) => Drive | undefined {
  const at = (hours: number | undefined): Drive | undefined =>
    hours ? { fromHour: Math.min(drivingFromHour, 24 - hours), hours } : undefined;
  if (!driving) return () => undefined;
  if (driving.planH) {
    const plan = driving.planH.map(at);
    return day => plan[day];
  }
  const daily = at(driving.hoursPerDay);
  return () => daily;
}
