import type { Bank } from '#engine/battery/bank.ts';
import { storageAssumptions } from '#engine/battery/charging.ts';
import { limitsOf } from '#engine/battery/limits.ts';
import { bankAssumptions } from '#engine/battery/usable.ts';
import { dropOn } from '#engine/cable/choose.ts';
import { type Circuit, circuitAssumptions, circuitCurrents, circuitUseOf } from '#engine/cable/circuit.ts';
import { conductorAssumptions, conductorOf, conductorsSold } from '#engine/cable/conductor.ts';
import { dropLimits } from '#engine/cable/tables.ts';
import { dcdcSizeFor, recommendPath } from '#engine/charging/path.ts';
import { type Explored, explore } from '#engine/explore.ts';
import { batteryCurrentA, fitsRating, inverterFor, loadedVoltage } from '#engine/inverter/check.ts';
import { inverterEfficiency } from '#engine/inverter/efficiency.ts';
import { startingW, throughWatts, wattsAssumptions } from '#engine/inverter/watts.ts';
import { exploreRunTime } from '#engine/loads/lasting.ts';
import { dailyUseAh, useAssumptions, usePerLoad } from '#engine/loads/model.ts';
import { isWhole } from '#engine/loads/reading.ts';
import { dailyYield, panelPowerFor, solarAssumptions, storedOf } from '#engine/solar/model.ts';
import type { Facts } from '#rig/rig.ts';
import { batteryAir } from '../battery-air.ts';
import type { Setting } from '../intent.ts';
import { bankFor } from '../learned.ts';
import { panelsW, sunOf } from '../sun.ts';
import { useOf } from '../use.ts';

/** A part of a rig as far as it was checked. */
export type Part = 'battery' | 'solar' | 'inverter' | 'battery-current' | 'charger' | 'isolator' | 'cable';

export interface Link {
  readonly part: Part;
  /** What there is against what is asked of it: 1 just does. */
  readonly share: number;
  /** The figure that shows it, and what it should be, in its unit. */
  readonly name: 'runTime' | 'dailyYield' | 'acLoad' | 'batteryCurrent' | 'chargerCurrent' | 'voltageDrop';
  readonly unit: string;
  readonly explored: Explored<'figure'>;
  readonly wanted: number;
  /** The size that would mend it, in the unit that the thing is sold by. */
  readonly mend?: number;
}

export interface RigCheck {
  /** Weakest first. */
  readonly links: readonly [Link, ...Link[]];
  readonly bank: Bank;
  /** The load that takes most a day, and its Ah. */
  readonly biggest?: { readonly name: string; readonly chargeAh: number };
  readonly dailyUse: number;
}

type At = Pick<Setting, 'at' | 'mainsV'>;

/** What a battery should carry with nothing coming in, h: a day where something charges it, two where not. Common practice. */
const autonomyH = { charged: 24, alone: 48 } as const;
/** A charger of less than this share of the Ah, A, is slow. Common practice. */
const leastChargeC = 0.1;

const single = (found: Explored<string>, key: string): Explored<'figure'> => ({
  figures: { figure: found.figures[key]! },
  ranked: found.ranked,
  trace: found.trace,
});

function batteryLink(facts: Facts, bank: Bank, { at, mainsV }: At): Link {
  const found = exploreRunTime({
    bank,
    use: useOf(facts, bank.voltageV, mainsV, at),
    assumptions: bankAssumptions(bank, undefined, batteryAir(facts, at)),
    temperatureC: facts.ambientC,
  });
  const isCharged = !!facts.solar?.length || !!facts.chargers?.length;
  const wanted = isCharged ? autonomyH.charged : autonomyH.alone;
  const share = found.figures.runTime.value / wanted;
  const mend = share > 0 ? bank.capacityAh / share : undefined;
  return {
    part: 'battery',
    share,
    name: 'runTime',
    unit: 'h',
    explored: single(found, 'runTime'),
    wanted,
    mend,
  };
}

function solarLink(facts: Facts, bank: Bank, setting: At): Link | undefined {
  const powerW = panelsW(facts);
  if (powerW === undefined) return undefined;
  const sun = sunOf(facts, setting.at);
  const use = useOf(facts, bank.voltageV, setting.mainsV, setting.at);
  const panel = { ...sun, powerW, nominalVoltageV: bank.voltageV, chemistry: bank.chemistry };
  const assumptions = [
    ...solarAssumptions(sun),
    ...storageAssumptions(bank.chemistry, bank.isChemistryAssumed),
    ...useAssumptions(use),
  ];
  const explored = explore<'figure'>(assumptions, 'figure', (values, trace) => ({
    figure: dailyYield(panel, values, trace).dailyYieldAh,
  }));
  const likely = Object.fromEntries(assumptions.map(a => [a.name, a.value]));
  const used = dailyUseAh(use, likely);
  const wanted = used / storedOf(1, panel, likely);
  const { panelPowerW } = panelPowerFor(used, panel, likely);
  const share = wanted > 0 ? explored.figures.figure.value / wanted : Number.POSITIVE_INFINITY;
  return { part: 'solar', share, name: 'dailyYield', unit: 'Ah', explored, wanted, mend: panelPowerW };
}

