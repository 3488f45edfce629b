/** What a thing may carry at most, and what is asked of it, as read or as told. */
export interface Loading {
  readonly currentA: number;
  readonly limitA: number;
}

/**
 * Current that a copper cable of an area carries without harm, A: about 6 A/mm² for thin ones down to 3 for
 * thick; short runs in free air. IEC 60364-5-52 and ISO 10133 in general terms.
 */
export const ampacityA = (areaMm2: number): number => (areaMm2 <= 1 ? 11 * areaMm2 : 13.5 * areaMm2 ** 0.72);

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
