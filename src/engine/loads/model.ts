import { present } from '#basics/present.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Values } from '../assumption.ts';
import { chargeOfEnergy } from '../battery/rules.ts';
import { learnedUse } from '../learn/rules.ts';
import { dutyAt } from './cooler.ts';
import { coolerOf } from './cools.ts';
import { currentOf } from './draw.ts';
import { idlePart, type LoadUse, waitingAh } from './idle.ts';
import { hasHours, isWhole, type ReadLoad, readLoads, runsOn, toldHours, type Use } from './reading.ts';
import { dailyCharge } from './rules.ts';

export { useAssumptions } from './assume.ts';
export { runningCurrentA } from './draw.ts';
export type { LoadUse } from './idle.ts';
export type { Use } from './reading.ts';

/** Hours a day (h) that a load is on: as told, else typical, else all day. */
function hoursOn(reading: ReadLoad, use: Use, values: Values): number {
  const { load, key, row } = reading;
  // A compressor's hours are spread over the day.
  if (reading.runsH !== undefined) return 24;
  if (hasHours(load)) return present(toldHours(load));
  return row && !runsOn(reading, use) ? (values[`${key} hours a day`] ?? row.hoursPerDay[1]) : 24;
}

/** Share of the time (0–1) that a load which is on really draws. */
function dutyOf(reading: ReadLoad, use: Use, values: Values, trace?: Trace): number {
  const { load } = reading;
  if (load.dutyPercent !== undefined) return load.dutyPercent / 100;
  if (reading.runsH !== undefined) return reading.runsH / 24;
  if (!reading.cycles) return 1;
  return dutyAt(coolerOf(reading, use, values), use.ambientC ?? values.ambientC ?? 25, trace);
}

/** What each load takes from the battery a day (Ah at the nominal voltage), and an inverter that is left on. */
export function usePerLoad(use: Use, values: Values, trace?: Trace): LoadUse[] {
  const readings = readLoads(use);
  // One inverter waits for all compressors.
  const waitsFor = readings.find(
    ({ load, cycles, runsH }) => load.supply === 'ac' && (cycles || runsH !== undefined),
  );
  const parts = readings.map(reading => {
    const { load } = reading;
    if (isWhole(load)) {
      const eachAh =
        load.chargeAhPerDay ??
        run(chargeOfEnergy, { E: present(load.energyWhPerDay), V: use.voltageV }, trace);
      const chargeAh = eachAh * load.count;
      return { load, chargeAh, hours: 24, currentA: chargeAh / 24, duty: 1 };
    }
    const currentA = currentOf(reading, use, values, trace);
    const duty = dutyOf(reading, use, values, trace);
    const hours = hoursOn(reading, use, values);
    const runningAh = run(dailyCharge, { n: load.count, I: currentA, d: duty, t: hours }, trace);
    const idle = reading === waitsFor ? waitingAh(reading, use, values, hours * (1 - duty), trace) : 0;
    return { load, chargeAh: runningAh + idle, hours, currentA: currentA * load.count, duty };
  });
  const idle = waitsFor ? undefined : idlePart(readings, parts, use, values, trace);
  return idle ? [...parts, idle] : parts;
}

/** A day's use (Ah) of everything: the loads, or the one number told for all of them. */
export function dailyUseAh(use: Use, values: Values, trace?: Trace): number {
  return dayOf(use, values, trace).dailyUse;
}

/** A day's use, and the current to rate the battery at: the running currents, each counted by the charge drawn at it. */
export interface Day {
  /** Ah. */
  readonly dailyUse: number;
  /** A. */
  readonly currentA: number;
  /** The biggest single draw, A. */
  readonly peakA: number;
  /** Empty where a day's use was told as one number. */
  readonly parts: readonly LoadUse[];
}

/** Everything about a day's use in one pass. */
export function dayOf(use: Use, values: Values, trace?: Trace): Day {
  const day = toldDay(use, values, trace);
  const percent = values.learnedDraw;
  if (percent === undefined) return day;
  const k_u = percent / 100;
  return {
    ...day,
    dailyUse: run(learnedUse, { k_u, Q: day.dailyUse }, trace),
    parts: day.parts.map(part => ({ ...part, chargeAh: k_u * part.chargeAh })),
  };
}

/** The same as told. */
function toldDay(use: Use, values: Values, trace?: Trace): Day {
  if (use.dailyUseAh !== undefined || use.dailyUseWh !== undefined) {
    const dailyUse =
      use.dailyUseAh ?? run(chargeOfEnergy, { E: present(use.dailyUseWh), V: use.voltageV }, trace);
    return { dailyUse, currentA: dailyUse / 24, peakA: dailyUse / 24, parts: [] };
  }
  const parts = usePerLoad(use, values, trace);
  const dailyUse = parts.reduce((sum, part) => sum + part.chargeAh, 0);
  if (parts.length > 1)
    trace?.lookup({
      name: 'dailyUse',
      says: `Q = ${parts.map(part => `${Math.round(part.chargeAh * 100) / 100} Ah`).join(' + ')}`,
      value: dailyUse,
      unit: 'Ah',
      source: 'sum of the loads',
    });
  const weighed = parts.reduce((sum, part) => sum + part.chargeAh * part.currentA, 0);
  return {
    dailyUse,
    currentA: dailyUse > 0 ? weighed / dailyUse : 0,
    peakA: Math.max(0, ...parts.map(part => part.currentA)),
    parts,
  };
}
