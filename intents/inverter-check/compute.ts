import { present } from '#basics/present.ts';
import { applianceOf } from '#catalog/appliances.ts';
import type { Values } from '#engine/assumption.ts';
import { type Bank, bankIn } from '#engine/battery/bank.ts';
import { bankAssumptions, usableCapacityAh } from '#engine/battery/usable.ts';
import { type Explored, explore, likelyOf } from '#engine/explore.ts';
import {
  type BankFit,
  batteryCurrentA,
  type Fit,
  fitsBank,
  fitsRating,
  fitsSurge,
  inverterFor,
  surgeFactor,
  worst,
} from '#engine/inverter/check.ts';
import { chargeUsed } from '#engine/inverter/rules.ts';
import { currentAssumptions, startingW, throughWatts } from '#engine/inverter/watts.ts';
import { toldHours } from '#engine/loads/reading.ts';
import type { Facts, Load } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { RequestContext } from '../intent.ts';

type InverterKey = 'acLoad' | 'startLoad' | 'batteryCurrent' | 'batteryUse' | 'usableCapacity';

export interface InverterCheck extends Explored<InverterKey> {
  readonly loads: readonly Load[];
  readonly ratingW?: number;
  readonly surgeW?: number;
  /** Watts of the hardest start of its kind, W. */
  readonly hardestW: number;
  readonly isSurgeTold: boolean;
  /** The smallest usual inverter that runs and starts it all, W. */
  readonly neededW: number;
  readonly rating?: Fit;
  readonly surge?: Fit;
  readonly bank?: Bank;
  readonly bankFit?: BankFit;
  /** Whether one use takes more than the battery has to give. */
  readonly drains?: Fit;
  /** Hours of one use, or of a day, where told. */
  readonly hours?: number;
  /** Each load fits by itself though all at once don't. */
  readonly oneAtATime: boolean;
  /** Loads that mind a modified wave, where the inverter makes one. */
  readonly minding: readonly string[];
  readonly fit?: Fit;
}

/** What an inverter sold by its peak (W) keeps up, as a rule, W. */
export const ratingOfPeakW = (peakW: number): number => peakW / surgeFactor;

/** Things for 12 V by the catalogue that people as often have for mains. Common practice. */
const eitherWay: ReadonlySet<string> = new Set([
  'tv',
  'laptop',
  'electric blanket',
  'fan',
  'games console',
  'router',
]);

/** Whether all things may be for mains though the catalogue has them for 12 V. */
export const areEitherWay = (loads: readonly Pick<Load, 'name'>[]): boolean =>
  loads.length > 0 && loads.every(({ name }) => eitherWay.has(applianceOf(name)?.id ?? ''));

/**
 * Loads that go through the inverter: those on mains, else those told in watts, else, with no inverter told either,
 * those whose usual watts are known; else a charger for something else.
 */
function through(facts: Facts): readonly Load[] {
  const mains = facts.loads?.filter(load => load.supply === 'ac') ?? [];
  if (mains.length > 0) return mains;
  const told = facts.loads?.filter(load => load.powerW !== undefined) ?? [];
  if (told.length > 0) return told.map(load => ({ ...load, supply: 'ac' }));
  const loads = facts.loads ?? [];
  if (facts.inverter?.powerW === undefined && areEitherWay(loads))
    return loads.map(load => ({ ...load, supply: 'ac' }));
  return (facts.chargers ?? []).flatMap(({ kind, powerW }) =>
    kind === 'mains' && powerW ? [{ name: 'charger', count: 1, supply: 'ac', powerW } as const] : [],
  );
}

/** Hours a load runs, where told: its own, or the time of the question. */
const hoursOf = (load: Load, facts: Facts): number | undefined => toldHours(load) ?? facts.durationH;

