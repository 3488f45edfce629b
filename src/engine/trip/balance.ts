import { run } from '#rule/rule.ts';
import { dayHours } from './profile.ts';
import { chargeAfterHour } from './rules.ts';

/** The charge (Ah) that goes into a battery with `missingAh` to go, of a steady `offeredA` over some hours. */
export type Acceptance = (missingAh: number, offeredA: number, hours: number) => number;

/** A stretch of driving on one day: hours of the day. */
export interface Drive {
  readonly fromHour: number;
  readonly hours: number;
}

/** Everything an hourly balance needs, as plain numbers. Day 0 is the day the trip starts on. */
export interface BalanceInput {
  /** What the battery really holds, and what is in it at the start. */
  readonly capacityAh: number;
  readonly startAh: number;
  /** Share of the charge put in that stays. */
  readonly chargeEfficiency: number;
  readonly accepts: Acceptance;
  /** Hour of day 0 at which it starts, and how long it goes. */
  readonly startHour: number;
  readonly durationH: number;
  /** Ah in each hour of a day. */
  readonly useByHour: readonly number[];
  /** Ah offered in each hour of a day, `leftH` hours before the end. */
  readonly sunByHour: (leftH: number) => readonly number[];
  readonly driveOn: (day: number) => Drive | undefined;
  readonly drivingA: number;
  /** The charge that should not be gone below. */
  readonly limitAh: number;
}

/** One hour (or what there is of it) as a chart shows it. */
export interface BalanceHour {
  /** Hours since the start, at the end of this hour. */
  readonly atH: number;
  readonly chargeAh: number;
  readonly useAh: number;
  readonly sunAh: number;
  readonly drivingAh: number;
}

/** Sums over the trip, Ah: sun + driving = to the loads + into the battery + not taken. */
export interface Sums {
  readonly useAh: number;
  readonly sunAh: number;
  readonly drivingAh: number;
  /** Into the battery at its terminals, and what of it stayed. */
  readonly inAh: number;
  readonly storedAh: number;
  /** Out of the battery. */
  readonly outAh: number;
  /** Offered and not taken, and asked for and not there. */
  readonly notTakenAh: number;
  readonly unmetAh: number;
}

export interface Balance {
  readonly endAh: number;
  readonly lowest: { readonly chargeAh: number; readonly atH: number };
  /** Hours until the limit, and until nothing is left; absent: not on this trip. */
  readonly limitAtH?: number;
  readonly flatAtH?: number;
  readonly sums: Sums;
  /** The sums up to the lowest point. */
  readonly toLowest: { readonly storedAh: number; readonly outAh: number };
}

const overlap = (from: number, to: number, drive: Drive | undefined): number =>
  drive ? Math.max(0, Math.min(to, drive.fromHour + drive.hours) - Math.max(from, drive.fromHour)) : 0;

/**
 * The hour-by-hour account of a battery: loads, sun, driving, and what it accepts. Sources serve the loads
 * first and the battery with the rest.
 * @param record called after every hour, for a chart
 */
export function balance(input: BalanceInput, record?: (hour: BalanceHour) => void): Balance {
  const { startHour, durationH, limitAh } = input;
  let chargeAh = input.startAh;
  let lowest = { chargeAh, atH: 0 };
  let toLowest = { storedAh: 0, outAh: 0 };
  let limitAtH = chargeAh < limitAh ? 0 : undefined;
  let flatAtH: number | undefined;
  const sums = {
    useAh: 0,
    sunAh: 0,
    drivingAh: 0,
    inAh: 0,
    storedAh: 0,
    outAh: 0,
    notTakenAh: 0,
    unmetAh: 0,
  };
  for (let t = 0; t < durationH - 1e-9; ) {
    const clock = startHour + t;
    const hours = Math.min(Math.floor(clock + 1e-9) + 1 - clock, durationH - t);
    const day = Math.floor((clock + 1e-9) / dayHours);
    const hour = Math.floor(clock + 1e-9) - day * dayHours;
    const useAh = input.useByHour[hour]! * hours;
    const sunAh = input.sunByHour(durationH - t)[hour]! * hours;
    const from = clock - day * dayHours;
    const drivingAh = input.drivingA * overlap(from, from + hours, input.driveOn(day));
    const net = sunAh + drivingAh - useAh;
    const missingAh = Math.max(0, input.capacityAh - chargeAh);
    const inAh = net > 0 ? input.accepts(missingAh, net / hours, hours) : 0;
    const outAh = Math.min(chargeAh, Math.max(0, -net));
    const before = chargeAh;
    chargeAh = run(chargeAfterHour, {
      q: chargeAh,
      eta_c: input.chargeEfficiency,
      Q_in: inAh,
      Q_out: outAh,
    });
    sums.useAh += useAh;
    sums.sunAh += sunAh;
    sums.drivingAh += drivingAh;
    sums.inAh += inAh;
    sums.storedAh += chargeAh - before + outAh;
    sums.outAh += outAh;
    sums.notTakenAh += Math.max(0, net) - inAh;
    sums.unmetAh += Math.max(0, -net) - outAh;
    const fallingTo = (level: number): number => t + (hours * (before - level)) / -net;
    if (limitAtH === undefined && before >= limitAh && chargeAh < limitAh) limitAtH = fallingTo(limitAh);
    if (flatAtH === undefined && net < 0 && before + net <= 1e-9 && -net > 0) flatAtH = fallingTo(0);
    t += hours;
    if (chargeAh < lowest.chargeAh - 1e-9) {
      lowest = { chargeAh, atH: flatAtH !== undefined && chargeAh <= 1e-9 ? flatAtH : t };
      toLowest = { storedAh: sums.storedAh, outAh: sums.outAh };
    }
    record?.({ atH: t, chargeAh, useAh, sunAh, drivingAh });
  }
  return { endAh: chargeAh, lowest, limitAtH, flatAtH, sums, toLowest };
}
