import type { Assumption } from '#quantity/range.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Bank } from '../battery/bank.ts';
import { chargingOf, storageAssumptions, timeConstantAssumption } from '../battery/charging.ts';
import { batteryTemperature, type Stand } from '../battery/temperature.ts';
import { bankAssumptions, usableCapacityAh } from '../battery/usable.ts';
import { taken, type Values } from '../explore.ts';
import { dayOf, type Use, useAssumptions } from '../loads/model.ts';
import { airAboutFridge, type Where } from '../solar/air.ts';
import { type Balance, type BalanceHour, balance, type SunOffer } from './balance.ts';
import { type Plan, planOf, type TripDay } from './plan.ts';
import { dayHours, useByHour } from './profile.ts';
import { chargeAtPoint, chargeLevel } from './rules.ts';
import {
  drivingA,
  drivingAssumptions,
  plugAssumptions,
  pluggedA,
  type TripDriving,
  type TripPlug,
} from './sources.ts';
import { type Skies, skiesOf, sunOffers, type TripSun } from './suns.ts';
import { arrivalHour, drivingFromHour } from './tables.ts';

/** A trip: the battery, what runs on it, what fills it, and for how long. */
export interface Trip {
  readonly bank: Bank;
  /** Share the person will use, %. */
  readonly depthPercent?: number;
  readonly use: Use;
  readonly sun?: TripSun;
  readonly driving?: TripDriving;
  /** The days as told, first day first; what a day leaves open is as on every day. */
  readonly days?: readonly TripDay[];
  /** What charges on the days that have a generator or mains. */
  readonly plug?: TripPlug;
  /** Where it goes, for the battery's temperature; by default where the sun is. */
  readonly where?: Where;
  readonly stand?: Stand;
  readonly durationH: number;
  /** Hour of the first day it starts at; default 4 pm, or with the first drive of a plan. */
  readonly startHour?: number;
}

const isDriven = ({ driving, days = [] }: Trip): boolean =>
  days.some(day => day.drivingH !== undefined)
    ? days.some(day => (day.drivingH ?? 0) > 0)
    : !!driving?.hoursPerDay;
const isPlugged = ({ days = [] }: Trip): boolean =>
  days.some(day => (day.generatorH ?? 0) > 0 || (day.mainsH ?? 0) > 0);

/** The hour a trip starts at: as told, else with the first day's drive of a plan, else in the afternoon. */
export const startOf = (trip: Trip): number =>
  trip.startHour ?? (trip.days?.[0]?.drivingH ? drivingFromHour : arrivalHour);

/** Air about the fridge over day and night, from the place or latitude and the month where known. */
function airAssumption(trip: Trip): Assumption | undefined {
  const where = trip.sun?.sun;
  return where?.latitudeDeg === undefined || where.month === undefined ? undefined : airAboutFridge(where);
}

/** What of a trip stays the same whatever is assumed: laid out once, however often it is run. */
interface Laid {
  readonly plan: Plan;
  readonly skies?: Skies;
  readonly isDriven: boolean;
  readonly isPlugged: boolean;
}

const laidOut = new WeakMap<Trip, Laid>();

function laidOf(trip: Trip): Laid {
  const known = laidOut.get(trip);
  if (known) return known;
  const { days: told = [], sun, durationH } = trip;
  const days = Math.max(1, Math.ceil((startOf(trip) + durationH) / dayHours));
  // The sun of a trip varies with its days, the more the fewer they are.
  const overDays = Math.max(1, durationH / dayHours);
  const skies =
    sun &&
    skiesOf(
      { ...sun, sun: { ...sun.sun, overDays } },
      trip.bank.voltageV,
      told.map(day => day.sky),
    );
  const laid: Laid = {
    plan: planOf(days, told, trip.driving?.hoursPerDay ?? 0, day => skies?.placeOf(told[day]?.sky) ?? 0),
    skies,
    isDriven: isDriven(trip),
    isPlugged: isPlugged(trip),
  };
  laidOut.set(trip, laid);
  return laid;
}

/** A trip with another battery, another panel or other driving: what that leaves as it was isn't laid out again. */
export function varied(trip: Trip, change: Partial<Pick<Trip, 'bank' | 'sun' | 'driving' | 'days'>>): Trip {
  const other = { ...trip, ...change };
  if (change.sun && !trip.sun) return other;
  const laid = laidOf(trip);
  const isMoved = change.driving !== undefined || change.days !== undefined;
  const days = other.days ?? [];
  const skyOf = (day: number): number => laid.plan.skies[day]!;
  laidOut.set(other, {
    ...laid,
    ...(isMoved && {
      plan: planOf(laid.plan.days, days, other.driving?.hoursPerDay ?? 0, skyOf),
      isDriven: isDriven(other),
    }),
  });
  return other;
}

