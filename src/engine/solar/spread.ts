import { dayToDay, spreadFrom, yearToYear } from './tables.ts';

/** A table by clearness, between its rows; the ends hold beyond. */
function byClearness(table: readonly number[], clearness: number): number {
  const last = table.length - 1;
  const at = Math.min(last, Math.max(0, (clearness - spreadFrom.clearness) / spreadFrom.step));
  const i = Math.min(last - 1, Math.floor(at));
  return (table[i] as number) + (at - i) * ((table[i + 1] as number) - (table[i] as number));
}

/** Standard deviation of a month's sun from year to year, as a share of its mean. */
export const yearSpread = (clearness: number): number => byClearness(yearToYear, clearness);

/** Standard deviation of a day's sun within a month, as a share of its mean. */
export const daySpread = (clearness: number): number => byClearness(dayToDay, clearness);

/** Standard deviations to either side that hold nine cases in ten. */
export const nineInTen = 1.645;

/** The model's own error, standard deviation as a share: at an own point, elsewhere, and beyond the polar circles. */
const modelError = { atPoint: 0.06, elsewhere: 0.08, polar: 0.2 } as const;
/** Up to here satellites see the ground well; from there to the circle ever less. */
const [satelliteDeg, polarDeg] = [58, 68] as const;

/**
 * How far a month's sun may be off to either side, nine years in ten, as a share: the model's error and the year's.
 * @param nearness of the nearest own point: 1 at it, 0 out of its reach
 */
export function monthSpread(clearness: number, latitudeDeg: number, nearness: number): number {
  const { atPoint, elsewhere, polar } = modelError;
  const north = Math.min(1, Math.max(0, (Math.abs(latitudeDeg) - satelliteDeg) / (polarDeg - satelliteDeg)));
  const grid = elsewhere + north * (polar - elsewhere);
  const model = grid + nearness * (atPoint - grid);
  return nineInTen * Math.hypot(model, yearSpread(clearness));
}
