import type { Assumption } from '../assumption.ts';
import { radians, type SunDay } from './sun.ts';

/** Which way a tilted panel looks: at the equator, as far as a camper finds it. */
export const panelAzimuth: Assumption = {
  name: 'panelAzimuth',
  value: 0,
  low: 0,
  high: 45,
  unit: '°',
  why: 'turned to the midday sun, or up to 45° away from it; common practice',
};

/** Steps of the day that the sum goes over; 96 are within 0.2 % of the closed form for panels that face the equator. */
const steps = 96;

/**
 * Gain of direct sun over a day by tilting a panel that is turned away from the equator: the sum of the cosine of the
 * sun's angle on the panel while that is in front of it, against the same on flat ground (Duffie & Beckman, eq. 1.6.2
 * and 2.19.3, summed over the day).
 * @param tiltDeg slope, 0–90
 * @param awayDeg to the east or west of the equator's direction, which come to the same over a day; 180 faces the pole
 */
export function turnedBeamFactor(sun: SunDay, tiltDeg: number, awayDeg: number): number {
  // The southern hemisphere is the northern one in a mirror.
  const side = sun.phi < 0 ? -1 : 1;
  const [phi, delta] = [side * sun.phi, side * sun.delta];
  const [beta, gamma] = [radians(tiltDeg), radians(awayDeg)];
  const steady =
    Math.sin(delta) * (Math.sin(phi) * Math.cos(beta) - Math.cos(phi) * Math.sin(beta) * Math.cos(gamma));
  const noon =
    Math.cos(delta) * (Math.cos(phi) * Math.cos(beta) + Math.sin(phi) * Math.sin(beta) * Math.cos(gamma));
  const sideways = Math.cos(delta) * Math.sin(beta) * Math.sin(gamma);
  let onPanel = 0;
  let onFlat = 0;
  for (let i = 0; i < steps; i++) {
    const omega = sun.omega_s * ((2 * i + 1) / steps - 1);
    onPanel += Math.max(0, steady + noon * Math.cos(omega) + sideways * Math.sin(omega));
    onFlat += Math.sin(delta) * Math.sin(phi) + Math.cos(delta) * Math.cos(phi) * Math.cos(omega);
  }
  return onPanel / onFlat;
}
