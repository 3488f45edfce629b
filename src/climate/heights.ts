import { heights } from './data/heights.ts';
import { cellOf } from './grid.ts';
import { landHeightM, world } from './world.ts';

interface Height {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly heightM: number;
}

const known: readonly Height[] = heights
  .trim()
  .split('\n')
  .map(line => {
    const [, latitude, longitude, height] = line.split(',').map(Number) as [number, number, number, number];
    return { latitudeDeg: latitude, longitudeDeg: longitude, heightM: height };
  });

/** A row of the table speaks for what lies so near, in degrees of latitude: places are told to a tenth of a degree. */
const nearDeg = 0.1;

/** The height of a mountain town by the table, m. */
function knownHeightM(latitudeDeg: number, longitudeDeg: number): number | undefined {
  const width = Math.cos((latitudeDeg * Math.PI) / 180);
  let best: number | undefined;
  let bestDeg = nearDeg;
  for (const row of known) {
    const north = row.latitudeDeg - latitudeDeg;
    if (Math.abs(north) > nearDeg) continue;
    const deg = Math.hypot(north, (row.longitudeDeg - longitudeDeg) * width);
    if (deg > bestDeg) continue;
    [best, bestDeg] = [row.heightM, deg];
  }
  return best;
}

/** The share of the nine cells about a point that are land: little on a small island, all of it inland. */
export function landShare(latitudeDeg: number, longitudeDeg: number, of = world()): number {
  const { steps, cols } = of.height;
  const cell = cellOf(of.height, latitudeDeg, longitudeDeg);
  const west = cell - (cell % cols);
  let land = 0;
  for (const rows of [-cols, 0, cols])
    for (const col of [-1, 0, 1])
      if ((steps[west + rows + (((cell % cols) + col + cols) % cols)] ?? -1) >= 0) land++;
  return land / 9;
}

/**
 * By the sea people live low: of the mean height of the land about, some third. From memory of Honolulu, Papeete,
 * Reykjavik, Suva, Tromsø and Ushuaia.
 */
const coastalShare = 1 / 3;

/** The height to reckon with where none was told, m: the table's, else the mean of the land, lower by the sea. */
export function heightAt(latitudeDeg: number, longitudeDeg: number, of = world()): number {
  const known = knownHeightM(latitudeDeg, longitudeDeg);
  if (known !== undefined) return known;
  const land = landHeightM(latitudeDeg, longitudeDeg, of) ?? 0;
  return landShare(latitudeDeg, longitudeDeg, of) < 1 ? land * coastalShare : land;
}
