import { describe, expect, test } from 'vitest';
import { distanceKm, nearestTown } from '#places/near.ts';

describe('how far it is', () => {
  // Great-circle distances between airports' cities, from memory of the usual tables; 1 % is enough.
  test.each([
    ['Sydney to Melbourne', -33.87, 151.21, -37.81, 144.96, 713],
    ['London to Paris', 51.51, -0.13, 48.86, 2.35, 344],
    ['over the date line', 0, 179.5, 0, -179.5, 111.2],
    ['pole to pole', 90, 0, -90, 0, 20_015],
    ['nowhere', 10, 10, 10, 10, 0],
  ])('%s', (_what, latA, lonA, latB, lonB, km) => {
    expect(Math.abs(distanceKm(latA, lonA, latB, lonB) - km)).toBeLessThanOrEqual(0.01 * km);
  });
});

describe('the town that a point is told by', () => {
  // The towns' own coordinates are in any atlas.
  test.each([
    ['Dubbo', -32.24, 148.6],
    ['Mildura', -34.18, 142.16],
    ['Edinburgh', 55.95, -3.19],
    ['Reykjavik', 64.15, -21.94],
  ])('%s', (name, latitude, longitude) => {
    expect(nearestTown(latitude, longitude)?.place.name.normalize('NFD').replace(/\p{M}/gu, '')).toBe(name);
  });
  test('in the middle of an ocean there is none', () => {
    expect(nearestTown(0, -30)).toBeUndefined();
  });
  test('a village too, where nothing that campers name is near', () => {
    const near = nearestTown(47.51, 19.9);
    expect(near?.km).toBeLessThan(30);
  });
});
