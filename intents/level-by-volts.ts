import type { Assumption } from '#engine/assumption.ts';
import type { Bank } from '#engine/battery/bank.ts';
import { chargeAtRest, isOnCharge } from '#engine/battery/rest.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import type { Facts } from '#rig/rig.ts';

/** How far a moderate load holds the volts of a 12 V block down, V; common practice. */
const sagV = { value: 0.15, low: 0.05, high: 0.4 } as const;

/** How full it is by its volts, where nothing else tells; undefined while a charger holds them up. */
export function levelByVolts({ volts, voltsTaken, netCurrentA }: Facts, bank: Bank): Assumption | undefined {
  const isTold = bank.stateOfChargePercent !== undefined || bank.isChemistryAssumed;
  // "12 V" and "24 V" name a system; a meter shows tenths.
  const isName = volts !== undefined && volts % 12 === 0;
  if (volts === undefined || isName || isTold || voltsTaken === 'charging') return undefined;
  const blocks = bank.voltageV / chemistryRow(bank.chemistry).nominalV;
  if (isOnCharge(volts, bank.chemistry, blocks)) return undefined;
  const isLoaded = voltsTaken === 'load' || (voltsTaken !== 'rest' && (netCurrentA ?? 0) < 0);
  const at = (sag: number) =>
    chargeAtRest(volts + (isLoaded ? sag * blocks : 0), bank.chemistry, undefined, blocks);
  const why = isLoaded ? 'by its volts under load: a hint' : 'by its volts at rest';
  const [value, low, high] = [at(sagV.value).value, at(sagV.low).low, at(sagV.high).high];
  return { name: 'stateOfCharge', value, low, high, unit: '%', why };
}
