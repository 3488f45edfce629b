import { type Mention, mentionsOf } from './concepts.ts';
import { figureConcepts } from './figures.ts';
import { reach, waysIn } from './ways.ts';
import { wordsOf } from './words.ts';

/** What a message means, as far as dangers go: each meaning once a place, figures at -1, anywhere. */
export type Meaning = readonly Mention[];

/** Reads a message for dangers. */
export function meaningOf(text: string): Meaning {
  const words = wordsOf(text);
  const mentions = mentionsOf(words);
  const figures = figureConcepts(words, mentions);
  return figures.length === 0 ? mentions : [...mentions, ...figures.map(concept => ({ concept, at: -1, sentence: -1 }))];
}

/**
 * The features of a message: each meaning by itself, pairs that stand together, the ways of the table, and what
 * the talk before adds ("<" before its name).
 * @param before what was meant earlier by the same people
 */
export function featuresOf(meaning: Meaning, before: ReadonlySet<string>): ReadonlySet<string> {
  const places = new Map<string, Mention[]>();
  for (const mention of meaning) {
    const row = places.get(mention.concept);
    if (row) row.push(mention);
    else places.set(mention.concept, [mention]);
  }
  const features = new Set<string>(places.keys());
  for (let i = 0; i < meaning.length; i += 1)
    for (let j = i + 1; j < meaning.length; j += 1) {
      const a = meaning[i]!;
      const b = meaning[j]!;
      const isNear = b.at < 0 || (a.sentence === b.sentence && b.at - a.at <= reach);
      if (isNear && a.concept !== b.concept) features.add(a.concept < b.concept ? `${a.concept} ${b.concept}` : `${b.concept} ${a.concept}`);
    }
  for (const way of waysIn(places, before)) features.add(way);
  for (const concept of before) features.add(`<${concept}`);
  return features;
}

/** The meanings of earlier messages of the talk, as `featuresOf` takes them. */
export const earlier = (texts: readonly string[]): ReadonlySet<string> => new Set(texts.flatMap(text => meaningOf(text).map(m => m.concept)));
