import { hourOfDay } from '#answer/clock.ts';
import { present } from '#basics/present.ts';

const weekdays = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'] as const;

/** The hours of a trip: from which hour of day 1, how long (h), and from which weekday where that is known. */
interface TripClock {
  readonly startHour: number;
  readonly durationH: number;
  readonly startWeekday?: number;
}

/** A day of a trip for people, from 0: "Monday" where the weekday it starts on is known, else "Day 2". */
export const dayName = (day: number, startWeekday?: number): string =>
  startWeekday === undefined ? `Day ${day + 1}` : present(weekdays[(startWeekday + day) % 7]);

/**
 * A moment of a trip for people: "Monday at 7 am" where the weekday it starts on is known, else "day 2 at 7 am", "the
 * last morning at 9 am".
 * @param atH hours since the start
 */
export function moment(atH: number, { startHour, durationH, startWeekday }: TripClock): string {
  const clock = Math.round(startHour + atH);
  const day = Math.floor(clock / 24);
  const hour = hourOfDay(clock - day * 24);
  if (startWeekday !== undefined) return `${weekdays[(startWeekday + day) % 7]} at ${hour}`;
  // Five days from an afternoon end on a sixth: nobody calls that "day 6".
  if (day >= Math.ceil(durationH / 24)) return `the last ${partOfDay(clock % 24)} at ${hour}`;
  return `day ${day + 1} at ${hour}`;
}

const partOfDay = (hour: number): string => (hour < 4 ? 'night' : hour < 12 ? 'morning' : 'afternoon');
