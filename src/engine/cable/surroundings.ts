import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, Values } from '../assumption.ts';
import { ampacityA, autoShare, type Conductor } from './conductor.ts';
import { carriedCurrent, heatShare } from './pair-rules.ts';
import { bundleShares, tableAirC } from './tables.ts';

/** Share of its current that a cable keeps in a bundle of so many wires that carry current. */
export const bundleShareOf = (wires: number): number =>
  bundleShares.findLast(([least]) => wires >= least)?.[1] ?? 1;

/** What is taken for granted of the place a cable lies in: the air (°C, as told), and that it lies alone. */
export function surroundingAssumptions(ambientC?: number): Assumption[] {
  const isTold = ambientC !== undefined;
  return [
    {
      name: 'cableAirC',
      value: ambientC ?? tableAirC,
      low: ambientC ?? 20,
      high: isTold ? Math.max(ambientC, 45) : 45,
      unit: '°C',
      why: isTold ? 'as you said; hotter under a bonnet or a roof' : 'shade inside a vehicle',
    },
    {
      name: 'bundleShare',
      value: 1,
      low: bundleShareOf(3),
      high: 1,
      unit: '',
      why: 'laid alone; 0.7 in a bundle of three, 0.6 of four to six, ABYC E-11',
    },
  ];
}

/**
 * Current (A) a conductor may carry for long where it lies. Takes the assumptions of `surroundingAssumptions`;
 * without them it lies alone in air of 30 °C.
 */
export function carriesA(
  conductor: Conductor,
  values: Values = {},
  trace?: Trace,
  insulation: 75 | 105 = 75,
): number {
  const { cableAirC = tableAirC, bundleShare = 1 } = values;
  const I_z = ampacityA(conductor.areaMm2, insulation, trace) * autoShare(conductor);
  // Nothing is taken off: the working needn't say so.
  const isPlain = cableAirC <= tableAirC && bundleShare === 1;
  const noted = isPlain ? undefined : trace;
  const k_T = run(heatShare, { T_i: insulation, T_a: cableAirC, T_0: tableAirC }, noted);
  return run(carriedCurrent, { I_z, k_T, k_b: bundleShare }, noted);
}
