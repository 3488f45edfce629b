import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { present } from '#basics/present.ts';

/** Letters in a row: the first, then how far each moves on, or one width for all up to the last. */
type Run = readonly [from: number, widths: number | readonly number[], to?: number];

const folder = join(import.meta.dirname, 'fonts');
let tables: Readonly<Record<string, readonly Run[]>> | undefined;
/** Read when the first picture is drawn. Written by `npm run fonts`. */
const fonts = (): Readonly<Record<string, readonly Run[]>> => {
  tables ??= JSON.parse(readFileSync(join(folder, 'widths.json'), 'utf8')) as NonNullable<typeof tables>;
  return tables;
};

export type Weight = 400 | 600;
const plainFonts: Readonly<Record<Weight, string>> = { 400: 'regular', 600: 'semibold' };
/** In this order: what several have is drawn in the first. */
const others = ['hebrew', 'arabic', 'devanagari', 'thai', 'hangul', 'han'] as const;

const lastOf = ([from, widths, to]: Run): number =>
  to ?? from + (typeof widths === 'number' ? 0 : widths.length - 1);

/** Width of a character in a font, thousandths of its size; undefined where the font lacks it. */
function advanceIn(font: string, code: number): number | undefined {
  const runs = fonts()[font] ?? [];
  let [low, high] = [0, runs.length - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    const run = present(runs[middle]);
    if (code < run[0]) high = middle - 1;
    else if (code > lastOf(run)) low = middle + 1;
    else return typeof run[1] === 'number' ? run[1] : run[1][code - run[0]];
  }
  return undefined;
}

/** How a character is drawn: in which font, and how far it moves on. */
interface Drawn {
  readonly font: string;
  readonly advance: number;
}
const known: Readonly<Record<Weight, Map<string, Drawn | undefined>>> = { 400: new Map(), 600: new Map() };
/** More than the letters of any few languages, and no more than a megabyte. */
const mostKnown = 5000;

/** Undefined where no font has the character. */
function drawnOf(character: string, weight: Weight): Drawn | undefined {
  const cache = known[weight];
  if (cache.has(character)) return cache.get(character);
  const code = present(character.codePointAt(0));
  const font = [plainFonts[weight], ...others].find(name => advanceIn(name, code) !== undefined);
  const drawn =
    font === undefined
      ? undefined
      : { font, advance: isMark(character) ? 0 : present(advanceIn(font, code)) };
  if (cache.size >= mostKnown) cache.clear();
  cache.set(character, drawn);
  return drawn;
}

const isMark = (character: string): boolean => /\p{M}/u.test(character);

/** How wide a line is, px; letters that join or stack come out a little narrower. */
export function widthOf(text: string, size: number, weight: Weight = 400): number {
  let sum = 0;
  for (const character of text) sum += drawnOf(character, weight)?.advance ?? 0;
  return (sum * size) / 1000;
}

/** The files that a picture's words need: the plain ones, and those of other scripts where one is written. */
export function fontFilesFor(texts: Iterable<string>): string[] {
  const names = new Set<string>(Object.values(plainFonts));
  for (const text of texts)
    for (const character of text) {
      const drawn = drawnOf(character, 400);
      if (drawn) names.add(drawn.font);
    }
  return [...names].map(name => join(folder, `${name}.ttf`));
}

const canDraw = (character: string): boolean => drawnOf(character, 400) !== undefined;
const isLetter = (character: string): boolean => /[\p{L}\p{N}\p{M}]/u.test(character);
const isJoiner = (character: string): boolean => character === '\u200c' || character === '\u200d';

/** A text as it can be drawn: signs that no font has are left out, letters that none has become "…". */
export function printable(text: string): string {
  const drawn = [...text.normalize('NFC')].map(character => {
    if (/\p{C}/u.test(character) && !isJoiner(character)) return '';
    if (canDraw(character)) return character;
    return isLetter(character) ? '…' : /\s/u.test(character) ? ' ' : '';
  });
  return drawn.join('').replace(/…+/g, '…').replace(/ +/g, ' ').trim();
}

/**
 * The names of a picture, each as it can be drawn. One in a script that no font has stands as its number, "(2)";
 * the words below the picture tell it by the same number.
 */
export const drawnNames = (names: readonly string[]): string[] =>
  names.map((name, i) => {
    const drawn = printable(name);
    return drawn === '' || (drawn.includes('…') && !name.includes('…')) ? `(${i + 1})` : drawn;
  });

/** A text cut to a width with "…", between whole characters. */
export function fitted(text: string, mostPx: number, size: number, weight: Weight = 400): string {
  const drawn = printable(text);
  if (widthOf(drawn, size, weight) <= mostPx) return drawn;
  const characters = [...new Intl.Segmenter().segment(drawn)].map(({ segment }) => segment);
  while (characters.length > 0) {
    characters.pop();
    const cut = `${characters.join('').trimEnd()}…`;
    if (widthOf(cut, size, weight) <= mostPx) return cut;
  }
  return '';
}

const isUnit = (word: string): boolean => word.length <= 5 && /^[%\p{L}]/u.test(word);

/** The words of a text; a number and its unit stay together: "53 %", "9 am". */
function wordsOf(text: string): string[] {
  const words: string[] = [];
  for (const word of text.split(' ')) {
    const last = words.at(-1);
    if (last !== undefined && /\d$/.test(last) && isUnit(word)) words[words.length - 1] = `${last} ${word}`;
    else if (word !== '') words.push(word);
  }
  return words;
}

/** A text in lines of a width, by its words; what doesn't fit into so many lines ends with "…". */
export function wrapped(
  text: string,
  mostPx: number,
  most: number,
  size: number,
  weight: Weight = 400,
): string[] {
  const words = wordsOf(printable(text));
  const lines: string[] = [];
  while (words.length > 0 && lines.length < most) {
    let line = present(words.shift());
    while (words.length > 0 && widthOf(`${line} ${words[0]}`, size, weight) <= mostPx)
      line += ` ${words.shift()}`;
    lines.push(fitted(lines.length === most - 1 ? [line, ...words].join(' ') : line, mostPx, size, weight));
  }
  return lines;
}

/** The same in lines of about one length: a title's last word never stands alone. */
export function balanced(
  text: string,
  mostPx: number,
  most: number,
  size: number,
  weight: Weight = 400,
): string[] {
  let lines = wrapped(text, mostPx, most, size, weight);
  for (let px = mostPx - 8; px > mostPx / 2; px -= 8) {
    const narrower = wrapped(text, px, most, size, weight);
    if (narrower.length > lines.length || narrower.at(-1)?.endsWith('…')) break;
    lines = narrower;
  }
  return lines;
}
