import { present } from '#basics/present.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, Values } from '../assumption.ts';
import { chargingOf, storageAssumptions, timeConstantAssumption } from '../battery/charging.ts';
import { usualTrip } from '../battery/round-trip.ts';
import { batteryTemperature } from '../battery/temperature.ts';
import { bankAssumptions, usableCapacityAh } from '../battery/usable.ts';
import { taken } from '../explore.ts';
import { airAboutFridge } from '../solar/air.ts';
import { type Balance, type BalanceHour, balance, type SunOffer } from './balance.ts';
import { laidOf } from './laid.ts';
import { dayHours } from './profile.ts';
import { chargeAtPoint, chargeLevel } from './rules.ts';
import { drivingAssumptions, plugAssumptions } from './sources.ts';
import { recordYield, sunOffers } from './suns.ts';
import { startOf, type Trip } from './trip.ts';

export { startOf, type Trip } from './trip.ts';

/** Air about the fridge over day and night, from the place or latitude and the month where known. */
function airAssumption(trip: Trip): Assumption | undefined {
  const where = trip.sun?.sun;
  return where?.latitudeDeg === undefined || where.month === undefined ? undefined : airAboutFridge(where);
}

/** Everything a trip takes for granted. */
export function tripAssumptions(trip: Trip): Assumption[] {
  const air = airAssumption(trip);
  const laid = laidOf(trip);
  const use = laid.use.map(a => (a.name === 'ambientC' && air ? air : a));
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
    ...(trip.level ? [trip.level] : []),
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
  /** From sun, engine, generator and mains over the whole trip, Ah. */
  readonly onOffer: number;
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
  const laid = laidOf(trip);
  const { plan, skies } = laid;
  const { day, byHour, onMainsByHour } = laid.dayOf(values, trace);
  const depth = taken(values, 'depthOfDischarge');
  const temperatureC = use.ambientC ?? values.batteryTemperature;
  const capacityAh = usableCapacityAh(
    { bank, currentA: day.currentA, temperatureC, share: 1 },
    values,
    trace,
  );
  if (skies && trace) recordYield(present(trip.sun), skies, values, trace);
  const { offers, dayAh: dailySun } = skies
    ? sunOffers(present(trip.sun), skies, () => laid.yields(values))
    : noSun;
  const startAh = (capacityAh * (values.stateOfCharge ?? bank.stateOfChargePercent ?? 100)) / 100;
  // For the working: what comes back of a usual charge, as the hours take it.
  if (trace && (skies || laid.isDriven || laid.isPlugged))
    usualTrip(bank.chemistry, values, undefined, trace);
  const account = balance(
    {
      battery: chargingOf(bank, { capacityAh, temperatureC }, values),
      nominalV: bank.voltageV,
      startAh,
      startHour: startOf(trip),
      durationH: trip.durationH,
      useByHour: byHour,
      onMainsByHour,
      sunShares: skies?.shares ?? noShares,
      plan,
      suns: offers,
      lastSkyH: skies?.lastSkyH ?? 0,
      drivingA: laid.drivingA(values, trace),
      generatorA: laid.pluggedA(values, trace),
      mainsA: laid.mainsA(values),
      limitAh: capacityAh * (1 - depth),
      isOverAtLimit,
    },
    record,
  );
  const level = (sums: { readonly outAh: number; readonly storedAh: number }): number => {
    const q = run(chargeAtPoint, { q_0: startAh, Q_out: sums.outAh, Q_in: sums.storedAh }, trace);
    return Math.max(0, run(chargeLevel, { q, C_real: capacityAh }, trace));
  };
  const { sunAh, drivingAh, pluggedAh } = account.sums;
  const lowestCharge = level(account.toLowest);
  const endCharge = level(account.sums);
  return {
    lowestCharge,
    endCharge,
    margin: lowestCharge - 100 * (1 - depth),
    dailyUse: day.dailyUse,
    dailySun,
    onOffer: sunAh + drivingAh + pluggedAh,
    capacityAh,
    balance: account,
  };
}
