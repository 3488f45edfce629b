import { known } from './known.ts';
import type { Place } from './places.ts';
import { regionOf, worldTable } from './world.ts';

/** Mean radius of the earth, km. */
const radiusKm = 6371;
/** Length of a degree of latitude, km. */
const degreeKm = (Math.PI / 180) * radiusKm;

export interface Near {
  readonly place: Place;
  readonly km: number;
}

/** Within so many km a place that campers know by name stands for a village that is nearer. */
const sameKm = 25;

/**
 * The place that a point on earth is told by, and how far it is (great circle, km): one that campers name where one
 * is close by, else the nearest town of the world. Looks through all of them, some ten milliseconds: for a shared
 * location, not for each message.
 * @returns undefined where none is within `withinKm`
 */
export function nearestTown(latitudeDeg: number, longitudeDeg: number, withinKm = 300): Near | undefined {
  const to = (place: Place): Near => ({
    place,
    km: distanceKm(latitudeDeg, longitudeDeg, place.latitudeDeg, place.longitudeDeg),
  });
  const close = [...known.values()]
    .flat()
    .map(to)
    .filter(({ km }) => km <= sameKm);
  const nearest = close.reduce<Near | undefined>((a, b) => (a && a.km <= b.km ? a : b), undefined);
  return nearest ?? nearestOfWorld(latitudeDeg, longitudeDeg, withinKm);
}

function nearestOfWorld(latitudeDeg: number, longitudeDeg: number, withinKm: number): Near | undefined {
  let nearest: Near | undefined;
  let bestKm = withinKm;
  for (const line of worldTable().split('\n')) {
    const east = line.lastIndexOf('|');
    const north = line.lastIndexOf('|', east - 1);
    if (north < 0) continue;
    const latitude = Number(line.slice(north + 1, east));
    // Most towns are too far north or south to need more than this.
    if (Math.abs(latitude - latitudeDeg) * degreeKm > bestKm) continue;
    const longitude = Number(line.slice(east + 1));
    const km = distanceKm(latitudeDeg, longitudeDeg, latitude, longitude);
    if (km > bestKm) continue;
    bestKm = km;
    const [name, country] = line.split('|') as [string, string];
    nearest = { place: { name, ...regionOf(country), latitudeDeg: latitude, longitudeDeg: longitude }, km };
  }
  return nearest;
}

/** Great-circle distance by the haversine formula, km. */
export function distanceKm(latA: number, lonA: number, latB: number, lonB: number): number {
  const [a, b] = [latA, latB].map(deg => (deg * Math.PI) / 180) as [number, number];
  const half = (deg: number): number => Math.sin((deg * Math.PI) / 360) ** 2;
  const h = half(latB - latA) + Math.cos(a) * Math.cos(b) * half(lonB - lonA);
  return 2 * radiusKm * Math.asin(Math.min(1, Math.sqrt(h)));
}
