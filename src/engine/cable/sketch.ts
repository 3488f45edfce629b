import { present } from '#basics/present.ts';
import { applianceOf } from '#catalog/appliances.ts';
import type { Charger, Facts, Load } from '#rig/rig.ts';
import { bankOf } from '../battery/bank.ts';
import { limitsOf } from '../battery/limits.ts';
import { coolingReading, isWhole } from '../loads/reading.ts';
import { fuseSource, fuseTypeFor } from './breaking.ts';
import { behindController } from './circuit.ts';
import { branchA } from './fuse-kinds.ts';
import { panelCurrents } from './panels.ts';
import { circuitOn, currentsOn, type Hub, leadOf, type SketchLead } from './sketch-lead.ts';
import { mostLoads } from './sketch-table.ts';

/** What hangs on the battery, each part with its lead towards it; the one farthest from the battery first. */
export interface SketchBranch {
  readonly side: 'in' | 'out';
  readonly leads: readonly [SketchLead, ...SketchLead[]];
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

/** Panels, and their controller behind them. */
function panelBranches(hub: Hub, inSeries?: number): SketchBranch[] {
  const solar = hub.facts.solar?.filter(panel => panel.powerW !== undefined) ?? [];
  if (solar.length === 0) return [];
  const { circuit, values } = circuitOn(hub, 'solar', { ...hub.facts, solar });
  const { fullA, continuousA } = panelCurrents(solar, hub.voltageV, values, undefined, inSeries);
  const panels = leadOf(hub, 'panels', { currentA: fullA, continuousA });
  const controller = leadOf(hub, 'controller', { currentA: behindController(circuit) });
  return [{ side: 'in', leads: [panels, controller] }];
}

/** Chargers: those on the engine have the starter battery before them. */
function chargerBranches(hub: Hub): SketchBranch[] {
  const chargers = hub.facts.chargers?.filter(({ kind }) => kind !== 'generator') ?? [];
  return chargers.map(charger => {
    const kind = charger.kind === 'dcdc' ? 'dcdc' : 'charger';
    const { ratedA, cableA, continuousA, ofV } = currentsOn(hub, kind, { ...hub.facts, chargers: [charger] });
    if (charger.kind === 'mains')
      return { side: 'in', charger, leads: [leadOf(hub, 'mains-charger', { currentA: ratedA })] };
    const before = { currentA: cableA, continuousA, ofV, on: fuseSource(hub.voltageV) };
    return {
      side: 'in',
      charger,
      leads: [leadOf(hub, 'starter', before), leadOf(hub, 'dcdc', { currentA: ratedA })],
    };
  });
}

function inverterBranches(hub: Hub): SketchBranch[] {
  if (hub.facts.inverter?.powerW === undefined) return [];
  const { cableA, continuousA } = currentsOn(hub, 'inverter', hub.facts);
  return [{ side: 'out', leads: [leadOf(hub, 'inverter', { currentA: cableA, continuousA })] }];
}

/** What a load draws while it runs: of one told by its average, what its kind usually does. */
function running(load: Load): Load {
  const isMean = load.isAverage === true || coolingReading(load) === 'average';
  if (!isMean || applianceOf(load.name) === undefined) return load;
  const { name, count, supply } = load;
  return { name, count, supply };
}

type LoadBranch = SketchBranch & { readonly load: Load };

/** Loads on the battery itself whose current is known, the largest first. */
function loadBranches(hub: Hub): LoadBranch[] {
  const loads = hub.facts.loads?.filter(load => load.supply === 'dc' && !isWhole(load)) ?? [];
  return loads
    .flatMap((load): LoadBranch[] => {
      const own = { ...hub.facts, inverter: undefined, loads: [running(load)] };
      const { use } = circuitOn(hub, 'loads', own).circuit;
      const { cableA: currentA } = currentsOn(hub, 'loads', own);
      return currentA > 0 ? [{ side: 'out', load, leads: [leadOf(hub, 'load', { currentA, use })] }] : [];
    })
    .sort((a, b) => b.leads[0].currentA - a.leads[0].currentA);
}

/** What all branches of a side bring to the bus bar or take from it, A. */
const through = (branches: readonly SketchBranch[], of: SketchBranch['side']): number =>
  branches
    .filter(({ side }) => side === of)
    .reduce((sum, { leads }) => sum + present(leads.at(-1)).currentA, 0);

/**
 * A rig's cables and fuses: each pair chosen as a question for that cable would choose it, at the usual lengths.
 * @returns undefined without a battery of known size, or with nothing on it
 */
export function sketchOf(facts: Facts, { mainsV, inSeries }: SketchOptions = {}): Sketch | undefined {
  const house = (facts.batteries ?? []).filter(battery => battery.role !== 'starter');
  const bank = bankOf(house, facts.arrangement, facts.systemVoltageV);
  if (!bank) return undefined;
  const voltageV = bank.voltageV > 36 ? 48 : bank.voltageV > 18 ? 24 : 12;
  const hub: Hub = { facts, voltageV, mainsV, source: fuseSource(voltageV, bank) };
  const loads = loadBranches(hub);
  const others = [...panelBranches(hub, inSeries), ...chargerBranches(hub), ...inverterBranches(hub)];
  const all = [...others, ...loads];
  if (all.length === 0) return undefined;
  const [inA, outA] = [through(all, 'in'), through(all, 'out')];
  const { dischargeA } = limitsOf(bank, facts.ambientC);
  return {
    voltageV,
    main: leadOf(hub, 'main', { currentA: Math.max(inA, outA) }),
    ...(outA > dischargeA && { exceedsA: dischargeA }),
    isTooStrong: fuseTypeFor(branchA, hub.source).isTooStrong,
    branches: [...others, ...loads.slice(0, mostLoads)],
    others: loads.slice(mostLoads).map(({ load }) => load),
  };
}
