import { addressees, closings, dayGreetings, greetings, leads, openings } from '../words/en/courtesies.ts';

/** Phrases by their first word, as lists of words, longest first. */
type Phrases = ReadonlyMap<string, readonly (readonly string[])[]>;

function phrasesOf(texts: readonly string[], isBackward = false): Phrases {
  const out = new Map<string, (readonly string[])[]>();
  for (const text of texts) {
    const words = text.split(' ');
    const first = isBackward ? words.at(-1)! : words[0]!;
    out.set(
      first,
      [...(out.get(first) ?? []), words].sort((a, b) => b.length - a.length),
    );
  }
  return out;
}

const opening = phrasesOf([...greetings, ...openings]);
const ofDay: ReadonlySet<string> = new Set(dayGreetings);
const addressee = phrasesOf(addressees);
const lead: ReadonlySet<string> = new Set(leads);
const closing = phrasesOf(closings, true);

const isSign = (word: string | undefined): boolean => word !== undefined && /^[^\p{L}\p{N}]+$/u.test(word);

/** How many words of a phrase stand at a place; 0 where none does. */
function lengthAt(phrases: Phrases, words: readonly string[], at: number): number {
  const found = phrases
    .get(words[at] ?? '')
    ?.find(phrase => phrase.every((word, i) => words[at + i] === word));
  return found?.length ?? 0;
}

function lengthBefore(phrases: Phrases, words: readonly string[], end: number): number {
  const found = phrases
    .get(words[end - 1] ?? '')
    ?.find(phrase => phrase.every((word, i) => words[end - phrase.length + i] === word));
  return found?.length ?? 0;
}

/**
 * Where the matter of a message starts and ends, without the courtesies before and after it. A message of nothing else
 * is left whole.
 * @param words of the tokens, small; '' for numbers
 */
export function matterOf(words: readonly string[]): readonly [from: number, to: number] {
  let from = 0;
  for (;;) {
    let at = from;
    const told = lengthAt(opening, words, at);
    if (told > 0) at += told + lengthAt(addressee, words, at + told);
    else if (ofDay.has(words[at] ?? '')) {
      const named = lengthAt(addressee, words, at + 1);
      if (named === 0 && !(isSign(words[at + 1]) && words[at + 1] !== '-')) break;
      at += 1 + named;
    } else break;
    while (isSign(words[at]) && words[at] !== '-' && words[at] !== '+') at++;
    if (lead.has(words[at] ?? '')) at++;
    if (at >= words.length) break;
    from = at;
  }
  let to = words.length;
  for (;;) {
    let end = to;
    while (end > from && isSign(words[end - 1])) end--;
    const length = lengthBefore(closing, words, end);
    if (length === 0 || end - length <= from) break;
    end -= length;
    while (end > from && (words[end - 1] === ',' || words[end - 1] === '-')) end--;
    if (end <= from) break;
    to = end;
  }
  return [from, to];
}
