import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, AssumptionName, Values } from '../assumption.ts';
import type { Bank } from '../battery/bank.ts';
import { chargingCurrent, steadyTime } from '../battery/charge-rules.ts';
import { chargeRow, flatPercent } from '../battery/charge-table.ts';
import {
  type Charging,
  chargingOf,
  storageAssumptions,
  timeConstantAssumption,
} from '../battery/charging.ts';
import { fillTimeH, missingAfterH, putInAh } from '../battery/fill.ts';
import { chemistryRow } from '../battery/tables.ts';
import { knownAge } from '../battery/usable.ts';
import { taken } from '../explore.ts';
import { chargeMissing, converterInput } from './rules.ts';
import { dcdc } from './tables.ts';

/** What is to be charged, and how far. */
export interface Charge {
  readonly bank: Bank;
  /** Nobody told a size: the bank's is a guess that may move by this factor down and up. */
  readonly isSizeAssumed: boolean;
  /** Charge missing as told, Ah; else it follows from the state of charge. */
  readonly missingAh?: number;
  /** Wanted state of charge, %; absent: full. */
  readonly targetPercent?: number;
  readonly isIsolator: boolean;
  /** Said to be flat, without a figure. */
  readonly isFlat?: boolean;
  /** State of charge, %, by volts that were read; where it wasn't told. */
  readonly level?: Assumption;
  /** Of the battery, °C, where told; else as it has to be taken. */
  readonly temperatureC?: number;
  readonly temperature?: Assumption;
}

/** A bank (Ah) to reckon with where none was told: two and a half times what is missing, 100 Ah at least. */
export const guessedBankAh = (missingAh: number): number =>
  Math.max(100, Math.ceil((2.5 * missingAh) / 10) * 10);

const named = (
  name: AssumptionName,
  [value, low, high]: readonly [number, number, number],
  why: string,
  unit = '',
): Assumption => ({ name, value, low, high, unit, why });

/** Else an amount is put back somewhere below the brim: as far below as chargers stop. */
const isLevelTold = ({ bank, targetPercent }: Charge): boolean =>
  bank.stateOfChargePercent !== undefined || targetPercent !== undefined;

/** Only an amount to put back was told: nobody says that it fills the battery to the brim. */
const isPutBack = (charge: Charge): boolean =>
  charge.isSizeAssumed && charge.missingAh !== undefined && charge.targetPercent === undefined;

/** Its temperature, where nobody told it: lithium that is charged at all is charged above freezing. */
function temperatureOf({ temperature, temperatureC, bank }: Charge): Assumption[] {
  if (!temperature || temperatureC !== undefined) return [];
  if (bank.chemistry !== 'lfp') return [temperature];
  const { value, low, high } = temperature;
  return [{ ...temperature, value: Math.max(0, value), low: Math.max(0, low), high: Math.max(0, high) }];
}

/** What is taken for granted of a battery on charge. */
export function chargeAssumptions(charge: Charge): Assumption[] {
  const { bank } = charge;
  const row = chargeRow(bank.chemistry);
  const kind = chemistryRow(bank.chemistry).name;
  const whose = bank.isChemistryAssumed ? `${kind}, as you didn't say` : kind;
  const isToTop = (charge.targetPercent ?? 100) > 100 * row.topFrom;
  const found = [
    ...storageAssumptions(bank.chemistry, bank.isChemistryAssumed).filter(
      a => isToTop || a.name !== 'topEfficiency',
    ),
    timeConstantAssumption(bank.chemistry, charge.isIsolator),
    named('fullAt', row.fullAt, 'where chargers call it full'),
    ...knownAge(bank),
    ...temperatureOf(charge),
  ];
  if (bank.stateOfChargePercent === undefined && charge.missingAh === undefined)
    found.push(
      charge.level ??
        (charge.isFlat
          ? named('stateOfCharge', flatPercent, 'flat, as you said', '%')
          : named('stateOfCharge', row.usualStart, `${whose}: about as low as it is taken`, '%')),
    );
  if (charge.isSizeAssumed) {
    const size = bank.capacityAh;
    found.push(named('batteryCapacity', [size, 0.8 * size, 2 * size], 'as you named no size', 'Ah'));
    if (isPutBack(charge))
      found.push(
        named('slowPart', [0, 0, 1], 'as you put a number back, not the last of it; to the brim is slower'),
      );
  }
  return found;
}

