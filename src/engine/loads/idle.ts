import type { Load } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Values } from '../assumption.ts';
import { idleShare } from '../inverter/efficiency.ts';
import { idleUse } from '../inverter/rules.ts';
import { inputPowerW, inverterBehind } from './draw.ts';
import type { ReadLoad, Use } from './reading.ts';

/** One load's share of a day. */
export interface LoadUse {
  readonly load: Load;
  readonly chargeAh: number;
  readonly hours: number;
  /** Of all of that kind together while they run. */
  readonly currentA: number;
  readonly duty: number;
}

/** An inverter of which nothing is known but that it is left on, W. Common practice. */
const usualInverterW = 1000;

/** Charge (Ah) that an inverter of a rating (W) takes while it idles for some hours. */
function idleAh(S: number, t: number, use: Use, values: Values, trace?: Trace): number {
  const p = values[idleShare.name] ?? idleShare.value;
  return run(idleUse, { P_0: p * S, t, V: use.voltageV }, trace);
}

/** Charge (Ah) an inverter takes a day while it waits, on, for a compressor to start again. */
export function waitingAh(
  reading: ReadLoad,
  use: Use,
  values: Values,
  waitingH: number,
  trace?: Trace,
): number {
  const S = inverterBehind(reading, use, inputPowerW(reading, use, values) ?? 0);
  return idleAh(S, waitingH, use, values, trace);
}

/** The share of a day of an inverter that is left on, for the hours in which nothing runs on it: undefined where it isn't. */
export function idlePart(
  readings: readonly ReadLoad[],
  parts: readonly LoadUse[],
  use: Use,
  values: Values,
  trace?: Trace,
): LoadUse | undefined {
  if (!use.isInverterLeftOn) return undefined;
  const mains = readings.filter(({ load }) => load.supply === 'ac');
  const busyH = parts.reduce((sum, { load, hours }) => sum + (load.supply === 'ac' ? hours : 0), 0);
  const hours = Math.max(0, 24 - busyH);
  if (hours === 0) return undefined;
  const behind = mains.map(reading => inverterBehind(reading, use, inputPowerW(reading, use, values) ?? 0));
  const S = use.inverterW ?? (behind.length > 0 ? Math.max(...behind) : usualInverterW);
  const chargeAh = idleAh(S, hours, use, values, trace);
  return {
    load: { name: 'inverter, idle', count: 1, supply: 'dc' },
    chargeAh,
    hours: 24,
    currentA: chargeAh / hours,
    duty: 1,
  };
}
