import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import { waterHeat } from './rules.ts';

/** Share of the energy that reaches the water. Induction and coil: US Department of Energy, cooking tops; kettle: common practice. */
export const heatingEfficiency = { kettle: 0.85, induction: 0.84, coil: 0.74, gas: 0.4 } as const;

/** Energy (Wh) that brings litres of water from a temperature (°C, 15 by default) to the boil. */
export function boilEnergyWh(litres: number, efficiency: number, fromC = 15, trace?: Trace): number {
  return run(waterHeat, { m: litres, q: (4186 * (100 - fromC)) / 3600, eta: efficiency }, trace);
}

/** Hours (h) a kettle of a power (W) takes for them. */
export const boilHours = (litres: number, powerW: number): number =>
  boilEnergyWh(litres, heatingEfficiency.kettle) / powerW;
