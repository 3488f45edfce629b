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

/** Dull days come in runs, so that days vary as if there were half as many: one day tells a third of the next. From memory. */
const runOfDays = 2;

/**
 * How far a month's sun may be off to either side, nine times in ten, as a share: the model's error, the year's and,
 * over few days, the days'.
 * @param nearness of the nearest own point: 1 at it, 0 out of its reach
 * @param overDays for how many days the sun is wanted; absent: for an average day of the month
 */
export function monthSpread(
  clearness: number,
  latitudeDeg: number,
  nearness: number,
  overDays = Number.POSITIVE_INFINITY,
): number {
  const { atPoint, elsewhere, polar } = modelError;
  const north = Math.min(1, Math.max(0, (Math.abs(latitudeDeg) - satelliteDeg) / (polarDeg - satelliteDeg)));
  const grid = elsewhere + north * (polar - elsewhere);
  const model = grid + nearness * (atPoint - grid);
  const days = daySpread(clearness) * Math.sqrt(Math.min(1, runOfDays / overDays));
  return nineInTen * Math.hypot(model, yearSpread(clearness), days);
}
