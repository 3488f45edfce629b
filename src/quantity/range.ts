/** A value with the span that its assumptions leave plausible: low ≤ value ≤ high, all in one unit. */
export interface Range {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Something taken for granted: the likely value, its plausible span, and why.
 * `low`/`high` are the ends of the value itself, not of its effect.
 */
export interface Assumption extends Range {
  readonly name: string;
  readonly unit: string;
  /** Short, for people: "AGM, common practice". */
  readonly why: string;
}
