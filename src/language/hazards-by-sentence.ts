import { dangersAlone } from './decide/message.ts';
import type { Model } from './decide/model.ts';
import { recognise } from './recognise/recognise.ts';

type Dangers = ReadonlyMap<string, number>;

/**
 * What a sentence alone shows counts so much: without the rest it may sound like what it is not. Chosen on open messages
 * by weights that had not seen them.
 */
const ofSentence = 0.5;

/** A shorter one says too little by itself. */
const leastWords = 3;

/** The sentences of a text that is of several, each long enough to say something. */
function sentencesOf(text: string): string[] {
  const all = text.split(/(?<=[.?!\n])\s+/);
  return all.length < 2 ? [] : all.filter(sentence => sentence.split(/\s+/).length >= leastWords);
}

/**
 * The dangers of a message as its whole shows them, or the one sentence that tells of them: a danger told by the way,
 * among all that is asked and stated, must not drown in it.
 */
export function withSentences(model: Model, text: string, whole: Dangers): Dangers {
  const sentences = sentencesOf(text);
  if (sentences.length < 2) return whole;
  const most = new Map(whole);
  for (const sentence of sentences)
    for (const [code, p] of dangersAlone(model, recognise(sentence).mentions, sentence))
      most.set(code, Math.max(most.get(code) ?? 0, ofSentence * p));
  return most;
}
