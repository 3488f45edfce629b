import type { Values } from '#engine/assumption.ts';
import { type Bank, bankIn, bankOfOne } from '#engine/battery/bank.ts';
import { chargeRow } from '#engine/battery/charge-table.ts';
import { chargeRateC } from '#engine/battery/limits.ts';
import { type Charge, chargeAssumptions, chargeOf, guessedBankAh } from '#engine/charging/charge.ts';
import {
  continuousAssumption,
  continuousW,
  generatorAssumptions,
  generatorRatingW,
  generatorSizeFor,
  plateNoiseDb,
  startAssumption,
} from '#engine/charging/generator.ts';
import { currentLeft } from '#engine/charging/rules.ts';
import { type Source, sourceAssumptions, sourceCurrentA } from '#engine/charging/source.ts';
import { noiseLimits } from '#engine/charging/tables.ts';
import { type Explored, explore, likelyOf } from '#engine/explore.ts';
import { startingW, throughWatts, wattsAssumptions } from '#engine/inverter/watts.ts';
import { dailyUseAh, type Use, useAssumptions } from '#engine/loads/model.ts';
import { meanwhileA, meanwhileAssumptions } from '#engine/loads/over.ts';
import type { Facts, Load } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import { batteryAir } from '../battery-air.ts';
import type { RequestContext } from '../intent.ts';
import { siteOf } from '../sun.ts';
import { useOf } from '../use.ts';

type GeneratorKey =
  | 'generatorPower'
  | 'loadShare'
  | 'chargeTime'
  | 'chargeNeeded'
  | 'chargeCurrent'
  | 'loadPower';

export interface Generator extends Explored<GeneratorKey> {
  readonly bank?: Bank;
  /** The one that was told, by the watts that it goes by, and by what it gives of them without a break, as a rule, W. */
  readonly ratingW?: number;
  readonly steadyW?: number;
  /** The next usual size for what is asked of it, W. */
  readonly sizeW: number;
  readonly hasCharger: boolean;
  readonly isChargerAssumed: boolean;
  readonly isDailyUse: boolean;
  /** Loads that start with a jolt. */
  readonly hasMotor: boolean;
  /** Noise on a maker's sheet (dB at 7 m) that meets a common limit of parks (60 dB at 15 m). */
  readonly noiseDb: number;
}

/** Loads on the generator's own outlet: those on mains, and those told in watts where nothing is charged. */
function onOutlet(facts: Facts, isCharging: boolean): readonly Load[] {
  const mains = facts.loads?.filter(l => l.supply === 'ac') ?? [];
  if (mains.length > 0 || isCharging) return mains;
  const told = facts.loads?.filter(l => l.powerW !== undefined) ?? [];
  const isOfOwn = facts.chargers?.some(c => c.kind === 'generator' && c.powerW !== undefined);
  // Lights plugged into the generator that was told run on it, whatever their watts.
  return told.length > 0 || !isOfOwn ? told : (facts.loads ?? []);
}

