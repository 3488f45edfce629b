/**
 * A piece of a message. After scanning it is a number, a word or a sign; a later pass joins a number and its
 * unit into one 'quantity'. Fields are always present, so that all tokens have one shape (speed).
 */
export interface Token {
  kind: 'number' | 'word' | 'sign' | 'quantity';
  /** Lower case, apostrophes dropped; of a number its digits as written. */
  text: string;
  /** As written. */
  raw: string;
  value: number;
  /** Span in the message, [from, to). */
  from: number;
  to: number;
  /** Nothing stands between this token and the one before. */
  isGlued: boolean;
  /** Number: "10:30"; word: has an apostrophe s ("sam's"). */
  isClock: boolean;
  hasApostrophe: boolean;
  /** A pass made sense of it. */
  isKnown: boolean;
}

export const token = (
  kind: Token['kind'],
  text: string,
  raw: string,
  value: number,
  from: number,
  to: number,
  isGlued: boolean,
): Token => ({
  kind,
  text,
  raw,
  value,
  from,
  to,
  isGlued,
  isClock: false,
  hasApostrophe: false,
  isKnown: false,
});
