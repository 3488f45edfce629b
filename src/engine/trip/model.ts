import type { Assumption } from '#quantity/range.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Bank } from '../battery/bank.ts';
import { bankAssumptions, usableCapacityAh } from '../battery/usable.ts';
import { taken, type Values } from '../explore.ts';
import { dayOf, type Use, useAssumptions } from '../loads/model.ts';
import { airAboutFridge } from '../solar/air.ts';
import { chargeAssumption } from '../solar/model.ts';
import { acceptance, acceptanceAssumptions } from './accept.ts';
import { type Balance, type BalanceHour, balance } from './balance.ts';
import { useByHour } from './profile.ts';
import { chargeAtPoint, chargeLevel } from './rules.ts';
import {
  driveOn,
  drives,
  drivingA,
  drivingAssumptions,
  sunAssumptions,
  sunByHour,
  type TripDriving,
  type TripSun,
} from './sources.ts';
import { arrivalHour, drivingFromHour } from './tables.ts';

/** A trip: the battery, what runs on it, what fills it, and for how long. */
export interface Trip {
  readonly bank: Bank;
  /** Share the person will use, %. */
  readonly depthPercent?: number;
  readonly use: Use;
  readonly sun?: TripSun;
  readonly driving?: TripDriving;
  readonly durationH: number;
  /** Hour of the first day it starts at; default 4 pm, or with the first drive of a plan. */
  readonly startHour?: number;
}

/** The hour a trip starts at: as told, else with the first day's drive of a plan, else in the afternoon. */
export const startOf = (trip: Trip): number =>
  trip.startHour ?? (trip.driving?.planH ? drivingFromHour : arrivalHour);

/** Air about the fridge over day and night, from the place or latitude and the month where known. */
function airAssumption(trip: Trip): Assumption | undefined {
  const sun = trip.sun?.sun;
  return sun?.latitudeDeg === undefined || sun.month === undefined ? undefined : airAboutFridge(sun);
}

/** The sun of a trip varies with its days, the more the fewer they are. */
const overTrip = (trip: TripSun, durationH: number): TripSun => ({
  ...trip,
  sun: { ...trip.sun, overDays: Math.max(1, durationH / 24) },
});

/** Everything a trip takes for granted. */
export function tripAssumptions(trip: Trip): Assumption[] {
  const air = airAssumption(trip);
  const use = useAssumptions(trip.use).map(a => (a.name === 'ambientC' && air ? air : a));
  const isCharged = !!trip.sun || drives(trip.driving);
  return [
    ...bankAssumptions(trip.bank, trip.depthPercent),
    ...use,
    ...(trip.sun ? sunAssumptions(overTrip(trip.sun, trip.durationH)) : []),
    ...drivingAssumptions(trip.driving, trip.bank),
    ...(isCharged ? [chargeAssumption(trip.bank.chemistry)] : []),
    ...(isCharged ? acceptanceAssumptions(trip.bank.chemistry) : []),
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

/** The trip hour by hour. */
export function simulate(
  trip: Trip,
  values: Values,
  trace?: Trace,
  record?: (hour: BalanceHour) => void,
): TripResult {
  const { bank, use } = trip;
  const meanC = use.ambientC ?? values.ambientC ?? 25;
  const day = dayOf(use, values, trace);
  const depth = taken(values, 'depthOfDischarge');
  const capacityAh = usableCapacityAh(
    { bank, currentA: day.currentA, temperatureC: use.ambientC },
    { ...values, depthOfDischarge: 1 },
    trace,
  );
  const { byHour: sun, dayAh: dailySun } = sunByHour(trip.sun, bank.voltageV, values, trace);
  const efficiency = values.chargeEfficiency ?? chargeAssumption(bank.chemistry).value;
  const startAh = (capacityAh * (bank.stateOfChargePercent ?? 100)) / 100;
  const account = balance(
    {
      capacityAh,
      startAh,
      chargeEfficiency: efficiency,
      accepts: acceptance(
        { chemistry: bank.chemistry, capacityAh, efficiency, temperatureC: use.ambientC },
        values,
      ),
      startHour: startOf(trip),
      durationH: trip.durationH,
      useByHour: useByHour(day, meanC),
      sunByHour: sun,
      driveOn: driveOn(trip.driving),
      drivingA: drivingA(trip.driving, bank, values, trace),
      limitAh: capacityAh * (1 - depth),
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
