import type { Ranker } from './rank.ts';

/** Weights over sparse features: a number for each feature and a row of `size` values. */
export class Table {
  /** Feature → row. */
  readonly index: Map<number, number>;
  readonly values: Float32Array;
  readonly size: number;
  constructor(index: Map<number, number>, values: Float32Array, size: number) {
    this.index = index;
    this.values = values;
    this.size = size;
  }

  /** Adds the rows of the features to `into`. */
  sum(features: readonly number[], into: Float32Array): void {
    const { index, values, size } = this;
    for (let k = 0; k < features.length; k++) {
      const row = index.get(features[k]!);
      if (row === undefined) continue;
      const from = row * size;
      for (let d = 0; d < size; d++) into[d]! += values[from + d]!;
    }
  }
}

/** A layer of hidden units over sparse features, and one vector an outcome. */
export interface Net {
  readonly features: Table;
  readonly bias: Float32Array;
  /** Outcomes × hidden. */
  readonly out: Float32Array;
  readonly outBias: Float32Array;
}

/** What is learned: of the roles and their owners, and of the message as a whole. */
export interface Model {
  readonly slots: Net;
  readonly owners: Table;
  /** Whether a load runs on mains: no, yes. */
  readonly supply: Net;
  /** Whether a plan of days is told, and how its free days are meant. */
  readonly plans: Net;
  /**
   * Of the message as a whole, one head after another: the question by the words alone, the question by the words and
   * what they state, the danger that it shows (the last outcome is none).
   */
  readonly message: Net;
  readonly intentNames: readonly string[];
  readonly hazardNames: readonly string[];
  /** Weighs whole readings; absent while it is learned. */
  readonly ranker?: Ranker;
  /** What tells how likely the best reading is right. */
  readonly certainty: readonly number[];
}

export type Head = 'first' | 'intents' | 'hazards';

/** Where a head's outcomes stand in the net of the message. */
export function headOf(
  { intentNames, hazardNames }: Model,
  head: Head,
): readonly [from: number, count: number] {
  const n = intentNames.length;
  return head === 'first' ? [0, n] : head === 'intents' ? [n, n] : [2 * n, hazardNames.length + 1];
}

/** Hidden units for a set of features. */
export function hidden(net: Net, features: readonly number[], into: Float32Array): void {
  into.set(net.bias);
  net.features.sum(features, into);
  for (let d = 0; d < into.length; d++) into[d] = Math.tanh(into[d]!);
}

/** The score of one outcome. */
export function score(net: Net, units: Float32Array, outcome: number): number {
  const { out, outBias } = net;
  const n = units.length;
  let sum = outBias[outcome]!;
  const from = outcome * n;
  for (let d = 0; d < n; d++) sum += out[from + d]! * units[d]!;
  return sum;
}

/** Probabilities of a net's outcomes from `from` on, by its hidden units. */
export function shares(net: Net, units: Float32Array, from: number, outcomes: number): Float64Array {
  const out = new Float64Array(outcomes);
  let top = -Infinity;
  for (let c = 0; c < outcomes; c++) {
    out[c] = score(net, units, from + c);
    if (out[c]! > top) top = out[c]!;
  }
  let sum = 0;
  for (let c = 0; c < outcomes; c++) sum += out[c] = Math.exp(out[c]! - top);
  for (let c = 0; c < outcomes; c++) out[c]! /= sum;
  return out;
}

/** Hidden units of a net for features. */
export function unitsOf(net: Net, features: readonly number[]): Float32Array {
  const units = new Float32Array(net.bias.length);
  hidden(net, features, units);
  return units;
}

/** Probabilities of all outcomes of a small net. */
export const probabilities = (net: Net, features: readonly number[], outcomes: number): Float64Array =>
  shares(net, unitsOf(net, features), 0, outcomes);
