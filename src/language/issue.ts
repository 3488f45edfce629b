/** Where in the message something stands: [from, to) in UTF-16 units. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** A problem found while reading, as data; `answer/words/en.ts` makes the sentence. */
export type Issue =
  /** A number followed by a word we don't know, near one that we do ("12 amsp"). */
  | { readonly code: 'unknown-unit'; readonly span: Span; readonly data: { said: string; near?: string } }
  /** A unit that can't belong to the thing ("a 100A battery"); read as `repair` where that is safe. */
  | {
      readonly code: 'unit-mismatch';
      readonly span: Span;
      readonly data: { thing: string; said: string; repair: string };
    }
  /** A value that can't be meant (0 Ah, 5,000 A for a lamp, 130 %). */
  | { readonly code: 'absurd-value'; readonly span: Span; readonly data: { thing: string; said: string } }
  /** Two statements that can't both be true ("100 Ah at 12 V so that's 5 kWh"). */
  | {
      readonly code: 'contradiction';
      readonly span: Span;
      readonly data: { first: string; second: string; expected: string };
    }
  /** The message is in a script we don't read. */
  | { readonly code: 'other-language'; readonly span: Span; readonly data: Record<string, never> }
  /** A reading that could go two ways; the one taken is named so that the answer can say so. */
  | {
      readonly code: 'ambiguous';
      readonly span: Span;
      readonly data: { said: string; taken: string; other: string };
    };
