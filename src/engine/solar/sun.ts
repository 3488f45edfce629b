import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import { daylight, declination, inverseDistance, outsideRadiation, sunsetAngle } from './sun-rules.ts';
import { dayH, meanDays, solarConstantKWM2 } from './tables.ts';

export const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** The day of the year that stands for a month (1–12). */
export const meanDay = (month: number): number => meanDays[month - 1] as number;

/** The sun's course on one day of the year at a latitude: angles in radians. */
export interface SunDay {
  readonly phi: number;
  readonly delta: number;
  readonly omega_s: number;
}

/** Declination and sunset angle on day `J` of the year. */
export function sunDay(latitudeDeg: number, J: number, trace?: Trace): SunDay {
  const phi = radians(latitudeDeg);
  const delta = run(declination, { J }, trace);
  return { phi, delta, omega_s: run(sunsetAngle, { phi, delta }, trace) };
}

/** Sun on flat ground outside the air on day `J`, kWh/m². */
export function outsideRadiationOn(latitudeDeg: number, J: number, trace?: Trace): number {
  const sun = sunDay(latitudeDeg, J, trace);
  const d_r = run(inverseDistance, { J }, trace);
  return run(outsideRadiation, { T: dayH, G_sc: solarConstantKWM2, d_r, ...sun }, trace);
}

/** The same for the mean day of a month (1–12), kWh/m². */
export const outsideRadiationOf = (latitudeDeg: number, month: number, trace?: Trace): number =>
  outsideRadiationOn(latitudeDeg, meanDay(month), trace);

/** Hours of daylight on day `J`, h. */
export const dayLengthOn = (latitudeDeg: number, J: number, trace?: Trace): number =>
  run(daylight, { T: dayH, omega_s: sunDay(latitudeDeg, J, trace).omega_s }, trace);

/** Hours of daylight on the mean day of a month, h. */
export const dayLengthOf = (latitudeDeg: number, month: number, trace?: Trace): number =>
  dayLengthOn(latitudeDeg, meanDay(month), trace);
