import type { Assumption } from '../assumption.ts';
import { airTemperature, type Where } from '../solar/air.ts';

/** Where a battery stands: in the living space, somewhere in the vehicle (also where nobody said), outside, or by the engine. */
export type Stand = 'inside' | 'vehicle' | 'outside' | 'engine';

/** How a place differs from the air about the vehicle over day and night. */
interface StandRow {
  /** How much warmer it is, K: likely, at least, at most. */
  readonly warmerK: readonly [likely: number, low: number, high: number];
  /** What it is kept at in the cold, °C, where somebody lives in it. */
  readonly keptAboveC?: number;
  readonly says: string;
}

/** Common practice: a vehicle's inside is a little warmer than the air outside, and lived in it is kept from freezing. */
export const stands: Readonly<Record<Stand, StandRow>> = {
  inside: { warmerK: [3, 0, 8], keptAboveC: 10, says: 'inside with you' },
  vehicle: { warmerK: [0, -4, 8], keptAboveC: 10, says: 'in the vehicle' },
  outside: { warmerK: [0, -4, 4], says: 'outside' },
  engine: { warmerK: [15, 5, 30], says: 'by the engine' },
};

/** A battery's usual temperature where no place was said, and its span, °C. Common practice. */
const anywhere = { value: 25, low: 15, high: 35 } as const;

/**
 * What a battery's temperature is taken to be, °C: the air of place, month and height over day and night, and where
 * it stands. In frost one that is lived with is kept above freezing; its low end is that of the air.
 */
export function batteryTemperature(where: Where, stand: Stand = 'vehicle'): Assumption {
  const { warmerK, keptAboveC, says } = stands[stand];
  const name = 'batteryTemperature';
  if (where.latitudeDeg === undefined && where.heightM === undefined) {
    const [more] = warmerK;
    const { value, low, high } = anywhere;
    const why = `a battery ${says}, as you named no place`;
    return { name, value: value + more, low: low + more, high: high + more, unit: '°C', why };
  }
  const air = airTemperature(where);
  const [likely, low, high] = [air.value + warmerK[0], air.low + warmerK[1], air.high + warmerK[2]];
  const value = Math.max(likely, keptAboveC ?? likely);
  return { name, value, low, high: Math.max(high, value), unit: '°C', why: `${says}; ${air.why}` };
}
