import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { latitudeMonth } from '#climate/latitude.ts';
import { clearnessAt } from '#climate/world.ts';
import { clearnessFor, clearnessOf } from '#engine/solar/climate.ts';
import { stations } from '#engine/solar/stations.ts';
import { outsideRadiationOf } from '#engine/solar/sun.ts';

const months = Array.from({ length: 12 }, (_, i) => i + 1);

describe('the table of stations', () => {
  test.for(stations.map(s => [s.name, s] as const))('%s has twelve plausible months', ([, s]) => {
    expect(s.months).toHaveLength(12);
    for (const m of months) {
      const clearness = present(s.months[m - 1]) / outsideRadiationOf(s.latitudeDeg, m);
      // Published monthly means outside the polar regions lie between 0.24 and 0.74; Bergen's winter and Windhoek's a little beyond.
      expect(clearness, `month ${m}`).toBeGreaterThan(0.18);
      expect(clearness, `month ${m}`).toBeLessThan(0.77);
    }
  });

  test('each place stands once', () => {
    expect(new Set(stations.map(s => s.name)).size).toBe(stations.length);
  });

  test('one that is left out is foretold within 7 % (RMS), and the span holds nine months in ten', () => {
    let squares = 0;
    let held = 0;
    let count = 0;
    for (const s of stations) {
      const others = stations.filter(other => other !== s);
      for (const m of months) {
        const truth = present(s.months[m - 1]) / outsideRadiationOf(s.latitudeDeg, m);
        const { value, spread } = clearnessOf(others, s.latitudeDeg, s.longitudeDeg)(m);
        squares += (value / truth - 1) ** 2;
        held += Math.abs(value - truth) <= spread * value ? 1 : 0;
        count++;
      }
    }
    expect(Math.sqrt(squares / count)).toBeLessThan(0.07);
    expect(held / count).toBeGreaterThan(0.9);
  });
});

describe('a place between stations', () => {
  test('at a point it is that point’s, and names it', () => {
    const dubbo = present(stations.find(s => s.name === 'Dubbo'));
    const here = clearnessOf(stations, -32.2, 148.6)(4);
    expect(here.station).toBe('Dubbo');
    expect(here.value).toBeCloseTo(present(dubbo.months[3]) / outsideRadiationOf(-32.2, 4), 2);
  });

  test('far from all of them it is the fitted climate, with a wider span', () => {
    const sea = clearnessOf(stations, -50, -130)(1);
    expect(sea.station).toBeUndefined();
    expect(sea.value).toBe(clearnessAt(-50, -130, 1));
    const at = clearnessOf([], -33.9, 151.2)(1);
    expect(at.spread).toBeGreaterThan(clearnessOf(stations, -33.9, 151.2)(1).spread);
  });

  test('is never brighter than clear sky nor darker than a cloud', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        fc.integer({ min: 1, max: 12 }),
        (lat, lon, m) => {
          const { low, value, high } = clearnessFor(lat, lon, m);
          return low > 0.05 && low <= value && value <= high && high <= 0.78 + 1e-9;
        },
      ),
      { seed: 5, numRuns: 300 },
    );
  });

  test('without a longitude goes by latitude and says so', () => {
    expect(clearnessFor(-35, undefined, 1)).toMatchObject({
      value: latitudeMonth(-35, 1).clearness,
      why: expect.stringMatching(/latitude/),
    });
  });
});
