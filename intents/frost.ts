import { airTemperature } from '#engine/solar/air.ts';
import type { Facts } from '#rig/rig.ts';
import { whereOf } from './sun.ts';

/** A month whose mean air is no warmer than this brings a battery below freezing on most days, °C. */
const frostC = 0;

/** Where the mean is as warm as this, no night of an ordinary year freezes a battery, °C. */
const mildC = 12;

/** How warm the air of the month told is at the place told, °C; undefined where either is unknown. */
function airC(facts: Facts): number | undefined {
  if (facts.month === undefined) return undefined;
  const where = whereOf(facts);
  return where.latitudeDeg === undefined ? undefined : airTemperature({ ...where, month: facts.month }).value;
}

/** Whether no frost is to be thought of in the month told at the place told. False where either is unknown. */
export const isMildLikely = (facts: Facts): boolean => (airC(facts) ?? Number.NEGATIVE_INFINITY) >= mildC;

/** Whether the month told is one of frost at the place told: its mean by the climate, ± 6 K. False where either is unknown. */
export const isFrostLikely = (facts: Facts): boolean => (airC(facts) ?? Number.POSITIVE_INFINITY) <= frostC;
