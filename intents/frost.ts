import { airTemperature } from '#engine/solar/air.ts';
import type { Facts } from '#rig/rig.ts';
import { whereOf } from './sun.ts';

/** A month whose mean air is no warmer than this brings a battery below freezing on most days, °C. */
const frostC = 0;

/** Whether the month told is one of frost at the place told: its mean by the climate, ± 6 K. False where either is unknown. */
export function isFrostLikely(facts: Facts): boolean {
  if (facts.month === undefined) return false;
  const where = whereOf(facts);
  if (where.latitudeDeg === undefined) return false;
  return airTemperature({ ...where, month: facts.month }).value <= frostC;
}
