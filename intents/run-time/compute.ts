import { applianceOf } from '#catalog/appliances.ts';
import type { Bank } from '#engine/battery/bank.ts';
import { chargeAtRest, isOnCharge } from '#engine/battery/rest.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import { bankAssumptions } from '#engine/battery/usable.ts';
import type { Explored } from '#engine/explore.ts';
import { type BankFit, fitsBank } from '#engine/inverter/check.ts';
import { exploreRunTime } from '#engine/loads/lasting.ts';
import { hasHours, isDrawTold } from '#engine/loads/reading.ts';
import type { Assumption } from '#quantity/range.ts';
import type { Facts } from '#rig/rig.ts';
import { batteryAir } from '../battery-air.ts';
import type { RequestContext } from '../intent.ts';
import { bankFor } from '../learned.ts';
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

/** How far a moderate load holds the volts of a 12 V block down, V; common practice. */
const sagV = { value: 0.15, low: 0.05, high: 0.4 } as const;

/** How full it is by its volts, where nothing else tells; undefined while a charger holds them up. */
function levelByVolts({ volts, voltsTaken, netCurrentA }: Facts, bank: Bank): Assumption | undefined {
  const isTold = bank.stateOfChargePercent !== undefined || bank.isChemistryAssumed;
  // "12 V" and "24 V" name a system; a meter shows tenths.
  const isName = volts !== undefined && volts % 12 === 0;
  if (volts === undefined || isName || isTold || voltsTaken === 'charging') return undefined;
  const blocks = bank.voltageV / chemistryRow(bank.chemistry).nominalV;
  if (isOnCharge(volts, bank.chemistry, blocks)) return undefined;
  const isLoaded = voltsTaken === 'load' || (voltsTaken !== 'rest' && (netCurrentA ?? 0) < 0);
  const at = (sag: number) =>
    chargeAtRest(volts + (isLoaded ? sag * blocks : 0), bank.chemistry, undefined, blocks);
  const why = isLoaded ? 'by its volts under load: a hint' : 'by its volts at rest';
  const [value, low, high] = [at(sagV.value).value, at(sagV.low).low, at(sagV.high).high];
  return { name: 'stateOfCharge', value, low, high, unit: '%', why };
}

/** How long (h) the bank lasts from its state of charge with these loads and nothing coming in. */
export function computeRunTime(
  facts: RunTimeFacts,
  { at, mainsV, parsed }: Pick<RequestContext, 'at' | 'mainsV'> & Partial<Pick<RequestContext, 'parsed'>>,
): RunTime {
  const bank = bankFor(facts)!;
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