/** What a generator must give (W), and how long (h) it has to run to charge. */
export function computeGenerator(
  facts: Facts,
  setting: Pick<RequestContext, 'at' | 'recalled' | 'mainsV'>,
): Generator {
  const generator = facts.chargers?.find(c => c.kind === 'generator');
  // "Generator with a 25 A charger" may be told as one: the amps are the charger's.
  const charger =
    facts.chargers?.find(c => c.kind === 'mains' || c.kind === 'dcdc') ??
    (generator?.currentA === undefined
      ? undefined
      : { ...generator, kind: 'mains' as const, powerW: undefined });
  const bank = bankIn(facts);
  const isToFill = bank !== undefined || facts.chargeNeededAh !== undefined;
  // Where nothing is to be charged, what is known to run is what it is for.
  const isForLoads = charger === undefined && !isToFill;
  const areLoadsSaid = !!facts.loads?.length && (isForLoads || !setting.recalled.has('loads'));
  const outlet = areLoadsSaid ? onOutlet(facts, charger !== undefined || isToFill) : [];
  const hasCharger = charger !== undefined || (isToFill && outlet.length === 0);
  const use = useOf(facts, bank?.voltageV ?? 12, setting.mainsV, setting.at);
  const isSocTold = bank?.stateOfChargePercent !== undefined;
  const isDailyUse =
    !isSocTold &&
    facts.chargeNeededAh === undefined &&
    (facts.dailyUseAh !== undefined ||
      facts.dailyUseWh !== undefined ||
      (!!facts.loads?.length && outlet.length === 0));
  const told = facts.batteries?.find(b => b.chemistry)?.chemistry;
  const chemistry = bank?.chemistry ?? told ?? 'agm';
  const row = chargeRow(chemistry);
  const blocks = Math.max(1, Math.round((bank?.voltageV ?? facts.systemVoltageV ?? 12) / 12.4));
  const site = siteOf(facts);
  const source: Source = {
    kind: 'mains',
    currentA: charger?.currentA,
    powerW: charger?.powerW,
    generatorW: generator?.powerW,
    ...site,
    row,
    blocks,
  };
  const missingAh =
    facts.chargeNeededAh ?? (isDailyUse ? dailyUseAh(use, likelyOf(useAssumptions(use))) : undefined);
  const reckoned = bank ?? bankOfOne({ capacityAh: guessedBankAh(missingAh ?? 40), chemistry: told });
  const charge: Charge = {
    bank: reckoned,
    isSizeAssumed: !bank,
    missingAh,
    targetPercent: facts.targetChargePercent,
    isIsolator: false,
    temperatureC: facts.ambientC,
    temperature: batteryAir(facts, setting.at),
  };
  const isCharging = hasCharger && (bank !== undefined || missingAh !== undefined);
  // What runs on the battery while the charger is on it takes its part of the current.
  const onBattery = facts.loads?.filter(load => !outlet.includes(load)) ?? [];
  const meanwhile: Use | undefined =
    areLoadsSaid && isCharging && !isDailyUse && onBattery.length > 0
      ? { ...use, loads: onBattery }
      : undefined;
  const loads = { loads: outlet, mainsV: setting.mainsV ?? 230 };
  const sourced = sourceAssumptions({ ...source, generatorW: undefined });
  const assumptions = [
    ...(hasCharger ? sourced : []),
    ...generatorAssumptions(site),
    ...(generator?.powerW === undefined ? [] : [continuousAssumption]),
    ...(isCharging ? chargeAssumptions(charge) : []),
    ...wattsAssumptions(loads),
    ...(outlet.length > 0 ? [startAssumption] : []),
    ...(isDailyUse ? useAssumptions(use) : []),
    ...(meanwhile ? meanwhileAssumptions(meanwhile) : []),
  ];
  const limitA = bank ? chargeRateC(bank, facts.ambientC) * bank.capacityAh : Number.POSITIVE_INFINITY;
  const ratedA = (values: Values, trace?: Trace): number => {
    if (!hasCharger) return 0;
    const offered = charger?.currentA ?? sourceCurrentA({ ...source, generatorW: undefined }, values, trace);
    return charger ? offered : Math.min(offered, limitA);
  };
  const plateW = generator?.powerW;
  const explored = explore<GeneratorKey>(
    unique(assumptions),
    outlet.length > 0 || hasCharger ? 'generatorPower' : 'chargeTime',
    (values, trace) => {
      const loadPower = throughWatts(loads, values, trace);
      const duty = {
        chargerA: ratedA(values, trace),
        chargeV: row.absorptionV[0] * blocks,
        loadW: loadPower,
        startW: startingW(loads, values, trace),
      };
      const generatorPower = generatorRatingW(duty, site, values, trace);
      const loadShare = plateW === undefined ? 0 : generatorPower / continuousW(plateW, values);
      const asked = { generatorPower, loadShare, loadPower };
      if (!isCharging) return { ...asked, chargeTime: 0, chargeNeeded: 0, chargeCurrent: 0 };
      const I_s = sourceCurrentA(source, values, trace);
      const chargeCurrent = meanwhile
        ? run(currentLeft, { I_s, I_l: meanwhileA(meanwhile, values, trace) }, trace)
        : I_s;
      const missing = isDailyUse ? dailyUseAh(use, values, trace) : facts.chargeNeededAh;
      const done = chargeOf({ ...charge, missingAh: missing }, chargeCurrent, values, trace);
      return {
        ...asked,
        chargeTime: done.timeH,
        chargeNeeded: done.neededAh,
        chargeCurrent: done.currentA,
      };
    },
  );
  const { generatorPower, loadPower } = explored.figures;
  return {
    ...explored,
    bank,
    ratingW: plateW,
    steadyW: plateW === undefined ? undefined : continuousW(plateW, likelyOf(assumptions)),
    sizeW: generatorSizeFor(generatorPower.value, plateW),
    hasCharger,
    isChargerAssumed: hasCharger && charger === undefined,
    isDailyUse,
    noiseDb: plateNoiseDb(noiseLimits.unitedStates),
    hasMotor: startingW(loads, likelyOf(assumptions)) > loadPower.value * 1.05,
  };
}

/** One of each name; a name means one thing. */
const unique = <T extends { readonly name: string }>(list: readonly T[]): T[] =>
  list.filter((a, i) => list.findIndex(b => b.name === a.name) === i);
