import { heightAt, landShare } from './heights.ts';
import { type DayAndNight, temperaturesAt, world } from './world.ts';

/** On a small island day and night differ by no more than this, K: the sea keeps both. From memory of a dozen islands. */
const islandRangeK = 6.5;
/** Share of land about a place up to which it is a small island, and how much more range there is beyond. */
const island = { upToLand: 2 / 9, rangeKPerLand: 20 } as const;

/**
 * Mean highest and lowest temperature of a month (1–12). The fit makes islands too much like continents: there
 * the range is held to what the sea allows, about the same mean.
 * @param heightM as told, else by `heightAt`
 */
export function dayAndNight(
  latitudeDeg: number,
  longitudeDeg: number,
  month: number,
  heightM?: number,
  of = world(),
): DayAndNight {
  const height = heightM ?? heightAt(latitudeDeg, longitudeDeg, of);
  const raw = temperaturesAt(latitudeDeg, longitudeDeg, month, height, of);
  const land = landShare(latitudeDeg, longitudeDeg, of);
  const most = islandRangeK + island.rangeKPerLand * Math.max(0, land - island.upToLand);
  const range = raw.dayMaxC - raw.nightMinC;
  if (range <= most) return raw;
  const mean = (raw.dayMaxC + raw.nightMinC) / 2;
  return { dayMaxC: mean + most / 2, nightMinC: mean - most / 2 };
}
