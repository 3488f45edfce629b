import { present } from '#basics/present.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Bank } from './bank.ts';
import { blockResistance, voltageUnderLoad } from './rules.ts';
import { chemistryRow, lithiumChargeByTemperature, lithiumDischargeByTemperature } from './tables.ts';
import { temperatureFactor } from './usable.ts';

/** What a bank stands, A. */
export interface Limits {
  readonly dischargeA: number;
  /** For seconds. */
  readonly surgeA: number;
  readonly chargeA: number;
}

/** Share of capacity (C, per hour) a battery may be charged at, at a temperature of its own (°C): none below freezing for lithium. */
export function chargeRateC(bank: Pick<Bank, 'chemistry'>, temperatureC = 25): number {
  const row = chemistryRow(bank.chemistry);
  if (bank.chemistry !== 'lfp') return row.chargeC;
  const [, share] = present(lithiumChargeByTemperature.find(([belowC]) => temperatureC < belowC));
  return Math.min(row.chargeC, share);
}

/** Share of its discharge current that a battery gives at its temperature (°C): lead-acid as it does of its capacity, lithium by its cells' sheets. */
function coldShare(bank: Pick<Bank, 'chemistry'>, temperatureC: number): number {
  if (bank.chemistry !== 'lfp') return temperatureFactor(bank, temperatureC);
  return present(lithiumDischargeByTemperature.find(([belowC]) => temperatureC < belowC))[1];
}

/** Continuous, short and charge limits (A) of a bank at its temperature (°C, 25 by default). Its own sheet comes first. */
export function limitsOf(bank: Bank, temperatureC = 25): Limits {
  const row = chemistryRow(bank.chemistry);
  const share = coldShare(bank, temperatureC);
  return {
    dischargeA: share * (bank.maxCurrentA ?? row.dischargeC * bank.capacityAh),
    surgeA: share * Math.max(row.surgeC * bank.capacityAh, bank.maxCurrentA ?? 0),
    chargeA: chargeRateC(bank, temperatureC) * bank.capacityAh,
  };
}

/** Resistance inside a bank (Ω), from its chemistry's typical 100 Ah block (mΩ, likely unless given). */
export function bankResistanceOhm(
  bank: Bank,
  milliohm = chemistryRow(bank.chemistry).resistanceMilliohm,
  trace?: Trace,
): number {
  const n_s = bank.voltageV / chemistryRow(bank.chemistry).nominalV;
  return run(blockResistance, { r_100: milliohm / 1000, C_100: 100, C: bank.capacityAh, n_s }, trace);
}

/**
 * Volts at the end of a cable while a bank gives a current (A), from its resting volts.
 * `cableOhm` is there and back; an inverter cuts out at about 10.5–11 V (21–22 V).
 */
export function loadedVoltageV(
  input: {
    readonly bank: Bank;
    readonly restV: number;
    readonly currentA: number;
    readonly cableOhm?: number;
    readonly blockMilliohm?: number;
  },
  trace?: Trace,
): number {
  const R_i = bankResistanceOhm(input.bank, input.blockMilliohm, trace);
  return run(
    voltageUnderLoad,
    { V_rest: input.restV, I: input.currentA, R_i, R_c: input.cableOhm ?? 0 },
    trace,
  );
}
