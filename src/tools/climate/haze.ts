import { type Haze, haze } from './haze-table.ts';

/** Degrees outside a box over which its ratio fades out. */
const fadeDeg = 3;

const outsideDeg = ({ south, north, west, east }: Haze, latitudeDeg: number, longitudeDeg: number): number =>
  Math.hypot(
    Math.max(0, south - latitudeDeg, latitudeDeg - north),
    Math.max(0, west - longitudeDeg, longitudeDeg - east),
  );

/**
 * What the satellite's sun of a month (0–11) is to be multiplied by: a box's ratio within it, the mean where boxes
 * overlap, and outside fading evenly to 1. Between boxes the nearer counts more, without a step at their edges.
 */
export function hazeRatio(latitudeDeg: number, longitudeDeg: number, month: number): number {
  const near = haze
    .map(box => ({ ratio: box.ratios[month] as number, deg: outsideDeg(box, latitudeDeg, longitudeDeg) }))
    .filter(({ deg }) => deg < fadeDeg);
  const within = near.filter(({ deg }) => deg === 0);
  if (within.length > 0) return within.reduce((sum, { ratio }) => sum + ratio, 0) / within.length;
  // One box alone: w / (1 + w) = 1 − deg / 3, and w has no bound at its edge.
  let [weights, sum] = [1, 1];
  for (const { ratio, deg } of near) {
    const weight = (fadeDeg - deg) / deg;
    weights += weight;
    sum += weight * ratio;
  }
  return sum / weights;
}
