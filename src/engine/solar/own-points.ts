import { clearnessAt } from '#climate/world.ts';
import { distanceKm } from '#places/near.ts';
import type { Station } from './stations.ts';
import { outsideRadiationOf } from './sun.ts';

/** Within the first a point of one's own goes before the grid, beyond the second it has no say, km. */
const [ownKm, reachKm] = [40, 300] as const;
/** A degree of latitude, km. */
const degreeKm = 111;

/** What the points about a place say of the grid there. */
export interface Pull {
  /** Multiply the grid's clearness by this. */
  readonly ratio: number;
  /** 1 at the nearest point, 0 out of its reach. */
  readonly nearness: number;
  readonly nearest?: Station;
  readonly nearestKm: number;
}

/** Closeness from 1 to 0. */
const closeness = (km: number): number => Math.min(1, Math.max(0, (reachKm - km) / (reachKm - ownKm)));

const ratios = new WeakMap<Station, readonly (number | undefined)[]>();

/** How much brighter a point of one's own is than the grid is there, as a ratio by month; undefined in polar night. */
function ratiosAt(station: Station): readonly (number | undefined)[] {
  const { latitudeDeg, longitudeDeg, months } = station;
  const made =
    ratios.get(station) ??
    months.map((sun, m) => {
      const outside = outsideRadiationOf(latitudeDeg, m + 1);
      if (outside <= 0 || sun <= 0) return undefined;
      return sun / outside / clearnessAt(latitudeDeg, longitudeDeg, m + 1);
    });
  ratios.set(station, made);
  return made;
}

interface Neighbour {
  readonly station: Station;
  readonly km: number;
  readonly weight: number;
}

/** The points within reach, the nearest first. */
function neighboursOf(points: readonly Station[], latitudeDeg: number, longitudeDeg: number): Neighbour[] {
  const near: Neighbour[] = [];
  for (const station of points) {
    // Distances are dear: most points lie too far to the north or south.
    if (Math.abs(station.latitudeDeg - latitudeDeg) * degreeKm > reachKm) continue;
    const km = distanceKm(latitudeDeg, longitudeDeg, station.latitudeDeg, station.longitudeDeg);
    if (km < reachKm) near.push({ station, km, weight: closeness(km) / (km ** 2 + ownKm ** 2) });
  }
  return near.sort((a, b) => a.km - b.km);
}

/**
 * What the own points within reach of a place make of the grid's clearness, by month (1–12). Their ratios to the grid
 * are averaged by the inverse square of distance, and count the less the farther the nearest is: neighbours some
 * hundreds of km apart share two fifths of their deviation.
 */
export function pullOf(
  points: readonly Station[],
  latitudeDeg: number,
  longitudeDeg: number,
): (month: number) => Pull {
  const neighbours = neighboursOf(points, latitudeDeg, longitudeDeg);
  return month => {
    let nearest: Neighbour | undefined;
    let [weights, logs] = [0, 0];
    for (const neighbour of neighbours) {
      const ratio = ratiosAt(neighbour.station)[month - 1];
      if (ratio === undefined) continue;
      nearest ??= neighbour;
      weights += neighbour.weight;
      logs += neighbour.weight * Math.log(ratio);
    }
    if (!nearest) return { ratio: 1, nearness: 0, nearestKm: reachKm };
    const { station, km } = nearest;
    const nearness = closeness(km);
    return { ratio: Math.exp((nearness * logs) / weights), nearness, nearest: station, nearestKm: km };
  };
}
