import { heightAt } from '#climate/heights.ts';
import { latitudeMonth } from '#climate/latitude.ts';
import { dayAndNight } from '#climate/temperature.ts';
import { type DayAndNight, lapseKPerKm } from '#climate/world.ts';
import type { Assumption } from '../assumption.ts';
import { nineInTen } from './spread.ts';

/** A place and time as far as they are known. */
export interface Where {
  readonly latitudeDeg?: number;
  readonly longitudeDeg?: number;
  /** 1–12. */
  readonly month?: number;
  /** Told height above the sea, m. */
  readonly heightM?: number;
}

/** Height above the sea (m): as told, else of the place where that is known by both coordinates. */
export const heightOf = ({ latitudeDeg, longitudeDeg, heightM }: Where): number | undefined =>
  heightM ??
  (latitudeDeg === undefined || longitudeDeg === undefined ? undefined : heightAt(latitudeDeg, longitudeDeg));

/** Where nobody said a place: a fair day, and its mean with the night, °C. */
const fair = { day: [25, 15, 35], mean: [25, 20, 32] } as const;
/** How far a month's mean may be off to either side, nine times in ten, where the place is known, K. */
const offK = 6;

const months = Array.from({ length: 12 }, (_, m) => m + 1);

/**
 * How far below the day's highest the air is while the sun comes in, as a share of the day's range: a day's course
 * like a cosine about 3 pm, weighed by a sun like a cosine about noon, is π/4 · cos 45° of half the range above its mean.
 */
const sunlitShare = (1 - (Math.PI / 4) * Math.cos(Math.PI / 4)) / 2;
const sunlitC = ({ dayMaxC, nightMinC }: DayAndNight): number =>
  dayMaxC - sunlitShare * (dayMaxC - nightMinC);
const meanC = ({ dayMaxC, nightMinC }: DayAndNight): number => (dayMaxC + nightMinC) / 2;

/** A month's temperature, °C, and how far it may be off to either side, K. */
type Month = readonly [value: number, off: number];

/** Where place and month are known the month's; without the month the year's mean, from its coldest month to its warmest. */
function inMonth(
  month: number | undefined,
  of: (month: number) => Month,
  why: string,
): Omit<Assumption, 'name'> {
  if (month !== undefined) {
    const [exact, off] = of(month);
    const value = Math.round(exact);
    return { value, low: value - Math.round(off), high: value + Math.round(off), unit: '°C', why };
  }
  const all = months.map(of);
  const value = Math.round(all.reduce((sum, [mean]) => sum + mean, 0) / months.length);
  const low = Math.round(Math.min(...all.map(([mean, off]) => mean - off / 2)));
  const high = Math.round(Math.max(...all.map(([mean, off]) => mean + off / 2)));
  return { value, low, high, unit: '°C', why: `${why}; no month said, from the coldest to the warmest` };
}

function temperature(where: Where, what: 'day' | 'mean'): Omit<Assumption, 'name'> {
  const { latitudeDeg, longitudeDeg, heightM, month } = where;
  if (latitudeDeg === undefined) {
    const cooler = Math.round((lapseKPerKm.night * (heightM ?? 0)) / 1000);
    const [value, low, high] = fair[what].map(t => t - cooler) as [number, number, number];
    const why = what === 'day' ? 'a fair day, as you named no place' : 'mild camping weather';
    return { value, low, high, unit: '°C', why };
  }
  const span = what === 'day' ? 'by day' : 'over day and night';
  const from = what === 'day' ? sunlitC : meanC;
  if (longitudeDeg === undefined) {
    const of = (m: number): Month => {
      const along = latitudeMonth(latitudeDeg, m, heightM);
      return [from(along), Math.hypot(offK, nineInTen * along.temperatureSdK)];
    };
    return inMonth(month, of, `usual ${span} for the latitude and month`);
  }
  const of = (m: number): Month => [from(dayAndNight(latitudeDeg, longitudeDeg, m, heightM)), offK];
  const height = heightM === undefined ? '' : ` at ${Math.round(heightM)} m`;
  return inMonth(month, of, `usual ${span} there${height} in that month`);
}

/** Air temperature while the sun shines, °C. ± 8 K moves a panel's yield by 3 %. */
export const dayTemperature = (where: Where): Assumption => ({
  name: 'dayTemperature',
  ...temperature(where, 'day'),
});

/** Air temperature outside over day and night, °C. */
export const airTemperature = (where: Where): Assumption => ({
  name: 'airTemperature',
  ...temperature(where, 'mean'),
});

/** In the cold a fridge stands in a van or tent that is kept from freezing: likely and at most, °C. Common practice. */
const sheltered = { likely: 10, most: 18 } as const;

/** Air about a fridge over day and night, °C: that outside, and in the cold that of the van or tent it stands in. */
export function airAboutFridge(where: Where): Assumption {
  const air: Assumption = { ...airTemperature(where), name: 'ambientC' };
  if (air.value >= sheltered.likely) return air;
  const high = Math.max(air.high, sheltered.most);
  return { ...air, value: sheltered.likely, high, why: 'cold there; in a van or tent it is warmer' };
}
