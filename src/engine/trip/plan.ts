import { present } from '#basics/present.ts';
import type { Sky } from '../solar/case.ts';
import { dayHours } from './profile.ts';
import { drivingFromHour, generatorFromHour, mainsFromHour } from './tables.ts';

/** One day of a trip as told; what is absent is as on every other day. */
export interface TripDay {
  /** Hours of driving, from nine in the morning: it arrives when they are over. */
  readonly drivingH?: number;
  readonly sky?: Sky;
  /** Hours that a generator runs, in the late afternoon. */
  readonly generatorH?: number;
  /** Hours on mains, from the evening on into the next day. */
  readonly mainsH?: number;
}

/** A stretch of hours, from an hour of a day on. */
export interface Stretch {
  readonly fromHour: number;
  readonly hours: number;
}

/** The stretch of a day's driving: from nine, earlier where the day would not hold it. */
export const driveOf = (hours: number): Stretch => ({
  fromHour: Math.min(drivingFromHour, dayHours - hours),
  hours,
});
const generatorOf = (hours: number): Stretch => ({
  fromHour: Math.min(generatorFromHour, dayHours - hours),
  hours,
});
/** The hours of a night on mains, where nobody said how many. */
export const mainsNightH = dayHours - mainsFromHour + drivingFromHour;
/** The stretch of a day's mains: from the evening, earlier where it would go on past the next morning. */
const mainsOf = (hours: number): Stretch => ({
  fromHour: Math.max(0, Math.min(mainsFromHour, dayHours + drivingFromHour - hours)),
  hours,
});
/** Whether the mains of a day go on into the next one. */
export const isIntoNextDay = (mainsH: number): boolean => mainsOf(mainsH).fromHour + mainsH > dayHours;

/** What of each hour of a trip is driven, on a generator, on mains (0–1 each), and which sky each day has. */
export interface Plan {
  readonly days: number;
  readonly driving: Float64Array;
  readonly generator: Float64Array;
  readonly mains: Float64Array;
  /** For each day the place of its sky in a list. */
  readonly skies: Uint8Array;
}

/** Marks a stretch of a day: into the next day where it goes over midnight. */
function mark(hours: Float64Array, day: number, { fromHour, hours: length }: Stretch): void {
  const start = day * dayHours + fromHour;
  const end = Math.min(start + length, hours.length);
  for (let hour = Math.floor(start); hour < end; hour++)
    hours[hour] = Math.min(1, present(hours[hour]) + Math.min(end, hour + 1) - Math.max(start, hour));
}

/**
 * Lays a trip's days out by the hour, for as many days as it touches.
 * @param skyOf the place in a list of the sky of a day (0 first)
 */
export function planOf(
  days: number,
  told: readonly TripDay[],
  drivingHoursPerDay: number,
  skyOf: (day: number) => number,
): Plan {
  const hours = () => new Float64Array(days * dayHours);
  const plan = { days, driving: hours(), generator: hours(), mains: hours(), skies: new Uint8Array(days) };
  // A plan that tells driving on any day tells it of all.
  const isDrivingTold = told.some(day => day.drivingH !== undefined);
  for (let day = 0; day < days; day++) {
    const { drivingH = isDrivingTold ? 0 : drivingHoursPerDay, generatorH = 0, mainsH = 0 } = told[day] ?? {};
    mark(plan.driving, day, driveOf(drivingH));
    mark(plan.generator, day, generatorOf(generatorH));
    mark(plan.mains, day, mainsOf(mainsH));
    plan.skies[day] = skyOf(day);
  }
  return plan;
}
