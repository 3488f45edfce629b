import { type Mention, mentionsOf } from './concepts.ts';
import { figureConcepts } from './figures.ts';
import { type Places, waysIn } from './ways.ts';
import { type Word, wordsOf } from './words.ts';

/** What a message means, as far as dangers go: each meaning and its place; figures at -1, anywhere. */
export type Meaning = readonly Mention[];

const figure = (concept: string): Mention => ({ concept, at: -1, sentence: -1 });

/** Reads a message for dangers, the talk before it with it for what its numbers mean. */
export function meaningOf(text: string, before: readonly string[] = []): Meaning {
  const words = wordsOf(text);
  const mentions = mentionsOf(words);
  const figures = new Set(figureConcepts(words, mentions));
  if (before.length > 0) {
    // A limit told yesterday and a kettle asked today: what the numbers of both say that the first alone did not.
    const [old, all] = [before.join('. '), [...before, text].join('. ')].map(wordsOf) as [
      readonly Word[],
      readonly Word[],
    ];
    const known = new Set(figureConcepts(old, mentionsOf(old)));
    for (const concept of figureConcepts(all, mentionsOf(all))) if (!known.has(concept)) figures.add(concept);
  }
  return figures.size === 0 ? mentions : [...mentions, ...Array.from(figures, figure)];
}

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
 * @param before what was meant earlier by the same people, as `earlier` gives it
 */
export function featuresOf(meaning: Meaning, before: ReadonlySet<string>): ReadonlySet<string> {
  const places = placesOf(meaning);
  const features = new Set<string>(places.keys());
  for (const way of waysIn(places, before)) features.add(way);
  for (const concept of before) features.add(`<${concept}`);
  return features;
}

const nothing: ReadonlySet<string> = new Set();

/** The meanings of earlier messages of the talk, and "^" with the code of each danger that they showed. */
export function earlier(texts: readonly string[]): ReadonlySet<string> {
  const found = new Set<string>();
  for (const text of texts) {
    const places = placesOf(meaningOf(text));
    for (const concept of places.keys()) found.add(concept);
    for (const way of waysIn(places, nothing)) found.add(`^${way.slice(1, way.indexOf('/'))}`);
  }
  return found;
}
