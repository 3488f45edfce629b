import { present } from '#basics/present.ts';
import { powerBankCellV } from '#rig/cell.ts';
import type { Battery, Chemistry, Facts } from '#rig/rig.ts';
import type { Assumption } from '../assumption.ts';
import { chemistryRow } from './tables.ts';

/** Batteries joined to one: what the label of the whole would say. */
export interface Bank {
  readonly capacityAh: number;
  /** Nominal: 12.0 V a lead-acid block, 12.8 V a lithium one, times the blocks in series. */
  readonly voltageV: number;
  readonly chemistry: Chemistry;
  /** Nobody said the chemistry: AGM was taken. */
  readonly isChemistryAssumed: boolean;
  /** Unlike types or sizes in one bank. */
  readonly isMixed: boolean;
  /** A power bank, whose electronics take a part of it. */
  readonly isOfCell?: boolean;
  /** A power station, whose electronics do too. */
  readonly isStation?: boolean;
  readonly count: number;
  /** How many stand in series in one string. */
  readonly inSeries?: number;
  readonly stateOfChargePercent?: number;
  /** The most it may give as told (BMS, maker's limit), A; batteries in parallel add up. */
  readonly maxCurrentA?: number;
  /** Of the oldest one told, years. */
  readonly ageYears?: number;
  /** Said to be old or tired, without its years. */
  readonly wear?: 'old' | 'tired';
  /** The share of its capacity that it has, as readings have taught. */
  readonly learnedShare?: Assumption;
}

/** Nominal volts of one battery as told ("12 V", "24 V", "6 V", "3.2 V"), by chemistry: 12 means 12.8 for lithium. */
export function nominalVoltage(voltageV: number | undefined, chemistry: Chemistry): number {
  const block = chemistryRow(chemistry).nominalV;
  if (voltageV === undefined) return block;
  if (voltageV >= 11 && Math.abs(voltageV / 12 - Math.round(voltageV / 12)) < 0.1)
    return Math.round(voltageV / 12) * block;
  const cell = chemistry === 'lfp' ? block / 4 : block / 6;
  return Math.max(1, Math.round(voltageV / cell)) * cell;
}

interface Block {
  readonly capacityAh: number;
  readonly voltageV: number;
  readonly chemistry: Chemistry;
}

const isCell = ({ voltageV, isOfCell }: Battery): boolean =>
  isOfCell === true || (voltageV !== undefined && voltageV > 3.4 && voltageV < 3.9);

/** Each battery by itself; one told in Wh becomes Ah at its nominal voltage, and so does a power bank, whose Ah are at 3.7 V. Those without a size are left out. */
const blocksOf = (batteries: readonly Battery[], chemistry: Chemistry): Block[] =>
  batteries.flatMap(b => {
    const isBank = isCell(b);
    const voltageV = nominalVoltage(isBank ? undefined : b.voltageV, b.chemistry ?? chemistry);
    const labelAh = b.capacityAh ?? (b.energyWh === undefined ? undefined : b.energyWh / voltageV);
    const capacityAh =
      isBank && b.capacityAh !== undefined ? (b.capacityAh * powerBankCellV) / voltageV : labelAh;
    return capacityAh === undefined || capacityAh <= 0
      ? []
      : Array.from({ length: b.count }, () => ({
          capacityAh,
          voltageV,
          chemistry: b.chemistry ?? chemistry,
        }));
  });

/**
 * How many of these stand in series. As told; else as many as the system's volts ask for, 12 V at least:
 * 6 V batteries and cells are always meant to be joined up.
 */
function seriesOf(blocks: readonly Block[], arrangement?: 'parallel' | 'series', systemV?: number): number {
  const [{ voltageV }] = blocks as [Block];
  if (arrangement === 'series' && systemV === undefined) return blocks.length;
  const isSmall = voltageV < 11 && arrangement === undefined;
  if (systemV === undefined && !isSmall) return 1;
  const wanted = Math.round((systemV ?? 12) / voltageV);
  const fits = wanted > 1 && blocks.length % wanted === 0;
  return fits ? wanted : arrangement === 'series' ? blocks.length : 1;
}

