import { present } from '#basics/present.ts';
import { run } from '#rule/rule.ts';
import { chargingSlope, chargingVolts, currentOfSources } from './charge-rules.ts';
import type { Charging } from './charging.ts';

/** So little is never missing that the law needs an infinite rise, as a share of what it holds. */
const leastMissing = 1e-4;

/** Volts at rest (V) with so much (Ah) missing. */
export function restVoltsOf({ restV, capacityAh, blocks }: Charging, missingAh: number): number {
  const percent = Math.min(100, Math.max(0, 100 - (100 * missingAh) / capacityAh));
  const whole = Math.min(99, Math.floor(percent));
  return (
    blocks * (present(restV[whole]) + (percent - whole) * (present(restV[whole + 1]) - present(restV[whole])))
  );
}

/** How far the volts rise with the current (V/A). */
const slopeOf = (c: Charging, missingAh: number, V_rest: number): number =>
  chargingSlope.direct()(
    c.resistanceOhm,
    c.absorptionV,
    V_rest,
    c.timeConstantH,
    Math.max(missingAh, leastMissing * c.capacityAh),
  );

/** Volts (V) that a battery stands at while it takes a current (A) with so much (Ah) missing: at most absorption. */
export function voltsOnCharge(c: Charging, missingAh: number, currentA: number): number {
  const V_rest = restVoltsOf(c, missingAh);
  return run(chargingVolts, {
    V_a: c.absorptionV,
    V_rest,
    I: currentA,
    k_V: slopeOf(c, missingAh, V_rest),
  });
}

/**
 * The current (A) that watts and amps offered together come to, at the volts which the battery stands at while it
 * takes them; loads on the way are watts below nought. Nought where nothing is left for the battery.
 */
export function offeredCurrentA(c: Charging, missingAh: number, offeredA: number, powerW: number): number {
  const V_rest = restVoltsOf(c, missingAh);
  if (offeredA * V_rest + powerW <= 0) return 0;
  const k_V = slopeOf(c, missingAh, V_rest);
  const currentA = currentOfSources.direct()(offeredA, V_rest, powerW, k_V);
  return V_rest + k_V * currentA <= c.absorptionV ? currentA : Math.max(0, offeredA + powerW / c.absorptionV);
}
