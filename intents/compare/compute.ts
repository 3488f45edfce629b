import { present } from '#basics/present.ts';
import { bankIn, bankOfOne } from '#engine/battery/bank.ts';
import { chargeRow } from '#engine/battery/charge-table.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import { bankAssumptions, usableCapacityAh } from '#engine/battery/usable.ts';
import { type Charge, chargeAssumptions, chargeOf, guessedBankAh } from '#engine/charging/charge.ts';
import { type Source, sourceAssumptions, sourceCurrentA } from '#engine/charging/source.ts';
import { type Explored, explore } from '#engine/explore.ts';
import { exploreRunTime } from '#engine/loads/lasting.ts';
import { dailyUseAh, useAssumptions } from '#engine/loads/model.ts';
import { dailyYield, solarAssumptions } from '#engine/solar/model.ts';
import type { Range } from '#quantity/range.ts';
import type { Charger, Chemistry, Facts } from '#rig/rig.ts';
import { weightKg } from '../agm-or-lithium.ts';
import { batteryAir } from '../battery-air.ts';
import type { RequestContext } from '../intent.ts';
import { panelsW, sunOf } from '../sun.ts';
import { useOf } from '../use.ts';
import { dayUse } from '../weighed.ts';
import type { Measure, Pairing, Side } from './sides.ts';

export interface Measured extends Side {
  readonly found: Explored<'figure'>;
  readonly chemistry?: Chemistry;
  /** Of batteries, kg. */
  readonly weightKg?: number;
}

export interface Comparison {
  readonly measure: Measure;
  readonly unit: string;
  /** As told. */
  readonly sides: readonly Measured[];
  /** The better one first. */
  readonly ranked: readonly Measured[];
  /** The better one's figure less the next one's. */
  readonly difference: Range;
  /** A day's use, Ah, where it is known. */
  readonly usedAh?: number;
}

/** Hours a day that a charger runs where nobody said, h. Common practice: a day's drive. */
const usualHours = 2;

type At = Pick<RequestContext, 'at' | 'mainsV'>;

function sourceOf(facts: Facts, charger: Charger, bank: Charge['bank']): Source {
  return {
    kind: charger.kind,
    currentA: charger.currentA,
    powerW: charger.powerW,
    alternator: facts.alternator,
    row: chargeRow(bank.chemistry),
    blocks: Math.max(1, Math.round(bank.voltageV / chemistryRow(bank.chemistry).nominalV)),
  };
}

/** Battery to reckon with where none was told. */
const usualBank = () => bankOfOne({ capacityAh: guessedBankAh(0), chemistry: 'agm' });

const one = (
  assumptions: Parameters<typeof explore>[0],
  compute: (...args: Parameters<Parameters<typeof explore<'figure'>>[2]>) => number,
): Explored<'figure'> =>
  explore(assumptions, 'figure', (values, trace) => ({ figure: compute(values, trace) }));

const runTime = (facts: Facts, { at, mainsV }: At): Explored<'figure'> => {
  const bank = present(bankIn(facts));
  const use = { ...useOf(facts, bank.voltageV, mainsV, at), doesMainsRunOn: true };
  const { figures, ranked, trace } = exploreRunTime({
    bank,
    use,
    assumptions: bankAssumptions(bank, facts.depthOfDischargePercent, batteryAir(facts, at)),
    temperatureC: facts.ambientC,
  });
  return { figures: { figure: figures.runTime }, ranked, trace };
};

const usable = (facts: Facts): Explored<'figure'> => {
  const bank = present(bankIn(facts));
  return one(bankAssumptions(bank, facts.depthOfDischargePercent), (values, trace) =>
    usableCapacityAh({ bank, currentA: 0, temperatureC: facts.ambientC }, values, trace),
  );
};

const madeADay = (facts: Facts, { at }: At): Explored<'figure'> => {
  const sun = sunOf(facts, at);
  const panel = {
    ...sun,
    powerW: present(panelsW(facts)),
    nominalVoltageV: (facts.systemVoltageV ?? 12) > 18 ? 24 : 12,
  };
  return one(solarAssumptions(sun), (values, trace) => dailyYield(panel, values, trace).dailyYieldAh);
};

