import type { CautionCode } from '#answer/words/en.ts';
import { type Term as Entry, terms as glossary } from '#catalog/glossary.ts';
import comparisons from './pairs.json' with { type: 'json' };

/** A word of the trade, with the caution that its explanation carries. */
export interface Term extends Entry {
  readonly caution?: CautionCode;
}

/** How two terms differ, in a sentence or two. */
export interface Comparison {
  readonly of: readonly string[];
  readonly says: string;
}

// A test holds that every caution of the glossary has its words.
export const terms = glossary as readonly Term[];

/** What is said of two terms together, where something is. */
export const comparisonOf = (a: Term, b: Term): Comparison | undefined =>
  (comparisons as readonly Comparison[]).find(({ of }) => of.includes(a.key) && of.includes(b.key));
