import type { Assumed, Figure, Verdict, WorkingStep } from '#answer/answer.ts';
import type { Explored } from '#engine/explore.ts';
import type { Range } from '#quantity/range.ts';
import { printStep } from '#rule/print.ts';
import type { Trace } from '#rule/trace.ts';

/** A range as a figure of the answer. */
export const figure = (range: Range, unit: string): Figure => ({ ...range, unit });

/** A figure with nothing assumed in it. */
export const exactFigure = (value: number, unit: string): Figure =>
  figure({ value, low: value, high: value }, unit);

/** The working of a trace, printed only when somebody looks; absent where nothing was worked out. */
export const workingOf = ({ steps }: Trace): (() => readonly WorkingStep[]) | undefined =>
  steps.length > 0 ? () => steps.map(printStep) : undefined;

/** What an explored calculation assumed, most influential first, and its working, as an answer carries them. */
export function reasons(explored: Explored<string>): {
  readonly assumed: readonly Assumed[];
  readonly working: (() => readonly WorkingStep[]) | undefined;
} {
  return {
    assumed: explored.ranked.map(({ name, value, unit, why }) => ({ name, value, unit, why })),
    working: workingOf(explored.trace),
  };
}

/** Is there enough? Yes where even the low end is, no where not even the high end is, tight between. */
export function enough(range: Range, wanted: number): Exclude<Verdict, null> {
  if (range.low >= wanted) return 'yes';
  return range.high < wanted ? 'no' : 'tight';
}
