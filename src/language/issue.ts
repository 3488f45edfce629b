/** A problem found while reading, as data; `answer/issues.ts` makes the sentence. */
export type Issue =
  /** A value that can't be meant (0 Ah, 130 %). */
  | { readonly code: 'absurd-value'; readonly data: { readonly thing: string; readonly said: string } }
  /** The message is in a script we don't read. */
  | { readonly code: 'other-language' };
