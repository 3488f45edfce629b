import { present } from '#basics/present.ts';
import type { World } from '../../climate/file.ts';
import { cellOf } from '../../climate/grid.ts';
import { latitudeMonth } from '../../climate/latitude.ts';
import { clearnessAt, lapseKPerKm, temperaturesAt } from '../../climate/world.ts';
import { outsideRadiationOf } from '../../engine/solar/sun.ts';
import { rowAt } from './bilinear.ts';
import { hazeRatio } from './haze.ts';
import type { Reference } from './reference.ts';

export interface Town {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

/** The towns of a table of lines `name|country|latitude|longitude`. */
export const townsOf = (table: string): Town[] =>
  table
    .trimEnd()
    .split('\n')
    .map(line => {
      const [, , latitude, longitude] = line.split('|');
      return { latitudeDeg: Number(latitude), longitudeDeg: Number(longitude) };
    });

/** How far a model is from the reference over places and months. */
export interface Errors {
  readonly placeMonths: number;
  /** Root mean square of the relative errors of the sun, %. */
  readonly rmsPercent: number;
  /** Share of them within a fifth, %. */
  readonly withinFifthPercent: number;
  readonly worstPercent: number;
  /** Where there is next to no sun: the largest error, kWh/m² a day. */
  readonly worstDarkKWhM2: number;
}

/** Up to this much sun a day (kWh/m²) a relative error says little: the reference itself is in steps of 0.05. */
const darkKWhM2 = 0.25;

/** Errors of the sun by a clearness, against the reference with the measured haze in it. */
export function sunErrors(
  towns: readonly Town[],
  { sun }: Reference,
  clearness: (latitudeDeg: number, longitudeDeg: number, month: number) => number,
): Errors {
  let [count, squares, within, worst, dark] = [0, 0, 0, 0, 0];
  for (const { latitudeDeg, longitudeDeg } of towns)
    rowAt(sun, latitudeDeg, longitudeDeg).forEach((satellite, m) => {
      const truth = satellite * hazeRatio(latitudeDeg, longitudeDeg, m);
      const ours = clearness(latitudeDeg, longitudeDeg, m + 1) * outsideRadiationOf(latitudeDeg, m + 1);
      if (truth < darkKWhM2) {
        dark = Math.max(dark, Math.abs(ours - truth));
        return;
      }
      const off = Math.abs(ours / truth - 1);
      count++;
      squares += off * off;
      within += off <= 0.2 ? 1 : 0;
      worst = Math.max(worst, off);
    });
  return {
    placeMonths: count,
    rmsPercent: 100 * Math.sqrt(squares / count),
    withinFifthPercent: (100 * within) / count,
    worstPercent: 100 * worst,
    worstDarkKWhM2: dark,
  };
}

/** Root mean square error of the model's temperatures, K, each at the reference's height of the land. */
export function temperatureErrors(
  towns: readonly Town[],
  reference: Reference,
  world: World,
): { dayK: number; nightK: number } {
  let [day, night] = [0, 0];
  for (const { latitudeDeg, longitudeDeg } of towns) {
    const heightM = reference.heightM[cellOf(reference.sun, latitudeDeg, longitudeDeg)] ?? 0;
    const row = rowAt(reference.temperature, latitudeDeg, longitudeDeg);
    for (let m = 0; m < 12; m++) {
      const ours = temperaturesAt(latitudeDeg, longitudeDeg, m + 1, heightM, world);
      day += (ours.dayMaxC - present(row[m]) + (lapseKPerKm.day * heightM) / 1000) ** 2;
      night += (ours.nightMinC - present(row[12 + m]) + (lapseKPerKm.night * heightM) / 1000) ** 2;
    }
  }
  const count = 12 * towns.length;
  return { dayK: Math.sqrt(day / count), nightK: Math.sqrt(night / count) };
}

/** The same for a fitted world. */
export const fitErrors = (towns: readonly Town[], reference: Reference, world: World): Errors =>
  sunErrors(towns, reference, (lat, lon, month) => clearnessAt(lat, lon, month, world));

/** What the latitude alone says, against the reference. */
export interface LatitudeErrors {
  /** Root mean square of the sun's relative error and of the day's highest, K: of the means along whole degrees of latitude. */
  readonly meanPercent: number;
  readonly meanK: number;
  /** The same of single towns. */
  readonly townPercent: number;
  readonly townK: number;
}

const rms = (list: readonly number[]): number =>
  Math.sqrt(list.reduce((sum, x) => sum + x * x, 0) / list.length);

/** How far a latitude's month is from the reference, at the square degrees that have a town and at all towns. */
export function latitudeErrors(towns: readonly Town[], reference: Reference, world: World): LatitudeErrors {
  const months = Array.from({ length: 12 }, (_, m) => m);
  const off = ({ latitudeDeg, longitudeDeg }: Town) => {
    const heightM = reference.heightM[cellOf(reference.sun, latitudeDeg, longitudeDeg)] ?? 0;
    const [suns, degrees] = [reference.sun, reference.temperature].map(t =>
      rowAt(t, latitudeDeg, longitudeDeg),
    ) as [number[], number[]];
    return months.map(m => {
      const ours = latitudeMonth(latitudeDeg, m + 1, undefined, world);
      const outside = outsideRadiationOf(latitudeDeg, m + 1);
      const truth = present(suns[m]) * hazeRatio(latitudeDeg, longitudeDeg, m);
      const dayMaxC = present(degrees[m]) - (lapseKPerKm.day * heightM) / 1000;
      return { ours: ours.clearness * outside, truth, offK: ours.dayMaxC - dayMaxC };
    });
  };
  const lit = ({ truth }: { truth: number }): boolean => truth >= darkKWhM2;
  const single = towns.flatMap(off);
  const cells = new Map(
    towns.map(town => [cellOf(reference.sun, town.latitudeDeg, town.longitudeDeg), town]),
  );
  const byRow = Map.groupBy(cells.keys(), cell => Math.floor(cell / reference.sun.cols));
  const means = [...byRow].flatMap(([row, list]) => {
    const latitudeDeg = reference.sun.southDeg + row * reference.sun.stepDeg;
    const all = list.map(cell =>
      off({ latitudeDeg, longitudeDeg: reference.sun.westDeg + (cell % reference.sun.cols) }),
    );
    const mean = (m: number, of: 'ours' | 'truth' | 'offK'): number =>
      all.reduce((sum, one) => sum + present(one[m])[of], 0) / all.length;
    return months.map(m => ({ ours: mean(m, 'ours'), truth: mean(m, 'truth'), offK: mean(m, 'offK') }));
  });
  const percent = (list: readonly { ours: number; truth: number }[]): number =>
    100 * rms(list.filter(lit).map(({ ours, truth }) => ours / truth - 1));
  const kelvin = (list: readonly { offK: number }[]): number => rms(list.map(({ offK }) => offK));
  return {
    meanPercent: percent(means),
    meanK: kelvin(means),
    townPercent: percent(single),
    townK: kelvin(single),
  };
}
