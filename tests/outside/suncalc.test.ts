import { getPosition, getTimes } from 'suncalc';
import { describe, expect, test } from 'vitest';
import { solarTimeH, sunPosition, sunTimesUtcH } from '#engine/solar/position.ts';
import { dayLengthOn } from '#engine/solar/sun.ts';

// suncalc (npm) works by Meeus, Astronomical Algorithms; ours by Spencer's series for the day, which has no leap
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
/** The least turn from one direction to another, degrees. */
const turn = (a: number, b: number): number => Math.abs(((a - b + 540) % 360) - 180);

describe.for(places)('the sun of %s beside suncalc', ([, lat, lon]) => {
  test('rises, stands highest and sets within four minutes, all year', () => {
    for (const J of everyTenth) {
      const ours = sunTimesUtcH(lat, lon, J)!;
      // The day of the place, not of Greenwich: its noon is nearest to ours.
      const theirs = getTimes(new Date(noonUtc(J).getTime() - (lon / 15) * 3.6e6), lat, lon);
      const hours = (date: Date): number => (date.getTime() - Date.UTC(year, 0, J)) / 3.6e6;
      for (const [mine, their] of [
        [ours.rise, theirs.sunrise],
        [ours.noon, theirs.solarNoon],
        [ours.set, theirs.sunset],
      ] as const) {
        expect(Math.abs(mine - hours(their!)) * 60, `day ${J}`).toBeLessThan(4);
      }
    }
  });

  test('stands within 0.7° up and across', () => {
    for (const J of everyTenth)
      for (let utcH = 0; utcH < 24; utcH++) {
        const theirs = getPosition(new Date(Date.UTC(year, 0, J, utcH)), lat, lon);
        // Near the horizon theirs is lifted by refraction, and below it nothing shines.
        if (theirs.altitude < 8) continue;
        const ours = sunPosition(lat, J, solarTimeH(J, lon, utcH));
        expect(Math.abs(ours.elevationDeg - theirs.altitude), `day ${J}, ${utcH} h`).toBeLessThan(0.7);
        const across = turn(ours.azimuthDeg, theirs.azimuth) * Math.cos((theirs.altitude * Math.PI) / 180);
        expect(across, `day ${J}, ${utcH} h`).toBeLessThan(0.7);
      }
  });

  test('shines as long by the day, less what refraction adds', () => {
    for (const J of everyTenth) {
      const theirs = getTimes(noonUtc(J), lat, lon);
      const day = (theirs.sunset!.getTime() - theirs.sunrise!.getTime()) / 3.6e6;
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
    expect(sunTimesUtcH(75, 20, J)).toBeUndefined();
  }
});
