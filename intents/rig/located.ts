import type { Reply } from '#answer/reply.ts';
import { english } from '#answer/speech.ts';
import { present } from '#basics/present.ts';
import { placeByName } from '#places/find.ts';
import { nearestTown } from '#places/near.ts';
import type { Rig } from '#rig/rig.ts';

/** A town so near that its name stands for the place, and the sun is the same, km. */
const sameSunKm = 60;

/** Where the sun is taken to be. */
export type Where = Pick<Rig, 'place' | 'latitudeDeg' | 'longitudeDeg'>;

/** To a tenth of a degree, about 10 km: enough for the sun, and no more is kept of where somebody is. */
const coarse = (deg: number): number => Math.round(deg * 10) / 10;

/** A shared location as facts and as a reply that says what was taken of it. */
export function located(at: { readonly latitudeDeg: number; readonly longitudeDeg: number }): {
  readonly where: Where;
  readonly reply: Reply;
} {
  const [latitudeDeg, longitudeDeg] = [coarse(at.latitudeDeg), coarse(at.longitudeDeg)];
  const near = nearestTown(latitudeDeg, longitudeDeg);
  const name = near?.place.name;
  // The name is kept only where it leads back here: of two Perths the nearer one may not be the one meant by it.
  const named = name === undefined || present(near).km > sameSunKm ? undefined : placeByName(name);
  const isHere =
    named !== undefined &&
    Math.abs(named.latitudeDeg - latitudeDeg) < 1 &&
    Math.abs(named.longitudeDeg - longitudeDeg) < 1;
  const { say, decimals } = english;
  const gaps = {
    latitude: decimals(Math.abs(latitudeDeg), 1),
    ns: latitudeDeg < 0 ? say('south', 'S') : say('north', 'N'),
    longitude: decimals(Math.abs(longitudeDeg), 1),
    ew: longitudeDeg < 0 ? say('west', 'W') : say('east', 'E'),
    town: name ?? '',
  };
  const noted = say('sun-noted', 'Noted: the sun at {latitude}° {ns}, {longitude}° {ew}', gaps);
  const nearest = name === undefined ? '' : say('nearest-town', ', nearest town {town}', gaps);
  return {
    where: { ...(isHere ? { place: name } : {}), latitudeDeg, longitudeDeg },
    reply: {
      headline: `${noted}${nearest}.`,
      lines: [say('place-kept', 'Kept to about 10 km. Name another place any time, and I take that.')],
    },
  };
}
