import type { Assumption, Values } from '#engine/assumption.ts';
import { type Explored, explore, likelyOf } from '#engine/explore.ts';
import type { Trace } from '#rule/trace.ts';

export interface Probe {
  readonly explored: Explored<'answer'>;
  /** The same calculation with some of the likely values changed, for solving backwards. */
  readonly at: (changed: Values) => number;
}

/** One number with its range from its assumptions, kept for trying other values. */
export function probe(
  assumptions: readonly Assumption[],
  compute: (values: Values, trace?: Trace) => number,
): Probe {
  const likely: Values = likelyOf(assumptions);
  const explored = explore<'answer'>(assumptions, 'answer', (values, trace) => ({
    answer: compute(values, trace),
  }));
  return { explored, at: changed => compute({ ...likely, ...changed }) };
}
