import { present } from '#basics/present.ts';
import { type Bank, bankIn, bankOf } from '#engine/battery/bank.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import type { Facts } from '#rig/rig.ts';

/** A bank of the kind spoken of, of any size: for its chemistry and voltage. */
export const kindIn = (facts: Facts, capacityAh = 100): Bank =>
  bankIn(facts) ??
  present(
    bankOf([{ ...facts.batteries?.[0], count: 1, capacityAh }], undefined, facts.systemVoltageV),
    'a size',
  );

/** Nominal voltage of the system: the bank's, what was said, else 12 V. */
export function voltageIn(facts: Facts): number {
  const bank = bankIn(facts);
  if (bank) return bank.voltageV;
  const chemistry = facts.batteries?.find(b => b.chemistry)?.chemistry;
  const block = chemistry ? chemistryRow(chemistry).nominalV : 12;
  return facts.systemVoltageV ? (facts.systemVoltageV / 12) * block : block;
}

/** Least volts that anybody runs a thing at. */
const leastV = 1;

/** The voltage spoken of, as it was told ("at 12V" is 12.0), else the system's nominal one. */
export function toldVoltage(facts: Facts): number {
  if (facts.systemVoltageV !== undefined) return facts.systemVoltageV;
  return facts.volts !== undefined && facts.volts >= leastV ? facts.volts : voltageIn(facts);
}
