import { decimals, plain, significant } from '#quantity/round.ts';

/** What goes into the gaps of a message: numbers written out already; a bare number only to choose a plural by. */
type Gaps = Readonly<Record<string, string | number>>;

/**
 * How answers speak. Each sentence has a key and stands in English where it is used, so that a language can come
 * back as another `Speech` when it can be spoken whole.
 */
export interface Speech {
  /** "en". */
  readonly language: string;
  /** The message of a key: the English one given, with its {gaps} filled. */
  readonly say: (key: string, text: string, gaps?: Gaps) => string;
  readonly decimals: (value: number, digits: number) => string;
  readonly significant: (value: number, digits?: number) => string;
  readonly plain: (value: number) => string;
}

/** Fills "{gaps}". What fills a gap may itself hold braces: it is not looked at again. */
const fill = (text: string, gaps: Gaps | undefined): string =>
  gaps ? text.replace(/\{(\w+)\}/g, (gap, name: string) => `${gaps[name] ?? gap}`) : text;

/** English: what the code says. */
export const english: Speech = {
  language: 'en',
  say: (_key, text, gaps) => fill(text, gaps),
  decimals,
  significant: (value, digits) => significant(value, digits),
  plain,
};
