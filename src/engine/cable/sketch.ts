import { applianceOf } from '#catalog/appliances.ts';
import type { Charger, Facts, Load } from '#rig/rig.ts';
import { bankOf } from '../battery/bank.ts';
import { limitsOf } from '../battery/limits.ts';
import type { Values } from '../explore.ts';
import { coolingReading, isWhole } from '../loads/reading.ts';
import { type FuseSource, fuseSource, fuseTypeFor, shortCircuitA } from './breaking.ts';
import { choosePair } from './choose.ts';
import {
  behindController,
  type Circuit,
  type CircuitKind,
  circuitAssumptions,
  circuitCurrents,
  circuitUseOf,
} from './circuit.ts';
import { conductorAssumptions } from './conductor.ts';
import { fuseFor } from './fuse.ts';
import { panelFuse } from './fuse-kinds.ts';
import { panelCurrents } from './panels.ts';
import { type LeadName, mostLoads, usualLengthM } from './sketch-table.ts';
import { surroundingAssumptions } from './surroundings.ts';
import { type CircuitUse, dropLimits } from './tables.ts';

/** A run of cable chosen with its fuse. */
export interface SketchLead {
  readonly name: LeadName;
  /** That flows for long, A. */
  readonly currentA: number;
  /** One way, m: as is usual. */
  readonly lengthM: number;
  readonly areaMm2: number;
  readonly fuseA: number;
  /** By its name in the trade. */
  readonly fuseKind: string;
  /** Not even the thickest cable or the largest fuse sold carries that. */
  readonly isTooMuch: boolean;
}

/** What hangs on the battery, each part with its lead towards it; the one farthest from the battery first. */
export interface SketchBranch {
  readonly side: 'in' | 'out';
  readonly leads: readonly SketchLead[];
  readonly charger?: Charger;
  readonly load?: Load;
}

export interface Sketch {
  /** Nominal, V. */
  readonly voltageV: number;
  readonly main: SketchLead;
  /** What the bank stands for long, A, where more is asked of it. */
  readonly exceedsA?: number;
  /** More than even the best kind of fuse breaks: each battery needs its own. */
  readonly isTooStrong: boolean;
  readonly branches: readonly SketchBranch[];
  /** Loads there is no room for, each with a fuse of its own. */
  readonly others: readonly Load[];
}

export interface SketchOptions {
  readonly mainsV?: number;
  /** Panels in a string, where that is settled. */
  readonly inSeries?: number;
}

/** What a load draws while it runs: of one told by its average, what its kind usually does. */
const running = (load: Load): Load => {
  const isMean = load.isAverage === true || coolingReading(load) === 'average';
  if (!isMean || applianceOf(load.name)?.powerW === undefined) return load;
  const { name, count, supply } = load;
  return { name, count, supply };
};

/**
 * A rig's cables and fuses: each pair chosen as a question for that cable would choose it, at the usual lengths.
 * @returns undefined without a battery of known size, or with nothing on it
 */
