import { knownName } from '#language/recognise/owners.ts';
import type { Recognised } from '#language/recognise/recognise.ts';
import { relatives } from '#language/spoken.ts';
import { plainWords } from '#language/words/en/common.ts';
import { givenNames } from '#language/words/en/names.ts';
import { personKey } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';

const kin: ReadonlySet<string> = new Set(relatives);
const given: ReadonlySet<string> = new Set(givenNames.filter(name => !plainWords.has(name)));

/** Who is said to claim something without a name of their own. */
const notNames: ReadonlySet<string> = new Set([
  'i',
  'me',
  'we',
  'us',
  'you',
  'he',
  'she',
  'they',
  'bot',
  'it',
]);

/** Whoever has been heard of in a chat, by key: with a rig, a question, a line. */
export function peopleIn({ rigs, frames, talk, claims }: Memory): string[] {
  const { asks = [], lastWriter, named } = talk ?? {};
  const asked = [...frames.map(frame => frame.from), ...asks.map(([who]) => who)];
  const claiming = claims.map(({ who }) => who.toLowerCase()).filter(who => !notNames.has(who));
  return [...new Set([...Object.keys(rigs), ...asked, ...claiming, lastWriter ?? '', named ?? ''])].filter(
    name => name !== '',
  );
}

/** Who a word names, with or without its "'s"; relatives count, and given names that are no plain words. */
export function whoIn(word: string, known: ReadonlySet<string>): string | undefined {
  const isKnown = { has: (name: string) => known.has(name) || kin.has(name) };
  // "Jones" is no Jon: of names that nobody here has only the plain form counts.
  const bare = word.endsWith('s') ? word.slice(0, -1) : word;
  return knownName(word, isKnown) ?? (given.has(word) ? word : given.has(bare) ? bare : undefined);
}

/** Whether words call somebody so: "me" and "us" are always said, a name where it stands, with or without its "'s". */
export const isCalled = (who: string, words: readonly string[]): boolean =>
  who === 'me' ||
  who === 'us' ||
  who
    .split(' ')
    .some(part => words.some(word => word === part || word === `${part}s` || word === `${part}es`));

/** The words of a line as they were written: a name is no slip of another word. */
export function wordsWritten({ words, mentions }: Recognised): string[] {
  const written = [...words];
  for (const { kind, text, from, to } of mentions)
    if ((kind === 'noun' || kind === 'person') && to - from === 1) written[from] = text;
  return written;
}

/**
 * The last person that a line names, the writer apart: one that is known, or whom it opens with ("Raes driving").
 * @param words as they were written
 */
export function lastNamed(
  memory: Memory,
  words: readonly string[],
  from: string,
  opening?: string,
): string | undefined {
  const known = new Set(peopleIn(memory));
  return (
    words.map(word => whoIn(word, known)).findLast(name => name !== undefined && name !== personKey(from)) ??
    opening
  );
}

/** Who a line opens with where that is a word of no lexicon: "Raes driving", "Zofs got". */
export function openingName({ mentions }: Recognised): string | undefined {
  const [first, next] = mentions;
  const isIs = first?.kind === 'noun' && first.text.endsWith('s') && first.text.length > 3;
  return isIs && /^(?:got|\p{L}+ing)$/u.test(next?.text ?? '') ? first.text.slice(0, -1) : undefined;
}

/** Who "she", "his" or "hers" is at a word: who is named before it, whose answer is replied to, who was spoken of, who asked last. */
export function personMeant(
  memory: Memory,
  { onto, from }: Message,
  words: readonly string[],
  opening?: string,
): string | undefined {
  const isOther = (name: string | undefined): name is string =>
    name !== undefined && name !== personKey(from);
  const theirs = memory.frames.findLast(frame => isOther(frame.from));
  // Days later, whose rig was told: the one that there is beside the writer's own.
  const [rig, ...more] = Object.keys(memory.rigs).filter(name => name !== '' && isOther(name));
  const told = more.every(name => memory.rigs[name] === memory.rigs[rig ?? '']) ? rig : undefined;
  const spoken = lastNamed(memory, words, from, opening);
  return [spoken, onto?.from, memory.talk?.named, theirs?.from, told].find(isOther);
}
