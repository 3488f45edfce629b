import { certainty } from '#language/decide/certainty.ts';
import { Table } from '#language/decide/table.ts';
import { Parameters, seeded } from './net.ts';
import { rows, shuffled, vocabularyOf } from './vocabulary.ts';

/** A reading of a message that its model had not seen: what it is like, and whether it is right. */
export interface Judged {
  readonly group: number;
  readonly signs: readonly number[];
  readonly features: Int32Array;
  readonly isExact: boolean;
}

const steps = 3000;
const rate = 0.3;
const l2 = 1e-3;

/** Weights by which few signs tell whether a reading is right. */
function fitSigns(readings: readonly Judged[]): number[] {
  const n = readings[0]?.signs.length ?? 0;
  const w = new Float64Array(n);
  for (let step = 0; step < steps; step++) {
    const gradient = new Float64Array(n);
    const now = [...w];
    for (const { signs, isExact } of readings) {
      const error = certainty(now, signs) - (isExact ? 1 : 0);
      for (let i = 0; i < n; i++) gradient[i]! += error * signs[i]!;
    }
    for (let i = 0; i < n; i++) w[i]! -= rate * (gradient[i]! / readings.length + (i === 0 ? 0 : l2 * w[i]!));
  }
  return Array.from(w, v => Math.round(v * 1e4) / 1e4);
}

const whole = { least: 20, epochs: 10, drop: 0.5, rate: 0.03, l2: 1e-3, seed: 13 } as const;

/** Weights of what a reading is like as a whole, on top of the signs. */
function fitWhole(readings: readonly Judged[], weights: readonly number[]): Table {
  const random = seeded(whole.seed);
  const index = vocabularyOf(
    readings.map(r => [r.group, r.features] as const),
    whole.least,
  );
  const data = readings.map(r => ({ ...r, rows: rows(index, r.features) }));
  const W = new Parameters(index.size, 0, random);
  const scale = 1 / (1 - whole.drop);
  for (let epoch = 0; epoch < whole.epochs; epoch++) {
    for (const i of shuffled(data.length, random)) {
      const { rows: all, signs, isExact } = data[i]!;
      const kept = all.filter(() => random() >= whole.drop);
      let sum = 0;
      for (const r of kept) sum += W.w[r]! * scale;
      const error = certainty(weights, signs, sum) - (isExact ? 1 : 0);
      for (const r of kept) W.step(r, error * scale + whole.l2 * W.w[r]!, whole.rate);
    }
    if (epoch >= whole.epochs / 2) W.note();
  }
  W.settle();
  return Table.of(index, W.w, 1);
}

/** What tells how sure a reading may be taken, from readings of groups that their model had not seen. */
export function fitCertainty(readings: readonly Judged[]): {
  readonly certainty: readonly number[];
  readonly doubts: Table;
} {
  const weights = fitSigns(readings);
  return { certainty: weights, doubts: fitWhole(readings, weights) };
}
