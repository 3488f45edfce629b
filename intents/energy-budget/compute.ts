import { type Bank, nominalVoltage } from '#engine/battery/bank.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import { bankAssumptions } from '#engine/battery/usable.ts';
import { type Explored, explore } from '#engine/explore.ts';
import { exploreRunTime } from '#engine/loads/lasting.ts';
import { dayOf, type LoadUse, useAssumptions } from '#engine/loads/model.ts';
import { dailyEnergy } from '#engine/loads/rules.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import { batteryAir } from '../battery-air.ts';
import type { RequestContext } from '../intent.ts';
import { bankFor } from '../learned.ts';
import { useOf } from '../use.ts';

export interface EnergyBudget {
  readonly explored: Explored<'dailyUse' | 'dailyEnergy'>;
  /** Each load's share of the day, biggest first. */
  readonly parts: readonly LoadUse[];
  readonly bank?: Bank;
  readonly voltageV: number;
  /** The label of a battery that carries a day of it, by its kind, Ah. */
  readonly dayIn: { readonly agmAh: number; readonly lfpAh: number };
  /** How long the bank would carry it, from full or as full as told, in days. */
  readonly days?: number;
}

/** What everything takes a day (Ah and Wh) from the battery, and each load's share of it. */
export function computeEnergyBudget(facts: Facts, setting: RequestContext): EnergyBudget {
  const bank = bankFor(facts);
  const chemistry = facts.batteries?.find(b => b.chemistry !== undefined)?.chemistry ?? 'agm';
  const voltageV = bank?.voltageV ?? nominalVoltage(facts.systemVoltageV, chemistry);
  const use = { ...useOf(facts, voltageV, setting.mainsV, setting.at), isOfDay: true };
  let parts: readonly LoadUse[] = [];
  const explored = explore<'dailyUse' | 'dailyEnergy'>(useAssumptions(use), 'dailyUse', (values, trace) => {
    const day = dayOf(use, values, trace);
    if (trace) parts = day.parts;
    return { dailyUse: day.dailyUse, dailyEnergy: run(dailyEnergy, { Q: day.dailyUse, V: voltageV }, trace) };
  });
  const days =
    bank &&
    exploreRunTime({
      bank,
      use,
      temperatureC: facts.ambientC,
      assumptions: bankAssumptions(bank, undefined, batteryAir(facts, setting.at)),
    }).figures.runTime.value / 24;
  const labelAh = (kind: Chemistry): number => explored.figures.dailyUse.value / chemistryRow(kind).depth[0];
  const dayIn = { agmAh: labelAh('agm'), lfpAh: labelAh('lfp') };
  return { explored, days, dayIn, parts: [...parts].sort((a, b) => b.chargeAh - a.chargeAh), bank, voltageV };
}
