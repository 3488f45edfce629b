import type { Mention } from '../recognise/mention.ts';
import { assemble, type Stated } from './assemble.ts';
import { type Frame, frameOf, supplyFeatures, type TalkContext } from './features.ts';
import { hashText } from './hash.ts';
import { intentFeatures } from './intent-features.ts';
import { type Model, probabilities } from './model.ts';
import { search } from './search.ts';
import type { State } from './state.ts';

/** One way to take a message: the question, what it states, how likely. */
export interface Option {
  readonly intent: string;
  readonly stated: Stated;
  readonly probability: number;
  readonly state: State;
}

export interface Decision {
  /** The likeliest first; those that say the same are one. Their probabilities add to one. */
  readonly options: readonly Option[];
  readonly frame: Frame;
}

const width = 6;
const leastSecond = 0.15;
const mostQuestions = 4;

/** The questions that the words alone point to, the likeliest two at most. */
export function firstQuestions(model: Model, frame: Frame): number[] {
  const features: number[] = [];
  intentFeatures(frame, {}, features);
  const p = probabilities(model.first, features, model.intentNames.length);
  const order = [...p.keys()].sort((a, b) => p[b]! - p[a]!);
  return order.slice(0, 2).filter((c, k) => k === 0 || p[c]! > leastSecond).map(c => hashText(model.intentNames[c]!));
}

/** Loads of a state that run on mains. */
export function mainsLoads(model: Model, frame: Frame, state: State): ReadonlySet<number> {
  const out = new Set<number>();
  for (const i of state.loads()) {
    const features: number[] = [];
    supplyFeatures(frame, state, i, features);
    if (probabilities(model.supply, features, 2)[1]! > 0.5) out.add(i);
  }
  return out;
}

/** Decides a message: whole readings, weighed together with the question each of them asks. */
export function decide(model: Model, mentions: readonly Mention[], context: TalkContext = {}): Decision {
  const plain = frameOf(mentions, context);
  const frame: Frame = { ...plain, questions: firstQuestions(model, plain) };
  const states = search(model, frame, width);
  const merged = new Map<string, { intent: string; stated: Stated; p: number; state: State; own: number }>();
  for (const state of states) {
    const stated = assemble(state, mainsLoads(model, frame, state));
    const features: number[] = [];
    intentFeatures(frame, stated, features);
    const p = probabilities(model.intents, features, model.intentNames.length);
    const order = [...p.keys()].sort((a, b) => p[b]! - p[a]!).slice(0, mostQuestions);
    const text = JSON.stringify(stated);
    for (const c of order) {
      const own = Math.exp(state.score) * p[c]!;
      const key = `${c} ${text}`;
      const before = merged.get(key);
      if (before) before.p += own;
      else merged.set(key, { intent: model.intentNames[c]!, stated, p: own, state, own });
    }
  }
  const all = [...merged.values()].sort((a, b) => b.p - a.p);
  const sum = all.reduce((s, o) => s + o.p, 0) || 1;
  return { frame, options: all.map(({ intent, stated, p, state }) => ({ intent, stated, probability: p / sum, state })) };
}
