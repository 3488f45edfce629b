import { present } from '#basics/present.ts';
import { powerBankShare } from '#rig/cell.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, Values } from '../assumption.ts';
import { taken } from '../explore.ts';
import type { Bank } from './bank.ts';
import { lithiumColdFactor, rateFactor, usableCapacity } from './rules.ts';
import { chemistryRow, leadAcidCapacityByTemperature } from './tables.ts';

/** Capacity lost a year, likely, at most and at least: common practice for leisure use. */
const lostAYear = { lead: [0.04, 0.08, 0.01], lfp: [0.02, 0.03, 0.01] } as const;
/**
 * What is left of one that is called old or tired, without its years: likely, least, most. Lead-acid is at the end of its
 * life with 80 % of its capacity left (IEEE 450 and 1188); who calls one tired mostly means past that. Common practice.
 */
const leftOfWorn = { old: [0.8, 0.6, 0.95], tired: [0.65, 0.4, 0.85] } as const;
/** No battery in use has less left than this. */
const leastShare = 0.3;

/** Share of its capacity that it still has, by the years told. */
export function ageAssumption({
  chemistry,
  ageYears,
  wear,
  learnedShare,
}: Pick<Bank, 'chemistry' | 'ageYears' | 'wear' | 'learnedShare'>): Assumption {
  if (learnedShare) return learnedShare;
  if (ageYears === undefined && wear !== undefined) {
    const [value, low, high] = leftOfWorn[wear];
    return { name: 'age', value, low, high, unit: '', why: `${wear}, as you said` };
  }
  if (ageYears === undefined)
    return { name: 'age', value: 1, low: 0.9, high: 1, unit: '', why: 'healthy; an old one holds less' };
  const [value, low, high] = lostAYear[chemistry === 'lfp' ? 'lfp' : 'lead'].map(lost =>
    Math.max(leastShare, 1 - lost * ageYears),
  ) as [number, number, number];
  return { name: 'age', value, low, high, unit: '', why: `${ageYears} years old, common practice` };
}

/** The same where anything is known of its age: nothing told, and it is taken as healthy wherever that is no matter. */
export const knownAge = (
  bank: Pick<Bank, 'chemistry' | 'ageYears' | 'wear' | 'learnedShare'>,
): Assumption[] =>
  (bank.learnedShare ?? bank.ageYears ?? bank.wear) === undefined ? [] : [ageAssumption(bank)];

/** Share of a power bank's label that comes out at its socket: likely, low, high. Common practice. */
const powerBankShares = [powerBankShare, 0.8, 0.9] as const;

/** Share of a power station's Wh that its sockets give; a mains inverter's losses come on top. Common practice. */
const stationShares = [0.9, 0.85, 0.95] as const;

/** What comes out of a pack that counts its own per cent, as its electronics take the rest: share, and how it is named. */
const packOf = ({ isOfCell, isStation }: Pick<Bank, 'isOfCell' | 'isStation'>) =>
  isOfCell
    ? ({ shares: powerBankShares, named: 'a power bank' } as const)
    : isStation
      ? ({ shares: stationShares, named: 'a power station, less its losses' } as const)
      : undefined;

/** How deep a bank may still go from a level: a pack's losses are a share of what is left, what is held back is not. */
export function depthFrom(
  bank: Pick<Bank, 'isOfCell' | 'isStation'>,
  depth: number,
  percent: number,
): number {
  return packOf(bank) ? (depth * percent) / 100 : Math.max(0, depth - (1 - percent / 100));
}

/**
 * What has to be taken for granted of a bank: how deep it may go, its Peukert exponent, its age.
 * A depth that the person said (percent) is taken as said.
 * @param temperature of the battery, where it has to be taken (`temperature.ts`)
 */
export function bankAssumptions(
  bank: Pick<
    Bank,
    'chemistry' | 'isChemistryAssumed' | 'ageYears' | 'wear' | 'learnedShare' | 'isOfCell' | 'isStation'
  >,
  depthPercent?: number,
  temperature?: Assumption,
): Assumption[] {
  const row = chemistryRow(bank.chemistry);
  const pack = packOf(bank);
  const [value, low, high] = pack?.shares ?? row.depth;
  const [k, kLow, kHigh] = row.peukert;
  const named = pack?.named ?? (bank.isChemistryAssumed ? `${row.name}, as you didn't say` : row.name);
  const said = depthPercent === undefined ? undefined : depthPercent / 100;
  return [
    {
      name: 'depthOfDischarge',
      value: said ?? value,
      low: said ?? low,
      high: said ?? high,
      unit: '',
      why: said === undefined ? `${named}, common practice` : 'as you said',
    },
    {
      name: 'peukertExponent',
      value: k,
      low: kLow,
      high: kHigh,
      unit: '',
      why: `${row.name}, textbook range`,
    },
    ageAssumption(bank),
    ...(temperature ? [temperature] : []),
  ];
}

/**
 * Share of the rated capacity at a battery temperature (°C): lead-acid by IEEE 485, lithium about 1 % a degree
 * below 15 °C (common practice). Never more than the label. At 25 °C nothing changes and nothing is noted.
 */
export function temperatureFactor(bank: Pick<Bank, 'chemistry'>, temperatureC = 25, trace?: Trace): number {
  if (bank.chemistry === 'lfp')
    return run(
      lithiumColdFactor,
      { T_15: 15, T: temperatureC, T_100: 100 },
      temperatureC < 15 ? trace : undefined,
    );
  const factor = sizeFactorAt(temperatureC);
  const share = Math.min(1, 1 / factor);
  if (share < 1)
    trace?.lookup({
      name: 'temperatureFactor',
      says: `k_temp = 1 ÷ ${Math.round(factor * 1000) / 1000}, the size factor at ${Math.round(temperatureC)} °C`,
      value: share,
      unit: '',
      source: 'IEEE 485 table 1',
    });
  return share;
}

/** IEEE 485 cell size factor at a temperature (°C), between the rows; the ends hold beyond the table. */
export function sizeFactorAt(temperatureC: number): number {
  let before: (typeof leadAcidCapacityByTemperature)[number] | undefined;
  for (const row of leadAcidCapacityByTemperature) {
    if (row[0] >= temperatureC)
      return before
        ? before[1] + ((row[1] - before[1]) * (temperatureC - before[0])) / (row[0] - before[0])
        : row[1];
    before = row;
  }
  return present(before, 'a row of capacity by temperature')[1];
}

/**
 * Usable capacity (Ah) of a bank from full, at a running current (A) and a battery temperature (°C; as assumed, else 25).
 * Never more than the label.
 */
export function usableCapacityAh(
  input: {
    readonly bank: Bank;
    readonly currentA: number;
    readonly temperatureC?: number;
    /** Share of it that is asked for, where not as deep as it may go. */
    readonly share?: number;
  },
  values: Values,
  trace?: Trace,
): number {
  const { bank } = input;
  const H = chemistryRow(bank.chemistry).ratedHours;
  const k_rate =
    input.currentA > 0
      ? run(
          rateFactor,
          { C: bank.capacityAh, I: input.currentA, H, k: taken(values, 'peukertExponent') },
          trace,
        )
      : 1;
  const k_temp = temperatureFactor(bank, input.temperatureC ?? values.batteryTemperature, trace);
  return run(
    usableCapacity,
    {
      C: bank.capacityAh,
      DoD: input.share ?? taken(values, 'depthOfDischarge'),
      k_rate,
      k_temp,
      k_age: taken(values, 'age'),
    },
    trace,
  );
}
