import type { Load } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, Values } from '../assumption.ts';
import { inputPowerW } from '../loads/draw.ts';
import type { HouseholdKind } from '../loads/household-table.ts';
import { useAssumptions } from '../loads/model.ts';
import { type ReadLoad, readLoads, type Use } from '../loads/reading.ts';
import { loadedVoltage } from './check.ts';
import { idleShare, inverterEfficiency } from './efficiency.ts';
import { startingPower } from './rules.ts';

/** Loads that run at the same time on one mains outlet, and its voltage. */
export interface Outlet {
  readonly loads: readonly Load[];
  /** V. */
  readonly mainsV: number;
}

const useOf = ({ loads, mainsV }: Outlet): Use => ({ loads, voltageV: 12, mainsV });

/** What is taken for granted of the watts: draws left out, and what a microwave takes beyond its plate. */
export const wattsAssumptions = (outlet: Outlet): Assumption[] =>
  useAssumptions(useOf(outlet)).filter(a => / (power|input factor)$/.test(a.name));

const wattsOf = (reading: ReadLoad, outlet: Outlet, values: Values, trace?: Trace): number =>
  reading.load.count * (inputPowerW(reading, useOf(outlet), values, trace) ?? 0);

/** Watts of everything running at once. */
export function throughWatts(outlet: Outlet, values: Values, trace?: Trace): number {
  const each = readLoads(outlet).map(reading => wattsOf(reading, outlet, values, trace));
  const sum = each.reduce((a, b) => a + b, 0);
  if (each.length > 0)
    trace?.lookup({
      name: 'acLoad',
      says: `P = ${each.map(w => `${Math.round(w)} W`).join(' + ')}`,
      value: sum,
      unit: 'W',
      source: 'sum of the loads',
    });
  return sum;
}

/** How hard a reading starts, as a multiple of its running watts. */
function surgeOf({ row, kind }: ReadLoad, isHard: boolean): number {
  const hard = kind && 'hardSurge' in kind ? (kind as HouseholdKind).hardSurge : undefined;
  return (isHard ? hard : undefined) ?? row?.surge ?? 1;
}

/**
 * Watts asked for while the one with the hardest start starts, the others running.
 * @param isHard compressors start as hard as any of their kind
 */
export function startingW(outlet: Outlet, values: Values, trace?: Trace, isHard = false): number {
  const P = throughWatts(outlet, values);
  const motors = readLoads(outlet).map(reading => {
    // Of several of a kind one starts at a time.
    const P_m = wattsOf(reading, outlet, values) / reading.load.count;
    const told = reading.load.startsPowerW;
    return {
      P_m,
      k_s: told === undefined || P_m === 0 ? surgeOf(reading, isHard) : Math.max(1, told / P_m),
    };
  });
  const hardest = motors.reduce((a, b) => ((b.k_s - 1) * b.P_m > (a.k_s - 1) * a.P_m ? b : a), {
    P_m: 0,
    k_s: 1,
  });
  return hardest.k_s > 1 ? run(startingPower, { P, ...hardest }, trace) : P;
}

/** What is taken for granted of what loads on mains take from a battery, for `batteryCurrentA`: their watts, the inverter's loss, the volts under load. */
export const currentAssumptions = (
  outlet: Outlet,
  nominalV: number,
  isLithium: boolean | undefined,
): Assumption[] => [
  ...wattsAssumptions(outlet),
  inverterEfficiency,
  idleShare,
  loadedVoltage(nominalV, isLithium),
];
