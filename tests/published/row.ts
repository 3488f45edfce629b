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

/** A row in one line. */
export const row = (
  id: string,
  from: string,
  how: Row['how'],
  gives: number,
  within: number,
  run: () => number,
  differs?: string,
): Row => ({ id, from, how, gives, within, run, ...(differs === undefined ? {} : { differs }) });

/** A cell of one of our tables, with the figure from outside that it has to meet. */
export type Cell = readonly [id: string, gives: number, within: number, run: () => number];

/** Rows of one source for cells of a table. */
export const cells = (from: string, how: Row['how'], list: readonly Cell[]): Row[] =>
  list.map(([id, gives, within, run]) => row(id, `${from}: ${id}`, how, gives, within, run));
