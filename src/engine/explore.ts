import type { Assumption, Range } from '#quantity/range.ts';
import { Trace } from '#rule/trace.ts';

/** The value of each assumption by its name. */
export type Values = Readonly<Record<string, number>>;

/** The value of an assumption. @throws Error where the calculation asks for one that was not declared */
export function taken(values: Values, name: string): number {
  const value = values[name];
  if (value === undefined) throw new Error(`no assumption named ${name} was declared`);
  return value;
}

export interface Explored<K extends string> {
  readonly figures: Readonly<Record<K, Range>>;
  /** The assumptions, the one that moves the main figure most first; those that move nothing are left out. */
  readonly ranked: readonly (Assumption & { readonly influence: number })[];
  /** The record of the likely run. */
  readonly trace: Trace;
}

/**
 * Runs a calculation at the likely value of every assumption, then moves each to its low and its high end
 * through the same calculation. The moves are taken as independent and combined by root sum of squares
 * (JCGM 100, the usual rule for independent uncertainties), in logarithms where all results are positive, so
 * that low ≤ value ≤ high and a positive figure stays positive.
 * @param main the figure that ranks the assumptions
 */
export function explore<K extends string>(
  assumptions: readonly Assumption[],
  main: K,
  compute: (values: Values, trace?: Trace) => Record<K, number>,
): Explored<K> {
  const trace = new Trace();
  const likelyValues = Object.fromEntries(assumptions.map(a => [a.name, a.value]));
  const likely = compute(likelyValues, trace);
  const keys = Object.keys(likely) as K[];
  const moved = assumptions.map(a =>
    [a.low, a.high].map(end => (end === a.value ? likely : compute({ ...likelyValues, [a.name]: end }))),
  );
  const figures = {} as Record<K, Range>;
  for (const key of keys)
    figures[key] = combine(
      likely[key],
      moved.map(ends => ends.map(end => end[key])),
    );
  const ranked = assumptions
    .map((a, i) => ({
      ...a,
      influence: spread(
        likely[main],
        moved[i]!.map(end => end[main]),
      ),
    }))
    .filter(a => a.influence > 0)
    .sort((a, b) => b.influence - a.influence);
  return { figures, ranked, trace };
}

const spread = (likely: number, ends: readonly number[]): number =>
  (Math.max(likely, ...ends) - Math.min(likely, ...ends)) / Math.max(Math.abs(likely), 1e-9);

function combine(likely: number, moves: readonly (readonly number[])[]): Range {
  if (!Number.isFinite(likely)) return { value: likely, low: likely, high: likely };
  const isPositive = likely > 0 && moves.every(ends => ends.every(end => end > 0));
  const f = isPositive ? Math.log : (x: number) => x;
  const back = isPositive ? Math.exp : (x: number) => x;
  let down = 0;
  let up = 0;
  for (const ends of moves) {
    down += Math.max(0, ...ends.map(end => f(likely) - f(end))) ** 2;
    up += Math.max(0, ...ends.map(end => f(end) - f(likely))) ** 2;
  }
  // back(f(x)) may differ from x in the last digit; the ends must still hold the value.
  return {
    value: likely,
    low: Math.min(likely, back(f(likely) - Math.sqrt(down))),
    high: Math.max(likely, back(f(likely) + Math.sqrt(up))),
  };
}

/**
 * Solves backwards: the input between `low` and `high` at which a steadily rising or falling calculation
 * gives `target`, by bisection to one part in a million of the span.
 * @returns undefined where the target lies outside what the span can give
 */
export function solveFor(
  target: number,
  low: number,
  high: number,
  compute: (input: number) => number,
): number | undefined {
  const rises = compute(high) >= compute(low);
  const above = (input: number) => (rises ? compute(input) >= target : compute(input) <= target);
  if (!above(high)) return undefined;
  if (above(low)) return compute(low) === target ? low : undefined;
  let [from, to] = [low, high];
  for (let i = 0; i < 40 && to - from > (high - low) * 1e-6; i++) {
    const middle = (from + to) / 2;
    if (above(middle)) to = middle;
    else from = middle;
  }
  return (from + to) / 2;
}