/** A charge worked out. */
export interface Charged {
  readonly timeH: number;
  /** To 80 %, or to the target where that is lower. */
  readonly timeTo80H: number;
  /** Ah that have to be put in at the terminals. */
  readonly neededAh: number;
  /** State of charge at the start, %. */
  readonly startPercent: number;
  /** Current at the start, A. */
  readonly currentA: number;
  /** State of charge after some hours, %. */
  readonly percentAfter: (hours: number) => number;
}

/** Hours to put an amount back: the steady part, and of the slow one the share that is assumed. */
function putBackH(
  neededAh: number,
  currentA: number,
  toBrimH: number,
  values: Values,
  trace?: Trace,
): number {
  if (currentA <= 0) return Number.POSITIVE_INFINITY;
  const steadyH = run(steadyTime, { Q_in: neededAh, I: currentA }, trace);
  if (!(steadyH < toBrimH)) return toBrimH;
  return steadyH + taken(values, 'slowPart') * (toBrimH - steadyH);
}

/** How long a source that offers `sourceA` charges a battery, and what it gets to. */
export function chargeOf(charge: Charge, sourceA: number, values: Values, trace?: Trace): Charged {
  const { bank } = charge;
  const label = { ...bank, capacityAh: values.batteryCapacity ?? bank.capacityAh };
  const site = { temperatureC: charge.temperatureC, isIsolator: charge.isIsolator };
  const battery: Charging = chargingOf(label, site, values);
  const C = battery.capacityAh;
  const full = taken(values, 'fullAt');
  const s_1 = Math.min(1, (charge.targetPercent ?? 100) / 100);
  const { s_0, Q_m } = missingOf(charge, C, s_1, values, trace);
  const from = (1 - s_0) * C;
  const end = (share: number): number => (1 - Math.min(share, full)) * C;
  // Full is where chargers call it full, for the charge as for the time; an amount that was told goes in whole.
  // Lithium takes its last half per cent in minutes: it goes in whole too.
  const isWhole = charge.missingAh !== undefined || bank.chemistry === 'lfp';
  const to = isWhole && isLevelTold(charge) ? (1 - s_1) * C : end(s_1);
  const neededAh = putInAh(battery, isWhole ? to + Q_m : from, to, trace);
  const currentA = run(
    chargingCurrent,
    { I_s: sourceA, I_c: battery.limitA, m: from, tau: battery.timeConstantH },
    trace,
  );
  const steadyA = Math.min(sourceA, battery.limitA);
  const timeH = fillTimeH(battery, from, end(s_1), sourceA, isPutBack(charge) ? undefined : trace);
  return {
    timeH: isPutBack(charge) ? putBackH(neededAh, steadyA, timeH, values, trace) : timeH,
    timeTo80H: fillTimeH(battery, from, end(Math.min(s_1, 0.8)), sourceA),
    neededAh,
    startPercent: 100 * s_0,
    currentA,
    percentAfter: hours => 100 * (1 - missingAfterH(battery, from, sourceA, hours) / C),
  };
}

/** The charge missing to the target, Ah, and the state of charge it starts from. */
function missingOf(
  charge: Charge,
  C: number,
  s_1: number,
  values: Values,
  trace?: Trace,
): { readonly s_0: number; readonly Q_m: number } {
  const percent = charge.bank.stateOfChargePercent;
  if (charge.missingAh !== undefined) {
    const s_0 = Math.max(0, percent === undefined ? s_1 - charge.missingAh / C : percent / 100);
    return { s_0, Q_m: charge.missingAh };
  }
  const s_0 = (percent ?? taken(values, 'stateOfCharge')) / 100;
  return { s_0, Q_m: run(chargeMissing, { C, s_1: Math.max(s_0, s_1), s_0 }, trace) };
}

/** Current (A) that a DC-DC charger takes from the vehicle to give `outA`, at the likely voltage and efficiency. */
export function dcdcInputA(
  outA: number,
  trace?: Trace,
  at: { readonly eta?: number; readonly V_i?: number; readonly V_o?: number } = {},
): number {
  const { eta = dcdc.efficiency[0], V_i = dcdc.inV[0], V_o = dcdc.outV } = at;
  return run(converterInput, { I: outA, V_o, eta, V_i }, trace);
}
