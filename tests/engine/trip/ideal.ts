import type { Charging } from '#engine/battery/charging.ts';
import type { BalanceInput } from '#engine/trip/balance.ts';
import { planOf, type TripDay } from '#engine/trip/plan.ts';

/** A battery of 100 Ah that keeps everything, takes everything and stands at 12 V: for sums that can be done by hand. */
export const ideal: Charging = {
  capacityAh: 100,
  efficiency: 1,
  topEfficiency: 1,
  topAh: 0,
  timeConstantH: 1e-13,
  limitA: Number.POSITIVE_INFINITY,
  absorptionV: 100,
  resistanceOhm: 1e-13,
  restV: new Float64Array(101).fill(12),
  blocks: 1,
};

/** A plan of days that all have one sky. */
export const planned = (days: number, told: readonly TripDay[] = []) => planOf(days, told, 0, () => 0);

/** A balance with nothing in it, changed where a test says so; the sun is told as amps by the hour. */
export const quiet: BalanceInput = {
  battery: ideal,
  nominalV: 12,
  startAh: 100,
  startHour: 0,
  durationH: 24,
  useByHour: Array<number>(24).fill(0),
  sunShares: Array<number>(24).fill(0),
  suns: [{ dayWh: 0, dayAh: 1 }],
  plan: planned(20),
  lastSkyH: 0,
  drivingA: 0,
  generatorA: 0,
  mainsA: 0,
  limitAh: 50,
};