function inverterLinks(facts: Facts, bank: Bank, { mainsV }: At): Link[] {
  const loads = facts.loads?.filter(load => load.supply === 'ac' && !isWhole(load)) ?? [];
  const ratingW = facts.inverter?.powerW;
  if (loads.length === 0 || ratingW === undefined) return [];
  const outlet = { loads, mainsV };
  const assumptions = [
    ...wattsAssumptions(outlet),
    inverterEfficiency,
    loadedVoltage(bank.voltageV, bank.isChemistryAssumed ? undefined : bank.chemistry === 'lfp'),
  ];
  const found = explore<'acLoad' | 'batteryCurrent'>(assumptions, 'batteryCurrent', (values, trace) => {
    const acLoad = throughWatts(outlet, values, trace);
    return { acLoad, batteryCurrent: batteryCurrentA(acLoad, ratingW, values, trace) };
  });
  const likely = Object.fromEntries(assumptions.map(a => [a.name, a.value]));
  const { acLoad, batteryCurrent } = found.figures;
  const limitA =
    facts.batteries?.find(b => b.maxCurrentA)?.maxCurrentA ?? limitsOf(bank, facts.ambientC).dischargeA;
  const isOver = fitsRating(acLoad.value, ratingW) === 'no';
  return [
    {
      part: 'inverter',
      share: ratingW / acLoad.value,
      name: 'acLoad',
      unit: 'W',
      explored: single(found, 'acLoad'),
      wanted: ratingW,
      mend: isOver ? inverterFor(acLoad.value, startingW(outlet, likely)) : undefined,
    },
    {
      part: 'battery-current',
      share: limitA / batteryCurrent.value,
      name: 'batteryCurrent',
      unit: 'A',
      explored: single(found, 'batteryCurrent'),
      wanted: limitA,
    },
  ];
}

function chargerLink(facts: Facts, bank: Bank): Link | undefined {
  const charger = facts.chargers?.find(c => c.kind !== 'generator' && c.currentA !== undefined);
  const isolator = facts.chargers?.find(c => c.kind === 'isolator');
  const about = { house: bank.isChemistryAssumed ? undefined : bank.chemistry, alternator: facts.alternator };
  const constant = (value: number): Explored<'figure'> => explore([], 'figure', () => ({ figure: value }));
  const sizeA = dcdcSizeFor(bank);
  // An isolator is no good on a smart alternator or with lithium, however large.
  const isWrong =
    (about.house === 'lfp' || about.alternator === 'smart') && recommendPath(about).recommendation === 'dcdc';
  if (isolator && isWrong)
    return {
      part: 'isolator',
      share: 0.5,
      name: 'chargerCurrent',
      unit: 'A',
      explored: constant(sizeA),
      wanted: sizeA,
      mend: sizeA,
    };
  if (!charger || charger.kind === 'isolator') return undefined;
  const wanted = leastChargeC * bank.capacityAh;
  return {
    part: 'charger',
    share: charger.currentA! / wanted,
    name: 'chargerCurrent',
    unit: 'A',
    explored: constant(charger.currentA!),
    wanted,
    mend: sizeA,
  };
}

/** The next size sold, mm². */
const soldFrom = (areaMm2: number): number =>
  (conductorsSold('metric').find(sold => sold.areaMm2 >= areaMm2) ?? conductorsSold('metric').at(-1)!)
    .areaMm2;

function cableLink(facts: Facts, bank: Bank, { mainsV }: At): Link | undefined {
  const conductor = conductorOf(facts.cable);
  const lengthM = facts.cable?.lengthM;
  if (!conductor || lengthM === undefined) return undefined;
  const kind = facts.cable?.currentA === undefined ? 'loads' : 'told';
  const use = circuitUseOf(kind, facts);
  const voltageV = bank.voltageV > 18 ? 24 : 12;
  const circuit: Circuit = { kind, use, facts, voltageV, mainsV };
  const assumptions = [...conductorAssumptions(conductor), ...circuitAssumptions(circuit)];
  const oneWayM = facts.cable?.isRoundTrip ? lengthM / 2 : lengthM;
  const explored = explore<'figure'>(assumptions, 'figure', (values, trace) => {
    const { cableA, continuousA } = circuitCurrents(circuit, values, trace);
    return {
      figure: dropOn(conductor, { lengthM: oneWayM, currentA: cableA, continuousA, voltageV }, values, trace)
        .dropV,
    };
  });
  const wanted = (dropLimits[use].value / 100) * voltageV;
  const lost = explored.figures.figure.value;
  const share = lost > 0 ? wanted / lost : Number.POSITIVE_INFINITY;
  return {
    part: 'cable',
    share,
    name: 'voltageDrop',
    unit: 'V',
    explored,
    wanted,
    mend: soldFrom(conductor.areaMm2 / share),
  };
}

/** Each part of a rig against what is asked of it, the weakest first. */
export function computeRigCheck(facts: Facts, setting: At): RigCheck {
  const bank = bankFor(facts)!;
  const others = [
    solarLink(facts, bank, setting),
    ...inverterLinks(facts, bank, setting),
    chargerLink(facts, bank),
    cableLink(facts, bank, setting),
  ].filter(link => link !== undefined);
  const [first, ...rest] = [batteryLink(facts, bank, setting), ...others].sort(
    (a, b) => a.share - b.share,
  ) as [Link, ...Link[]];
  const use = useOf(facts, bank.voltageV, setting.mainsV, setting.at);
  const likely = Object.fromEntries(useAssumptions(use).map(a => [a.name, a.value]));
  const each = usePerLoad(use, likely).sort((a, b) => b.chargeAh - a.chargeAh);
  return {
    links: [first, ...rest],
    bank,
    biggest: each[0] && { name: each[0].load.name, chargeAh: each[0].chargeAh },
    dailyUse: dailyUseAh(use, likely),
  };
}
