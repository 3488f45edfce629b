import { present } from '#basics/present.ts';
import type { Chemistry } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Values } from '../assumption.ts';
import { taken } from '../explore.ts';
import { dust } from '../grain.ts';
import { capacityForRate, capacityNeeded } from './rules.ts';
import { chemistryRow } from './tables.ts';
import { temperatureFactor } from './usable.ts';

/**
 * Capacity (Ah on the label) that has `needAh` to use at a running current (A): the same factors as
 * `usableCapacityAh`, solved for the label.
 */
export function requiredCapacityAh(
  input: {
    readonly needAh: number;
    readonly chemistry: Chemistry;
    readonly currentA: number;
    readonly temperatureC?: number;
  },
  values: Values,
  trace?: Trace,
): number {
  const C = run(
    capacityNeeded,
    {
      Q: input.needAh,
      DoD: taken(values, 'depthOfDischarge'),
      k_temp: temperatureFactor(input, input.temperatureC ?? values.batteryTemperature, trace),
      k_age: taken(values, 'age'),
    },
    trace,
  );
  const H = chemistryRow(input.chemistry).ratedHours;
  return run(capacityForRate, { C, I: input.currentA, H, k: taken(values, 'peukertExponent') }, trace);
}

/** The next usual size (Ah) from the shops that has at least `neededAh`: one block, or the fewest alike in parallel. */
export function nextUsualSize(
  neededAh: number,
  chemistry: Chemistry,
): { readonly count: number; readonly sizeAh: number } {
  const sizes = chemistryRow(chemistry).usualSizesAh;
  const largest = present(sizes.at(-1));
  const count = Math.max(1, Math.ceil(neededAh / largest - dust));
  return { count, sizeAh: sizes.find(size => size * count >= neededAh - dust) ?? largest };
}