/**
 * The limit of all together: the same current goes through all that stand in series, strings in parallel share it, and
 * one whose limit isn't told adds nothing.
 */
function toldLimit(used: readonly Battery[], inSeries: number): Pick<Bank, 'maxCurrentA'> {
  const told = used.flatMap(b =>
    b.maxCurrentA === undefined ? [] : Array.from({ length: b.count }, () => present(b.maxCurrentA)),
  );
  if (told.length === 0) return {};
  return { maxCurrentA: Math.min(...told) * Math.max(1, told.length / inSeries) };
}

function toldAge(used: readonly Battery[]): Pick<Bank, 'ageYears'> {
  const told = used.flatMap(b => (b.ageYears === undefined ? [] : [b.ageYears]));
  return told.length === 0 ? {} : { ageYears: Math.max(...told) };
}

function toldWear(used: readonly Battery[]): Pick<Bank, 'wear'> {
  const told = used.flatMap(b => (b.wear === undefined ? [] : [b.wear]));
  return told.length === 0 ? {} : { wear: told.includes('tired') ? 'tired' : 'old' };
}

/** A single battery of a known size as a bank: one to reckon with where none was told. */
export const bankOfOne = (battery: Omit<Battery, 'count'> & { readonly capacityAh: number }): Bank =>
  present(bankOf([{ ...battery, count: 1 }]), `a size above 0 Ah, not ${battery.capacityAh}`);

/**
 * Joins batteries: in parallel Ah add, in series volts add and the smallest capacity counts.
 * A starter battery is left out where there is another. Without any Ah or Wh there is no bank.
 * @param systemVoltageV the volts the bank is for ("for my 24 V inverter"), where told
 */
export function bankOf(
  batteries: readonly Battery[],
  arrangement?: 'parallel' | 'series',
  systemVoltageV?: number,
): Bank | undefined {
  const house = batteries.filter(b => b.role !== 'starter');
  const used = house.length > 0 ? house : batteries;
  const first = used.find(b => b.chemistry !== undefined);
  const isPack = used.some(b => b.energyWh || isCell(b));
  const chemistry = first?.chemistry ?? (isPack ? 'lfp' : 'agm');
  const blocks = blocksOf(used, chemistry);
  const [one] = blocks;
  if (!one) return undefined;
  const inSeries = seriesOf(blocks, arrangement, systemVoltageV);
  const sum = (pick: (block: Block) => number) => blocks.reduce((s, b) => s + pick(b), 0);
  const smallest = Math.min(...blocks.map(b => b.capacityAh));
  return {
    capacityAh: inSeries === 1 ? sum(b => b.capacityAh) : (smallest * blocks.length) / inSeries,
    voltageV: inSeries === blocks.length ? sum(b => b.voltageV) : one.voltageV * inSeries,
    chemistry,
    isChemistryAssumed: first === undefined,
    isMixed: blocks.some(
      b => b.chemistry !== one.chemistry || b.capacityAh !== one.capacityAh || b.voltageV !== one.voltageV,
    ),
    count: blocks.length,
    ...(used.every(b => b.isOfCell) && { isOfCell: true }),
    ...(used.every(b => b.isStation) && { isStation: true }),
    inSeries,
    stateOfChargePercent: used.find(b => b.stateOfChargePercent !== undefined)?.stateOfChargePercent,
    ...toldLimit(used, inSeries),
    ...toldAge(used),
    ...toldWear(used),
  };
}

/** The bank of a rig or a question, as it is told to be joined; undefined where no size was told. */
export const bankIn = (
  facts: Pick<Facts, 'batteries' | 'arrangement' | 'systemVoltageV'>,
): Bank | undefined => bankOf(facts.batteries ?? [], facts.arrangement, facts.systemVoltageV);
