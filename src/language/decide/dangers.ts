import { meaningOf } from '../hazards/features.ts';
import type { Stated } from './assemble.ts';
import { type Features, scratch } from './feature-list.ts';
import type { Frame } from './frame.ts';
import { hashText, mix } from './hash.ts';
import { factFeatures, wordFeatures } from './intent-features.ts';
import { headOf, type Model, shares, unitsFor } from './model.ts';

/** Each two meanings of a message together: a generator is none by itself, nor is a tent. */
function pairFeatures(text: string, out: Features): void {
  const concepts = [...new Set(meaningOf(text).map(({ concept }) => concept))].sort().map(hashText);
  for (let i = 0; i < concepts.length; i++)
    for (let j = i + 1; j < concepts.length; j++) out.push(mix(601, concepts[i]!, concepts[j]!));
}

/**
 * What speaks for a danger: the meanings of the words, each two of them, the words, what is stated. Some come twice.
 * @param meanings those of the words, as `meaningFeatures` finds them
 */
export function dangerFeatures(
  frame: Frame,
  stated: Stated,
  text: string,
  meanings: readonly number[],
  out: Features,
): void {
  for (const meaning of meanings) out.push(meaning);
  pairFeatures(text, out);
  wordFeatures(frame, out);
  factFeatures(frame, stated, out);
}

/** Both nets must hold it likely: the logarithms of their probabilities are averaged. */
function agreed(one: Float64Array, other: Float64Array): Float64Array {
  const both = one.map((p, code) => Math.sqrt(p * other[code]!));
  const sum = both.reduce((a, b) => a + b, 0);
  return both.map(p => p / sum);
}

/** A message or a sentence as it is held for its dangers. */
export interface DangerSigns {
  readonly frame: Frame;
  readonly stated: Stated;
  readonly text: string;
  readonly meanings: readonly number[];
  /** How likely each danger is to the net of the message, none of them last. */
  readonly asMessage: Float64Array;
}

/** Where the net of the message holds it so likely that nothing is dangerous, the other is not asked. */
const surelyHarmless = 0.999;

/** How likely a message shows each danger, none of them last: by the net of the message and the one of dangers alone. */
export function dangersBy(
  { dangers }: Model,
  { frame, stated, text, meanings, asMessage }: DangerSigns,
): Float64Array {
  if (!dangers || (asMessage.at(-1) ?? 0) >= surelyHarmless) return asMessage;
  const features = scratch.clear();
  dangerFeatures(frame, stated, text, meanings, features);
  const sum = new Int32Array(dangers.bias.length);
  dangers.features.addOnce(features, sum);
  const units = new Float64Array(sum.length);
  unitsFor(dangers, sum, units);
  return agreed(asMessage, shares(dangers, units, 0, asMessage.length));
}

/** The dangers' probabilities in the net of the message. */
export const dangersAsMessage = (model: Model, units: Float64Array): Float64Array =>
  shares(model.message, units, ...headOf(model, 'hazards'));
