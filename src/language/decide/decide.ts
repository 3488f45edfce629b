import { featuresOf, meaningOf } from '../hazards/features.ts';
import { type PlanDay, planOf, withoutZeros, withZeros } from '../propose/plans.ts';
import type { Mention } from '../recognise/mention.ts';
import { assemble, type Stated } from './assemble.ts';
import { certainty, certaintyFeatures } from './certainty.ts';
import { type Frame, frameOf, supplyFeatures, type TalkContext } from './features.ts';
import { hashText, mix } from './hash.ts';
import { intentFeatures } from './intent-features.ts';
import { headOf, type Model, probabilities, shares, unitsOf } from './model.ts';
import { planFeatures, planOutcomes } from './plan-features.ts';
import { mostRanked, rankFeatures, rankOf } from './rank.ts';
import { search } from './search.ts';
import type { State } from './state.ts';

/** One way to take a message: the question, what it states, how likely. */
export interface Option {
  readonly intent: string;
  readonly stated: Stated;
  readonly probability: number;
  /** Logarithms that it came with: of its roles and of its question. */
  readonly roles: number;
  readonly question: number;
  readonly state: State;
}

export interface Decision {
  /** Probabilities of the dangers by their names, of the likeliest reading. */
  readonly hazards: ReadonlyMap<string, number>;
  /** How likely the first option is right, 0–1, and what tells it. */
  readonly certainty: number;
  readonly signs: readonly number[];
  /** The likeliest first; those that say the same are one. Their probabilities add to one. */
  readonly options: readonly Option[];
  readonly frame: Frame;
}

const width = 6;
const leastSecond = 0.15;
const mostQuestions = 4;

/** The questions that the words alone point to, the likeliest two at most. */
export function firstQuestions(model: Model, frame: Frame, words: readonly number[]): number[] {
  const p = shares(
    model.message,
    unitsOf(model.message, messageFeatures(frame, {}, words)),
    ...headOf(model, 'first'),
  );
  const order = [...p.keys()].sort((a, b) => p[b]! - p[a]!);
  return order
    .slice(0, 2)
    .filter((c, k) => k === 0 || p[c]! > leastSecond)
    .map(c => hashText(model.intentNames[c]!));
}

/** What speaks for a question or a danger: the words, their meanings as dangers go, what is stated. */
export function messageFeatures(frame: Frame, stated: Stated, words: readonly number[]): number[] {
  const features: number[] = [...words];
  intentFeatures(frame, stated, features);
  return features;
}

const noTalk: ReadonlySet<string> = new Set();
/** The meanings of the words as dangers go. */
export function meaningFeatures(text: string): number[] {
  const out: number[] = [];
  for (const feature of featuresOf(meaningOf(text), noTalk)) out.push(mix(600, hashText(feature)));
  return out;
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

interface Merged {
  readonly intent: string;
  readonly stated: Stated;
  p: number;
  /** As the roles and the question alone weigh it. */
  own: number;
  readonly state: State;
  readonly units: Float32Array;
  readonly question: number;
}

/** The likeliest readings weighed once more as wholes; the rest stays behind them. */
function ranked(model: Model, frame: Frame, all: Merged[]): Merged[] {
  if (!model.ranker) return all;
  const top = all.slice(0, mostRanked);
  const scores = top.map(option => {
    const features: number[] = [];
    rankFeatures(frame, option.state, option.stated, option.intent, features);
    return rankOf(model.ranker!, features, Math.log(option.own / option.question), Math.log(option.question));
  });
  const best = Math.max(...scores);
  const sum = scores.reduce((a, b) => a + Math.exp(b - best), 0);
  return top
    .map((option, k) => ({ ...option, p: Math.exp(scores[k]! - best) / sum }))
    .sort((a, b) => b.p - a.p);
}

interface Take {
  readonly state: State;
  readonly days?: readonly PlanDay[];
  readonly log: number;
}

const leastPlan = 0.1;

/** Ways to take a message's roles, without and with the plan of days that it may tell. */
function takes(model: Model, frame: Frame): Take[] {
  const plan = planOf(frame.mentions);
  if (!plan) return search(model, frame, width).map(state => ({ state, log: 0 }));
  const features: number[] = [];
  planFeatures(frame, plan, features);
  const p = probabilities(model.plans, features, planOutcomes.length);
  const out: Take[] = [];
  if (p[0]! > leastPlan)
    for (const state of search(model, frame, width)) out.push({ state, log: Math.log(p[0]!) });
  if (p[0]! < 1 - leastPlan) {
    const states = search(model, frame, width, new Set(plan.used));
    const variants = [plan.days, withZeros(plan.days), withoutZeros(plan.days)];
    variants.forEach((days, k) => {
      if (p[k + 1]! > 0.02) for (const state of states) out.push({ state, days, log: Math.log(p[k + 1]!) });
    });
  }
  return out;
}

/** Decides a message: whole readings, weighed together with the question each of them asks. */
export function decide(
  model: Model,
  mentions: readonly Mention[],
  context: TalkContext = {},
  text = '',
): Decision {
  const words = meaningFeatures(text);
  const plain = frameOf(mentions, context);
  const frame: Frame = { ...plain, questions: firstQuestions(model, plain, words) };
  const merged = new Map<string, Merged>();
  const byFacts = new Map<string, { stated: Stated; units: Float32Array; p: Float64Array }>();
  for (const { state, days, log } of takes(model, frame)) {
    const stated = assemble(state, mainsLoads(model, frame, state), frame.spokenOf);
    if (days) stated.days = days;
    const facts = JSON.stringify(stated);
    let known = byFacts.get(facts);
    if (!known) {
      const units = unitsOf(model.message, messageFeatures(frame, stated, words));
      known = { stated, units, p: shares(model.message, units, ...headOf(model, 'intents')) };
      byFacts.set(facts, known);
    }
    const { p, units } = known;
    const order = [...p.keys()].sort((a, b) => p[b]! - p[a]!).slice(0, mostQuestions);
    for (const c of order) {
      const own = Math.exp(state.score + log) * p[c]!;
      const key = `${c} ${facts}`;
      const before = merged.get(key);
      if (before) {
        before.p += own;
        before.own += own;
      } else
        merged.set(key, {
          intent: model.intentNames[c]!,
          stated,
          p: own,
          own,
          state,
          units,
          question: p[c]!,
        });
    }
  }
  const all = ranked(
    model,
    frame,
    [...merged.values()].sort((a, b) => b.p - a.p),
  );
  const sum = all.reduce((s, o) => s + o.p, 0) || 1;
  const danger = shares(model.message, all[0]!.units, ...headOf(model, 'hazards'));
  const best = all[0]!;
  const harmless = danger[model.hazardNames.length]!;
  const signs = certaintyFeatures(
    frame,
    best.state,
    best.p / sum,
    (all[1]?.p ?? 0) / sum,
    best.question,
    1 - harmless,
  );
  return {
    frame,
    certainty: certainty(model.certainty, signs),
    signs,
    hazards: new Map(model.hazardNames.map((name, k) => [name, danger[k]!])),
    options: all.map(({ intent, stated, p, state, own, question }) => ({
      intent,
      stated,
      probability: p / sum,
      state,
      roles: Math.log(own / question),
      question: Math.log(question),
    })),
  };
}
