import { dust } from './grain.ts';

/**
 * Goes over a span of time in steps that end with the hour of the day.
 * @param clockH hour of the day at the start, 0–24
 * @param hours how long, h
 * @param step what is done in each: the hour of the day (0–23), and how much of it, h
 */
export function eachHour(clockH: number, hours: number, step: (hour: number, span: number) => void): void {
  let clock = clockH;
  for (let left = hours; left > dust; ) {
    const hour = Math.floor(clock + dust) % 24;
    const span = Math.min(left, Math.floor(clock + dust) + 1 - clock);
    step(hour, span);
    clock = (clock + span) % 24;
    left -= span;
  }
}
