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

/** How much brighter a point of one's own is than the grid is there, as a ratio; undefined in polar night. */
function ratioAt({ latitudeDeg, longitudeDeg, months }: Station, month: number): number | undefined {
  const outside = outsideRadiationOf(latitudeDeg, month);
  const sun = months[month - 1] as number;
  if (outside <= 0 || sun <= 0) return undefined;
  return sun / outside / clearnessAt(latitudeDeg, longitudeDeg, month);
}

/**
 * What the own points within reach make of the grid's clearness in a month (1–12). Their ratios to the grid are
 * averaged by the inverse square of distance, and count the less the farther the nearest is: neighbours some
 * hundreds of km apart share two fifths of their deviation.
 */
export function pullOf(
  points: readonly Station[],
  latitudeDeg: number,
  longitudeDeg: number,
  month: number,
): Pull {
  let nearest: Station | undefined;
  let nearestKm: number = reachKm;
  let [weights, logs] = [0, 0];
  for (const point of points) {
    if (Math.abs(point.latitudeDeg - latitudeDeg) * degreeKm > reachKm) continue;
    const km = distanceKm(latitudeDeg, longitudeDeg, point.latitudeDeg, point.longitudeDeg);
    if (km >= reachKm) continue;
    const ratio = ratioAt(point, month);
    if (ratio === undefined) continue;
    const weight = closeness(km) / (km ** 2 + ownKm ** 2);
    weights += weight;
    logs += weight * Math.log(ratio);
    if (km < nearestKm) [nearest, nearestKm] = [point, km];
  }
  if (!nearest) return { ratio: 1, nearness: 0, nearestKm };
  const nearness = closeness(nearestKm);
  return { ratio: Math.exp((nearness * logs) / weights), nearness, nearest, nearestKm };
}
