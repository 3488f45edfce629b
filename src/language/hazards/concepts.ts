import { present } from '#basics/present.ts';
import { deniable, denials, lexicon, ordinary } from './lexicon-table.ts';
import type { Word } from './words.ts';

/** Where a meaning stands in a message: of which word, in which sentence. */
export interface Mention {
  readonly concept: string;
  readonly at: number;
  readonly sentence: number;
}

interface Phrase {
  readonly rest: readonly string[];
  readonly concept: string;
}

const exact = new Map<string, string[]>();
const stems = new Map<string, string[]>();
const phrases = new Map<string, Phrase[]>();
const put = <T>(map: Map<string, T[]>, key: string, value: T): void => {
  const row = map.get(key);
  if (row) row.push(value);
  else map.set(key, [value]);
};
const shorter = (word: string): string[] => Array.from(word, (_, i) => word.slice(0, i) + word.slice(i + 1));
const longEnough = 6;

for (const [concept, words] of Object.entries(lexicon))
  for (const entry of words.split(' ')) {
    const parts = entry.split('_');
    if (parts.length > 1) put(phrases, parts[0]!, { rest: parts.slice(1), concept });
    else if (entry.endsWith('~')) put(stems, entry.slice(0, -1), concept);
    else put(exact, entry, concept);
  }
/** Every way to write a longer word with one letter left out, to the word. Made when a word is met that none knows. */
let madeSlips: Map<string, string[]> | undefined;
function slips(): ReadonlyMap<string, readonly string[]> {
  if (madeSlips) return madeSlips;
  madeSlips = new Map();
  for (const word of exact.keys())
    if (word.length >= longEnough) for (const key of [word, ...shorter(word)]) put(madeSlips, key, word);
  return madeSlips;
}

const longestExact = Math.max(...[...exact.keys()].map(word => word.length));

const shortestStem = Math.min(...[...stems.keys()].map(s => s.length));

/** Whether one letter more, less, other or changed places makes the other word. */
function isSlip(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1) return false;
  let i = 0;
  while (i < a.length && a[i] === b[i]) i += 1;
  const rest = (x: string, from: number): string => x.slice(from);
  return (
    rest(a, i + 1) === rest(b, i + 1) ||
    rest(a, i + 1) === rest(b, i) ||
    rest(a, i) === rest(b, i + 1) ||
    (a[i] === b[i + 1] && a[i + 1] === b[i] && rest(a, i + 2) === rest(b, i + 2))
  );
}

function stemmed(word: string): readonly string[] | undefined {
  for (let n = Math.min(word.length, 12); n >= shortestStem; n -= 1) {
    const found = stems.get(word.slice(0, n));
    if (found) return found;
  }
  return undefined;
}

const inflected = (word: string): readonly string[] | undefined => {
  if (ordinary.has(word)) return undefined;
  for (const ending of ['s', 'es', 'd', 'ed', 'ing', 'in'])
    if (word.length > ending.length + 3 && word.endsWith(ending)) {
      const bare = word.slice(0, -ending.length);
      const found = exact.get(bare) ?? exact.get(`${bare}e`);
      if (found) return found;
    }
  return undefined;
};

/** The word of the lexicon that this one is a slip of, if any. */
export function slipOf(word: string): string | undefined {
  if (
    word.length < longEnough - 1 ||
    word.length > longestExact + 1 ||
    ordinary.has(word) ||
    meaningsOfWhole(word)
  )
    return undefined;
  for (const key of [word, ...shorter(word)])
    for (const meant of slips().get(key) ?? []) if (meant[0] === word[0] && isSlip(meant, word)) return meant;
  return undefined;
}

const meaningsOfWhole = (word: string): readonly string[] | undefined => {
  const whole = exact.get(word) ?? inflected(word);
  const stem = stemmed(word);
  return whole && stem ? [...whole, ...stem] : (whole ?? stem);
};

const known = new Map<string, readonly string[]>();
const none: readonly string[] = [];

/** What a word means by itself. Remembers the words of late: chats repeat theirs. */
function meaningsOf(word: string): readonly string[] {
  let found = known.get(word);
  if (found) return found;
  const slip = slipOf(word);
  found = meaningsOfWhole(word) ?? (slip === undefined ? none : exact.get(slip)!);
  if (known.size > 5000) known.clear();
  known.set(word, found);
  return found;
}

const startsHere = (words: readonly Word[], at: number, rest: readonly string[]): boolean => {
  for (let k = 0; k < rest.length; k += 1) {
    const text = words[at + 1 + k]?.text;
    const want = rest[k]!;
    if (text === undefined || !(want.endsWith('~') ? text.startsWith(want.slice(0, -1)) : text === want))
      return false;
  }
  return true;
};

/** The meanings in a message, in its order; one that is denied ("no headache") is named with "no-" before it. */
export function mentionsOf(words: readonly Word[]): readonly Mention[] {
  const found: Mention[] = [];
  for (let at = 0; at < words.length; at += 1) {
    const { text, sentence } = words[at]!;
    const isDenied =
      at > 0 && present(words[at - 1]).sentence === sentence && denials.has(present(words[at - 1]).text);
    const add = (concept: string): void => {
      found.push({ concept: isDenied && deniable.has(concept) ? `no-${concept}` : concept, at, sentence });
    };
    // "Lead acid" is no lead.
    const isAcid = text === 'lead' && words[at + 1]?.text === 'acid';
    for (const concept of isAcid ? none : meaningsOf(text)) add(concept);
    for (const phrase of phrases.get(text) ?? none)
      if (startsHere(words, at, (phrase as Phrase).rest)) add((phrase as Phrase).concept);
    if (denials.has(text)) add('denial');
  }
  return found;
}
