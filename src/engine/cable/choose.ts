import { present } from '#basics/present.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Values } from '../assumption.ts';
import { taken } from '../explore.ts';
import { type Conductor, conductorsSold, resistancePerM } from './conductor.ts';
import { type Fuse, fuseFor, protect } from './fuse.ts';
import { dropPercent, voltageDrop } from './rules.ts';
import { carriesA } from './surroundings.ts';
import { leastAreaMm2 } from './tables.ts';

/** A run of cable and what it has to do. */
export interface Run {
  /** One way, m. */
  readonly lengthM: number;
  /** That the drop is reckoned at, A. */
  readonly currentA: number;
  /** The highest continuous current, which fuse and copper must stand, A. */
  readonly continuousA: number;
  /** What the drop is a share of, V: nominal 12 or 24 as the trade reckons, or the vehicle's before a DC-DC charger. */
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

/** A cable and its fuse, chosen for each other. */
export interface Pair extends Drop {
  readonly conductor: Conductor;
  /** At least what the load asks for, at most what the conductor carries. */
  readonly fuse: Fuse;
  /** What the conductor carries where it lies, A. */
  readonly carriesA: number;
  /** It was the fuse and not the drop that asked for this size. */
  readonly isByCurrent: boolean;
  /** Even the thickest sold loses more, or can't carry the fuse. */
  readonly isTooMuch: boolean;
}

/**
 * The smallest size sold, and worth laying, that loses no more than the limit (`dropLimit`, %) and carries the fuse
 * of its current where it lies, with that fuse. Takes the assumptions of `conductorAssumptions` (for a conductor of
 * the same kind), `dropLimit` and, if any, those of `surroundingAssumptions`.
 */
export function choosePair(about: Run, as: 'metric' | 'gauge', values: Values, trace?: Trace): Pair {
  const limit = taken(values, 'dropLimit');
  const { ratingA } = fuseFor(about.continuousA);
  const sold = conductorsSold(as).filter(c => c.areaMm2 >= leastAreaMm2);
  const isDrop = (c: Conductor) => dropOn(c, about, values).percent <= limit;
  const doesCarry = (c: Conductor) => carriesA(c, values) >= ratingA;
  const chosen = sold.find(c => isDrop(c) && doesCarry(c));
  const conductor = chosen ?? present(sold.at(-1));
  const drop = dropOn(conductor, about, values, trace);
  return {
    ...drop,
    conductor,
    fuse: protect(about.continuousA, conductor, values).fuse,
    carriesA: carriesA(conductor, values),
    isByCurrent: chosen !== undefined && isDrop(present(sold[Math.max(0, sold.indexOf(chosen) - 1)])),
    isTooMuch: chosen === undefined,
  };
}
