import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption } from '../assumption.ts';
import { inverterInput, partLoadEfficiency, smallLoadEfficiency } from './rules.ts';

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

/** Idle draw of an inverter as a share of its rating: 6–20 W of 1,500 W, makers' sheets that agree (common practice). */
export const idleShare: Assumption & { name: 'idleShare' } = {
  name: 'idleShare',
  value: 0.007,
  low: 0.004,
  high: 0.013,
  unit: '',
  why: "inverters' own draw, common practice",
};

/** The curve of part load holds from this share of the rating on. */
const curveFromShare = 0.02;

/** A load on an inverter, and what is taken for granted of it. */
export interface Inverting {
  /** W. */
  readonly loadW: number;
  /** W. */
  readonly ratingW: number;
  /** At its rating. */
  readonly efficiency: number;
  /** Idle draw as a share of the rating; the usual one where absent. */
  readonly idleShare?: number;
}

/** Efficiency at a load: on very small ones what it takes is its idle draw and little more. */
export function efficiencyAt(at: Inverting, trace?: Trace): number {
  const z = Math.min(1, at.loadW / at.ratingW);
  const eta = run(partLoadEfficiency, { eta_n: at.efficiency, z: Math.max(curveFromShare, z) }, trace);
  if (z >= curveFromShare) return eta;
  const p = at.idleShare ?? idleShare.value;
  return run(smallLoadEfficiency, { z, p, z_s: curveFromShare, eta_s: eta }, trace);
}

/** Battery power (W) behind a mains load; none behind none. */
export const batteryPowerFor = (at: Inverting, trace?: Trace): number =>
  at.loadW <= 0 ? 0 : run(inverterInput, { P: at.loadW, eta: efficiencyAt(at, trace) }, trace);
