import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { hourlyShares } from '#engine/solar/hourly.ts';
import {
  dayLengthOf,
  dayLengthOn,
  meanDay,
  outsideRadiationOf,
  outsideRadiationOn,
  sunDay,
} from '#engine/solar/sun.ts';
import { beamFactor, diffuseShare, tiltedRadiation } from '#engine/solar/tilt.ts';

const seeded = { seed: 7, numRuns: 300 } as const;
const latitude = fc.double({ min: -89, max: 89, noNaN: true });
const campingLatitude = fc.double({ min: -55, max: 55, noNaN: true });
const month = fc.integer({ min: 1, max: 12 });
const months = Array.from({ length: 12 }, (_, i) => i + 1);

describe('the sun by the book', () => {
  test('the short cut for the day of the month, int(30.4 M − 15), would move Ra by up to 0.65 MJ/m² (FAO-56)', () => {
    const fifteenths = [15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349];
    const worst = Math.max(
      ...months.map(m =>
        Math.abs(
          outsideRadiationOn(40, present(fifteenths[m - 1])) -
            outsideRadiationOn(40, Math.trunc(30.4 * m - 15)),
        ),
      ),
    );
    expect(worst * 3.6).toBeGreaterThan(0.3);
    expect(worst * 3.6).toBeLessThan(0.7);
    // Ours are the days whose sun is the mean of the month.
    for (const m of months) expect(Math.abs(meanDay(m) - present(fifteenths[m - 1]))).toBeLessThanOrEqual(5);
  });

  test('no day gives more than 13.5 or less than 0 kWh/m², and daylight lies between 0 and 24 h', () => {
    fc.assert(
      fc.property(latitude, fc.integer({ min: 1, max: 365 }), (lat, J) => {
        const H = outsideRadiationOn(lat, J);
        const N = dayLengthOn(lat, J);
        return H >= -1e-9 && H < 13.5 && N >= 0 && N <= 24;
      }),
      seeded,
    );
  });

  test('day and night on either side of the equator make 24 h together', () => {
    fc.assert(
      fc.property(
        latitude,
        month,
        (lat, m) => Math.abs(dayLengthOf(lat, m) + dayLengthOf(-lat, m) - 24) < 1e-6,
      ),
      seeded,
    );
  });

  test('midsummer is December in the south and June in the north', () => {
    for (const lat of [25, 35, 45, 55]) {
      expect(dayLengthOf(-lat, 12)).toBeGreaterThan(dayLengthOf(-lat, 6));
      expect(dayLengthOf(lat, 6)).toBeGreaterThan(dayLengthOf(lat, 12));
    }
  });

  test('polar night is dark, polar day is whole', () => {
    expect(dayLengthOf(78, 12)).toBe(0);
    expect(outsideRadiationOf(78, 12)).toBeCloseTo(0, 9);
    expect(dayLengthOf(78, 6)).toBe(24);
  });
});

describe('hour by hour', () => {
  test('shares sum to one, are even about noon and highest there', () => {
    fc.assert(
      fc.property(campingLatitude, month, (lat, m) => {
        const shares = hourlyShares(lat, m);
        const sum = shares.reduce((a, b) => a + b, 0);
        const isEven = shares.every((share, hour) => Math.abs(share - present(shares[23 - hour])) < 1e-9);
        return (
          shares.length === 24 &&
          Math.abs(sum - 1) < 1e-9 &&
          isEven &&
          shares.every(s => s >= 0 && s <= present(shares[12]))
        );
      }),
      seeded,
    );
  });
  test('in polar night there are none', () => {
    expect(hourlyShares(80, 12)).toEqual(Array(24).fill(0));
  });
});

describe('an angled panel', () => {
  const ratio = (latitudeDeg: number, m: number, tiltDeg: number, clearness = 0.6) => {
    const plane = { latitudeDeg, month: m, clearness };
    return tiltedRadiation({ ...plane, tiltDeg }) / tiltedRadiation({ ...plane, tiltDeg: 0 });
  };

  test('gains in winter, towards the equator, on both sides of it', () => {
    expect(ratio(-35, 6, 35)).toBeGreaterThan(1.3);
    expect(ratio(35, 12, 35)).toBeGreaterThan(1.3);
  });

  test('towards the wrong pole it is worse than flat in winter', () => {
    for (const [lat, m] of [
      [-35, 6],
      [-35, 7],
      [35, 12],
      [35, 1],
    ] as const)
      expect(ratio(lat, m, -30)).toBeLessThan(0.85);
  });

  test('loses in high summer: flat wins (PVWatts, Golden, June: 0.98)', () => {
    expect(ratio(39.73, 6, 20)).toBeLessThan(1);
    expect(ratio(-39.73, 12, 20)).toBeLessThan(1);
  });

  test('is the same on the other hemisphere half a year away, but for the distance to the sun', () => {
    for (const m of months) {
      const other = ((m + 5) % 12) + 1;
      expect(Math.abs(ratio(-40, m, 30) / ratio(40, other, 30) - 1)).toBeLessThan(0.06);
    }
  });

  test('lying flat it gets what the ground gets', () => {
    fc.assert(
      fc.property(campingLatitude, month, (lat, m) => Math.abs(ratio(lat, m, 0) - 1) < 1e-12),
      seeded,
    );
  });

  test('has a beam factor of one when flat, and never below nought', () => {
    fc.assert(
      fc.property(campingLatitude, month, fc.double({ min: -90, max: 90, noNaN: true }), (lat, m, tilt) => {
        const sun = sunDay(lat, meanDay(m));
        return Math.abs(beamFactor(sun, 0) - 1) < 1e-9 && beamFactor(sun, tilt) >= 0;
      }),
      seeded,
    );
  });
});

test('the clearer the sky, the smaller the share of diffuse light', () => {
  for (const omega of [1.2, 1.8])
    for (let k = 0.3; k < 0.72; k += 0.05) {
      expect(diffuseShare(k, omega)).toBeGreaterThan(diffuseShare(k + 0.05, omega));
      expect(diffuseShare(k, omega)).toBeGreaterThan(0.1);
      expect(diffuseShare(k, omega)).toBeLessThan(0.9);
    }
});
