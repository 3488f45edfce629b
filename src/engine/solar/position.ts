import { run } from '#rule/rule.ts';
import { radians } from './sun.ts';
import { cosineIncidence, equationOfTime, fineDeclination, sineElevation } from './sun-rules.ts';

/** Where the sun stands: degrees. */
export interface SunPosition {
  readonly elevationDeg: number;
  /** Clockwise from north. */
  readonly azimuthDeg: number;
}

const degrees = (radians: number): number => (radians * 180) / Math.PI;
const held = (x: number): number => Math.min(1, Math.max(-1, x));

const yearAngle = (J: number): number => (2 * Math.PI * (J - 1)) / 365;

/** The sun's declination on day `J`, radians; finer than the one behind the daily sums. */
export const declinationOn = (J: number): number => run(fineDeclination, { B: yearAngle(J) });

/** Minutes by which the sun runs ahead of the clock on day `J`. */
export const equationOfTimeMin = (J: number): number => run(equationOfTime, { B: yearAngle(J) });

/** Solar time, h, at a longitude for a time in UTC, h. */
export const solarTimeH = (J: number, longitudeDeg: number, utcH: number): number =>
  utcH + longitudeDeg / 15 + equationOfTimeMin(J) / 60;

/** Where the sun stands at a solar time (h) on day `J`; good to about half a degree, without refraction. */
export function sunPosition(latitudeDeg: number, J: number, solarH: number): SunPosition {
  const [phi, delta] = [radians(latitudeDeg), declinationOn(J)];
  const omega = ((solarH - 12) * Math.PI) / 12;
  const sine = held(run(sineElevation, { phi, delta, omega }));
  // Seen along east and north: the horizontal parts of the sun's direction.
  const east = -Math.cos(delta) * Math.sin(omega);
  const north = Math.cos(phi) * Math.sin(delta) - Math.sin(phi) * Math.cos(delta) * Math.cos(omega);
  return {
    elevationDeg: degrees(Math.asin(sine)),
    azimuthDeg: (degrees(Math.atan2(east, north)) + 360) % 360,
  };
}

/** Clock times (h UTC) of sunrise, noon and sunset on day `J`; undefined in polar day or night. */
export function sunTimesUtcH(
  latitudeDeg: number,
  longitudeDeg: number,
  J: number,
): { readonly rise: number; readonly noon: number; readonly set: number } | undefined {
  const [phi, delta] = [radians(latitudeDeg), declinationOn(J)];
  // The upper edge of the sun is seen while its middle is still 0.833° below the horizon.
  const cosine =
    (Math.sin((-0.833 * Math.PI) / 180) - Math.sin(phi) * Math.sin(delta)) /
    (Math.cos(phi) * Math.cos(delta));
  if (Math.abs(cosine) > 1) return undefined;
  const half = degrees(Math.acos(cosine)) / 15;
  const noon = 12 - longitudeDeg / 15 - equationOfTimeMin(J) / 60;
  return { rise: noon - half, noon, set: noon + half };
}

/** Angle (°) between the sun and the line out of a panel. Angles in degrees; `facingDeg` from south, west positive. */
export function incidenceDeg(
  latitudeDeg: number,
  declinationDeg: number,
  hourAngleDeg: number,
  tiltDeg: number,
  facingDeg: number,
): number {
  const [phi, delta, omega, beta, gamma] = [
    latitudeDeg,
    declinationDeg,
    hourAngleDeg,
    tiltDeg,
    facingDeg,
  ].map(angle => (angle * Math.PI) / 180) as [number, number, number, number, number];
  return degrees(Math.acos(held(run(cosineIncidence, { phi, delta, omega, beta, gamma }))));
}
