import { present } from '#basics/present.ts';
import { chargeStep, newStep, place } from '../battery/charge-step.ts';
import type { Charging } from '../battery/charging.ts';
import { putInToFullAh } from '../battery/fill.ts';
import { dust } from '../grain.ts';
import type { Plan } from './plan.ts';
import { dayHours } from './profile.ts';
import { chargeAfterHour } from './rules.ts';

/** What a day's sun brings under one sky: as watts that become amps at the battery's volts, or as amps. */
export interface SunOffer {
  readonly dayWh: number;
  readonly dayAh: number;
}

/** Everything an hourly balance needs, as plain numbers. Day 0 is the day the trip starts on. */
export interface BalanceInput {
  readonly battery: Charging;
  /** Nominal, V: what loads are counted at. */
  readonly nominalV: number;
  readonly startAh: number;
  /** Hour of day 0 at which it starts, and how long it goes. */
  readonly startHour: number;
  readonly durationH: number;
  /** Ah (at the nominal voltage) in each hour of a day. */
  readonly useByHour: readonly number[];
  /** The same in an hour on mains, which carry appliances for mains; by default the same. */
  readonly onMainsByHour?: readonly number[];
  /** Share of a day's sun in each hour. */
  readonly sunShares: readonly number[];
  readonly plan: Plan;
  /** By the skies of the plan. */
  readonly suns: readonly SunOffer[];
  /** The last so many hours have the last sky of the list. */
  readonly lastSkyH: number;
  /** On offer while driving, on a generator and on mains, A. */
  readonly drivingA: number;
  readonly generatorA: number;
  readonly mainsA: number;
  /** The charge that should not be gone below. */
  readonly limitAh: number;
  /** Goes no further than that, where only whether it lasts is asked. */
  readonly isOverAtLimit?: boolean;
}

/** One hour (or what there is of it) as a chart or a list of days shows it. */
export interface BalanceHour {
  /** Hours since the start, at the end of this hour. */
  readonly atH: number;
  readonly chargeAh: number;
  readonly useAh: number;
  /** On offer, at the nominal voltage where it is watts. */
  readonly sunAh: number;
  readonly drivingAh: number;
  /** From a generator or mains. */
  readonly pluggedAh: number;
}

/** Sums over the trip, Ah. */
interface Sums {
  readonly useAh: number;
  readonly sunAh: number;
  readonly drivingAh: number;
  readonly pluggedAh: number;
  /** Into the battery at its terminals, and what of it stayed. */
  readonly inAh: number;
  readonly storedAh: number;
  /** Out of the battery. */
  readonly outAh: number;
  /** Offered to the battery and not taken, and asked for and not there. */
  readonly notTakenAh: number;
  readonly unmetAh: number;
}

export interface Balance {
  readonly endAh: number;
  readonly lowest: { readonly chargeAh: number; readonly atH: number };
  /** Hours until the limit, and until nothing is left; absent: not on this trip. */
  readonly limitAtH?: number;
  readonly flatAtH?: number;
  readonly sums: Sums;
  /** The sums up to the lowest point. */
  readonly toLowest: { readonly storedAh: number; readonly outAh: number };
}

/**
 * The hour-by-hour account of a battery: loads, sun, driving, generator and mains, and what it accepts. Sources
 * serve the loads first and the battery with the rest. Nothing is made within the loop, which runs some
 * hundred hours some fifty times an answer.
 * @param record called after every hour, for a chart
 */
