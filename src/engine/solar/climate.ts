import { latitudeMonth } from '#climate/latitude.ts';
import { clearnessAt } from '#climate/world.ts';
import { monthNames } from '#quantity/month-names.ts';
import type { Assumption, AssumptionName } from '../assumption.ts';
import type { Sky } from './case.ts';
import { pullOf } from './own-points.ts';
import { skyClearness, skySunHours } from './sky.ts';
import { monthSpread, nineInTen } from './spread.ts';
import { type Station, stations } from './stations.ts';
import { outsideRadiationOf } from './sun.ts';

export interface Clearness {
  readonly value: number;
  /** Plausible deviation to either side, nine years in ten, as a share of the value. */
  readonly spread: number;
  /** Name of the nearest own point, where one is within reach. */
  readonly station?: string;
  readonly nearestKm: number;
}

/** No month of any place is clearer, and none duller. */
const [dullest, clearest] = [0.12, 0.78];

/**
 * Mean clearness at a place, by month (1–12): the world's fitted climate, and the given points before it where they
 * are near.
 * @param overDays for the span: how many days the sun is wanted over; absent: an average day of the month
 */
export function clearnessOf(
  from: readonly Station[],
  latitudeDeg: number,
  longitudeDeg: number,
  overDays?: number,
): (month: number) => Clearness {
  const pull = pullOf(from, latitudeDeg, longitudeDeg);
  return month => {
    const { ratio, nearness, nearest, nearestKm } = pull(month);
    const grid = clearnessAt(latitudeDeg, longitudeDeg, month);
    const value = Math.min(clearest, Math.max(dullest, grid * ratio));
    const spread = monthSpread(value, latitudeDeg, nearness, overDays);
    return { value, spread, nearestKm, station: nearest?.name };
  };
}

/** Up to here a point is the town itself, km. */
const townKm = 60;

/** Full cloud for days on end still lets so much of the average through, as a share. */
const leastShare = 0.25;

const withSpread = (name: AssumptionName, value: number, spread: number, why: string): Assumption => ({
  name,
  value,
  low: value * Math.max(leastShare, 1 - spread),
  high: Math.min(Math.max(clearest, value), value * (1 + spread)),
  unit: '',
  why,
});

/** The clearness to reckon with at a place in a month, as an assumption. Without a longitude, by latitude alone. */
export function clearnessFor(
  latitudeDeg: number,
  longitudeDeg: number | undefined,
  month: number,
  overDays?: number,
): Assumption {
  if (longitudeDeg === undefined) {
    const { clearness, clearnessSd } = latitudeMonth(latitudeDeg, month);
    const ofPlaces = (nineInTen * clearnessSd) / clearness;
    const spread = Math.hypot(ofPlaces, monthSpread(clearness, latitudeDeg, 0, overDays));
    return withSpread('clearness', clearness, spread, 'usual for the latitude and month');
  }
  const { value, spread, station, nearestKm } = clearnessOf(
    stations,
    latitudeDeg,
    longitudeDeg,
    overDays,
  )(month);
  const from =
    station === undefined
      ? 'satellite tables'
      : `climate tables, ${station}${nearestKm < townKm ? '' : ' nearest'}`;
  const why = `average ${monthNames[month - 1]} by ${from}; ${overDays === undefined ? 'good and bad years' : 'dull and bright spells'} in the range`;
  return withSpread('clearness', value, spread, why);
}

/** Mean clearness by month, of the place or of the latitude alone. */
function usualOf(latitudeDeg: number, longitudeDeg: number | undefined): (month: number) => number {
  if (longitudeDeg === undefined) return month => latitudeMonth(latitudeDeg, month).clearness;
  const at = clearnessOf(stations, latitudeDeg, longitudeDeg);
  return month => at(month).value;
}

/** Peak sun hours (flat) over the year at a place where no month is known: the mean, spanned by its worst and best month. */
export function averagePeakSunHours(
  latitudeDeg: number,
  longitudeDeg: number | undefined,
  sky: Sky,
): Assumption {
  const usual = usualOf(latitudeDeg, longitudeDeg);
  const months = Array.from({ length: 12 }, (_, i) => {
    const clearness = sky === 'mixed' ? usual(i + 1) : skyClearness[sky].value;
    return clearness * outsideRadiationOf(latitudeDeg, i + 1);
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