/** Will the inverter run it (W), and what does it take from the battery (A, Ah). Without loads: what it takes flat out. */
export function computeInverterCheck(
  facts: Facts,
  setting: Pick<RequestContext, 'mainsV' | 'recalled'>,
): InverterCheck {
  const loads = through(setting.recalled.has('chargers') ? { ...facts, chargers: undefined } : facts);
  const { powerW: ratingW, surgeW, wave } = facts.inverter ?? {};
  const bank = bankIn(facts);
  const outlet = { loads, mainsV: setting.mainsV ?? 230 };
  const nominalV = bank?.voltageV ?? facts.systemVoltageV ?? ((facts.volts ?? 12) > 18 ? 24 : 12);
  const kind = bank?.chemistry ?? facts.batteries?.find(b => b.chemistry)?.chemistry;
  const isLithium = kind === undefined || bank?.isChemistryAssumed ? undefined : kind === 'lfp';
  const timed = loads.map(load => ({ load, hours: hoursOf(load, facts) }));
  const hours = Math.max(0, ...timed.map(t => t.hours ?? 0)) || undefined;
  const assumptions = [
    ...currentAssumptions(outlet, nominalV, isLithium),
    ...(bank ? bankAssumptions(bank) : []),
  ];
  const runW = (values: Values): number => throughWatts(outlet, values);
  const explored = explore<InverterKey>(assumptions, 'batteryCurrent', (values, trace) => {
    const acLoad = loads.length > 0 ? throughWatts(outlet, values, trace) : present(ratingW);
    const startLoad = loads.length > 0 ? startingW(outlet, values, trace) : acLoad;
    const batteryCurrent = batteryCurrentA(acLoad, ratingW, values, trace);
    // Each load takes its share of the current for its own time.
    const batteryUse = timed.reduce((sum, { load, hours: t = 0 }) => {
      if (t === 0 || acLoad === 0) return sum;
      const share = runW(values) > 0 ? throughWatts({ ...outlet, loads: [load] }, values) / acLoad : 1;
      return sum + run(chargeUsed, { I: batteryCurrent * share, t }, trace);
    }, 0);
    const usableCapacity = bank
      ? usableCapacityAh({ bank, currentA: batteryCurrent, temperatureC: facts.ambientC }, values)
      : 0;
    return { acLoad, startLoad, batteryCurrent, batteryUse, usableCapacity };
  });
  const { acLoad, startLoad, batteryCurrent, batteryUse, usableCapacity } = explored.figures;
  const isKnown = ratingW !== undefined && loads.length > 0;
  const hardestW = startingW(outlet, likelyOf(assumptions), undefined, true);
  const isStartTold = loads.some(load => load.startsPowerW !== undefined);
  const rating = isKnown ? fitsRating(acLoad.value, ratingW) : undefined;
  const surge = isKnown ? fitsSurge(startLoad.value, ratingW, surgeW, isStartTold, hardestW) : undefined;
  const bankFit = bank && fitsBank(bank, batteryCurrent.value, facts.ambientC);
  const drains =
    bank && batteryUse.value > 0 ? drainOf(batteryUse.value, usableCapacity.value, bank) : undefined;
  const minding =
    wave === 'modified-sine' ? loads.filter(l => applianceOf(l.name)?.needsSine).map(l => l.name) : [];
  const fits = [rating, surge, bankFit?.fit, drains, minding.length > 0 ? ('tight' as const) : undefined];
  const likely = likelyOf(assumptions);
  const alone = loads.flatMap(load => [throughWatts({ ...outlet, loads: [{ ...load, count: 1 }] }, likely)]);
  return {
    ...explored,
    loads,
    ratingW,
    surgeW: surgeW ?? (ratingW === undefined ? undefined : surgeFactor * ratingW),
    hardestW,
    isSurgeTold: surgeW !== undefined,
    neededW: inverterFor(acLoad.value, startLoad.value),
    rating,
    surge,
    bank,
    bankFit,
    drains,
    hours,
    oneAtATime:
      rating === 'no' &&
      alone.length + present(loads[0]).count > 2 &&
      alone.every(w => fitsRating(w, present(ratingW)) !== 'no'),
    minding,
    fit: loads.length === 0 ? undefined : worst(...fits.filter(f => f !== undefined)),
  };
}

/** Whether one use fits into what the battery has to give from its state of charge. */
function drainOf(useAh: number, usableAh: number, bank: Bank): Fit {
  const leftAh = Math.max(0, usableAh - (1 - (bank.stateOfChargePercent ?? 100) / 100) * bank.capacityAh);
  if (useAh > leftAh * 1.1) return 'no';
  return useAh > leftAh * 0.9 ? 'tight' : 'yes';
}
