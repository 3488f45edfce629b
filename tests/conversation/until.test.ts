import { expect, test } from 'vitest';
import { hoursUntil } from '#conversation/told/until.ts';

// A Thursday in January, nine in the morning of the zero meridian.
const at = new Date('2026-01-15T09:00:00Z');

test.each<[until: string, hours: number | undefined, longitudeDeg?: number]>([
  ['7am', 22],
  ['6pm', 9],
  ['5:40am', 20.67],
  ['17:30', 8.5],
  ['noon tomorrow', 27],
  ['tomorrow', 27],
  ['midnight', 15],
  ['sunday lunch', 75.5],
  ['saturday', 51],
  ['thursday 8am', 167],
  // Seven in the evening at 150° east: the next sunrise is eleven hours off.
  ['sunrise', 11, 150],
  ['7am', 12, 150],
  ['friday 7am', 12, 150],
  // Said without its half of the day: the next such hour.
  ['7:00', 10],
  ['10:00', 1],
  ['6:30', 9.5],
  ['6:30', 11.5, 150],
  ['whenever', undefined],
])('from Thursday 9 am until %s: %d h', (until, hours, longitudeDeg) => {
  expect(hoursUntil(until, at, longitudeDeg)).toBe(hours);
});
