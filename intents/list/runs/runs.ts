import { applianceOf } from '#catalog/appliances.ts';
import { choosePair } from '#engine/cable/choose.ts';
import {
  type Circuit,
  type CircuitKind,
  circuitAssumptions,
  circuitCurrents,
  hasMotor,
} from '#engine/cable/circuit.ts';
import { conductorAssumptions } from '#engine/cable/conductor.ts';
import { dropLimits } from '#engine/cable/tables.ts';
import { likelyOf } from '#engine/explore.ts';
import type { Facts, Load } from '#rig/rig.ts';

/** A cable of the list with its fuse. */
export interface Run {
  /** "DC-DC charger", "inverter", "fridge". */
  readonly to: string;
  /** One way as usually laid, m. */
  readonly lengthM: number;
  readonly areaMm2: number;
  readonly fuseA: number;
  /** Its kind, where the battery of the list asks for more than a blade: "high-breaking, class T style". */
  readonly fuseKind?: string;
}

/** How far things usually hang from the battery in a vehicle, one way, m. Common practice. */
const usualM = { dcdc: 5, inverter: 1, loads: 4 } as const;

/** What hangs on a motor is laid no thinner and fused no smaller than this: mm², A. Common practice. */
const leastForMotor = { areaMm2: 2.5, fuseA: 10 } as const;

interface At {
  readonly voltageV: number;
  readonly mainsV: number;
}

function runFor(kind: CircuitKind & keyof typeof usualM, to: string, facts: Facts, at: At): Run {
  const use = kind === 'loads' ? 'general' : 'critical';
  const circuit: Circuit = { kind, use, facts, ...at };
  const assumptions = [...conductorAssumptions(undefined), ...circuitAssumptions(circuit)];
  const values = {
    ...likelyOf(assumptions),
    dropLimit: dropLimits[use].low,
  };
  const { cableA, continuousA, ofV } = circuitCurrents(circuit, values);
  const lengthM = usualM[kind];
  const about = { lengthM, currentA: cableA, continuousA, voltageV: ofV };
  const { conductor, fuse } = choosePair(about, 'metric', values);
  const least = hasMotor(facts) ? leastForMotor : { areaMm2: 0, fuseA: 0 };
  return {
    to,
    lengthM,
    areaMm2: Math.max(conductor.areaMm2, least.areaMm2),
    fuseA: Math.max(fuse.ratingA, least.fuseA),
  };
}

/** The load as it runs: what is told of a thing that cycles may be its average, and its cable carries more. */
const running = (load: Load): Load =>
  applianceOf(load.name)?.setPointC !== undefined && (load.currentA ?? 0) < averageA
    ? { name: load.name, count: load.count, supply: load.supply }
    : load;
/** Under this a fridge's amps are most likely its average, A. Common practice. */
const averageA = 2.5;

/** The direct load that cuts out early, else the first: its cable is the one that matters. */
const sensitive = (loads: readonly Load[]): Load | undefined =>
  loads.find(({ name }) => /\b(?:fridge|freezer|heater)/.test(name)) ?? loads[0];

/** Cables and fuses as usually laid, for what of it the list has. */
export function usualRuns(
  facts: Facts,
  mainsV: number,
  nominalV: number,
  sizes: { readonly dcdcA?: number; readonly inverterW?: number },
): Run[] {
  const at = { voltageV: nominalV > 18 ? 24 : 12, mainsV };
  const { dcdcA, inverterW } = sizes;
  const dcdc = dcdcA && { chargers: [{ kind: 'dcdc' as const, currentA: dcdcA }] };
  const load = sensitive(
    facts.loads?.filter(l => l.supply === 'dc' && (l.currentA ?? l.powerW ?? applianceOf(l.name))) ?? [],
  );
  return [
    ...(dcdc ? [runFor('dcdc', 'DC-DC', dcdc, at)] : []),
    ...(inverterW ? [runFor('inverter', 'inverter', { inverter: { powerW: inverterW } }, at)] : []),
    ...(load ? [runFor('loads', load.name, { loads: [running(load)] }, at)] : []),
  ];
}
