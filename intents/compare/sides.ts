import { present } from '#basics/present.ts';
import type { Battery, Charger, Facts, Load, Solar } from '#rig/rig.ts';

/** What is held against what, and by which figure. */
export type Measure = 'runTime' | 'usableCapacity' | 'dailyYield' | 'chargeTime' | 'dailyUse' | 'gain';

/** One side of a comparison: its name for the answer, and the facts that are its own. */
export interface Side {
  readonly name: string;
  readonly facts: Facts;
  /** Of a 'gain': what it is that brings something. */
  readonly brings?: 'panel' | 'charger' | 'battery';
}

export interface Pairing {
  readonly measure: Measure;
  readonly sides: readonly Side[];
}

/** How things are named; given from outside, as words are no matter of pairing. */
export interface Names {
  readonly battery: (battery: Battery) => string;
  readonly panel: (panel: Solar) => string;
  readonly charger: (charger: Charger) => string;
  readonly load: (load: Load) => string;
}

const isHouse = (battery: Battery): boolean => battery.role !== 'starter';
const isSized = (battery: Battery): boolean =>
  battery.capacityAh !== undefined || battery.energyWh !== undefined;

/** A load's name, with what sets it apart from one of the same name. */
function nameAmong(loads: readonly Load[], load: Load, names: Names): string {
  const alike = loads.filter(other => other.name === load.name);
  if (alike.length < 2) return load.name;
  const isBySupply = load.supply !== undefined && new Set(alike.map(({ supply }) => supply)).size > 1;
  const supply = load.supply === 'dc' ? '12 V' : 'mains';
  return isBySupply ? `${supply} ${load.name}` : names.load(load);
}

/** Loads of two sides told one after the other, each with its own battery. */
const areRivals = (batteries: readonly Battery[], loads: readonly Load[]): boolean =>
  batteries.length === loads.length && new Set(loads.map(load => load.name)).size === 1 && loads.length > 1;

/**
 * The sides that the facts tell: the first kind of gear of which there are two, else two kinds that do the same job.
 * Undefined where there is one side only.
 */
export function pairingOf(facts: Facts, hasUse: boolean, names: Names): Pairing | undefined {
  const batteries = (facts.batteries ?? []).filter(b => isHouse(b) && isSized(b));
  const loads = facts.loads ?? [];
  const panels = (facts.solar ?? []).filter(panel => panel.powerW !== undefined);
  const chargers = (facts.chargers ?? []).filter(c => c.kind !== 'generator' && c.currentA !== undefined);
  if (batteries.length > 1)
    return {
      measure: hasUse ? 'runTime' : 'usableCapacity',
      sides: batteries.map((battery, i) => ({
        name: names.battery(battery),
        facts: {
          ...facts,
          batteries: [battery],
          ...(areRivals(batteries, loads) && { loads: [present(loads[i])] }),
        },
      })),
    };
  if (panels.length > 1)
    return {
      measure: 'dailyYield',
      sides: panels.map(panel => ({ name: names.panel(panel), facts: { ...facts, solar: [panel] } })),
    };
  if (chargers.length > 1)
    return {
      measure: 'chargeTime',
      sides: chargers.map(charger => ({
        name: names.charger(charger),
        facts: { ...facts, chargers: [charger] },
      })),
    };
  if (loads.length > 1)
    return {
      measure: batteries.length > 0 ? 'runTime' : 'dailyUse',
      sides: loads.map(load => ({
        name: nameAmong(loads, load, names),
        facts: { ...facts, loads: [load] },
      })),
    };
  return gains(facts, panels, chargers, batteries, names) ?? mounts(facts, panels);
}

/** A panel, a charger and a battery, each for what it brings. */
function gains(
  facts: Facts,
  panels: readonly Solar[],
  chargers: readonly Charger[],
  batteries: readonly Battery[],
  names: Names,
): Pairing | undefined {
  const sides: Side[] = [
    ...panels.map((panel): Side => ({ name: names.panel(panel), facts, brings: 'panel' })),
    ...chargers.map((charger): Side => ({ name: names.charger(charger), facts, brings: 'charger' })),
    ...batteries.map((battery): Side => ({ name: names.battery(battery), facts, brings: 'battery' })),
  ].slice(0, 2);
  return sides.length > 1 ? { measure: 'gain', sides } : undefined;
}

/** One panel at a known place: flat against angled. */
function mounts(facts: Facts, panels: readonly Solar[]): Pairing | undefined {
  if (panels.length === 0 || (facts.place === undefined && facts.latitudeDeg === undefined)) return undefined;
  return {
    measure: 'dailyYield',
    sides: (['tilted', 'flat'] as const).map(mount => ({
      name: mount === 'tilted' ? 'angled at the sun' : 'flat',
      facts: { ...facts, mount },
    })),
  };
}
