import type { Assumption } from '#quantity/range.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import { inverterInput, partLoadEfficiency } from './rules.ts';

/** Usual inverter sizes (W); common practice. */
export const inverterSizesW = [150, 300, 600, 1000, 1500, 2000, 2500, 3000, 4000, 5000] as const;

/** The size a person would have for a load, where none is told: the next usual one with a fifth in hand (W). */
export const likelyInverterW = (loadW: number): number =>
  inverterSizesW.find(size => size >= loadW * 1.2) ?? Math.ceil(loadW * 1.2);

/** Efficiency at rating; makers' sheets give 85–94 % (common practice). */
export const inverterEfficiency: Assumption & { name: 'inverterEfficiency' } = {
  name: 'inverterEfficiency',
  value: 0.9,
  low: 0.85,
  high: 0.94,
  unit: '',
  why: 'typical at its rating; less on small loads',
};

/** Battery power (W) behind a mains load (W) through an inverter of a rating (W). Loads below 2 % of it count as 2 %. */
export function batteryPowerFor(
  input: { readonly loadW: number; readonly ratingW: number; readonly efficiency: number },
  trace?: Trace,
): number {
  const z = Math.min(1, Math.max(0.02, input.loadW / input.ratingW));
  const eta = run(partLoadEfficiency, { eta_n: input.efficiency, z }, trace);
  return run(inverterInput, { P: input.loadW, eta }, trace);
}
