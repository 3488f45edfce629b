import { folded } from '../glosses.ts';
import { type State, wordAt } from '../state.ts';
import { tells } from '../words/tells.ts';
import { gloss } from './gloss.ts';

/** What a word tells: a bit for every language that has it, and the one that it gives away by itself. */
interface Tell {
  bits: number;
  /** Anywhere; in a message of a few words only. */
  sure: string | undefined;
  alone: string | undefined;
}
const telling = new Map<string, Tell>();
/** The names of languages. */
const called = new Map<string, string>();
const list = (words: string): string[] => words.split(/\s+/).filter(Boolean);
for (const [i, row] of tells.entries()) {
  const mark = (words: string, more: Partial<Tell>): void => {
    for (const word of list(words)) {
      const old = telling.get(word) ?? { bits: 0, sure: undefined, alone: undefined };
      telling.set(word, { ...old, ...more, bits: old.bits | (1 << i) });
    }
  };
  mark(row.words, {});
  mark(row.sure, { sure: row.code });
  mark(row.alone, { alone: row.code });
  for (const name of row.called) called.set(name, row.code);
}
/** What stands before the name of a language to be spoken: "auf deutsch"; before its code: "/language de". */
const beforeNames = new Set(['auf', 'in', 'en', 'speak', 'sprich', 'parle', 'habla']);
const beforeAll = new Set(['language', 'sprache', 'langue', 'idioma']);
/** Longer messages say something else as well. */
const mostWordsOfWish = 5;
const fewWords = 3;
/** Of so many words one has to tell. */
const oneOf = { read: 8, other: 4 };

const otherScript = /[\u0370-\u1fff\u2e80-\ud7ff\uf900-\ufdff\ufe70-\ufefc]/;

/**
 * Finds the language of a message and puts English in the place of its words where it is one that we read. In
 * another language or script it says so; numbers and units are read all the same. In doubt it is English.
 */
export function language(state: State): void {
  const hits = new Array<number>(tells.length).fill(0);
  let [words, foreign] = [0, 0];
  let sure: string | undefined;
  let alone: string | undefined;
  for (const { kind, text } of state.tokens) {
    if (kind !== 'word') continue;
    words++;
    const tell = telling.get(text);
    if (tell) {
      for (let i = 0, bits = tell.bits; bits !== 0; i++, bits >>= 1) if (bits & 1) hits[i]!++;
      sure ??= tell.sure;
      alone ??= tell.alone;
    }
    if (text.charCodeAt(0) > 0x36f && otherScript.test(text)) foreign++;
  }
  const span = { from: 0, to: state.text.length };
  if (foreign > 0 && foreign * 2 >= words) state.issues.push({ code: 'other-language', span, data: {} });
  if (words <= mostWordsOfWish) state.speak = wish(state);
  const row = tells[strongest(hits)]!;
  const isClear = row.code !== 'en' && isTold(hits[tells.indexOf(row)]!, words, row.isRead);
  const guessed = sure ?? (words <= fewWords ? alone : undefined);
  const code =
    isClear && row.isRead ? row.code : (talked(state, hits) ?? (hits[0] === 0 ? guessed : undefined));
  if (code !== undefined) {
    state.language = code;
    gloss(state, code);
  } else if (isClear) state.issues.push({ code: 'other-language', span, data: { language: row.name } });
}

/** The language with the most telling words; English where another has no more. */
function strongest(hits: readonly number[]): number {
  let best = 0;
  for (let i = 1; i < hits.length; i++) if (hits[i]! > hits[best]!) best = i;
  return best;
}

/** Whether enough of the words tell. */
const isTold = (hits: number, words: number, isRead: boolean): boolean =>
  hits >= 2 && hits * (isRead ? oneOf.read : oneOf.other) >= words;

/** The language of the talk so far, where nothing speaks for English. */
function talked({ context }: State, hits: readonly number[]): string | undefined {
  if (context.language === undefined || context.language === 'en') return undefined;
  const own = tells.findIndex(({ code }) => code === context.language);
  return own > 0 && (hits[0] === 0 || hits[own]! > hits[0]!) ? context.language : undefined;
}

/** The language that a short message asks to be spoken: "auf deutsch", "en français", "/language es". */
function wish(state: State): string | undefined {
  for (let i = 1; i < state.tokens.length; i++) {
    const lead = wordAt(state, i - 1);
    const isPlain = beforeAll.has(lead);
    if (!isPlain && !beforeNames.has(lead)) continue;
    const name = folded(wordAt(state, i));
    const code = called.get(name);
    if (code === undefined || (!isPlain && name.length < 3)) continue;
    // "In English, please" is a wish for simpler words where the talk is in English.
    return code === 'en' && !isPlain && (state.context.language ?? 'en') === 'en' ? undefined : code;
  }
  return undefined;
}
