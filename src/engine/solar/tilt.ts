import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import { turnedBeamFactor } from './facing.ts';
import { meanDay, outsideRadiationOn, radians, type SunDay, sunDay } from './sun.ts';
import {
  diffuseShareSummer,
  diffuseShareWinter,
  groundRadiation,
  sunsetAngle,
  tiltBeamFactor,
  tiltedPlaneRadiation,
} from './sun-rules.ts';
import { groundReflectance } from './tables.ts';

/** Sunset hour angle at which Erbs' two curves meet, 81.4°. */
const shortDay = radians(81.4);

/** Share of a month's sun that is diffuse, from its clearness (held to 0.3–0.8, where the curves hold) and day length. */
export function diffuseShare(K_t: number, omega_s: number, trace?: Trace): number {
  const held = Math.min(0.8, Math.max(0.3, K_t));
  return run(omega_s <= shortDay ? diffuseShareWinter : diffuseShareSummer, { K_t: held }, trace);
}

/**
 * Gain of direct sun by tilting, over a day.
 * @param tiltDeg towards the equator; negative: towards the pole
 */
export function beamFactor(sun: SunDay, tiltDeg: number, trace?: Trace): number {
  // North of the equator the tilt is taken off the latitude, south of it added.
  const phi_T = sun.phi - (sun.phi < 0 ? -1 : 1) * radians(tiltDeg);
  const omega_T = Math.min(sun.omega_s, run(sunsetAngle, { phi: phi_T, delta: sun.delta }));
  return Math.max(0, run(tiltBeamFactor, { ...sun, phi_T, omega_T }, trace));
}

/** In deep polar winter the ratio of next to nothing to nothing says little: flat is taken, kWh/m². */
const leastOutside = 0.3;

export interface Plane {
  readonly latitudeDeg: number;
  /** 1–12. */
  readonly month: number;
  /** Share of the outside sun that reaches the ground. */
  readonly clearness: number;
  /** Towards the equator; 0 lies flat; negative: towards the pole. */
  readonly tiltDeg: number;
  /** How far it is turned away from the equator, to the east or west, °. Default 0. */
  readonly awayDeg?: number;
  /** Default 0.2. */
  readonly reflectance?: number;
}

/** Mean daily sun on a panel in a month, kWh/m². */
export function tiltedRadiation(plane: Plane, trace?: Trace): number {
  const { latitudeDeg, clearness: K_t, tiltDeg } = plane;
  const J = meanDay(plane.month);
  const H_0 = outsideRadiationOn(latitudeDeg, J, trace);
  const H = run(groundRadiation, { K_t, H_0 }, trace);
  if (tiltDeg === 0 || H_0 < leastOutside) return H;
  const sun = sunDay(latitudeDeg, J);
  const D = diffuseShare(K_t, sun.omega_s, trace);
  const R_b = plane.awayDeg ? turnedBeamFactor(sun, tiltDeg, plane.awayDeg) : beamFactor(sun, tiltDeg, trace);
  const rho = plane.reflectance ?? groundReflectance;
  return run(tiltedPlaneRadiation, { H, D, R_b, beta: radians(tiltDeg), rho }, trace);
}
