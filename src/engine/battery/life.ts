import { present } from '#basics/present.ts';
import type { Chemistry } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import { heatLife, lifeEnergy } from './rules.ts';
import { chemistryRow } from './tables.ts';

/** Cycles to 80 % of capacity at a depth of discharge (0–1), along the published points in logarithms; shallower than the first, as many times more as it is shallower. */
export function cyclesAt(chemistry: Chemistry, depth: number, trace?: Trace): number {
  const points = chemistryRow(chemistry).cycles;
  const cycles = between(points, Math.min(1, Math.max(0.05, depth)));
  trace?.lookup({
    name: 'cycles',
    says: `cycles of ${chemistryRow(chemistry).name} at ${Math.round(depth * 100)} % depth`,
    value: cycles,
    unit: '',
    source: "published cycle life, makers' sheets",
  });
  return cycles;
}

function between(points: readonly (readonly [depth: number, cycles: number])[], depth: number): number {
  const next = points.findIndex(([d]) => d >= depth);
  const [d1, n1] = present(points[next], `cycles to a depth of ${depth}`);
  const before = points[next - 1];
  if (!before) return (n1 * d1) / depth;
  const [d0, n0] = before;
  return n0 * (n1 / n0) ** ((depth - d0) / (d1 - d0));
}

/** Energy (Wh) a battery gives over its life, used to the same depth (0–1) each time. */
export function lifeEnergyWh(
  input: { readonly chemistry: Chemistry; readonly capacityAh: number; readonly depth: number },
  trace?: Trace,
): number {
  const { nominalV } = chemistryRow(input.chemistry);
  const n = cyclesAt(input.chemistry, input.depth, trace);
  return run(lifeEnergy, { C: input.capacityAh, V: nominalV, DoD: input.depth, n }, trace);
}

/** Share of its life a lead-acid battery keeps at a temperature (°C) it lives at. */
export const lifeAtTemperature = (temperatureC: number, trace?: Trace): number =>
  run(heatLife, { T: temperatureC, T_25: 25, T_10: 10 }, trace);
