import type { Assumption } from '#quantity/range.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import { compressorDuty } from './rules.ts';

/** A fridge or freezer current up to this is what it averages; above it, what it draws while running (A at 12 V; common practice). */
export const averageCurrentLimitA = 2.5;

/** A mains thing told in more amps than a socket gives was measured at the battery (A). */
export const batterySideAboveA = 20;

/** Idle draw of an inverter as a share of its rating: 6–20 W of 1,500 W, makers' sheets that agree (common practice). */
export const idleShare: Assumption = {
  name: 'idleShare',
  value: 0.007,
  low: 0.004,
  high: 0.013,
  unit: '',
  why: "inverters' own draw, common practice",
};

/** Share of the time a compressor runs at 25 °C: likely, low, high. Freezers work harder. Common practice. */
export const dutyAt25 = (setPointC: number): readonly [number, number, number] =>
  setPointC < -5 ? [0.45, 0.35, 0.6] : [0.35, 0.25, 0.45];

/** Share of the time (0–1) that a compressor with a set point runs at an outside temperature (°C). */
export function dutyAt(
  input: { readonly setPointC: number; readonly ambientC: number; readonly dutyAt25: number },
  trace?: Trace,
): number {
  return run(
    compressorDuty,
    { d_25: input.dutyAt25, T_a: input.ambientC, T_s: input.setPointC, T_25: 25, T_1: 1 },
    trace,
  );
}
