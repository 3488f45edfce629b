import { isSpoken } from '#basics/spoken.ts';

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

/** So many letters at the beginning of a word are what patterns are found by. */
const startLetters = 3;

/** The words of a message in one line to look through, and how they begin. */
interface Line {
  readonly text: string;
  readonly starts: ReadonlySet<string>;
}

const lines = new WeakMap<readonly string[], Line>();

/** Made once a message; numbers and signs are left out. */
function lineOf(words: readonly string[]): Line {
  let line = lines.get(words);
  if (line === undefined) {
    const text = ` ${words.filter(isSpoken).join(' ')} `;
    line = { text, starts: new Set(text.split(' ').map(word => word.slice(0, startLetters))) };
    lines.set(words, line);
  }
  return line;
}

const holds = ({ text }: Line, terms: readonly Term[]): boolean =>
  terms.every(({ isWanted, needles }) => needles.some(one => text.includes(one)) === isWanted);

/** Whether any of the patterns is in the words. */
export function isSpotted(words: readonly string[], patterns: readonly string[]): boolean {
  const line = lineOf(words);
  return patterns.some(pattern => holds(line, termsOf(pattern)));
}

/** The patterns of a table in its order, each with its row, and which of them a word of a message can begin. */
interface Index {
  readonly patterns: readonly { readonly row: unknown; readonly terms: readonly Term[] }[];
  readonly byStart: ReadonlyMap<string, readonly number[]>;
  /** Those that words of any beginning may match. */
  readonly byAny: readonly number[];
}

/** How a word begins that a needle finds; undefined where its ending is free before that. */
function startOf(needle: string): string | undefined {
  const [, word = '', ...rest] = needle.split(' ');
  return rest.length > 0 || word.length >= startLetters ? word.slice(0, startLetters) : undefined;
}

/** The beginnings of which a message must have one for a pattern: those of its term with the fewest alternatives. */
function startsOf(terms: readonly Term[]): readonly string[] | undefined {
  const [rarest] = terms
    .filter(({ isWanted }) => isWanted)
    .toSorted((a, b) => a.needles.length - b.needles.length);
  const starts = rarest?.needles.map(startOf) ?? [undefined];
  return starts.every(start => start !== undefined) ? [...new Set(starts)] : undefined;
}

const indices = new WeakMap<readonly unknown[], Index>();

/** Made once a table: a message then meets the few patterns that its words can begin, instead of hundreds. */
function indexOf<R>(rows: readonly R[], patternsOf: (row: R) => readonly string[]): Index {
  const known = indices.get(rows);
  if (known) return known;
  const patterns = rows.flatMap(row => patternsOf(row).map(pattern => ({ row, terms: termsOf(pattern) })));
  const byStart = new Map<string, number[]>();
  const byAny: number[] = [];
  patterns.forEach(({ terms }, i) => {
    const starts = startsOf(terms);
    if (!starts) byAny.push(i);
    for (const start of starts ?? []) byStart.set(start, [...(byStart.get(start) ?? []), i]);
  });
  const index = { patterns, byStart, byAny };
  indices.set(rows, index);
  return index;
}

/**
 * The first of the rows of which a pattern is in the words; undefined: none.
 * @param rows a table that stays, always with the same patterns
 * @param isMeant whether a row that was found may be taken; asked only of such
 */
export function spotted<R>(
  words: readonly string[],
  rows: readonly R[],
  patternsOf: (row: R) => readonly string[],
  isMeant: (row: R) => boolean = () => true,
): R | undefined {
  const line = lineOf(words);
  const { patterns, byStart, byAny } = indexOf(rows, patternsOf);
  const near = new Set(byAny);
  for (const start of line.starts) for (const i of byStart.get(start) ?? []) near.add(i);
  for (const i of [...near].sort((a, b) => a - b)) {
    const { row, terms } = patterns[i] as { row: R; terms: readonly Term[] };
    if (holds(line, terms) && isMeant(row)) return row;
  }
  return undefined;
}
