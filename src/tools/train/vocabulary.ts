import type { Parameters } from './net.ts';

/** Features seen in at least `least` groups, numbered. */
export function vocabularyOf(
  lists: Iterable<readonly [group: number, features: Iterable<number>]>,
  least: number,
): Map<number, number> {
  const counts = new Map<number, { n: number; last: number }>();
  for (const [group, features] of lists)
    for (const f of features) {
      const c = counts.get(f);
      if (!c) counts.set(f, { n: 1, last: group });
      else if (c.last !== group) {
        c.n++;
        c.last = group;
      }
    }
  const kept = [...counts]
    .filter(([, c]) => c.n >= least)
    .map(([f]) => f)
    .sort((a, b) => (a >>> 0) - (b >>> 0));
  return new Map(kept.map((f, i) => [f, i]));
}

/** The rows of the features that are known. */
export const rows = (index: ReadonlyMap<number, number>, features: Iterable<number>): Int32Array => {
  const out: number[] = [];
  for (const f of features) {
    const row = index.get(f);
    if (row !== undefined) out.push(row);
  }
  return Int32Array.from(out);
};

/** All numbers below n, in the order of chance. */
export function* shuffled(n: number, random: () => number): Generator<number> {
  const order = Int32Array.from({ length: n }, (_, i) => i);
  for (let i = n - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
  yield* order;
}

/** Which rows say most: the size of a row times how often it speaks. Others become −1. */
export function kept(E: Parameters, D: number, uses: Float64Array, keep: number): Int32Array {
  const n = uses.length;
  const weight = Float64Array.from({ length: n }, (_, r) => {
    let sum = 0;
    for (let d = 0; d < D; d++) sum += E.w[r * D + d]! ** 2;
    return sum * Math.sqrt(uses[r]!);
  });
  const order = Array.from({ length: n }, (_, i) => i).sort((a, b) => weight[b]! - weight[a]!);
  const out = new Int32Array(n).fill(-1);
  order
    .slice(0, keep)
    .sort((a, b) => a - b)
    .forEach((r, k) => {
      out[r] = k;
    });
  return out;
}

/** Rows at their new places; those dropped are gone. */
export const mapped = (f: Int32Array, to: Int32Array): Int32Array => f.map(r => to[r]!).filter(r => r >= 0);
/** The same of an index. */
export const renumbered = (index: Map<number, number>, to: Int32Array): Map<number, number> =>
  new Map([...index].flatMap(([f, r]): [number, number][] => (to[r]! >= 0 ? [[f, to[r]!]] : [])));
