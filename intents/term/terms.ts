import type { CautionCode } from '#answer/words/en.ts';
import glossary from './glossary.json' with { type: 'json' };
import comparisons from './pairs.json' with { type: 'json' };

/** A word of the trade: two sentences and an example. */
export interface Term {
  /** Lower case. */
  readonly key: string;
  /** As a heading: "amp hour (Ah)". */
  readonly name: string;
  /** Other ways to write it, lower case. */
  readonly aliases: readonly string[];
  readonly says: readonly string[];
  /** Follows "For example: ". */
  readonly example: string;
  readonly caution?: CautionCode;
}

/** How two terms differ, in a sentence or two. */
export interface Comparison {
  readonly of: readonly string[];
  readonly says: string;
}

export const terms = glossary as readonly Term[];

/** What is said of two terms together, where something is. */
export const comparisonOf = (a: Term, b: Term): Comparison | undefined =>
  (comparisons as readonly Comparison[]).find(({ of }) => of.includes(a.key) && of.includes(b.key));