export function sketchOf(facts: Facts, { mainsV, inSeries }: SketchOptions = {}): Sketch | undefined {
  const house = (facts.batteries ?? []).filter(battery => battery.role !== 'starter');
  const bank = bankOf(house, facts.arrangement, facts.systemVoltageV);
  if (!bank) return undefined;
  const voltageV = bank.voltageV > 36 ? 48 : bank.voltageV > 18 ? 24 : 12;
  const source = fuseSource(voltageV, bank);
  const { dischargeA } = limitsOf(bank, facts.ambientC);
  const circuitOf = (kind: CircuitKind, own: Facts): Circuit => ({
    kind,
    use: circuitUseOf(kind, own),
    facts: own,
    voltageV,
    mainsV,
  });
  const likely = (circuit: Circuit): Values =>
    Object.fromEntries(circuitAssumptions(circuit).map(a => [a.name, a.value]));
  const lead = (
    name: LeadName,
    { currentA, continuousA = currentA, ofV = voltageV, use = 'critical', on = source }: Flow,
  ): SketchLead => {
    const lies = [
      ...conductorAssumptions(undefined, facts.ambientC),
      ...surroundingAssumptions(facts.ambientC),
    ];
    const values = {
      dropLimit: dropLimits[use].value,
      ...Object.fromEntries(lies.map(a => [a.name, a.value])),
    };
    const lengthM = usualLengthM[name];
    const pair = choosePair({ lengthM, currentA, continuousA, voltageV: ofV }, 'metric', values);
    const type = fuseTypeFor(pair.fuse.ratingA, on);
    const kind = name === 'panels' ? panelFuse : name === 'main' ? (type.behind ?? type.kind) : type.kind;
    return {
      name,
      currentA: continuousA,
      lengthM,
      areaMm2: pair.conductor.areaMm2,
      fuseA: pair.fuse.ratingA,
      fuseKind: kind.name,
      isTooMuch: pair.isTooMuch || pair.fuse.ratingA < fuseFor(continuousA).ratingA,
    };
  };
  const branches: SketchBranch[] = [];
  const panels = facts.solar?.filter(panel => panel.powerW !== undefined) ?? [];
  if (panels.length > 0) {
    const circuit = circuitOf('solar', { ...facts, solar: panels });
    const { fullA, continuousA } = panelCurrents(panels, voltageV, likely(circuit), undefined, inSeries);
    branches.push({
      side: 'in',
      leads: [
        lead('panels', { currentA: fullA, continuousA }),
        lead('controller', { currentA: behindController(circuit) }),
      ],
    });
  }
  for (const charger of facts.chargers ?? []) {
    if (charger.kind === 'generator') continue;
    const circuit = circuitOf(charger.kind === 'dcdc' ? 'dcdc' : 'charger', {
      ...facts,
      chargers: [charger],
    });
    const { ratedA, cableA, continuousA, ofV } = circuitCurrents(circuit, likely(circuit));
    const before = { currentA: cableA, continuousA, ofV, on: fuseSource(voltageV) };
    branches.push({
      side: 'in',
      charger,
      leads:
        charger.kind === 'mains'
          ? [lead('mains-charger', { currentA: ratedA })]
          : [lead('starter', before), lead('dcdc', { currentA: ratedA })],
    });
  }
  if (facts.inverter?.powerW !== undefined) {
    const circuit = circuitOf('inverter', facts);
    const { cableA, continuousA } = circuitCurrents(circuit, likely(circuit));
    branches.push({ side: 'out', leads: [lead('inverter', { currentA: cableA, continuousA })] });
  }
  const loads = (facts.loads ?? [])
    .filter(load => load.supply === 'dc' && !isWhole(load))
    .flatMap(load => {
      const circuit = circuitOf('loads', { ...facts, inverter: undefined, loads: [running(load)] });
      const { cableA } = circuitCurrents(circuit, likely(circuit));
      const flow = { currentA: cableA, use: circuit.use };
      return cableA > 0 ? [{ side: 'out' as const, load, leads: [lead('load', flow)] }] : [];
    })
    .sort((a, b) => b.leads[0]!.currentA - a.leads[0]!.currentA);
  branches.push(...loads.slice(0, mostLoads));
  if (branches.length === 0) return undefined;
  const through = (side: 'in' | 'out'): number =>
    [...branches, ...loads.slice(mostLoads)]
      .filter(branch => branch.side === side)
      .reduce((sum, { leads }) => sum + leads.at(-1)!.currentA, 0);
  return {
    voltageV,
    main: lead('main', { currentA: Math.max(through('in'), through('out')) }),
    ...(through('out') > dischargeA && { exceedsA: dischargeA }),
    isTooStrong: fuseTypeFor(1000, { ...source, shortA: shortCircuitA(bank) }).isTooStrong,
    branches,
    others: loads.slice(mostLoads).map(({ load }) => load),
  };
}

/** What flows in a lead, A, what its drop is a share of, V, and what its fuse sits on. */
interface Flow {
  readonly currentA: number;
  readonly continuousA?: number;
  readonly ofV?: number;
  readonly use?: CircuitUse;
  readonly on?: FuseSource;
}
