import type { Facts } from '#rig/rig.ts';
import { bankOf } from '../battery/bank.ts';

/** Several panels: "in series" may be said of them. */
const hasSeveralPanels = ({ solar = [] }: Facts): boolean =>
  solar.reduce((sum, { count }) => sum + count, 0) > 1;

/** Nominal volts of the house batteries as they are joined; undefined where neither a voltage nor a joint is told. */
function bankVolts(facts: Facts): number | undefined {
  const house = (facts.batteries ?? []).filter(({ role }) => role !== 'starter');
  const arrangement = hasSeveralPanels(facts) ? undefined : facts.arrangement;
  if (arrangement === undefined && !house.some(({ voltageV }) => voltageV !== undefined)) return undefined;
  // How they are joined needs no size.
  const sized = house.map(battery =>
    battery.energyWh === undefined ? { ...battery, capacityAh: battery.capacityAh ?? 1 } : battery,
  );
  return bankOf(sized, arrangement)?.voltageV;
}

/**
 * Nominal volts of a circuit, 12, 24 or 48: the system's as told, else of the batteries as they are joined (two of 12 V
 * in series are 24 V), else of a reading, else 12.
 */
export function circuitVoltage(facts: Facts): 12 | 24 | 48 {
  const told = facts.systemVoltageV ?? bankVolts(facts) ?? facts.volts ?? 12;
  return told > 36 ? 48 : told > 18 ? 24 : 12;
}
