import type { FeatureList } from './feature-list.ts';
import type { Ranker } from './rank.ts';
import type { Table } from './table.ts';

type Numbers = Float32Array | Float64Array;

/** A layer of hidden units over sparse features, and one vector an outcome. */
export interface Net {
  readonly features: Table;
  readonly bias: Numbers;
  /** Outcomes × hidden. */
  readonly out: Numbers;
  readonly outBias: Numbers;
  /** How many nets, fitted from other beginnings, stand side by side in it. */
  readonly members: number;
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
  /** Of the danger alone, by pairs of meanings too; absent while the rest is learned. */
  readonly dangers?: Net;
  readonly intentNames: readonly string[];
  readonly hazardNames: readonly string[];
  /** Weighs whole readings; absent while it is learned. */
  readonly ranker?: Ranker;
  /** What tells how likely the best reading is right: weights of its signs, and of what it is like as a whole. */
  readonly certainty: readonly number[];
  readonly doubts?: Table;
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

/** Hidden units of a net for the sum of its features' rows. */
export function unitsFor({ bias, features }: Net, sum: Int32Array, into: Float64Array): void {
  const { scale } = features;
  for (let d = 0; d < into.length; d++) into[d] = Math.tanh(bias[d]! + sum[d]! * scale);
}

/** The score of one outcome. */
export function score({ out, outBias }: Net, units: Float64Array, outcome: number): number {
  const n = units.length;
  let sum = outBias[outcome]!;
  const from = outcome * n;
  for (let d = 0; d < n; d++) sum += out[from + d]! * units[d]!;
  return sum;
}

/**
 * The scores of outcomes in a row, each as `score` gives it. Four at a time: a sum waits for each of its additions, four
 * sums wait together.
 */
function scoresInto(net: Net, units: Float64Array, from: number, count: number, into: Float64Array): void {
  const { out, outBias } = net;
  const n = units.length;
  let c = 0;
  for (; c + 4 <= count; c += 4) {
    const first = from + c;
    const at = first * n;
    let [s0, s1, s2, s3] = [outBias[first]!, outBias[first + 1]!, outBias[first + 2]!, outBias[first + 3]!];
    for (let d = 0; d < n; d++) {
      const unit = units[d]!;
      s0 += out[at + d]! * unit;
      s1 += out[at + n + d]! * unit;
      s2 += out[at + 2 * n + d]! * unit;
      s3 += out[at + 3 * n + d]! * unit;
    }
    into[c] = s0;
    into[c + 1] = s1;
    into[c + 2] = s2;
    into[c + 3] = s3;
  }
  for (; c < count; c++) into[c] = score(net, units, from + c);
}

/** The score that one member gives to an outcome: its hidden units are a part of all. */
function memberScore(
  { out, outBias, members }: Net,
  units: Float64Array,
  outcome: number,
  member: number,
): number {
  const n = units.length / members;
  const from = outcome * units.length + member * n;
  let sum = 0;
  for (let d = 0; d < n; d++) sum += out[from + d]! * units[member * n + d]!;
  return outBias[outcome]! + members * sum;
}

/**
 * How far a net's members are apart over one outcome of those from `from` on: the difference of the logarithms of its
 * probabilities, the largest less the smallest.
 */
export function apart(
  net: Net,
  units: Float64Array,
  [from, outcomes]: readonly [number, number],
  outcome: number,
): number {
  let low = Infinity;
  let high = -Infinity;
  for (let member = 0; member < net.members; member++) {
    let sum = 0;
    for (let c = 0; c < outcomes; c++) sum += Math.exp(memberScore(net, units, from + c, member));
    const log = memberScore(net, units, from + outcome, member) - Math.log(sum);
    low = Math.min(low, log);
    high = Math.max(high, log);
  }
  return high - low;
}

/** Probabilities of a net's outcomes from `from` on, by its hidden units. */
export function shares(net: Net, units: Float64Array, from: number, outcomes: number): Float64Array {
  const out = new Float64Array(outcomes);
  let top = -Infinity;
  scoresInto(net, units, from, outcomes, out);
  for (let c = 0; c < outcomes; c++) if (out[c]! > top) top = out[c]!;
  let sum = 0;
  for (let c = 0; c < outcomes; c++) sum += out[c] = Math.exp(out[c]! - top);
  for (let c = 0; c < outcomes; c++) out[c]! /= sum;
  return out;
}

/** Probabilities of all outcomes of a small net. */
export function probabilities(net: Net, features: FeatureList, outcomes: number): Float64Array {
  const sum = new Int32Array(net.bias.length);
  net.features.add(features, sum);
  const units = new Float64Array(sum.length);
  unitsFor(net, sum, units);
  return shares(net, units, 0, outcomes);
}
