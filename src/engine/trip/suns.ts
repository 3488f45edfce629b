import { present } from '#basics/present.ts';
import type { Trace } from '#rule/trace.ts';
import {
  type Assumption,
  type AssumptionName,
  type NameTail,
  nameWith,
  type Values,
  type ValuesToSet,
} from '../assumption.ts';
import {
  type DailyYield,
  dailyYield,
  hourlyShares,
  type Sky,
  type SolarCase,
  solarAssumptions,
} from '../solar/model.ts';
import type { SunOffer } from './balance.ts';
import { lowSunShare } from './tables.ts';

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

/** The skies of a trip and what is made of each: the usual one first, one for the last days last. */
export interface Skies {
  /** Panels of 100 W under each sky. */
  readonly cases: readonly (SolarCase & { readonly powerW: number; readonly nominalVoltageV: number })[];
  /** What a name of an assumption ends in that is of one sky alone, by sky. */
  readonly tails: readonly (NameTail | '')[];
  /** Names of each sky's own assumptions, without their end. */
  readonly own: readonly (readonly AssumptionName[])[];
  readonly assumptions: readonly Assumption[];
  /** Place in the list of a day's own sky. */
  readonly placeOf: (sky: Sky | undefined) => number;
  readonly lastSkyH: number;
  /** Share of a day's sun in each hour as a camp sees it. */
  readonly shares: readonly number[];
}

/** Watts that the skies are reckoned for; yields go with the rating. */
const reckonedW = 100;

const lastDays = ' on the last days';
const tailOf = (sky: Sky): NameTail => ` on ${sky} days`;

/** Shares of a day's sun by the hour as a camp sees it; without a place the day of the equator. */
function campShares(sun: SolarCase): readonly number[] {
  const shares = hourlyShares(sun.latitudeDeg ?? 0, sun.month ?? 3);
  const seen = shares.map(share => Math.max(0, share - lowSunShare));
  const sum = seen.reduce((a, b) => a + b, 0);
  return sum > 0 ? seen.map(share => share / sum) : shares;
}

/**
 * The skies of a trip: that of all days, those that days were told of, and that of the last days.
 * @param told skies of single days, first day first
 */
export function skiesOf(trip: TripSun, voltageV: number, told: readonly (Sky | undefined)[]): Skies {
  const isByDay = told.some(sky => sky !== undefined);
  const isLast = !isByDay && trip.skyLastDays !== undefined;
  // Days that are told have their own skies; the rest has the usual one.
  const base: SolarCase = isByDay || isLast ? { ...trip.sun, sky: undefined } : trip.sun;
  const others = isByDay
    ? [...new Set(told)].filter(sky => sky !== undefined && sky !== 'mixed')
    : isLast
      ? [trip.sun.sky]
      : [];
  const skies = [undefined, ...others];
  const tails = skies.map((sky, i): NameTail | '' =>
    i === 0 ? '' : isLast ? lastDays : tailOf(present(sky)),
  );
  const main = trip.ahPerDay !== undefined && others.length === 0 ? [] : solarAssumptions(base);
  const own = others.map(sky =>
    solarAssumptions({ ...base, sky }).filter(
      a => !main.some(b => b.name === a.name && b.value === a.value && b.high === a.high),
    ),
  );
  return {
    cases: skies.map((sky, i) => ({
      ...base,
      ...(i > 0 && { sky }),
      powerW: reckonedW,
      nominalVoltageV: voltageV,
    })),
    tails,
    own: [[], ...own.map(list => list.map(a => a.name))],
    assumptions: [
      ...main,
      ...own.flatMap((list, i) => list.map(a => ({ ...a, name: nameWith(a.name, present(tails[i + 1])) }))),
    ],
    placeOf: sky => Math.max(0, isByDay && sky !== undefined ? skies.indexOf(sky) : 0),
    lastSkyH: isLast ? 24 * present(trip.skyLastDays) : 0,
    shares: campShares(trip.sun),
  };
}

/** The values under one sky: its own where it has some. */
function valuesUnder({ own, tails }: Skies, sky: number, values: Values): Values {
  if (present(own[sky]).length === 0) return values;
  const found: ValuesToSet = { ...values };
  for (const name of present(own[sky])) {
    const value = values[nameWith(name, present(tails[sky]))];
    if (value === undefined) delete found[name];
    else found[name] = value;
  }
  return found;
}

/** What panels of 100 W bring under each sky. */
export const yieldsOf = (skies: Skies, values: Values): readonly DailyYield[] =>
  skies.cases.map((c, i) => dailyYield(c, valuesUnder(skies, i, values)));

const none: SunOffer = { dayWh: 0, dayAh: 0 };

/**
 * What a day brings under each sky; and an average day's yield (Ah at the nominal voltage, or as told).
 * @param yields of panels of 100 W under each sky, made only where they are needed
 */
export function sunOffers(
  trip: TripSun,
  skies: Skies,
  yields: () => readonly DailyYield[],
): { readonly offers: readonly SunOffer[]; readonly dayAh: number } {
  const { powerW, ahPerDay } = trip;
  const isTold = ahPerDay !== undefined;
  if (!isTold && !powerW) return { offers: skies.cases.map(() => none), dayAh: 0 };
  if (isTold && skies.cases.length === 1) return { offers: [{ dayWh: 0, dayAh: ahPerDay }], dayAh: ahPerDay };
  const made = yields();
  const usualAh = present(made[0]).dailyYieldAh;
  // A told yield is for the usual sky; other skies bring the same share of it as of a panel's.
  if (isTold)
    return {
      offers: made.map(day => ({
        dayWh: 0,
        dayAh: usualAh > 0 ? (ahPerDay * day.dailyYieldAh) / usualAh : ahPerDay,
      })),
      dayAh: ahPerDay,
    };
  // A PWM controller passes amps as they are; others pass watts.
  const isAmps = present(skies.cases[0]).controller === 'pwm';
  const factor = (powerW ?? reckonedW) / reckonedW;
  return {
    offers: made.map(day => ({
      dayWh: isAmps ? 0 : factor * day.dailyYieldEnergyWh,
      dayAh: isAmps ? factor * day.dailyYieldAh : 0,
    })),
    dayAh: factor * usualAh,
  };
}

/** Records how the panels as they are come to their yield, for the working. */
export function recordYield(
  { powerW, ahPerDay }: TripSun,
  { cases }: Skies,
  values: Values,
  trace: Trace,
): void {
  if (powerW && ahPerDay === undefined) dailyYield({ ...present(cases[0]), powerW }, values, trace);
}
