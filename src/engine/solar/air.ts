import { heightAt } from '#climate/heights.ts';
import { dayAndNight } from '#climate/temperature.ts';
import { type DayAndNight, lapseKPerKm } from '#climate/world.ts';
import type { Assumption } from '../assumption.ts';

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
/** How far a month's mean may be off to either side, K: of a place by the fitted climate, by latitude alone. */
const off = { place: 6, latitude: 8 } as const;
/** How much lower the mean of day and night is than the day, where only the latitude is known, K. */
const dayOverMeanK = 3;

const months = Array.from({ length: 12 }, (_, m) => m + 1);

/** Day temperature (°C) by latitude and season: a rough fit to climate tables from memory. */
function byLatitude(latitudeDeg: number, month: number | undefined, heightM = 0): number {
  const away = Math.abs(latitudeDeg);
  const mean = 31 - 0.45 * Math.max(0, away - 12);
  const swing = 0.2 * Math.max(0, away - 10);
  // The year peaks in late January in the south, late July in the north.
  const season = month === undefined ? 0 : Math.cos((2 * Math.PI * (month - (latitudeDeg < 0 ? 1 : 7))) / 12);
  return mean + swing * season - (lapseKPerKm.day * heightM) / 1000;
}

/**
 * How far below the day's highest the air is while the sun comes in, as a share of the day's range: a day's course
 * like a cosine about 3 pm, weighed by a sun like a cosine about noon, is π/4 · cos 45° of half the range above its mean.
 */
const sunlitShare = (1 - (Math.PI / 4) * Math.cos(Math.PI / 4)) / 2;
const sunlitC = ({ dayMaxC, nightMinC }: DayAndNight): number =>
  dayMaxC - sunlitShare * (dayMaxC - nightMinC);
const meanC = ({ dayMaxC, nightMinC }: DayAndNight): number => (dayMaxC + nightMinC) / 2;

/** Where place and month are known the month's; without the month the year's mean, from its coldest month to its warmest. */
function inMonth(
  where: Where,
  of: (month: number) => number,
  offK: number,
  why: string,
): Omit<Assumption, 'name'> {
  if (where.month !== undefined) {
    const value = Math.round(of(where.month));
    return { value, low: value - offK, high: value + offK, unit: '°C', why };
  }
  const all = months.map(of);
  const value = Math.round(all.reduce((a, b) => a + b, 0) / months.length);
  const low = Math.round(Math.min(...all)) - offK / 2;
  const high = Math.round(Math.max(...all)) + offK / 2;
  return { value, low, high, unit: '°C', why: `${why}; no month said, from the coldest to the warmest` };
}

function temperature(where: Where, what: 'day' | 'mean'): Omit<Assumption, 'name'> {
  const { latitudeDeg, longitudeDeg, heightM } = where;
  if (latitudeDeg === undefined) {
    const cooler = Math.round((lapseKPerKm.night * (heightM ?? 0)) / 1000);
    const [value, low, high] = fair[what].map(t => t - cooler) as [number, number, number];
    const why = what === 'day' ? 'a fair day, as you named no place' : 'mild camping weather';
    return { value, low, high, unit: '°C', why };
  }
  const span = what === 'day' ? 'by day' : 'over day and night';
  if (longitudeDeg === undefined) {
    const less = what === 'day' ? 0 : dayOverMeanK;
    const of = (month?: number) => byLatitude(latitudeDeg, month, heightM) - less;
    return inMonth(where, of, off.latitude, `usual ${span} for the latitude and month`);
  }
  const from = what === 'day' ? sunlitC : meanC;
  const of = (month: number) => from(dayAndNight(latitudeDeg, longitudeDeg, month, heightM));
  const height = heightM === undefined ? '' : ` at ${Math.round(heightM)} m`;
  return inMonth(where, of, off.place, `usual ${span} there${height} in that month`);
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
