import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { pullOf } from '#engine/solar/own-points.ts';
import { stations } from '#engine/solar/stations.ts';
import { draws } from '../../house/share.ts';

/** The way between two places by vectors from the earth's centre, km: another way than the program's. */
function awayKm(a: readonly [number, number], b: readonly [number, number]): number {
  const vector = ([lat, lon]: readonly [number, number]) => {
    const [phi, lambda] = [(lat * Math.PI) / 180, (lon * Math.PI) / 180];
    return [Math.cos(phi) * Math.cos(lambda), Math.cos(phi) * Math.sin(lambda), Math.sin(phi)] as const;
  };
  const [[x, y, z], [u, v, w]] = [vector(a), vector(b)];
  const cross = Math.hypot(y * w - z * v, z * u - x * w, x * v - y * u);
  return 6371 * Math.atan2(cross, x * u + y * v + z * w);
}

/** The nearest point to a place, by looking at all of them. */
const nearestTo = (lat: number, lon: number) =>
  stations
    .map(one => ({ one, km: awayKm([lat, lon], [one.latitudeDeg, one.longitudeDeg]) }))
    .reduce((a, b) => (b.km < a.km ? b : a));

describe('points of one’s own about a place', () => {
  test('the nearest within 300 km is found wherever the place lies, across the date line and by the poles too', () => {
    // About each point, out to some 500 km in all directions.
    const about = fc
      .tuple(
        fc.constantFrom(...stations),
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
      )
      .map(([{ latitudeDeg, longitudeDeg }, km, towards]): [number, number] => {
        const lat = latitudeDeg + (km / 111.2) * Math.cos(towards);
        return [lat, longitudeDeg + ((km / 111.2) * Math.sin(towards)) / Math.cos((lat * Math.PI) / 180)];
      });
    const anywhere = fc.tuple(
      fc.double({ min: -90, max: 90, noNaN: true }),
      fc.double({ min: -180, max: 180, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.oneof(about, anywhere), ([lat, lon]) => {
        const { one, km } = nearestTo(lat, lon);
        const { nearest, nearestKm, nearness } = pullOf(stations, lat, lon)(3);
        // March has sun at all of them.
        if (km > 300.001) return nearest === undefined && nearestKm === 300 && nearness === 0;
        return km > 299.999 || (nearest === one && Math.abs(nearestKm - km) < 0.01);
      }),
      { seed: 21, numRuns: draws(1000, 10_000) },
    );
  });

  test('a fifth more sun at a point is a fifth more there, all of it up to 40 km and none from 300 km on', () => {
    const point = { ...present(stations[0]), latitudeDeg: 10, longitudeDeg: 179.9 };
    const more = { ...point, months: point.months.map(sun => 1.2 * sun) };
    const gain = (lat: number, lon: number) =>
      pullOf([more], lat, lon)(6).ratio / pullOf([point], lat, lon)(6).ratio;
    expect(gain(10, 179.9)).toBeCloseTo(1.2, 9);
    expect(gain(10, -179.9)).toBeCloseTo(1.2, 9);
    expect(gain(10.35, 179.9)).toBeCloseTo(1.2, 9);
    // Halfway between 40 and 300 km half of the deviation.
    expect(gain(10 + 170 / 111.19, 179.9)).toBeCloseTo(Math.sqrt(1.2), 3);
    expect(gain(10, 182.7)).toBe(1);
    expect(gain(12.72, 179.9)).toBe(1);
  });
});
