import { present } from '#basics/present.ts';
import { applianceOf } from '#catalog/appliances.ts';
import type { Bank } from '#engine/battery/bank.ts';
import { bankAssumptions } from '#engine/battery/usable.ts';
import type { Explored } from '#engine/explore.ts';
import { type BankFit, fitsBank } from '#engine/inverter/check.ts';
import { exploreRunTime } from '#engine/loads/lasting.ts';
import { hasHours, isDrawTold } from '#engine/loads/reading.ts';
import type { Facts } from '#rig/rig.ts';
import { batteryAir } from '../battery-air.ts';
import type { RequestContext } from '../intent.ts';
import { bankFor } from '../learned.ts';
import { levelByVolts } from '../level-by-volts.ts';
import { useOf } from '../use.ts';

/** Facts that have a battery. */
export type RunTimeFacts = Facts & { readonly batteries: NonNullable<Facts['batteries']> };

export type RunTime = Explored<'runTime' | 'usableCapacity' | 'dailyUse'> & {
  readonly bank: Bank;
  /** The biggest single draw, A, and whether the bank can give it. */
  readonly peakA: number;
  readonly fit: BankFit;
};

/** Whether all loads are told as they draw, none with its hours and none that cools: then all are on together. */
const areAllOn = ({ loads = [] }: Facts): boolean =>
  loads.length > 1 &&
  loads.every(
    load =>
      isDrawTold(load) &&
      !hasHours(load) &&
      load.supply === 'dc' &&
      applianceOf(load.name)?.setPointC === undefined,
  );

/** In a time as short as this (h) whatever has no hours of its own is on throughout. */
const shortH = 12;

/** How long (h) the bank lasts from its state of charge with these loads and nothing coming in. */
export function computeRunTime(
  facts: RunTimeFacts,
  { at, mainsV, parsed }: Pick<RequestContext, 'at' | 'mainsV'> & Partial<Pick<RequestContext, 'parsed'>>,
): RunTime {
  const bank = present(bankFor(facts));
  const explored = exploreRunTime({
    bank,
    use: {
      ...useOf(facts, bank.voltageV, mainsV, at),
      doesMainsRunOn: true,
      doAllRunOn: (facts.durationH ?? Infinity) <= shortH || areAllOn(facts),
    },
    assumptions: bankAssumptions(
      bank,
      facts.depthOfDischargePercent,
      batteryAir(facts, at, parsed?.recognised.words),
    ),
    temperatureC: facts.ambientC,
    level: levelByVolts(facts, bank),
  });
  return { ...explored, bank, fit: fitsBank(bank, explored.peakA, facts.ambientC) };
}

/** From how full it is to how far it may go, %. */
export interface ChargeSpan {
  readonly fromPercent: number;
  readonly limitPercent: number;
}

/** What of its charge the run time uses. */
export function spanOf({ depthOfDischargePercent }: RunTimeFacts, { bank, ranked }: RunTime): ChargeSpan {
  const depth = bankAssumptions(bank, depthOfDischargePercent).find(a => a.name === 'depthOfDischarge');
  const level = ranked.find(a => a.name === 'stateOfCharge')?.value;
  return {
    fromPercent: level ?? bank.stateOfChargePercent ?? 100,
    limitPercent: Math.min(100, Math.max(0, 100 * (1 - (depth?.value ?? 1)))),
  };
}
