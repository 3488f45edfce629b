/** A figure from outside, and the call of ours that has to meet it. */
export interface Row {
  /** Unique over all sources: "A1-04". */
  readonly id: string;
  /** Work and example, table or page; "common practice" for a fact of the trade. */
  readonly from: string;
  /** Whether the figure was seen in its source, recomputed with the source's formula, or is from memory. */
  readonly how: 'seen' | 'recomputed' | 'memory';
  readonly gives: number;
  /** Largest accepted deviation, in the unit of `gives`. */
  readonly within: number;
  /** Where our model is another than the source's: which, and why the bound is as wide as it is. */
  readonly differs?: string;
  readonly run: () => number;
}
