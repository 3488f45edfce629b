import { type Bank, bankOf, bankOfOne } from '#engine/battery/bank.ts';
import { cyclesAt, lifeAtTemperature, lifeEnergyWh } from '#engine/battery/life.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import { bankAssumptions, temperatureFactor, usableCapacityAh } from '#engine/battery/usable.ts';
import { type Explored, explore } from '#engine/explore.ts';
import type { Battery, Chemistry, Facts } from '#rig/rig.ts';
import { knownTemperature } from '../battery-air.ts';

export { chargeRow } from '#engine/battery/charge-table.ts';
export { restVoltsAt } from '#engine/battery/rest.ts';
export { chemistryRow } from '#engine/battery/tables.ts';

/** Compared where nobody names a size, Ah. */
const defaultSizeAh = 100;

/** One side of the comparison. */
export interface Side {
  readonly bank: Bank;
  readonly explored: Explored<'usableCapacity'>;
  readonly weightKg: number;
  /** Cycles at the usual depth, and the energy given over them, kWh. */
  readonly cycles: number;
  readonly lifeKwh: number;
  /** Share of the label left at freezing point. */
  readonly atFreezing: number;
}

export interface BatteryType {
  readonly lead: Side;
  readonly lithium: Side;
  readonly isSizeAssumed: boolean;
  /** One battery told, without a lithium one beside it: the size stands for both. */
  readonly isOneSize: boolean;
  /** The one told is lithium. */
  readonly isLithium: boolean;
  /** Share of its life that lead-acid keeps at the temperature told. */
  readonly lifeInHeat?: number;
}

/** How long a kind lives: cycles to a depth, its usual one where none is told. */
export function lifeOf(
  kind: Chemistry,
  percent?: number,
): { readonly cycles: number; readonly percent: number } {
  const depth = percent === undefined ? chemistryRow(kind).depth[0] : percent / 100;
  return { cycles: cyclesAt(kind, depth), percent: depth * 100 };
}

/** Share of its life that lead-acid keeps where it lives at a temperature (°C). */
export const lifeInHeat = (temperatureC: number): number => lifeAtTemperature(temperatureC);

function sideOf(bank: Bank, facts: Facts, at?: Date): Side {
  const assumptions = [
    ...bankAssumptions(bank, facts.depthOfDischargePercent),
    ...knownTemperature(facts, at),
  ];
  const explored = explore<'usableCapacity'>(assumptions, 'usableCapacity', (values, trace) => ({
    usableCapacity: usableCapacityAh({ bank, currentA: 0, temperatureC: facts.ambientC }, values, trace),
  }));
  const { chemistry, capacityAh, voltageV } = bank;
  const row = chemistryRow(chemistry);
  const [depth] = row.depth;
  const blocks = voltageV / row.nominalV;
  return {
    bank,
    explored,
    weightKg: row.weightKgPerAh * capacityAh * blocks,
    cycles: cyclesAt(chemistry, depth),
    lifeKwh: (lifeEnergyWh({ chemistry, capacityAh, depth }) * blocks) / 1000,
    atFreezing: temperatureFactor(bank, 0),
  };
}

/** Lead-acid against lithium: the two that were named, or one size in both. */
export function computeBatteryType(facts: Facts, at?: Date): BatteryType {
  const told = (facts.batteries ?? []).filter(b => b.role !== 'starter');
  const isLithium = (b: Battery) => b.chemistry === 'lfp' || (b.chemistry === undefined && !!b.energyWh);
  const lead = bankOf(told.filter(b => !isLithium(b)));
  const lithium = bankOf(told.filter(isLithium));
  const sizeAh = lead?.capacityAh ?? lithium?.capacityAh ?? defaultSizeAh;
  const kind = told.find(b => b.chemistry !== undefined && b.chemistry !== 'lfp')?.chemistry ?? 'agm';
  const one = (chemistry: Battery['chemistry']): Bank => bankOfOne({ capacityAh: sizeAh, chemistry });
  const { ambientC } = facts;
  return {
    lead: sideOf(lead ?? one(kind), facts, at),
    lithium: sideOf(lithium ?? one('lfp'), facts, at),
    isSizeAssumed: !lead && !lithium,
    isOneSize: !lead || !lithium,
    isLithium: !lead && !!lithium,
    lifeInHeat: ambientC !== undefined && ambientC > 27 ? lifeAtTemperature(ambientC) : undefined,
  };
}
