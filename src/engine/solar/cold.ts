import { latitudeMonth } from '#climate/latitude.ts';
import { dayAndNight } from '#climate/temperature.ts';
import type { Assumption } from '../assumption.ts';
import type { Where } from './air.ts';
import { nineInTen } from './spread.ts';

/** Temperature of a panel's label, °C. */
export const labelC = 25;

/** How much of its open-circuit voltage a panel gains with each degree it is colder. Data sheets of crystalline panels, from memory. */
export const voltageCoefficient: Assumption = {
  name: 'voltageCoefficient',
  value: -0.0032,
  low: -0.004,
  high: -0.0026,
  unit: '1/K',
  why: 'about a third of a percent more for each degree colder; the data sheet tells',
};

/**
 * How far the coldest night of a month lies below its mean night, K: by the sea and in mild winters as `mild`, a degree
 * more for each degree of frost that the mean night has, up to `most` inland. From memory of a dozen places.
 */
const belowMean = { mild: 7, most: 15 } as const;
const belowMeanK = (meanC: number): number => Math.min(belowMean.most, belowMean.mild + Math.max(0, -meanC));
/** How much colder or milder the coldest night of a year may be than the usual one, K. */
const offK = { colder: 6, milder: 4 } as const;

/** The coldest where nobody said where: likely, and its span, °C. A frosty morning, common practice. */
const frosty = [-10, -20, 0] as const;

/** The most a told temperature may be, °C, to be a cold one: a warm day says nothing of the coldest morning. */
const coldUpTo = 10;

/** A told temperature that may stand for the coldest morning, °C. */
export const toldCold = (ambientC: number | undefined): number | undefined =>
  ambientC !== undefined && ambientC <= coldUpTo ? ambientC : undefined;

const months = Array.from({ length: 12 }, (_, m) => m + 1);
const colder = <T extends readonly [number, number]>(a: T, b: T): T => (b[0] < a[0] ? b : a);

/** The coldest air that the panels see the sun rise in, °C: of the place and month, of its coldest month, or a usual one. */
export function coldestMorning({ latitudeDeg, longitudeDeg, month, heightM }: Where): Assumption {
  const name = 'coldestC';
  if (latitudeDeg === undefined) {
    const [value, low, high] = frosty;
    return { name, value, low, high, unit: '°C', why: 'a frosty morning, as you named no place' };
  }
  // Of a latitude alone it may be any place on it.
  const night = (m: number): readonly [meanC: number, placesK: number] => {
    if (longitudeDeg !== undefined) return [dayAndNight(latitudeDeg, longitudeDeg, m, heightM).nightMinC, 0];
    const { nightMinC, temperatureSdK } = latitudeMonth(latitudeDeg, m, heightM);
    return [nightMinC, nineInTen * temperatureSdK];
  };
  const [mean, placesK] = month === undefined ? months.map(night).reduce(colder) : night(month);
  const value = Math.round(mean) - belowMeanK(Math.round(mean));
  return {
    name,
    value,
    low: value - Math.round(Math.hypot(offK.colder, placesK)),
    high: value + Math.round(Math.hypot(offK.milder, placesK)),
    unit: '°C',
    why: month === undefined ? 'coldest night of the year there' : 'coldest night of that month there',
  };
}