const useADay = (facts: Facts, { at, mainsV }: At): Explored<'figure'> => {
  const use = useOf(facts, (facts.systemVoltageV ?? 12) > 18 ? 24 : 12, mainsV, at);
  return one(useAssumptions(use), (values, trace) => dailyUseAh(use, values, trace));
};

function chargeTime(facts: Facts, { at }: At): Explored<'figure'> {
  const known = bankIn(facts);
  const bank = known ?? usualBank();
  const charge: Charge = {
    bank,
    isSizeAssumed: !known,
    targetPercent: facts.targetChargePercent,
    missingAh: facts.chargeNeededAh,
    isIsolator: present(present(facts.chargers)[0]).kind === 'isolator',
    temperatureC: facts.ambientC,
    temperature: batteryAir(facts, at),
  };
  const source = sourceOf(facts, present(present(facts.chargers)[0]), bank);
  return one(
    [...sourceAssumptions(source), ...chargeAssumptions(charge)],
    (values, trace) => chargeOf(charge, sourceCurrentA(source, values, trace), values, trace).timeH,
  );
}

/** Ah that a thing brings: a panel or a charger in a day, a battery once. */
function gain({ facts, brings }: Side, setting: At): Explored<'figure'> {
  if (brings === 'panel') return madeADay(facts, setting);
  if (brings === 'battery') return usable(facts);
  const source = sourceOf(
    facts,
    present(present(facts.chargers).find(c => c.currentA !== undefined)),
    bankIn(facts) ?? usualBank(),
  );
  const hours = facts.drivingHoursPerDay ?? usualHours;
  return one(sourceAssumptions(source), (values, trace) => sourceCurrentA(source, values, trace) * hours);
}

const measureOf: Readonly<Record<Measure, (side: Side, setting: At) => Explored<'figure'>>> = {
  runTime: (side, setting) => runTime(side.facts, setting),
  usableCapacity: side => usable(side.facts),
  dailyYield: (side, setting) => madeADay(side.facts, setting),
  chargeTime: (side, setting) => chargeTime(side.facts, setting),
  dailyUse: (side, setting) => useADay(side.facts, setting),
  gain,
};

/** Measures where less is better. */
const isLess: ReadonlySet<Measure> = new Set(['chargeTime', 'dailyUse']);
const units: Readonly<Record<Measure, string>> = {
  runTime: 'h',
  usableCapacity: 'Ah',
  dailyYield: 'Ah',
  chargeTime: 'h',
  dailyUse: 'Ah',
  gain: 'Ah',
};

function weightOf(facts: Facts): number | undefined {
  const bank = facts.batteries?.length === 1 ? bankIn(facts) : undefined;
  return bank && !bank.isChemistryAssumed ? weightKg(bank) : undefined;
}

/** The figure of each side, the better first, and what lies between the first two. */
export function computeComparison({ measure, sides }: Pairing, setting: At): Comparison {
  const measured = sides.map(side => ({
    ...side,
    found: measureOf[measure](side, setting),
    chemistry: side.facts.batteries?.[0]?.chemistry,
    weightKg: weightOf(side.facts),
  }));
  const value = ({ found }: Measured): number => found.figures.figure.value;
  const sign = isLess.has(measure) ? 1 : -1;
  const ranked = [...measured].sort((a, b) => sign * (value(a) - value(b)));
  const [first, second] = ranked.map(({ found }) => found.figures.figure) as [Range, Range];
  const [more, less] = first.value >= second.value ? [first, second] : [second, first];
  return {
    measure,
    usedAh: measure === 'gain' ? dayUse({ facts: present(sides[0]).facts, ...setting }) : undefined,
    unit: units[measure],
    sides: measured,
    ranked,
    difference: { value: more.value - less.value, low: more.low - less.high, high: more.high - less.low },
  };
}
