import { getTimes } from 'suncalc';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { dayLengthOn } from '#engine/solar/sun.ts';

// suncalc (npm) works by Meeus, Astronomical Algorithms; ours by FAO-56's declination for the day, which has no leap
// years: up to a day of the sun's course, 0.4° of declination at the equinoxes, is what they may differ by.

const places: readonly (readonly [name: string, latitudeDeg: number, longitudeDeg: number])[] = [
  ['Singapore', 1.35, 103.82],
  ['Darwin', -12.46, 130.84],
  ['Alice Springs', -23.7, 133.88],
  ['Perth', -31.95, 115.86],
  ['Melbourne', -37.81, 144.96],
  ['Hobart', -42.88, 147.33],
  ['Madrid', 40.42, -3.7],
  ['Denver', 39.74, -104.99],
  ['Berlin', 52.52, 13.4],
  ['Inverness', 57.48, -4.22],
];
const year = 2026;
const noonUtc = (J: number): Date => new Date(Date.UTC(year, 0, J, 12));
const everyTenth = Array.from({ length: 37 }, (_, i) => 1 + 10 * i);

describe.for(places)('the sun of %s beside suncalc', ([, lat, lon]) => {
  test('shines as long by the day, less what refraction adds', () => {
    for (const J of everyTenth) {
      const theirs = getTimes(noonUtc(J), lat, lon);
      const day = (present(theirs.sunset).getTime() - present(theirs.sunrise).getTime()) / 3.6e6;
      // 0.833° at either end: 7 min at the equator, up to 20 at 57°. FAO-56 leaves it out, and its declination differs by up to 0.4°.
      const more = day - dayLengthOn(lat, J);
      expect(more, `day ${J}`).toBeGreaterThan(-0.05);
      expect(more, `day ${J}`).toBeLessThan(0.5);
    }
  });
});

test('polar day and polar night are none with both', () => {
  for (const [J, isUp] of [
    [172, true],
    [355, false],
  ] as const) {
    const theirs = getTimes(noonUtc(J), 75, 20);
    expect(isUp ? theirs.alwaysUp : theirs.alwaysDown).toBe(true);
    expect(dayLengthOn(75, J)).toBeCloseTo(isUp ? 24 : 0, 9);
  }
});
