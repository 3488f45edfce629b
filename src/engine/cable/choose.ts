import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import { taken, type Values } from '../explore.ts';
import { ampacityA, type Conductor, conductorsSold, resistancePerM } from './conductor.ts';
import { fuseFor } from './fuse.ts';
import { dropPercent, voltageDrop } from './rules.ts';
import { leastAreaMm2 } from './tables.ts';

/** A run of cable and what it has to do. */
export interface Run {
  /** One way, m. */
  readonly lengthM: number;
  /** That the drop is reckoned at, A. */
  readonly currentA: number;
  /** The highest continuous current, which fuse and copper must stand, A. */
  readonly continuousA: number;
  /** Nominal, V: 12 or 24 as the trade reckons. */
  readonly voltageV: number;
}

export interface Drop {
  readonly dropV: number;
  readonly percent: number;
}

/** Voltage lost on a run of a conductor. Takes the assumptions of `conductorAssumptions`. */
export function dropOn(conductor: Conductor, about: Run, values: Values, trace?: Trace): Drop {
  const r = resistancePerM(conductor, values, trace);
  const dropV = run(voltageDrop, { L: about.lengthM, I: about.currentA, r }, trace);
  return { dropV, percent: run(dropPercent, { V_d: dropV, V: about.voltageV }, trace) };
}

/** A conductor and whether it does. */
export interface Choice extends Drop {
  readonly conductor: Conductor;
  /** It was the fuse and not the drop that asked for this size. */
  readonly isByCurrent: boolean;
  /** Even the thickest sold loses more. */
  readonly isTooMuch: boolean;
}

/**
 * The smallest size sold, and worth laying, that loses no more than the limit (`dropLimit`, %) and carries the fuse of its current.
 * Takes the assumptions of `conductorAssumptions` (for a conductor of the same kind) and `dropLimit`.
 */
export function chooseConductor(about: Run, as: 'metric' | 'gauge', values: Values, trace?: Trace): Choice {
  const limit = taken(values, 'dropLimit');
  const { ratingA } = fuseFor(about.continuousA);
  const sold = conductorsSold(as).filter(c => c.areaMm2 >= leastAreaMm2);
  const isDrop = (c: Conductor) => dropOn(c, about, values).percent <= limit;
  const doesCarry = (c: Conductor) => ampacityA(c.areaMm2) >= ratingA;
  const chosen = sold.find(c => isDrop(c) && doesCarry(c));
  const conductor = chosen ?? sold.at(-1)!;
  const drop = dropOn(conductor, about, values, trace);
  return {
    ...drop,
    conductor,
    isByCurrent: chosen !== undefined && isDrop(sold[Math.max(0, sold.indexOf(chosen) - 1)]!),
    isTooMuch: chosen === undefined,
  };
}