export function balance(input: BalanceInput, record?: (hour: BalanceHour) => void): Balance {
  const { battery, nominalV, startHour, durationH, useByHour, sunShares, plan, suns } = input;
  const { onMainsByHour = useByHour } = input;
  const { capacityAh } = battery;
  // A start at the limit is worked out in another order than the limit: a rounding apart is not below it.
  const limitAh = input.limitAh * (1 - 1e-12);
  const { driving, generator, mains } = plan;
  const after = chargeAfterHour.direct();
  const step = newStep();
  const lastSky = suns.length - 1;
  let chargeAh = input.startAh;
  let lowestAh = chargeAh;
  let lowestAtH = 0;
  let lowestStoredAh = 0;
  let lowestOutAh = 0;
  let limitAtH = chargeAh < limitAh ? 0 : undefined;
  let flatAtH: number | undefined;
  let allUse = 0;
  let allSun = 0;
  let allDriving = 0;
  let allPlugged = 0;
  let allIn = 0;
  let allOffered = 0;
  let allStored = 0;
  let allOut = 0;
  let unmet = 0;
  // A charge goes on for hours: what went in is reckoned once, at its end, by what was missing as it began.
  let sinceAh: number | undefined;
  let t = 0;
  while (t < durationH - dust && !(input.isOverAtLimit && chargeAh < limitAh)) {
    const clock = startHour + t;
    const at = Math.floor(clock + dust);
    const hours = Math.min(at + 1 - clock, durationH - t);
    const day = Math.floor(at / dayHours);
    const hour = at % dayHours;
    const sun = present(suns[durationH - t <= input.lastSkyH + dust ? lastSky : present(plan.skies[day])]);
    const sunW = sun.dayWh * present(sunShares[hour]);
    const sunA = sun.dayAh * present(sunShares[hour]);
    const mainsShare = present(mains[at]);
    const useA =
      present(useByHour[hour]) + mainsShare * (present(onMainsByHour[hour]) - present(useByHour[hour]));
    const drivingA = input.drivingA * present(driving[at]);
    const pluggedA = Math.max(input.generatorA * present(generator[at]), input.mainsA * mainsShare);
    const offeredA = sunA + drivingA + pluggedA;
    const netA = offeredA + sunW / nominalV - useA;
    const before = chargeAh;
    let outAh = 0;
    let storedAh = 0;
    if (netA > 0) {
      const missingAh = Math.max(0, capacityAh - before);
      step[place.missingAh] = missingAh;
      step[place.offeredA] = offeredA;
      step[place.powerW] = sunW - useA * nominalV;
      step[place.hours] = hours;
      chargeStep(battery, step);
      storedAh = missingAh - present(step[place.leftAh]);
      allOffered += present(step[place.currentA]) * hours;
      sinceAh ??= missingAh;
    } else {
      if (sinceAh !== undefined) {
        allIn += putInToFullAh(battery, sinceAh) - putInToFullAh(battery, Math.max(0, capacityAh - before));
        sinceAh = undefined;
      }
      outAh = Math.min(before, -netA * hours);
      unmet -= netA * hours + outAh;
    }
    chargeAh = after(before, storedAh, outAh);
    allUse += useA * hours;
    allSun += (sunA + sunW / nominalV) * hours;
    allDriving += drivingA * hours;
    allPlugged += pluggedA * hours;
    allStored += storedAh;
    allOut += outAh;
    if (netA < 0) {
      if (chargeAh < limitAh) limitAtH ??= t + (before - limitAh) / -netA;
      if (before + netA * hours <= dust) flatAtH ??= t + before / -netA;
    }
    t += hours;
    if (chargeAh < lowestAh - dust) {
      lowestAh = chargeAh;
      // Nothing is lower than flat.
      lowestAtH = flatAtH ?? t;
      lowestStoredAh = allStored;
      lowestOutAh = allOut;
    }
    record?.({
      atH: t,
      chargeAh,
      useAh: useA * hours,
      sunAh: (sunA + sunW / nominalV) * hours,
      drivingAh: drivingA * hours,
      pluggedAh: pluggedA * hours,
    });
  }
  if (sinceAh !== undefined)
    allIn += putInToFullAh(battery, sinceAh) - putInToFullAh(battery, Math.max(0, capacityAh - chargeAh));
  return {
    endAh: chargeAh,
    lowest: { chargeAh: lowestAh, atH: lowestAtH },
    ...(limitAtH !== undefined && { limitAtH }),
    ...(flatAtH !== undefined && { flatAtH }),
    sums: {
      useAh: allUse,
      sunAh: allSun,
      drivingAh: allDriving,
      pluggedAh: allPlugged,
      inAh: allIn,
      storedAh: allStored,
      outAh: allOut,
      notTakenAh: Math.max(0, allOffered - allIn),
      unmetAh: unmet,
    },
    toLowest: { storedAh: lowestStoredAh, outAh: lowestOutAh },
  };
}
