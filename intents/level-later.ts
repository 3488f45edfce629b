import type { Assumption } from '#engine/assumption.ts';
import { bankAssumptions } from '#engine/battery/usable.ts';
import type { Explored } from '#engine/explore.ts';
import { exploreRunTime } from '#engine/loads/lasting.ts';
import { exploreLevel } from '#engine/trip/level-at.ts';
import type { Range } from '#quantity/range.ts';
import type { Facts } from '#rig/rig.ts';
import { knownTemperature } from './battery-air.ts';
import { clockHour } from './clock.ts';
import type { RequestContext } from './intent.ts';
import { bankFor } from './learned.ts';
import { floorPercentOf } from './level.ts';
import { panelsW, sunOf } from './sun.ts';
import { hasUse, useOf } from './use.ts';

/** A level at a time to come. */
export interface Later extends Explored<'stateOfCharge' | 'used' | 'sunIn'> {
  readonly durationH: number;
  /** The level that the battery should not go below, %. */
  readonly floorPercent: number;
  readonly capacityAh: number;
  /** Hours until the floor with nothing coming in, where something is used. */
  readonly lastsH?: Range;
  readonly hasSun: boolean;
  readonly isNet: boolean;
}

/** How full it is now, as an assumption: as told or as its volts tell, else full. */
const levelNow = (range: Range): Assumption => ({
  name: 'stateOfCharge',
  ...range,
  unit: '%',
  why: range.low === range.high ? 'as you told' : 'by its volts',
});

/** The level after the time told; undefined where no time, no size or no use is told, or it is not known how full it is. */
export function computeLater(
  facts: Facts,
  now: { readonly stateOfCharge?: Range | undefined },
  setting: RequestContext,
): Later | undefined {
  const { durationH, netCurrentA } = facts;
  const bank = bankFor(facts);
  if (!bank || durationH === undefined || durationH > 24 * 14 || !now.stateOfCharge) return undefined;
  const isCharging = netCurrentA !== undefined && netCurrentA > 0;
  if (!isCharging && !hasUse(facts)) return undefined;
  const powerW = panelsW(facts);
  const isOut = facts.without?.some(what => what === 'solar' || what === 'charging');
  const hasSun = powerW !== undefined && !isOut && netCurrentA === undefined;
  const use = useOf(facts, bank.voltageV, setting.mainsV, setting.at);
  const clockH = clockHour(facts, setting);
  const explored = exploreLevel({
    bank,
    use,
    level: levelNow(now.stateOfCharge),
    durationH,
    clockH,
    sun: hasSun ? { ...sunOf(facts, setting.at), powerW } : undefined,
    netA: netCurrentA,
  });
  const lasting = isCharging
    ? undefined
    : exploreRunTime({
        bank: { ...bank, stateOfChargePercent: now.stateOfCharge.value },
        use,
        assumptions: [
          ...bankAssumptions(bank, facts.depthOfDischargePercent),
          ...knownTemperature(facts, setting.at),
        ],
      }).figures.runTime;
  return {
    ...explored,
    durationH,
    floorPercent: floorPercentOf(facts, bank.chemistry),
    capacityAh: bank.capacityAh,
    lastsH: lasting,
    hasSun,
    isNet: netCurrentA !== undefined,
  };
}
