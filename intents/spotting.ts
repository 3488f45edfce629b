import { isSpoken } from '#basics/spoken.ts';

/**
 * Looks for words in a message by patterns that stand in tables: "fridge|freezer cut*_out|stop* -fuse". Terms apart by
 * spaces must all be there, in any order; `|` parts alternatives, `*` takes any ending, `_` joins the words of a phrase,
 * `-` before a term: it must not be there.
 */
interface Term {
  readonly isWanted: boolean;
  readonly needles: readonly Needle[];
}

interface Needle {
  readonly text: string;
  /** How a word begins that it finds; undefined where its ending is free before that. */
  readonly start: string | undefined;
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
      needles: alternatives.map(one => needleOf(` ${one.replaceAll('_', ' ')} `.replace('* ', ''))),
    };
  });
  // The order changes nothing: what is soonest looked for, and seldom there, goes first.
  terms.sort((a, b) => Number(b.isWanted) - Number(a.isWanted) || a.needles.length - b.needles.length);
  compiled.set(pattern, terms);
  return terms;
}

/** So many letters at the beginning of a word are what patterns are found by. */
const startLetters = 3;

function needleOf(text: string): Needle {
  const [, word = '', ...rest] = text.split(' ');
  const isWhole = rest.length > 0 || word.length >= startLetters;
  return { text, start: isWhole ? word.slice(0, startLetters) : undefined };
}

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

/** Whether one of them is in a line; only where a word begins so is the line looked through. */
function hasAny({ text, starts }: Line, needles: readonly Needle[]): boolean {
  for (const { text: needle, start } of needles)
    if ((start === undefined || starts.has(start)) && text.includes(needle)) return true;
  return false;
}

function holds(line: Line, terms: readonly Term[]): boolean {
  for (const { isWanted, needles } of terms) if (hasAny(line, needles) !== isWanted) return false;
  return true;
}

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

/** The beginnings of which a message must have one for a pattern: those of its term with the fewest alternatives. */
function startsOf(terms: readonly Term[]): readonly string[] | undefined {
  const [rarest] = terms
    .filter(({ isWanted }) => isWanted)
    .toSorted((a, b) => a.needles.length - b.needles.length);
  const starts = rarest?.needles.map(({ start }) => start) ?? [undefined];
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
