import { chooseConductor, type Drop, dropOn } from '#engine/cable/choose.ts';
import {
  type Circuit,
  type CircuitKind,
  circuitAssumptions,
  circuitCurrents,
  circuitKindOf,
  circuitUseOf,
} from '#engine/cable/circuit.ts';
import {
  ampacityA,
  autoCableAreaMm2,
  type Conductor,
  conductorAssumptions,
  conductorOf,
  conductorsSold,
  gaugeFor,
  nearestGauge,
} from '#engine/cable/conductor.ts';
import { type Fuse, fuseFor, largestFuseOn } from '#engine/cable/fuse.ts';
import { type CircuitUse, dropLimits } from '#engine/cable/tables.ts';
import { type Explored, explore } from '#engine/explore.ts';
import type { Assumption, Range } from '#quantity/range.ts';
import type { Facts } from '#rig/rig.ts';
import { type PrintedStep, printStep } from '#rule/print.ts';
import { Trace } from '#rule/trace.ts';
import type { Setting } from '../intent.ts';

export type CableKey = 'conductorArea' | 'voltageDrop' | 'voltageDropPercent' | 'current' | 'continuous';

export interface CableSize extends Explored<CableKey> {
  readonly kind: CircuitKind;
  readonly use: CircuitUse;
  /** One way, m. */
  readonly lengthM: number;
  readonly isRoundTrip: boolean;
  readonly voltageV: number;
  readonly limitPercent: number;
  readonly isLimitTold: boolean;
  /** As told, or as chosen. */
  readonly conductor: Conductor;
  readonly isGiven: boolean;
  /** The gauge (AWG = B&S) that does in its stead, or is nearest to the one told. */
  readonly gauge: number;
  /** What the conductor may carry, A, and the fuse of the circuit, A. */
  readonly carriesA: number;
  readonly fuseA: number;
  readonly isByCurrent: boolean;
  readonly isTooMuch: boolean;
  /** "6 mm auto" beside "6 mm²": the drop on the real square, where both were named. */
  readonly square?: Drop & { readonly areaMm2: number };
  /** Copper in auto cable of the trade size that sounds like the size told or chosen, mm². */
  readonly autoAreaMm2: number;
}

/** Nominal volts of a circuit: as told, else of the batteries, else 12. */
export function circuitVoltage(facts: Facts): number {
  const told = facts.systemVoltageV ?? facts.batteries?.find(b => b.voltageV)?.voltageV ?? facts.volts ?? 12;
  return told > 36 ? 48 : told > 18 ? 24 : 12;
}

/** A gauge where the person speaks in gauges. */
const unitOf = (facts: Facts, setting: Pick<Setting, 'parsed'>): 'metric' | 'gauge' =>
  setting.parsed.cues.has('bs-gauge') && facts.cable?.areaMm2 === undefined ? 'gauge' : 'metric';

/** The cable to take (mm²) for a run, or the drop (V, %) on the one that was told. */
export function computeCableSize(
  facts: Facts,
  setting: Pick<Setting, 'recalled' | 'parsed' | 'mainsV'>,
): CableSize {
  const kind = circuitKindOf(facts, setting.recalled)!;
  const voltageV = circuitVoltage(facts);
  const use = circuitUseOf(kind, facts);
  const circuit: Circuit = { kind, use, facts, voltageV, mainsV: setting.mainsV };
  const cable = facts.cable!;
  const lengthM = cable.isRoundTrip ? cable.lengthM! / 2 : cable.lengthM!;
  const given = conductorOf(cable);
  const as = unitOf(facts, setting);
  const told = cable.dropLimitPercent;
  const usual = dropLimits[use];
  const limit: Assumption = { name: 'dropLimit', ...usual, unit: '%' };
  const assumptions = [
    ...conductorAssumptions(given ?? conductorsSold(as)[0]),
    ...circuitAssumptions(circuit),
    ...(told === undefined && !given ? [limit] : []),
  ];
  const limitPercent = told ?? usual.value;
  let isByCurrent = false;
  let isTooMuch = false;
  let conductor = given;
  const main: CableKey = given ? 'voltageDrop' : 'conductorArea';
  const explored = explore<CableKey>(assumptions, main, (values, trace) => {
    const { ratedA, continuousA } = circuitCurrents(circuit, values, trace);
    const about = { lengthM, currentA: ratedA, continuousA, voltageV };
    if (given) {
      if (trace) conductorOf(cable, trace);
      const drop = dropOn(given, about, values, trace);
      return asFigures(given, drop, ratedA, continuousA);
    }
    const choice = chooseConductor(about, as, { dropLimit: limitPercent, ...values }, trace);
    if (trace) ({ conductor, isByCurrent, isTooMuch } = choice);
    return asFigures(choice.conductor, choice, ratedA, continuousA);
  });
  const { current, continuous } = explored.figures;
  const about = { lengthM, currentA: current.value, continuousA: continuous.value, voltageV };
  return {
    ...explored,
    kind,
    use,
    lengthM,
    isRoundTrip: !!cable.isRoundTrip,
    voltageV,
    limitPercent,
    isLimitTold: told !== undefined,
    conductor: conductor!,
    isGiven: given !== undefined,
    gauge: given ? nearestGauge(given.areaMm2) : gaugeFor(conductor!.areaMm2),
    carriesA: ampacityA(conductor!.areaMm2),
    fuseA: fuseFor(continuous.value).ratingA,
    isByCurrent,
    isTooMuch,
    square:
      cable.autoCableMm !== undefined ? squareBeside(cable.areaMm2 ?? cable.autoCableMm, about) : undefined,
    autoAreaMm2: autoCableAreaMm2(cable.autoCableMm ?? conductor!.areaMm2),
  };
}

const asFigures = (conductor: Conductor, drop: Drop, ratedA: number, continuousA: number) => ({
  conductorArea: conductor.areaMm2,
  voltageDrop: drop.dropV,
  voltageDropPercent: drop.percent,
  current: ratedA,
  continuous: continuousA,
});

/** The drop on real mm², beside auto cable of the same number. */
function squareBeside(areaMm2: number, about: Parameters<typeof dropOn>[1]) {
  const conductor: Conductor = { areaMm2, as: 'metric', size: areaMm2 };
  const values = Object.fromEntries(conductorAssumptions(conductor).map(a => [a.name, a.value]));
  return { areaMm2, ...dropOn(conductor, about, values) };
}

/** How much the prudent figure may be off: bundled and hot, or cool and alone (common practice). */
const ampacitySpan = { low: 0.75, high: 1.3 } as const;

/** What a cable of a told size carries (A), and the largest fuse that protects it. */
export function computeAmpacity(facts: Facts): {
  readonly areaMm2: number;
  readonly carries: Range;
  readonly fuse?: Fuse;
  readonly working: () => readonly PrintedStep[];
} {
  const trace = new Trace();
  const { areaMm2 } = conductorOf(facts.cable, trace)!;
  const value = ampacityA(areaMm2, 75, trace);
  const carries = { value, low: value * ampacitySpan.low, high: value * ampacitySpan.high };
  return { areaMm2, carries, fuse: largestFuseOn(areaMm2), working: () => trace.steps.map(printStep) };
}
