import type { Assumption } from '#quantity/range.ts';
import type { Sky } from './case.ts';

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
