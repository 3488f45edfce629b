import type { Assumption } from '../assumption.ts';
import type { Sky } from './case.ts';
import { townsSunKWhM2 } from './tables.ts';

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

/** How a clear day and full cloud compare with the month's average, to stretch its ends by. */
const ends: Readonly<Record<Sky, readonly [low: number, high: number]>> = {
  mixed: [1, 1],
  sunny: [1.2, 1.2],
  overcast: [0.15, 0.45],
};

/**
 * Peak sun hours where a month was told and no place: anything that the world's towns have in that month, from the
 * short days of one hemisphere to the long ones of the other.
 */
export function sunHoursAnywhere(month: number, sky: Sky): Assumption {
  const usual = skySunHours[sky];
  const [least, most] = townsSunKWhM2[month - 1] as readonly [number, number];
  const [low, high] = [least * ends[sky][0], most * ends[sky][1]];
  return {
    ...usual,
    value: Math.min(high, Math.max(low, usual.value)),
    low: Math.min(low, usual.low),
    high: Math.max(high, usual.high),
    why: 'no place said: that month may be summer or winter, anywhere on earth',
  };
}