/** Everything a trip takes for granted. */
export function tripAssumptions(trip: Trip): Assumption[] {
  const air = airAssumption(trip);
  const use = useAssumptions(trip.use).map(a => (a.name === 'ambientC' && air ? air : a));
  const laid = laidOf(trip);
  const isCharged = !!trip.sun || laid.isDriven || laid.isPlugged;
  const { bank } = trip;
  return [
    ...bankAssumptions(
      bank,
      trip.depthPercent,
      trip.use.ambientC === undefined
        ? batteryTemperature(trip.where ?? trip.sun?.sun ?? {}, trip.stand)
        : undefined,
    ),
    ...use,
    ...(laid.skies?.assumptions ?? []),
    ...(laid.isDriven ? drivingAssumptions(trip.driving, bank) : []),
    ...(laid.isPlugged ? plugAssumptions(trip.plug ?? {}, bank) : []),
    ...(isCharged ? storageAssumptions(bank.chemistry) : []),
    // Lithium's last part is over in minutes.
    ...(isCharged && bank.chemistry !== 'lfp' ? [timeConstantAssumption(bank.chemistry)] : []),
  ];
}

/** A trip worked out for one set of values. Percentages are of what the battery really holds. */
export interface TripResult {
  readonly lowestCharge: number;
  readonly endCharge: number;
  /** Lowest charge less the limit, in points of percent: below nought it goes too deep. */
  readonly margin: number;
  readonly dailyUse: number;
  /** On an average day, Ah, before what the battery can't take. */
  readonly dailySun: number;
  readonly capacityAh: number;
  readonly balance: Balance;
}

const noShares: readonly number[] = Array<number>(dayHours).fill(0);
const noSun: { readonly offers: readonly SunOffer[]; readonly dayAh: number } = {
  offers: [{ dayWh: 0, dayAh: 0 }],
  dayAh: 0,
};

/**
 * The trip hour by hour.
 * @param isOverAtLimit goes no further than the limit: for whether it lasts
 */
export function simulate(
  trip: Trip,
  values: Values,
  trace?: Trace,
  record?: (hour: BalanceHour) => void,
  isOverAtLimit = false,
): TripResult {
  const { bank, use } = trip;
  const { plan, skies, isDriven: drives, isPlugged: plugs } = laidOf(trip);
  const day = dayOf(use, values, trace);
  const depth = taken(values, 'depthOfDischarge');
  const temperatureC = use.ambientC ?? values.batteryTemperature;
  const capacityAh = usableCapacityAh(
    { bank, currentA: day.currentA, temperatureC, share: 1 },
    values,
    trace,
  );
  const { offers, dayAh: dailySun } = skies ? sunOffers(trip.sun!, skies, values, trace) : noSun;
  const startAh = (capacityAh * (bank.stateOfChargePercent ?? 100)) / 100;
  const plugA = plugs ? pluggedA(trip.plug ?? {}, bank, values, trace) : 0;
  const account = balance(
    {
      battery: chargingOf(bank, { capacityAh, temperatureC }, values),
      nominalV: bank.voltageV,
      startAh,
      startHour: startOf(trip),
      durationH: trip.durationH,
      useByHour: useByHour(day, use.ambientC ?? values.ambientC ?? 25),
      sunShares: skies?.shares ?? noShares,
      plan,
      suns: offers,
      lastSkyH: skies?.lastSkyH ?? 0,
      drivingA: drives ? drivingA(trip.driving, bank, values, trace) : 0,
      generatorA: plugA,
      mainsA: plugA,
      limitAh: capacityAh * (1 - depth),
      isOverAtLimit,
    },
    record,
  );
  const level = (sums: { readonly outAh: number; readonly storedAh: number }): number => {
    const q = run(chargeAtPoint, { q_0: startAh, Q_out: sums.outAh, Q_in: sums.storedAh }, trace);
    return Math.max(0, run(chargeLevel, { q, C_real: capacityAh }, trace));
  };
  const lowestCharge = level(account.toLowest);
  const endCharge = level(account.sums);
  return {
    lowestCharge,
    endCharge,
    margin: lowestCharge - 100 * (1 - depth),
    dailyUse: day.dailyUse,
    dailySun,
    capacityAh,
    balance: account,
  };
}
