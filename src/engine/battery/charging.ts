import type { Chemistry } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, AssumptionName, Values } from '../assumption.ts';
import type { Bank } from './bank.ts';
import { coldTimeConstant, voltageAtTemperature } from './charge-rules.ts';
import { chargeRow, coldHalvingK, isolatorSlowness, voltageCompensation } from './charge-table.ts';
import { bankResistanceOhm, chargeRateC } from './limits.ts';
import { restCurve } from './rest.ts';
import { chemistryRow } from './tables.ts';

/**
 * A battery as it takes charge, in plain numbers: the one model of sun, driving, mains, generators and trips. It
 * holds what stays of the charge (falling towards full), what is accepted (the ampere-hour law and the limit of the
 * kind), and the volts at which that happens.
 */
export interface Charging {
  /** What it holds when full, Ah. */
  readonly capacityAh: number;
  /** Share of the charge put in that stays; at the very end; and the Ah missing where it begins to fall (0: it doesn't). */
  readonly efficiency: number;
  readonly topEfficiency: number;
  readonly topAh: number;
  readonly timeConstantH: number;
  /** The most that its kind stands at its temperature, A. */
  readonly limitA: number;
  /** Absorption, V, and the resistance inside, Ω, of the whole bank. */
  readonly absorptionV: number;
  readonly resistanceOhm: number;
  /** Volts at rest of a 12 V block at 0, 1, … 100 % of charge, and how many blocks there are in series. */
  readonly restV: Float64Array;
  readonly blocks: number;
}

/** Where it hangs and how it fares, besides the bank itself. */
export interface ChargingSite {
  /** What it holds when full, Ah; by default its label, less its age where that is assumed. */
  readonly capacityAh?: number;
  /** Of the battery, °C, where told; else as assumed, else 25. */
  readonly temperatureC?: number;
  /** On an alternator's lower and varying voltage. */
  readonly isIsolator?: boolean;
}

/** Absorption voltage (V) of a lead-acid bank at its temperature (°C); lithium has none to change. */
export function absorptionVoltage(bank: Bank, temperatureC = 25, trace?: Trace): number {
  const blocks = bank.voltageV / chemistryRow(bank.chemistry).nominalV;
  const [V_25] = chargeRow(bank.chemistry).absorptionV;
  if (bank.chemistry === 'lfp') return V_25 * blocks;
  const k_V = voltageCompensation.perK * blocks;
  return run(voltageAtTemperature, { V_25: V_25 * blocks, k_V, T: temperatureC, T_25: 25 }, trace);
}

/** Losses that grow by less than this towards full don't grow. */
const leastFall = 1e-6;

/** A bank on charge, for one set of values; an assumption that isn't among them has its likely value. */
export function chargingOf(bank: Bank, site: ChargingSite = {}, values: Values = {}): Charging {
  const row = chargeRow(bank.chemistry);
  const temperatureC = site.temperatureC ?? values.batteryTemperature ?? 25;
  const k_age = values.age ?? 1;
  const capacityAh = site.capacityAh ?? bank.capacityAh * k_age;
  const efficiency = values.chargeEfficiency ?? row.efficiency[0];
  const topEfficiency = Math.min(efficiency, values.topEfficiency ?? row.topEfficiency[0]);
  const tau = values.timeConstant ?? row.timeConstantH[0] * (site.isIsolator ? isolatorSlowness : 1);
  const isFalling = bank.chemistry !== 'lfp' && efficiency - topEfficiency > leastFall;
  return {
    capacityAh,
    efficiency,
    topEfficiency: isFalling ? topEfficiency : efficiency,
    topAh: isFalling ? (1 - row.topFrom) * capacityAh : 0,
    timeConstantH: run(coldTimeConstant, { tau, k_age, T_25: 25, T: temperatureC, T_20: coldHalvingK }),
    limitA: chargeRateC(bank, temperatureC) * capacityAh,
    absorptionV: absorptionVoltage(bank, temperatureC),
    resistanceOhm: bankResistanceOhm(bank) / k_age,
    restV: restCurve(bank.chemistry),
    blocks: bank.voltageV / chemistryRow(bank.chemistry).nominalV,
  };
}

/** What stays of the charge put in, as it is taken for granted: by its kind, and of lead-acid at the very end. */
export function storageAssumptions(chemistry: Chemistry, isAssumed = false): Assumption[] {
  const row = chargeRow(chemistry);
  const kind = chemistryRow(chemistry).name;
  const whose = isAssumed ? `${kind}, as you didn't say` : kind;
  const isFalling = row.topFrom < 1;
  const named = (
    name: AssumptionName,
    [value, low, high]: readonly [number, number, number],
    why: string,
  ) => ({
    name,
    value,
    low,
    high,
    unit: '',
    why,
  });
  return [
    named(
      'chargeEfficiency',
      row.efficiency,
      isFalling ? `${whose}, up to ${100 * row.topFrom} % full` : whose,
    ),
    // Nobody said that it is lead at all.
    ...(isFalling
      ? [
          named(
            'topEfficiency',
            isAssumed ? [row.topEfficiency[0], row.topEfficiency[1], row.efficiency[0]] : row.topEfficiency,
            isAssumed ? `${kind} at the very end; lithium loses nothing there` : `${kind} at the very end`,
          ),
        ]
      : []),
  ];
}

/** How fast a kind takes its last part, h. */
export function timeConstantAssumption(chemistry: Chemistry, isIsolator = false): Assumption {
  const slow = isIsolator ? isolatorSlowness : 1;
  const [value, low, high] = chargeRow(chemistry).timeConstantH;
  const kind = chemistryRow(chemistry).name;
  const why = isIsolator
    ? `${kind} on an alternator's lower voltage`
    : `how fast ${kind} takes its last part`;
  return { name: 'timeConstant', value: value * slow, low: low * slow, high: high * slow, unit: 'h', why };
}
