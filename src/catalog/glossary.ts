import glossary from './glossary.json' with { type: 'json' };

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
  /** Code of the caution that goes with it. */
  readonly caution?: string;
}

export const terms: readonly Term[] = glossary;
