import { heightAt } from '#climate/heights.ts';
import { dayAndNight } from '#climate/temperature.ts';
import { interpolate } from './climate.ts';
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
 * What a month (1–12) is like at a place: own points where they are near, the fitted climate elsewhere.
 * @param heightM above the sea, where told; else by the table of mountain towns or the land about
 */
export function monthAt(
  latitudeDeg: number,
  longitudeDeg: number,
  month: number,
  heightM = heightAt(latitudeDeg, longitudeDeg),
): MonthClimate {
  const { value } = interpolate(stations, latitudeDeg, longitudeDeg, month);
  return {
    month,
    clearness: value,
    sunKWhM2: value * outsideRadiationOf(latitudeDeg, month),
    ...dayAndNight(latitudeDeg, longitudeDeg, month, heightM),
    heightM,
    yearSpread: yearSpread(value),
    daySpread: daySpread(value),
  };
}

/** The twelve months of a place. */
export function climateAt(
  latitudeDeg: number,
  longitudeDeg: number,
  heightM?: number,
): readonly MonthClimate[] {
  const height = heightM ?? heightAt(latitudeDeg, longitudeDeg);
  return Array.from({ length: 12 }, (_, m) => monthAt(latitudeDeg, longitudeDeg, m + 1, height));
}
