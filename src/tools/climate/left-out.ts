import { present } from '#basics/present.ts';
import type { World } from '../../climate/file.ts';
import { type Grid, spotOf, valueAt } from '../../climate/grid.ts';
import { type Errors, sunErrors, type Town } from './measure.ts';
import type { Reference } from './reference.ts';

/** Rounds of relaxing: enough for gaps of this size. */
const rounds = 400;

/** Fills cells that are not known from those about them: the smoothest surface through their edge (Laplace). */
function filled({ rows, cols }: Grid, plane: Int16Array, isKnown: readonly boolean[]): Float64Array {
  const values = Float64Array.from(plane, (v, i) => (isKnown[i] ? v : 0));
  const gaps = isKnown.flatMap((is, i) => {
    if (is) return [];
    const west = i - (i % cols) + ((i + cols - 1) % cols);
    const east = i - (i % cols) + ((i + 1) % cols);
    return [[i, west, east, i >= cols ? i - cols : i, i < (rows - 1) * cols ? i + cols : i] as const];
  });
  for (let round = 0; round < rounds; round++)
    for (const [i, west, east, south, north] of gaps)
      values[i] =
        (present(values[west]) + present(values[east]) + present(values[south]) + present(values[north])) / 4;
  return values;
}

/** Whether a point lies in one of the squares that are left out: every third one, each way. */
const isLeftOut = (latitudeDeg: number, longitudeDeg: number, sideDeg: number, turn: number): boolean => {
  const row = Math.floor((latitudeDeg + 60) / sideDeg);
  const col = Math.floor((longitudeDeg + 180) / sideDeg);
  return row % 3 === Math.floor(turn / 3) && col % 3 === turn % 3;
};

/**
 * How well places are foretold whose whole region was left out: squares of `sideDeg` degrees, one in nine at a
 * time, filled from what lies about them. A measure of how much the model knows between what it was given.
 */
export function leftOutErrors(
  towns: readonly Town[],
  reference: Reference,
  { clearness }: World,
  sideDeg: number,
): Errors {
  const grids = Array.from({ length: 9 }, (_, turn): Grid => {
    const isKnown = Array.from({ length: clearness.rows * clearness.cols }, (_, cell) => {
      const latitude = clearness.southDeg + clearness.stepDeg * Math.floor(cell / clearness.cols);
      const longitude = clearness.westDeg + clearness.stepDeg * (cell % clearness.cols);
      return !isLeftOut(latitude, longitude, sideDeg, turn);
    });
    // Fractions of a step matter little, so the planes stay whole.
    const planes = clearness.planes.map(plane =>
      Int16Array.from(filled(clearness, plane, isKnown), Math.round),
    );
    return { ...clearness, planes };
  });
  return sunErrors(towns, reference, (lat, lon, month) => {
    const turn = grids.findIndex((_, t) => isLeftOut(lat, lon, sideDeg, t));
    const grid = present(grids[turn]);
    return valueAt(grid, spotOf(grid, lat, lon), month - 1);
  });
}
