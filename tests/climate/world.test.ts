import { statSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { heightAt, landShare } from '#climate/heights.ts';
import { type LatitudeMonth, latitudeMonth } from '#climate/latitude.ts';
import { dayAndNight } from '#climate/temperature.ts';
import { clearnessAt, landHeightM, temperaturesAt } from '#climate/world.ts';
import { climateAt } from '#engine/solar/climate-at.ts';
import { root } from '../house/source.ts';
import { sunRows } from '../published/solar-places.ts';

const anywhere = [
  fc.double({ min: -90, max: 90, noNaN: true }),
  fc.double({ min: -180, max: 180, noNaN: true }),
  fc.integer({ min: 1, max: 12 }),
] as const;

describe('the shipped climate', () => {
  test('takes no more than 150 kB', () => {
    expect(statSync(`${root}src/climate/data/world.bin`).size).toBeLessThanOrEqual(150_000);
  });

  test('meets published sun within 7 % (RMS), and no place-month is off by more than a fifth', () => {
    const off = sunRows.map(row => row.run() / row.gives - 1);
    expect(off.length).toBeGreaterThan(50);
    expect(Math.sqrt(off.reduce((sum, e) => sum + e * e, 0) / off.length)).toBeLessThan(0.07);
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(0.2);
  });

  test('has a plausible month for every point on earth', () => {
    fc.assert(
      fc.property(...anywhere, (lat, lon, month) => {
        const clearness = clearnessAt(lat, lon, month);
        const { dayMaxC, nightMinC } = dayAndNight(lat, lon, month);
        return (
          clearness >= 0.1 &&
          clearness <= 0.8 &&
          dayMaxC > nightMinC &&
          dayMaxC < 48 &&
          dayMaxC > -50 &&
          nightMinC > -58
        );
      }),
      { seed: 3, numRuns: 2000 },
    );
  });

  test('goes round the date line without a step', () => {
    for (const lat of [-45, -17, 0, 30, 65])
      expect(clearnessAt(lat, 179.999, 6)).toBeCloseTo(clearnessAt(lat, -179.999, 6), 3);
  });

  test('polar night is dark and polar day is not', () => {
    const tromso = climateAt(69.6, 19);
    expect(present(tromso[11]).sunKWhM2).toBe(0);
    expect(present(tromso[5]).sunKWhM2).toBeGreaterThan(3.5);
    expect(present(climateAt(-78, 167)[5]).sunKWhM2).toBe(0);
  });
});

describe('heights', () => {
  test.for<[name: string, lat: number, lon: number, heightM: number]>([
    ['Thredbo', -36.5, 148.3, 1365],
    ['Perisher', -36.4, 148.4, 1720],
    ['Jindabyne', -36.4, 148.6, 920],
    ['Leh', 34.2, 77.6, 3500],
    ['Tromsø', 69.6, 19.0, 10],
  ])('%s stands in the table', ([, lat, lon, heightM]) => {
    expect(heightAt(lat, lon)).toBe(heightM);
  });

  test('elsewhere it is the mean of the land, a third of it by the sea, nought on the sea', () => {
    expect(heightAt(-32.2, 148.6)).toBe(landHeightM(-32.2, 148.6));
    expect(landShare(-32.2, 148.6)).toBe(1);
    // Newcastle, New South Wales.
    expect(landShare(-32.9, 151.8)).toBeLessThan(1);
    expect(heightAt(-32.9, 151.8)).toBeCloseTo(present(landHeightM(-32.9, 151.8)) / 3, 9);
    expect(landHeightM(-40, -100)).toBeUndefined();
    expect(heightAt(-40, -100)).toBe(0);
  });

  test('a told height cools, 4.5 K a kilometre by day and 5 by night', () => {
    const at = (heightM: number) => present(climateAt(-36.5, 148.3, heightM)[6]);
    expect(at(0).dayMaxC - at(2000).dayMaxC).toBeCloseTo(9, 6);
    expect(at(0).nightMinC - at(2000).nightMinC).toBeCloseTo(10, 6);
    // A ski town in July freezes at night.
    expect(present(climateAt(-36.4, 148.4)[6]).nightMinC).toBeLessThan(-2);
  });
});

describe('a latitude alone', () => {
  test('has a winter, a wet summer in the tropics, and a land that cools with its height', () => {
    // January at 50° N: frost on the plains of two continents, a few degrees above it by the Atlantic.
    expect(latitudeMonth(50, 1).dayMaxC).toBeGreaterThan(-9);
    expect(latitudeMonth(50, 1).dayMaxC).toBeLessThan(3);
    for (const [dry, wet] of [
      [1, 7],
      [2, 8],
    ] as const) {
      expect(latitudeMonth(12, wet).clearness).toBeLessThan(latitudeMonth(12, dry).clearness - 0.05);
      expect(latitudeMonth(-12, dry).clearness).toBeLessThan(latitudeMonth(-12, wet).clearness - 0.05);
    }
    expect(latitudeMonth(40, 7, 0).dayMaxC - latitudeMonth(40, 7, 2000).dayMaxC).toBeCloseTo(9, 9);
    expect(latitudeMonth(40, 7, 0).nightMinC - latitudeMonth(40, 7, 2000).nightMinC).toBeCloseTo(10, 9);
  });

  test('goes from one latitude to the next without a step, and holds beyond the last', () => {
    for (const latitude of [-42.5, -20, 0, 37.5, 60])
      expect(latitudeMonth(latitude + 1e-6, 4).dayMaxC).toBeCloseTo(
        latitudeMonth(latitude - 1e-6, 4).dayMaxC,
        4,
      );
    expect(latitudeMonth(90, 7)).toEqual(latitudeMonth(85, 7));
    expect(latitudeMonth(-90, 7)).toEqual(latitudeMonth(-60, 7));
    // Half way between two rows lies their mean.
    const [below, half, above] = [35, 37.5, 40].map(l => latitudeMonth(l, 7)) as [
      LatitudeMonth,
      LatitudeMonth,
      LatitudeMonth,
    ];
    for (const key of ['clearness', 'clearnessSd', 'dayMaxC', 'nightMinC', 'temperatureSdK'] as const)
      expect(half[key]).toBeCloseTo((below[key] + above[key]) / 2, 9);
  });
});

describe('small islands', () => {
  test('day and night differ little, about the mean of the fit', () => {
    const raw = temperaturesAt(32.3, -64.8, 7, 0);
    const ours = dayAndNight(32.3, -64.8, 7);
    expect(ours.dayMaxC - ours.nightMinC).toBeCloseTo(6.5, 9);
    expect(ours.dayMaxC + ours.nightMinC).toBeCloseTo(raw.dayMaxC + raw.nightMinC, 9);
  });

  test('a continent is left alone', () => {
    expect(dayAndNight(-23.8, 133.9, 7, 546)).toEqual(temperaturesAt(-23.8, 133.9, 7, 546));
  });
});
