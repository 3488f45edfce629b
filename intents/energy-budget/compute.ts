import { type Bank, nominalVoltage } from '#engine/battery/bank.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import { bankAssumptions } from '#engine/battery/usable.ts';
import { type Explored, explore } from '#engine/explore.ts';
import { exploreRunTime } from '#engine/loads/lasting.ts';
import { dayOf, type LoadUse, useAssumptions } from '#engine/loads/model.ts';
import { dailyEnergy } from '#engine/loads/rules.ts';
import type { Chemistry, Facts, Load } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import { batteryAir } from '../battery-air.ts';
import { isCooler, runFor } from '../hours-told.ts';
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
  /** The hours of a day that are asked for, where they are told and no day's use is. */
  readonly overH?: number;
  /** What the heat told does to the things that cool. */
  readonly inHeat?: InHeat;
  /** How long the bank would carry it, from full or as full as told, in days. */
  readonly days?: number;
}

/** A day's use in the heat, beside that of mild weather. */
interface InHeat {
  readonly airC: number;
  readonly mildAh: number;
  /** How many times as much it takes in the heat. */
  readonly times: number;
  /** The use was worked out for the heat; else it was told as it is, and the heat comes on top. */
  readonly isCounted: boolean;
}

/** Air that is mild, and that which is asked about as hot, °C. */
const air = { mildC: 25, hotC: 28 } as const;

/** Of one thing that cools, what the heat of this message does. */
function inHeatOf(
  facts: Facts,
  dailyAh: number,
  voltageV: number,
  setting: RequestContext,
): InHeat | undefined {
  const { loads = [] } = facts;
  const airC = setting.parsed.facts.ambientC;
  const [load, other] = loads;
  if (!load || other || !isCooler(load) || airC === undefined || airC < air.hotC) return undefined;
  const usedAt = (ambientC: number, one: Load): number => {
    const use = {
      ...useOf({ ...facts, loads: [one], ambientC }, voltageV, setting.mainsV, setting.at),
      isOfDay: true,
    };
    return explore<'dailyUse'>(useAssumptions(use), 'dailyUse', values => ({
      dailyUse: dayOf(use, values).dailyUse,
    })).figures.dailyUse.value;
  };
  const mildAh = usedAt(air.mildC, load);
  const isCounted = dailyAh > 1.02 * mildAh;
  if (isCounted) return { airC, mildAh, times: dailyAh / mildAh, isCounted };
  // Its share of the time told beside the heat is that of the heat.
  if (setting.parsed.facts.loads?.length) return undefined;
  // Told as an average or by its share of the time: what a usual one takes more goes on top, up to running on and on.
  const usual: Load = { name: load.name, count: load.count, supply: 'dc' };
  const times = usedAt(airC, usual) / usedAt(air.mildC, usual);
  const { dutyPercent } = load;
  return {
    airC,
    mildAh,
    times: dutyPercent === undefined ? times : Math.min(times, 100 / dutyPercent),
    isCounted,
  };
}

/** What everything takes a day (Ah and Wh) from the battery, and each load's share of it. */
export function computeEnergyBudget(told: Facts, setting: RequestContext): EnergyBudget {
  // Hours of another question that memory lends are not of this one.
  const hours = setting.recalled.has('durationH') ? undefined : told.durationH;
  const isOfHours = hours !== undefined && hours < 24;
  const facts = isOfHours ? runFor(told, hours) : told;
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
  const { value } = explored.figures.dailyUse;
  return {
    // What cools runs through the day: of its day's use the hours take a share.
    overH: isOfHours && facts.loads?.every(isCooler) ? hours : undefined,
    inHeat: inHeatOf(facts, value, voltageV, setting),
    explored,
    days,
    dayIn,
    parts: [...parts].sort((a, b) => b.chargeAh - a.chargeAh),
    bank,
    voltageV,
  };
}
