import { present } from '#basics/present.ts';
import { run } from '#rule/rule.ts';
import { meanDay, radians, sunDay } from './sun.ts';
import { hourShare } from './sun-rules.ts';

/**
 * Share of a day's sun by the hour of solar time: 24 numbers that sum to 1; entry h is the hour from h to h + 1.
 * All 0 in polar night. Collares-Pereira & Rabl.
 */
export function hourlyShares(latitudeDeg: number, month: number): readonly number[] {
  const { omega_s } = sunDay(latitudeDeg, meanDay(month));
  const shares: number[] = [];
  // The afternoon mirrors the morning.
  for (let hour = 0; hour < 24; hour++)
    shares.push(hour < 12 ? shareOf(hour, omega_s) : present(shares[23 - hour]));
  const sum = shares.reduce((a, b) => a + b, 0);
  return shares.map(share => (sum > 0 ? share / sum : 0));
}

/** The rule at the middle of an hour, nought while the sun is down. */
export function shareOf(hour: number, omega_s: number): number {
  const omega = radians(15 * (hour + 0.5 - 12));
  if (Math.abs(omega) >= omega_s) return 0;
  const lean = Math.sin(omega_s - radians(60));
  return Math.max(0, run(hourShare, { a: 0.409 + 0.5016 * lean, b: 0.6609 - 0.4767 * lean, omega, omega_s }));
}
