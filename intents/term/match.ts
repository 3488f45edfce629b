import { present } from '#basics/present.ts';
import { isSpoken } from '#basics/spoken.ts';
import type { ParsedMessage } from '#language/reading.ts';
import { type Term, terms } from './terms.ts';

/** Words round a term that carry nothing of it. */
const idle = new Set(
  'a an the my your our is are was whats what which who mean means meaning of for does do did this that please pls explain tell me about in by on exactly actually then and define to it i one they these those all stand stands words terms three u ur yous can you'.split(
    ' ',
  ),
);

/** Words between two terms that are compared. */
const joining = new Set([
  'difference',
  'between',
  'or',
  'vs',
  'versus',
  'than',
  'same',
  'as',
  'more',
  'less',
  'from',
  'with',
]);

const clean = (phrase: string): string =>
  phrase
    .toLowerCase()
    .replaceAll('’', "'")
    .replace(/[^\p{L}\p{N}&².'/-]+/gu, ' ')
    .trim();

interface Spelling {
  readonly words: string;
  readonly term: Term;
}

/** Every way to write every term, longest first. */
const spellings: readonly Spelling[] = terms
  .flatMap(term => [term.key, ...term.aliases].map(words => ({ words, term })))
  .sort((a, b) => b.words.length - a.words.length);
const exact = new Map(spellings.map(s => [s.words, s.term]));

/** How many letters have to be changed, added, left out or swapped with a neighbour (Damerau and Levenshtein). */
export function distance(a: string, b: string): number {
  const rows = Array.from({ length: a.length + 1 }, (_, i) => [i, ...Array<number>(b.length).fill(0)]);
  rows[0] = Array.from({ length: b.length + 1 }, (_, j) => j);
  const at = (i: number, j: number): number => present(rows[i]?.[j]);
  for (const [i, row] of rows.entries())
    for (let j = 1; j <= b.length && i > 0; j++) {
      const change = at(i - 1, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const isSwap = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row[j] = Math.min(change, at(i - 1, j) + 1, at(i, j - 1) + 1, isSwap ? at(i - 2, j - 2) + 1 : Infinity);
    }
  return at(a.length, b.length);
}

interface Place {
  readonly from: number;
  readonly to: number;
  readonly term: Term;
}

/** Where terms are written in a cleaned phrase with a space on either side; where two overlap, the longer one. */
function placesIn(text: string): Place[] {
  const taken: Place[] = [];
  for (const { words, term } of spellings) {
    if (words.length < 2) continue;
    const from = text.indexOf(` ${words} `);
    const to = from + words.length;
    if (from >= 0 && !taken.some(t => from < t.to && t.from < to)) taken.push({ from, to, term });
  }
  return taken.sort((a, b) => a.from - b.from);
}

/** Terms written in a phrase, in order of mention, each once. */
export function mentioned(phrase: string): Term[] {
  const inOrder = placesIn(` ${clean(phrase)} `).map(t => t.term);
  return inOrder.filter((term, i) => inOrder.indexOf(term) === i);
}

/** Whether a phrase is nothing but terms and small words: "watt amp", "agm or lithium". */
export function isOnlyTerms(phrase: string): boolean {
  const text = ` ${clean(phrase)} `;
  let rest = text;
  for (const { from, to } of placesIn(text))
    rest = `${rest.slice(0, from)}${' '.repeat(to - from + 1)}${rest.slice(to + 1)}`;
  return rest.split(' ').every(word => word === '' || idle.has(word) || joining.has(word));
}

/** Longest phrase that is looked at for slips of the pen, words. */
const mostWords = 12;

/** The term nearest in spelling to any one to four words of a phrase: one slip in five letters. */
function misspelt(words: readonly string[]): Term | undefined {
  let best: { readonly term: Term; readonly share: number } | undefined;
  const few = words.slice(0, mostWords);
  for (let from = 0; from < few.length; from++)
    for (let to = from + 1; to <= Math.min(few.length, from + 4); to++) {
      const said = few.slice(from, to).join(' ');
      for (const { words: spelt, term } of spellings) {
        if (spelt.length < 4 || Math.abs(spelt.length - said.length) > 2) continue;
        const share = distance(said, spelt) / spelt.length;
        if (share <= 0.2 && share < (best?.share ?? 1)) best = { term, share };
      }
    }
  return best?.term;
}

/** The terms a phrase asks after: named ones, else the one nearest in spelling, else none. */
export function termsIn(phrase: string): Term[] {
  const all = clean(phrase);
  const core = all
    .split(' ')
    .filter(word => !idle.has(word))
    .join(' ');
  const whole = exact.get(all) ?? exact.get(core) ?? exact.get(core.replace(/s$/, ''));
  if (whole) return [whole];
  const found = mentioned(all);
  if (found.length > 0) return found;
  const near = misspelt(core.split(' '));
  return near ? [near] : [];
}

/** Up to three terms that look a little like a phrase nobody knows: to offer when asking back. */
export function nearest(phrase: string): Term[] {
  const said = clean(phrase).slice(0, 40);
  const ranked = terms
    .map(term => ({
      term,
      share: Math.min(
        ...[term.key, ...term.aliases].map(s => distance(said, s) / Math.max(s.length, said.length, 1)),
      ),
    }))
    .sort((a, b) => a.share - b.share);
  return ranked
    .filter(r => r.share < 0.7)
    .slice(0, 3)
    .map(r => r.term);
}

/** How it is asked what words mean. */
export const asksMeaning: readonly string[] = [
  'mean|means|meaning|stand|stands|what_is|whats|what_are|explain',
];

/** The terms of a message that is nothing but terms and small words, in their order. */
export function termsAsked({ recognised: { words } }: Pick<ParsedMessage, 'recognised'>): readonly Term[] {
  const said = words.filter(isSpoken).join(' ');
  return isOnlyTerms(said) ? mentioned(said) : [];
}
