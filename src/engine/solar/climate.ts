import type { Assumption } from '#quantity/range.ts';
import type { Sky } from './case.ts';
import { type Station, stations } from './stations.ts';
import { outsideRadiationOf, radians } from './sun.ts';

/** Months are January = 1. Clearness is the share of the sun outside the air that reaches flat ground. */
const clearnessOf = (station: Station, month: number): number =>
  (station.months[month - 1] as number) / outsideRadiationOf(station.latitudeDeg, month);

/** Great-circle distance by the haversine, km. */
export function distanceKm(aLat: number, aLon: number, bLat: number, bLon: number): number {
  const [p, q] = [radians(aLat), radians(bLat)];
  const h = Math.sin((q - p) / 2) ** 2 + Math.cos(p) * Math.cos(q) * Math.sin(radians(bLon - aLon) / 2) ** 2;
  return 2 * 6371 * Math.asin(Math.min(1, Math.sqrt(h)));
}

// Usual clearness by distance from the equator, every 10°, and how much brighter summer is than the year.
const usual = [0.48, 0.53, 0.58, 0.58, 0.52, 0.44, 0.41, 0.4, 0.4, 0.4];
const summerGain = [0, 0, 0.01, 0.02, 0.06, 0.08, 0.07, 0.05, 0.05, 0.05];

/** Clearness from latitude and season alone: a fit to the station table, good to about ± 20 %. */
export function usualClearness(latitudeDeg: number, month: number): number {
  const step = Math.min(8.999, Math.abs(latitudeDeg) / 10);
  const at = (table: readonly number[]) => {
    const i = Math.floor(step);
    return (table[i] as number) + (step - i) * ((table[i + 1] as number) - (table[i] as number));
  };
  const midsummer = latitudeDeg < 0 ? 1 : 7;
  return at(usual) + at(summerGain) * Math.cos((2 * Math.PI * (month - midsummer)) / 12);
}

/** Beyond this no station speaks for a place, km. */
const reachKm = 1500;
/** Stations nearer than this count alike, km: a town and its airport. */
const blurKm = 40;

export interface Clearness {
  readonly value: number;
  /** Plausible deviation to either side, as a share of the value. */
  readonly spread: number;
  /** Name of the nearest station, where one is within reach. */
  readonly station?: string;
  readonly nearestKm: number;
}

/**
 * Mean clearness of a month at a place: of the four nearest stations by inverse square of distance, with the
 * usual clearness of the latitude counting like one more station at the edge of reach.
 */
export function interpolate(
  from: readonly Station[],
  latitudeDeg: number,
  longitudeDeg: number,
  month: number,
): Clearness {
  const near = from
    .map(station => ({
      station,
      km: distanceKm(latitudeDeg, longitudeDeg, station.latitudeDeg, station.longitudeDeg),
    }))
    .filter(n => n.km < reachKm)
    .sort((a, b) => a.km - b.km)
    .slice(0, 4);
  const weigh = (km: number) => 1 / (km ** 2 + blurKm ** 2);
  let weights = weigh(reachKm);
  let sum = weights * usualClearness(latitudeDeg, month);
  for (const { station, km } of near) {
    const clearness = clearnessOf(station, month);
    if (!Number.isFinite(clearness)) continue;
    weights += weigh(km);
    sum += weigh(km) * clearness;
  }
  const nearestKm = near[0]?.km ?? reachKm;
  const value = Math.min(0.78, Math.max(0.15, sum / weights));
  // A month differs from its mean by some 8 %; cloudier climates, and places far from a station, by more.
  const spread = Math.min(0.25, 0.08 + 0.1 * (nearestKm / 600) + Math.max(0, 0.45 - value) * 0.3);
  return { value, spread, nearestKm, station: near[0]?.station.name };
}

const withSpread = (name: string, value: number, spread: number, why: string): Assumption => ({
  name,
  value,
  low: value * (1 - spread),
  high: Math.min(Math.max(0.78, value), value * (1 + spread)),
  unit: '',
  why,
});

/** The clearness to reckon with at a place in a month, as an assumption. Without a longitude, by latitude alone. */
export function clearnessFor(
  latitudeDeg: number,
  longitudeDeg: number | undefined,
  month: number,
): Assumption {
  if (longitudeDeg === undefined)
    return withSpread(
      'clearness',
      usualClearness(latitudeDeg, month),
      0.2,
      'usual for the latitude and month',
    );
  const { value, spread, station, nearestKm } = interpolate(stations, latitudeDeg, longitudeDeg, month);
  const why =
    station === undefined
      ? 'usual for the latitude and month'
      : `average ${monthNames[month - 1]} by climate tables, ${nearestKm < 60 ? station : `between stations, ${station} nearest`}`;
  return withSpread('clearness', value, spread, why);
}

const monthNames = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** Clearness under a sky that was told. A clear day: FAO-56's three quarters, less in haze; full cloud: 10–30 % of that. */
export const skyClearness = {
  sunny: {
    name: 'sunnyClearness',
    value: 0.73,
    low: 0.66,
    high: 0.78,
    unit: '',
    why: 'clear sky: about three quarters of the outside sun, FAO-56',
  },
  overcast: {
    name: 'overcastClearness',
    value: 0.16,
    low: 0.08,
    high: 0.25,
    unit: '',
    why: 'full cloud lets through 10–30 % of a clear day',
  },
} as const satisfies Partial<Record<Sky, Assumption>>;

/** Peak sun hours where neither place nor month is known. Common practice for camping in the warmer half of the year. */
export const skySunHours: Readonly<Record<Sky, Assumption>> = {
  mixed: {
    name: 'peakSunHours',
    value: 5,
    low: 3.5,
    high: 6.5,
    unit: 'h',
    why: 'no place said: a fair day in the camping season',
  },
  sunny: {
    name: 'sunnyPeakSunHours',
    value: 6,
    low: 4.5,
    high: 7.5,
    unit: 'h',
    why: 'no place said: a clear day in the camping season',
  },
  overcast: {
    name: 'overcastPeakSunHours',
    value: 1.2,
    low: 0.5,
    high: 2,
    unit: 'h',
    why: 'no place said: full cloud lets through 10–30 % of a clear day',
  },
};

/** Peak sun hours (flat) over the year at a place where no month is known: the mean, spanned by its worst and best month. */
export function averagePeakSunHours(
  latitudeDeg: number,
  longitudeDeg: number | undefined,
  sky: Sky,
): Assumption {
  const months = Array.from({ length: 12 }, (_, i) => {
    const clearness = sky === 'mixed' ? clearnessFor(latitudeDeg, longitudeDeg, i + 1) : skyClearness[sky];
    return clearness.value * outsideRadiationOf(latitudeDeg, i + 1);
  });
  return {
    name: skySunHours[sky].name,
    value: months.reduce((a, b) => a + b, 0) / 12,
    low: Math.min(...months),
    high: Math.max(...months),
    unit: 'h',
    why: 'no month said: the average of the year, from its worst month to its best',
  };
}
