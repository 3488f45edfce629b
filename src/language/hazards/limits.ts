import { ampacity } from '#catalog/ampacity.ts';
import { areaOfGauge } from '#quantity/gauge.ts';

/** What a thing may carry at most, and what is asked of it, as read or as told. */
export interface Loading {
  readonly currentA: number;
  readonly limitA: number;
}

const conductors = ampacity.map(([gauge, , at75]) => ({ areaMm2: areaOfGauge(gauge), currentA: at75 }));

/** Current that a copper cable of an area carries, A: between the gauges of the table along a power law. */
export function ampacityA(areaMm2: number): number {
  const above = conductors.findIndex(row => row.areaMm2 >= areaMm2 * 0.9999);
  const second = above < 0 ? conductors.length - 1 : Math.max(1, above);
  const [thin, thick] = [conductors[second - 1]!, conductors[second]!];
  const power = Math.log(thick.currentA / thin.currentA) / Math.log(thick.areaMm2 / thin.areaMm2);
  return thin.currentA * (areaMm2 / thin.areaMm2) ** power;
}

/** Inverters lose a tenth or so; common practice. */
export const inverterEfficiency = 0.88;

/** What an alternating load takes from a battery, A. */
export const batteryCurrentA = (powerW: number, voltageV = 12.8): number =>
  powerW / (voltageV * inverterEfficiency);

/** A lighter socket carries this for hours, A; ISO 4165 and makers' common data (fused 10 to 20 A). */
export const lighterSocketA = 10;

/** One pin of a seven-pin trailer plug, A; ISO 1724 in general terms, with the thin wire behind it. */
export const trailerPinA = 15;

/** More than this part out of a starter battery and the start is in doubt, common practice. */
export const starterShare = 0.4;

/** A starter battery whose size is not told, Ah; common practice. */
export const usualStarterAh = 60;

/** How much larger one battery may be than the other before they are unlike, common practice: makers' own spread and no more. */
export const alikeSizes = 1.15;
