/**
 * Looks for words in a message by patterns that stand in tables: "fridge|freezer cut*_out|stop* -fuse". Terms apart by
 * spaces must all be there, in any order; `|` parts alternatives, `*` takes any ending, `_` joins the words of a phrase,
 * `-` before a term: it must not be there.
 */
interface Term {
  readonly isWanted: boolean;
  readonly needles: readonly string[];
}

const compiled = new Map<string, readonly Term[]>();

function termsOf(pattern: string): readonly Term[] {
  const known = compiled.get(pattern);
  if (known) return known;
  const terms = pattern.split(' ').map((term): Term => {
    const isWanted = !term.startsWith('-');
    const alternatives = (isWanted ? term : term.slice(1)).split('|');
    return {
      isWanted,
      needles: alternatives.map(one => ` ${one.replaceAll('_', ' ')} `.replace('* ', '')),
    };
  });
  compiled.set(pattern, terms);
  return terms;
}

const lines = new WeakMap<readonly string[], string>();

/** The words of a message in one line to look through, made once a message; numbers and signs are left out. */
function lineOf(words: readonly string[]): string {
  let line = lines.get(words);
  if (line === undefined) {
    line = ` ${words.filter(word => /^\p{L}/u.test(word)).join(' ')} `;
    lines.set(words, line);
  }
  return line;
}

const holds = (line: string, pattern: string): boolean =>
  termsOf(pattern).every(({ isWanted, needles }) => needles.some(one => line.includes(one)) === isWanted);

/** Whether a pattern is in the words. */
export const isSpotted = (words: readonly string[], pattern: string): boolean =>
  holds(lineOf(words), pattern);

/** The first of the rows of which a pattern is in the words; undefined: none. */
export function spotted<R>(
  words: readonly string[],
  rows: readonly R[],
  patternsOf: (row: R) => readonly string[],
): R | undefined {
  const line = lineOf(words);
  return rows.find(row => patternsOf(row).some(pattern => holds(line, pattern)));
}
