import { createRequire } from 'node:module';
import { fold } from '#places/fold.ts';
import type { Foreign, Gloss } from './words/gloss.ts';

/** A word of the English that stands for a phrase; '#' is a number carried over. */
export type English = readonly string[];

interface Node {
  english: English | undefined;
  readonly next: Map<string, Node>;
}

/** A language's words, ready to be looked up. */
export interface Glosses {
  readonly first: Node;
  /** Single names of gear and appliances, for compounds. */
  readonly names: ReadonlyMap<string, English>;
  readonly elided: ReadonlySet<string>;
  readonly isCompounding: boolean;
}

const load = createRequire(import.meta.url);
const held = new Map<string, Glosses>();

/** A word as it is looked up: without accents; single letters keep theirs ("à" is not "A"). */
export const folded = (word: string): string => (word.length > 1 ? fold(word) : word);

/** Umlauts written out: "kühlbox" → "kuehlbox". */
const writtenOut = (phrase: string): string =>
  phrase.replaceAll('ä', 'ae').replaceAll('ö', 'oe').replaceAll('ü', 'ue');

/** The words of a language by its code. Read from its folder at first use and held: English never pays for it. */
export function glossesOf(code: string): Glosses {
  const found = held.get(code) ?? build((load(`./words/${code}/index.ts`) as { foreign: Foreign }).foreign);
  held.set(code, found);
  return found;
}

function build({ phrases, things, endings, isCompounding, elided }: Foreign): Glosses {
  const first: Node = { english: undefined, next: new Map() };
  const names = new Map<string, English>();
  const add = (phrase: string, english: English, isSure: boolean): void => {
    let node = first;
    for (const word of phrase.replaceAll('/', ' / ').trim().split(/ +/)) {
      const key = folded(word);
      const next = node.next.get(key) ?? { english: undefined, next: new Map() };
      node.next.set(key, next);
      node = next;
    }
    if (isSure) node.english = english;
    else node.english ??= english;
  };
  const addAll = (phrase: string, english: English, isSure: boolean): void => {
    add(phrase, english, isSure);
    const out = writtenOut(phrase);
    if (out !== phrase) add(out, english, isSure);
  };
  const each = (table: Gloss, use: (phrase: string, english: English) => void): void => {
    for (const [english, says] of Object.entries(table)) for (const say of says) use(say, english.split(' '));
  };
  for (const table of phrases) each(table, (phrase, english) => addAll(phrase, english, true));
  for (const table of things) each(table, (phrase, english) => addAll(phrase, english, true));
  // Plurals and cases only where they don't mean anything of their own.
  for (const table of things)
    each(table, (phrase, english) => {
      for (const ending of endings) {
        addAll(phrase + ending, english, false);
        if (phrase.includes(' '))
          addAll(
            phrase
              .split(' ')
              .map(word => word + ending)
              .join(' '),
            english,
            false,
          );
        if (phrase.includes(' ')) addAll(phrase.replace(' ', `${ending} `), english, false);
      }
      if (isCompounding && !phrase.includes(' '))
        for (const ending of ['', ...endings]) {
          names.set(folded(phrase + ending), english);
          names.set(folded(writtenOut(phrase + ending)), english);
        }
    });
  return { first, names, elided: new Set(elided), isCompounding };
}

/** Shortest name at the end of a compound, and the longest compound, letters. */
const leastTail = 5;
const longest = 40;

/** The name that a compound ends in: "kompressorkuhlbox" → cool box. */
export function compound({ names, isCompounding }: Glosses, word: string): English | undefined {
  if (!isCompounding || word.length > longest) return undefined;
  for (let from = 3; from <= word.length - leastTail; from++) {
    const found = names.get(word.slice(from));
    if (found) return found;
  }
  return undefined;
}
