import {
  type Circuit,
  type CircuitKind,
  circuitAssumptions,
  circuitCurrents,
  circuitKindOf,
  circuitUseOf,
  hasMotor,
} from '#engine/cable/circuit.ts';
import { ampacityA, type Conductor, conductorOf } from '#engine/cable/conductor.ts';
import { largestFuseOn, type Protected, protect } from '#engine/cable/fuse.ts';
import { type Explored, explore } from '#engine/explore.ts';
import type { Facts } from '#rig/rig.ts';
import type { Setting } from '../intent.ts';

export type FuseKey = 'fuseRating' | 'current';

export interface FuseSize extends Explored<FuseKey> {
  /** Absent: only the cable is known. */
  readonly kind?: CircuitKind;
  readonly conductor?: Conductor;
  /** What the cable may carry, A. */
  readonly carriesA?: number;
  readonly found: Protected;
  readonly hasMotor: boolean;
  /** The largest fuse that the cable told may have, A. */
  readonly mostA?: number;
  /** The fuse spoken of, A. */
  readonly saidA?: number;
  /** Rated current, where the fuse has to stand more of it, A. */
  readonly ratedA?: number;
}

/** The fuse (A) for what hangs on it, never above what its cable carries. */
export function computeFuseSize(facts: Facts, setting: Pick<Setting, 'recalled' | 'mainsV'>): FuseSize {
  const kind = circuitKindOf(facts, setting.recalled);
  const conductor = conductorOf(facts.cable);
  const mostA = conductor && largestFuseOn(conductor.areaMm2)?.ratingA;
  const spoken = { mostA, saidA: facts.fuseA };
  if (kind === undefined) return { ...byCable(conductor!), ...spoken };
  const told = facts.systemVoltageV ?? facts.batteries?.find(b => b.voltageV)?.voltageV ?? 12;
  const voltageV = told > 36 ? 48 : told > 18 ? 24 : 12;
  const circuit: Circuit = { kind, use: circuitUseOf(kind, facts), facts, voltageV, mainsV: setting.mainsV };
  const explored = explore<FuseKey>(circuitAssumptions(circuit), 'fuseRating', (values, trace) => {
    const { continuousA } = circuitCurrents(circuit, values, trace);
    const { fuse } = protect(continuousA, conductor?.areaMm2, trace);
    return { fuseRating: fuse.ratingA, current: continuousA };
  });
  const { current } = explored.figures;
  const likely = Object.fromEntries(circuitAssumptions(circuit).map(a => [a.name, a.value]));
  const { ratedA, continuousA } = circuitCurrents(circuit, likely);
  return {
    ...explored,
    ...spoken,
    kind,
    conductor,
    carriesA: conductor && ampacityA(conductor.areaMm2),
    found: protect(current.value, conductor?.areaMm2),
    hasMotor: hasMotor(facts),
    ratedA: continuousA > ratedA ? ratedA : undefined,
  };
}

/** The largest fuse that a cable alone allows. */
function byCable(conductor: Conductor): FuseSize {
  const explored = explore<FuseKey>([], 'fuseRating', (_, trace) => ({
    fuseRating: largestFuseOn(conductor.areaMm2, trace)?.ratingA ?? 1,
    current: 0,
  }));
  const fuse = largestFuseOn(conductor.areaMm2) ?? protect(0.1).fuse;
  return {
    ...explored,
    conductor,
    carriesA: ampacityA(conductor.areaMm2),
    found: { wanted: fuse, fuse, fits: true, leastAreaMm2: conductor.areaMm2 },
    hasMotor: false,
  };
}
