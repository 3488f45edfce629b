import { readFileSync } from 'node:fs';
import { readWorld, type World } from './file.ts';
import { cellOf, type Grid, spotOf, valueAt } from './grid.ts';

let loaded: World | undefined;

/** The world's climate, read at the first look-up (some ms): a part of the program, as its modules are. */
export const world = (): World => {
  loaded ??= readWorld(readFileSync(new URL('./data/world.bin', import.meta.url)));
  return loaded;
};

/** No month of any place is duller or brighter than this. */
const [dullest, brightest] = [0.1, 0.8];

/** Mean clearness of a month (1–12): the share of the outside sun that reaches flat ground. */
export function clearnessAt(latitudeDeg: number, longitudeDeg: number, month: number, of = world()): number {
  const spot = spotOf(of.clearness, latitudeDeg, longitudeDeg);
  return Math.min(brightest, Math.max(dullest, valueAt(of.clearness, spot, month - 1)));
}

/** Mean height of the land about a point, m; undefined over sea. */
export function landHeightM(latitudeDeg: number, longitudeDeg: number, of = world()): number | undefined {
  const steps = of.height.steps[cellOf(of.height, latitudeDeg, longitudeDeg)] as number;
  return steps < 0 ? undefined : steps * of.height.quantumM;
}

/** Cooling with height, K a km: by day and by night. From stations of the reference. */
export const lapseKPerKm = { day: 4.5, night: 5 } as const;

export interface DayAndNight {
  /** Mean of the days' highest, °C. */
  readonly dayMaxC: number;
  /** Mean of the nights' lowest, °C. */
  readonly nightMinC: number;
}

/** Temperatures of a month (1–12) at a height, m. */
export function temperaturesAt(
  latitudeDeg: number,
  longitudeDeg: number,
  month: number,
  heightM: number,
  of = world(),
): DayAndNight {
  const grid: Grid = of.temperature;
  const spot = spotOf(grid, latitudeDeg, longitudeDeg);
  return {
    dayMaxC: valueAt(grid, spot, month - 1) - (lapseKPerKm.day * heightM) / 1000,
    nightMinC: valueAt(grid, spot, 11 + month) - (lapseKPerKm.night * heightM) / 1000,
  };
}
