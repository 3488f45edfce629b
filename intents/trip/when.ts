import { hourOfDay } from '#answer/clock.ts';
import { present } from '#basics/present.ts';

const weekdays = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'] as const;

/** A day of a trip for people, from 0: "Monday" where the weekday it starts on is known, else "Day 2". */
export const dayName = (day: number, startWeekday?: number): string =>
  startWeekday === undefined ? `Day ${day + 1}` : present(weekdays[(startWeekday + day) % 7]);

/**
 * A moment of a trip for people: "Monday 7 am" where the weekday it starts on is known, else "day 2, 7 am", "the last morning, 9 am".
 * @param atH hours since the start
 * @param startHour hour of day 1 that it starts at
 * @param durationH how long the trip is, h
 */
export function moment(
  atH: number,
  { startHour, durationH, startWeekday }: { startHour: number; durationH: number; startWeekday?: number },
): string {
  const clock = Math.round(startHour + atH);
  const day = Math.floor(clock / 24);
  const hour = hourOfDay(clock - day * 24);
  if (startWeekday !== undefined) return `${weekdays[(startWeekday + day) % 7]} ${hour}`;
  // Five days from an afternoon end on a sixth: nobody calls that "day 6".
  if (day >= Math.ceil(durationH / 24)) return `the last ${clock % 24 < 12 ? 'morning' : 'afternoon'}, ${hour}`;
  return `day ${day + 1}, ${hour}`;
}
