import type { Assumption } from '#quantity/range.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Bank } from '../battery/bank.ts';
import { chargeRateC } from '../battery/limits.ts';
import { chemistryRow } from '../battery/tables.ts';
import { taken, type Values } from '../explore.ts';
import { type Filling, fillTimeH, missingAfterH } from './fill.ts';
import {
  chargeMissing,
  chargeToPutIn,
  chargingCurrent,
  converterInput,
  steadyTime,
  voltageAtTemperature,
} from './rules.ts';
import { chargeRow, dcdc, flatPercent, isolatorSlowness, voltageCompensation } from './tables.ts';

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
  readonly temperatureC?: number;
}

/** A bank (Ah) to reckon with where none was told: two and a half times what is missing, 100 Ah at least. */
export const guessedBankAh = (missingAh: number): number =>
  Math.max(100, Math.ceil((2.5 * missingAh) / 10) * 10);

const named = (
  name: string,
  [value, low, high]: readonly [number, number, number],
  why: string,
  unit = '',
): Assumption => ({ name, value, low, high, unit, why });

/** Only an amount to put back was told: nobody says that it fills the battery to the brim. */
const isPutBack = (charge: Charge): boolean =>
  charge.isSizeAssumed && charge.missingAh !== undefined && charge.targetPercent === undefined;

/** What is taken for granted of a battery on charge. */
export function chargeAssumptions(charge: Charge): Assumption[] {
  const { bank, targetPercent = 100 } = charge;
  const row = chargeRow(bank.chemistry);
  const kind = chemistryRow(bank.chemistry).name;
  const whose = bank.isChemistryAssumed ? `${kind} taken, as you didn't say` : kind;
  const isLow = targetPercent <= 80;
  const slow = charge.isIsolator ? isolatorSlowness : 1;
  const [tau, tauLow, tauHigh] = row.timeConstantH;
  const found = [
    named(
      'chargeEfficiency',
      isLow ? row.efficiencyBelow80 : row.efficiency,
      isLow && bank.chemistry !== 'lfp' ? `${whose}, high below 80 %` : whose,
    ),
    named(
      'timeConstant',
      [tau * slow, tauLow * slow, tauHigh * slow],
      charge.isIsolator ? `${kind} on an alternator's lower voltage` : `how fast ${kind} takes its last part`,
      'h',
    ),
    named('fullAt', row.fullAt, 'where chargers call it full'),
  ];
  if (bank.stateOfChargePercent === undefined && charge.missingAh === undefined)
    found.push(
      charge.isFlat
        ? named('stateOfCharge', flatPercent, 'flat, as you said', '%')
        : named('stateOfCharge', row.usualStart, `${whose}: about as low as it is taken`, '%'),
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
function putBackH(filling: Filling, endAh: number, neededAh: number, values: Values, trace?: Trace): number {
  if (filling.currentA <= 0) return Number.POSITIVE_INFINITY;
  const steadyH = run(steadyTime, { Q_in: neededAh, I: filling.currentA }, trace);
  const toBrimH = fillTimeH(filling, endAh);
  if (!(steadyH < toBrimH)) return toBrimH;
  return steadyH + taken(values, 'slowPart') * (toBrimH - steadyH);
}

/** How long a source that offers `sourceA` charges a battery, and what it gets to. */
export function chargeOf(charge: Charge, sourceA: number, values: Values, trace?: Trace): Charged {
  const { bank } = charge;
  const C = values.batteryCapacity ?? bank.capacityAh;
  const full = taken(values, 'fullAt');
  const s_1 = Math.min(1, (charge.targetPercent ?? 100) / 100);
  const { s_0, Q_m } = missingOf(charge, C, s_1, values, trace);
  const eta_c = taken(values, 'chargeEfficiency');
  const neededAh = run(chargeToPutIn, { Q_m, eta_c }, trace);
  const tau = taken(values, 'timeConstant');
  const m_0 = (1 - s_0) * C;
  const I_c = chargeRateC(bank, charge.temperatureC) * C;
  const filling: Filling = {
    missingAh: m_0,
    currentA: Math.min(sourceA, I_c),
    timeConstantH: tau,
    efficiency: eta_c,
  };
  const currentA = run(chargingCurrent, { I_s: sourceA, I_c, m: m_0, tau }, trace);
  const end = (share: number): number => (1 - Math.min(share, full)) * C;
  return {
    timeH: isPutBack(charge)
      ? putBackH(filling, end(s_1), neededAh, values, trace)
      : fillTimeH(filling, end(s_1), trace),
    timeTo80H: fillTimeH(filling, end(Math.min(s_1, 0.8))),
    neededAh,
    startPercent: 100 * s_0,
    currentA,
    percentAfter: hours => 100 * (1 - missingAfterH(filling, hours) / C),
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

/** Absorption voltage (V) of a lead-acid bank at its temperature (°C); lithium has none to change. */
export function absorptionVoltage(bank: Bank, temperatureC = 25, trace?: Trace): number {
  const blocks = bank.voltageV / chemistryRow(bank.chemistry).nominalV;
  const [V_25] = chargeRow(bank.chemistry).absorptionV;
  if (bank.chemistry === 'lfp') return V_25 * blocks;
  const k_V = voltageCompensation.perK * blocks;
  return run(voltageAtTemperature, { V_25: V_25 * blocks, k_V, T: temperatureC, T_25: 25 }, trace);
}
