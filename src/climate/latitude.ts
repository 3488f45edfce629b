import { lapseKPerKm, world } from './world.ts';

/** A month along a parallel: means over the land where people live, and how much one place differs from the next. */
export interface LatitudeMonth {
  readonly clearness: number;
  /** Standard deviation from place to place. */
  readonly clearnessSd: number;
  readonly dayMaxC: number;
  readonly nightMinC: number;
  readonly temperatureSdK: number;
}

/**
 * What a month (1–12) is like at a latitude, wherever on it: a mean over each square degree that has a town.
 * @param heightM as told, else the mean of the land there
 */
export function latitudeMonth(
  latitudeDeg: number,
  month: number,
  heightM?: number,
  { latitudes } = world(),
): LatitudeMonth {
  const { southDeg, stepDeg, quantum, quantumK } = latitudes;
  const last = latitudes.heightM.length - 1;
  const at = Math.min(last, Math.max(0, (latitudeDeg - southDeg) / stepDeg));
  const row = Math.min(last - 1, Math.floor(at));
  const between = (below: number, above: number): number => below + (at - row) * (above - below);
  const of = (table: readonly (readonly number[])[]): number =>
    between((table[row] as number[])[month - 1] as number, (table[row + 1] as number[])[month - 1] as number);
  const km =
    (heightM ?? between(latitudes.heightM[row] as number, latitudes.heightM[row + 1] as number)) / 1000;
  return {
    clearness: quantum * of(latitudes.clearness),
    clearnessSd: quantum * of(latitudes.clearnessSd),
    dayMaxC: quantumK * of(latitudes.dayMax) - lapseKPerKm.day * km,
    nightMinC: quantumK * of(latitudes.nightMin) - lapseKPerKm.night * km,
    temperatureSdK: quantumK * of(latitudes.temperatureSd),
  };
}
