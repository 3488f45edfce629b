import { heightAt } from '#climate/heights.ts';
import { dayAndNight } from '#climate/temperature.ts';
import { clearnessOf } from './climate.ts';
import { daySpread, yearSpread } from './spread.ts';
import { stations } from './stations.ts';
import { outsideRadiationOf } from './sun.ts';

/** A month of a place. */
export interface MonthClimate {
  /** 1–12. */
  readonly month: number;
  /** Share of the outside sun that reaches flat ground. */
  readonly clearness: number;
  /** Sun on flat ground, kWh/m² a day: nought in polar night. */
  readonly sunKWhM2: number;
  /** Mean of the days' highest and of the nights' lowest, °C. */
  readonly dayMaxC: number;
  readonly nightMinC: number;
  /** Height that the temperatures are for, m. */
  readonly heightM: number;
  /** Standard deviation of the month's sun from year to year, as a share of its mean. */
  readonly yearSpread: number;
  /** The same of a single day's sun within the month. */
  readonly daySpread: number;
}

/**
 * The twelve months of a place: own points where they are near, the fitted climate elsewhere.
 * @param heightM above the sea, where told; else by the table of mountain towns or the land about
 */
export function climateAt(
  latitudeDeg: number,
  longitudeDeg: number,
  heightM = heightAt(latitudeDeg, longitudeDeg),
): readonly MonthClimate[] {
  const clearness = clearnessOf(stations, latitudeDeg, longitudeDeg);
  return Array.from({ length: 12 }, (_, m) => {
    const month = m + 1;
    const { value } = clearness(month);
    return {
      month,
      clearness: value,
      sunKWhM2: value * outsideRadiationOf(latitudeDeg, month),
      ...dayAndNight(latitudeDeg, longitudeDeg, month, heightM),
      heightM,
      yearSpread: yearSpread(value),
      daySpread: daySpread(value),
    };
  });
}
