import { createHash } from 'node:crypto';
import { assemble, type Stated } from '#language/decide/assemble.ts';
import { decide, firstQuestions } from '#language/decide/decide.ts';
import { type Frame, frameOf, type TalkContext } from '#language/decide/features.ts';
import { hashText } from '#language/decide/hash.ts';
import { intentFeatures } from '#language/decide/intent-features.ts';
import { type Model, type Net, probabilities } from '#language/decide/model.ts';
import * as slot from '#language/propose/slots.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { choicesOf, suppliesOf, type Wording, wordingsOf } from './dataset.ts';
import { fitClasses, fitSlots, type FitOptions, type Labelled } from './fit.ts';
import type { Group } from './groups.ts';
import { talkBefore } from './talk.ts';

export interface TrainOptions {
  readonly slots: FitOptions;
  readonly intents: FitOptions;
  readonly folds: number;
}

export const usual: TrainOptions = {
  slots: { units: 32, epochs: 8, rate: 0.04, l2: 1e-5, drop: 0.4, dropOwner: 0.3, average: 0.4, least: 5, leastOwner: 5, seed: 7 },
  intents: { units: 32, epochs: 8, rate: 0.04, l2: 1e-5, drop: 0.5, average: 0.4, least: 4, leastOwner: 4, seed: 8 },
  folds: 5,
};

const tick = (() => {
  let last = Date.now();
  return (what: string): void => {
    if (process.env.VERBOSE) console.error(`${what}: ${((Date.now() - last) / 1000).toFixed(1)} s`);
    last = Date.now();
  };
})();

const labelled = (w: Wording, names: readonly string[], stated: Stated): Labelled => {
  const features: number[] = [];
  intentFeatures(w.frame, stated, features);
  return { features, gold: w.group.intent.map(name => names.indexOf(name)), group: w.groupIndex };
};

const framed = (w: Wording, questions: readonly number[]): Wording => ({ ...w, frame: { ...w.frame, questions } });

/** Which questions words alone point to, from nets that have not seen the group: what the roles learn with is what they will meet. */
function crossed(words: readonly Wording[], names: readonly string[], o: TrainOptions): { readonly words: Wording[]; readonly first: Net } {
  const examples = words.map(w => labelled(w, names, {}));
  const asModel = (first: Net): Model => ({ first, intents: first, slots: first, supply: first, owners: first.features, intentNames: names });
  const nets = Array.from({ length: o.folds }, (_, k) => fitClasses(examples.filter(e => e.group % o.folds !== k), names.length, o.intents));
  const out = words.map(w => framed(w, firstQuestions(asModel(nets[w.groupIndex % o.folds]!), w.frame)));
  return { words: out, first: fitClasses(examples, names.length, o.intents) };
}

/** Fits everything to labelled groups: twice, as the talk before a message is read by what the first round learned. */
export function train(groups: readonly Group[], o: TrainOptions = usual): Model {
  const names = [...new Set(groups.flatMap(g => g.intent))].sort();
  const blank = wordingsOf(groups, () => ({}));
  tick(`${blank.length} wordings`);
  let words: Wording[] = blank;
  let model: Model | undefined;
  for (const round of [1, 2]) {
    if (model) words = withTalk(blank, model);
    const first = crossed(words, names, o);
    tick(`round ${round}: questions by words`);
    const { net, owners } = fitSlots(first.words.flatMap(w => choicesOf(w)), slot.slots.length, o.slots);
    tick('roles');
    const supply = fitClasses(first.words.flatMap(w => suppliesOf(w)), 2, { ...o.intents, units: 8, drop: 0.2, epochs: 5 });
    const intents = fitClasses(words.map(w => labelled(w, names, w.group.states as Stated)), names.length, o.intents);
    tick('questions');
    model = { slots: net, owners, supply, first: first.first, intents, intentNames: names };
  }
  return model!;
}

/** The same wordings with the talk before them, as a model reads it. */
export function withTalk(words: readonly Wording[], model: Model): Wording[] {
  const contexts = new Map<Group, TalkContext>();
  return words.map(w => {
    let context = contexts.get(w.group);
    if (!context) contexts.set(w.group, (context = contextOf(w.group, model)));
    return { ...w, context, frame: frameOf(w.frame.mentions, context) };
  });
}

export const contextOf = (group: Group, model: Model): TalkContext =>
  talkBefore(group, (text, context) => {
    const [best] = decide(model, recognise(text).mentions, context).options;
    return { intent: best!.intent, stated: best!.stated };
  });

/** What the weights belong to: messages and rules. */
export const fingerprintOf = (parts: readonly string[]): string => {
  const hash = createHash('sha256');
  for (const part of parts) hash.update(part);
  return hash.digest('hex').slice(0, 16);
};

export type { Frame };
export { assemble, hashText, probabilities };
