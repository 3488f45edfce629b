import { featuresOf, meaningOf } from '../hazards/features.ts';
import type { Mention } from '../recognise/mention.ts';
import type { Stated } from './assemble.ts';
import { dangersAsMessage, dangersBy } from './dangers.ts';
import { scratch } from './feature-list.ts';
import { type Frame, frameOf } from './frame.ts';
import { hashText, mix } from './hash.ts';
import { factFeatures, wordFeatures } from './intent-features.ts';
import { headOf, type Model, shares, unitsFor } from './model.ts';
import { Slab } from './slab.ts';

/** The meanings of lines before, without which of them it was. */
const meantIn = (meant: readonly string[] = []): ReadonlySet<string> =>
  new Set(meant.map(concept => concept.slice(1)));

/** The meanings of the words as dangers go, with those of the lines before (`TalkContext.meant`). */
export function meaningFeatures(text: string, meant?: readonly string[]): number[] {
  const out: number[] = [];
  for (const feature of featuresOf(meaningOf(text), meantIn(meant))) out.push(mix(600, hashText(feature)));
  return out;
}

/** What speaks for a question or a danger: the words, their meanings as dangers go, what is stated. */
export function messageFeatures(frame: Frame, stated: Stated, words: readonly number[]): number[] {
  const features: number[] = [];
  wordFeatures(frame, features);
  factFeatures(frame, stated, features);
  return [...words, ...new Set(features)];
}

const leastSecond = 0.15;

/** The places of the largest numbers, largest first; of equal ones the earlier first. */
export function largest(values: Float64Array, most: number): number[] {
  const out: number[] = [];
  for (let c = 0; c < values.length; c++) {
    let at = out.length;
    while (at > 0 && values[out[at - 1]!]! < values[c]!) at--;
    if (at >= most) continue;
    out.splice(at, 0, c);
    if (out.length > most) out.pop();
  }
  return out;
}

/** How many readings a message has that state something else, about. */
const usualReadings = 7;

/** Scores of a message as a whole: what its words say is summed once, what a reading states is added. */
export class MessageScores {
  readonly #model: Model;
  readonly #frame: Frame;
  readonly #words: Int32Array;
  readonly #sum: Int32Array;
  readonly #slab: Slab;
  /** Hidden units where nothing is stated. */
  #ofNothing: Float64Array | undefined;

  /** @param meanings as `meaningFeatures` gives them */
  constructor(model: Model, frame: Frame, meanings: readonly number[]) {
    this.#model = model;
    this.#frame = frame;
    this.#words = new Int32Array(model.message.bias.length);
    this.#sum = new Int32Array(this.#words.length);
    this.#slab = new Slab(usualReadings * this.#words.length);
    const features = scratch.clear();
    for (const feature of meanings) features.push(feature);
    wordFeatures(frame, features);
    model.message.features.addOnce(features, this.#words);
  }

  /** Hidden units for what a reading states. */
  unitsOf(stated: Stated): Float64Array {
    const isNothing = Object.keys(stated).length === 0;
    if (isNothing && this.#ofNothing) return this.#ofNothing;
    const { message } = this.#model;
    const sum = this.#sum;
    sum.set(this.#words);
    factFeatures(this.#frame, stated, scratch.clear());
    message.features.addOnce(scratch, sum);
    const units = this.#slab.take(sum.length);
    unitsFor(message, sum, units);
    if (isNothing) this.#ofNothing = units;
    return units;
  }

  /** The questions that the words alone point to, the likeliest two at most, as hashes. */
  firstQuestions(): number[] {
    const { message, intentNames } = this.#model;
    const p = shares(message, this.unitsOf({}), ...headOf(this.#model, 'first'));
    return largest(p, 2)
      .filter((c, k) => k === 0 || p[c]! > leastSecond)
      .map(c => hashText(intentNames[c]!));
  }
}

/** The questions that the words alone point to, the likeliest two at most. */
export const firstQuestions = (model: Model, frame: Frame, meanings: readonly number[]): number[] =>
  new MessageScores(model, frame, meanings).firstQuestions();

/** The dangers that a stretch of words shows by itself, whatever it states, each with its probability. */
export function dangersAlone(
  model: Model,
  mentions: readonly Mention[],
  text: string,
): ReadonlyMap<string, number> {
  const frame = frameOf(mentions);
  const meanings = meaningFeatures(text);
  const asMessage = dangersAsMessage(model, new MessageScores(model, frame, meanings).unitsOf({}));
  const p = dangersBy(model, { frame, stated: {}, text, meanings, asMessage });
  return new Map(model.hazardNames.map((name, k) => [name, p[k]!]));
}
