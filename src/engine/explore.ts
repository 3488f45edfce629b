import { present } from '#basics/present.ts';
import type { Range } from '#quantity/range.ts';
import { Trace } from '#rule/trace.ts';
import type { Assumption, AssumptionName, Values, ValuesToSet } from './assumption.ts';
import { dust, nearlyRound } from './grain.ts';
import { FirstFigures, isTriedOut, note } from './try-out.ts';

/** The likely value of each assumption. */
export function likelyOf(assumptions: readonly Pick<Assumption, 'name' | 'value'>[]): Values {
  const values: ValuesToSet = {};
  for (const { name, value } of assumptions) values[name] = value;
  return values;
}

/** The value of an assumption. @throws Error where the calculation asks for one that was not declared */
export function taken(values: Values, name: AssumptionName): number {
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
  const likelyValues = likelyOf(assumptions);
  // Tried out, nobody looks at the working.
  if (isTriedOut) throw new FirstFigures(compute(likelyValues));
  const likely = compute(likelyValues, trace);
  note(likely);
  const keys = Object.keys(likely) as K[];
  const moving = { ...likelyValues };
  // One object is moved and put back: forty copies a message would be most of what the collector has to do.
  const at = (a: Assumption, end: number): Record<K, number> => {
    if (end === a.value) return likely;
    moving[a.name] = end;
    const moved = compute(moving);
    moving[a.name] = present(likelyValues[a.name]);
    return moved;
  };
  const moved = assumptions.map(a => ({ low: at(a, a.low), high: at(a, a.high) }));
  const figures = {} as Record<K, Range>;
  for (const key of keys) figures[key] = combine(likely[key], moved, key);
  const ranked = assumptions
    .map((a, i) => ({
      ...a,
      influence: spread(likely[main], present(moved[i]).low[main], present(moved[i]).high[main]),
    }))
    .filter(a => a.influence > 0)
    .sort((a, b) => b.influence - a.influence);
  return { figures, ranked, trace };
}

const spread = (likely: number, a: number, b: number): number =>
  (Math.max(likely, a, b) - Math.min(likely, a, b)) / Math.max(Math.abs(likely), dust);

/** The figures with an assumption at its low and at its high end. */
type Moved<K extends string> = Readonly<Record<'low' | 'high', Readonly<Record<K, number>>>>;

const same = (x: number): number => x;

function combine<K extends string>(likely: number, moved: readonly Moved<K>[], key: K): Range {
  if (!Number.isFinite(likely)) return { value: likely, low: likely, high: likely };
  const isPositive = likely > 0 && moved.every(({ low, high }) => low[key] > 0 && high[key] > 0);
  const f = isPositive ? Math.log : same;
  const back = isPositive ? Math.exp : same;
  const middle = f(likely);
  let down = 0;
  let up = 0;
  for (const { low, high } of moved) {
    const [a, b] = [f(low[key]), f(high[key])];
    down += Math.max(0, middle - a, middle - b) ** 2;
    up += Math.max(0, a - middle, b - middle) ** 2;
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
  for (let i = 0; i < 40 && to - from > (high - low) * nearlyRound; i++) {
    const middle = (from + to) / 2;
    if (above(middle)) to = middle;
    else from = middle;
  }
  return (from + to) / 2;
}
