import { type Mention, mentionsOf } from './concepts.ts';
import { figureConcepts } from './figures.ts';
import { type Places, waysIn } from './ways.ts';
import { wordsOf } from './words.ts';

/** What a message means, as far as dangers go: each meaning and its place; figures at -1, anywhere. */
export type Meaning = readonly Mention[];

const figure = (concept: string): Mention => ({ concept, at: -1, sentence: -1 });

/** What was read last: deciding a message, answering it and warning of it ask for the same one. */
let kept: readonly { readonly text: string; readonly meaning: Meaning }[] = [];

/** A text without the stops and spaces that it ends in: they change no word before them, nor the sentence of one. */
function withoutEnd(text: string): string {
  let end = text.length;
  while (end > 0 && (text[end - 1] === '.' || text[end - 1] === ' ')) end--;
  return end === text.length ? text : text.slice(0, end);
}

/** Reads a message for dangers. */
export function meaningOf(written: string): Meaning {
  const text = withoutEnd(written);
  for (const known of kept) if (known.text === text) return known.meaning;
  const words = wordsOf(text);
  const mentions = mentionsOf(words);
  const meaning = [...mentions, ...figureConcepts(words, mentions).map(figure)];
  kept = [{ text, meaning }, ...kept.slice(0, 1)];
  return meaning;
}

/** The names of what a message means. */
export const conceptsIn = (text: string): string[] => [
  ...new Set(meaningOf(text).map(({ concept }) => concept)),
];

function placesOf(meaning: Meaning): Places {
  const places = new Map<string, Mention[]>();
  for (const mention of meaning) {
    const row = places.get(mention.concept);
    if (row) row.push(mention);
    else places.set(mention.concept, [mention]);
  }
  return places;
}

/**
 * The features of a message: each meaning by itself, the ways of the table, and what the talk before adds ("<"
 * before its name). Pairs of meanings were tried and held no better under cross-validation.
 * @param before the meanings of earlier messages of the same people
 */
export function featuresOf(meaning: Meaning, before: ReadonlySet<string>): ReadonlySet<string> {
  const places = placesOf(meaning);
  const features = new Set<string>(places.keys());
  for (const way of waysIn(places, before)) features.add(way);
  for (const concept of before) features.add(`<${concept}`);
  return features;
}
