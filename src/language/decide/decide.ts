import { type PlanDay, planOf, withoutZeros, withZeros } from '../propose/plans.ts';
import type { Mention } from '../recognise/mention.ts';
import { assemble, type Stated } from './assemble.ts';
import { certainty, certaintyFeatures, readingSigns } from './certainty.ts';
import { scratch } from './feature-list.ts';
import { type Frame, frameOf, type TalkContext } from './frame.ts';
import { largest, MessageScores, meaningFeatures } from './message.ts';
import { apart, headOf, type Model, probabilities, shares } from './model.ts';
import { planFeatures, planOutcomes } from './plan-features.ts';
import { mostRanked, ReadingScores } from './rank.ts';
import { search } from './search.ts';
import type { State } from './state.ts';
import { MainsLoads } from './supply.ts';
import { Weigher } from './weigh.ts';

/** One way to take a message: the question, what it states, how likely. */
export interface Option {
  readonly intent: string;
  readonly stated: Stated;
  readonly probability: number;
  /** Logarithms that it came with: of its roles and of its question. */
  readonly roles: number;
  readonly question: number;
  readonly state: State;
  /** Hidden units of the message's net for it. */
  readonly units: Float64Array;
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
const mostQuestions = 4;
/** A reading less likely than this share of the likeliest is not weighed as a whole: it would hardly come first. */
const leastOfBest = 0.01;

/** Readings that state the same. */
interface Alike {
  readonly stated: Stated;
  readonly state: State;
  readonly units: Float64Array;
  readonly options: readonly Merged[];
  /** Weighed as a whole, where it is among the likeliest. */
  wholes?: ReadingScores;
}

/** One of them with the question that it asks. */
interface Merged {
  readonly outcome: number;
  readonly question: number;
  /** As the roles and the question weigh it. */
  own: number;
  p: number;
  readonly of: Alike;
}

/** The likeliest readings weighed once more as wholes; the rest stays behind them. */
function ranked(model: Model, frame: Frame, all: readonly Merged[]): readonly Merged[] {
  const { ranker } = model;
  if (!ranker) return all;
  const least = all[0]!.p * leastOfBest;
  const top = all.slice(0, mostRanked).filter(({ p }) => p >= least);
  const scores = top.map(({ of, outcome, own, question }) => {
    of.wholes ??= new ReadingScores(ranker, frame, of.state, of.stated);
    return of.wholes.with(model.intentNames[outcome]!, Math.log(own / question), Math.log(question));
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
  const weigher = new Weigher(model, frame);
  if (!plan) return search(weigher, frame, width).map(state => ({ state, log: 0 }));
  planFeatures(frame, plan, scratch.clear());
  const p = probabilities(model.plans, scratch, planOutcomes.length);
  const out: Take[] = [];
  if (p[0]! > leastPlan)
    for (const state of search(weigher, frame, width)) out.push({ state, log: Math.log(p[0]!) });
  if (p[0]! < 1 - leastPlan) {
    const states = search(weigher, frame, width, new Set(plan.used));
    const variants = [plan.days, withZeros(plan.days), withoutZeros(plan.days)];
    variants.forEach((days, k) => {
      if (p[k + 1]! > 0.02) for (const state of states) out.push({ state, days, log: Math.log(p[k + 1]!) });
    });
  }
  return out;
}

/** Readings with their questions; those that say the same are one. In the order in which they were found. */
function merged(model: Model, frame: Frame, scores: MessageScores): readonly Merged[] {
  const all: Merged[] = [];
  const byFacts = new Map<string, Alike>();
  const mains = new MainsLoads(model, frame);
  for (const { state, days, log } of takes(model, frame)) {
    const stated = assemble(state, mains.of(state), frame.spokenOf);
    if (days) stated.days = days;
    const facts = JSON.stringify(stated);
    let alike = byFacts.get(facts);
    if (!alike) {
      const units = scores.unitsOf(stated);
      const questions = shares(model.message, units, ...headOf(model, 'intents'));
      const options: Merged[] = [];
      alike = { stated, state, units, options };
      for (const outcome of largest(questions, mostQuestions))
        options.push({ outcome, question: questions[outcome]!, own: 0, p: 0, of: alike });
      all.push(...options);
      byFacts.set(facts, alike);
    }
    const roles = Math.exp(state.score + log);
    for (const option of alike.options) {
      option.own += roles * option.question;
      option.p = option.own;
    }
  }
  return all;
}

/** What a reading is like as a whole, for how sure it may be taken. */
const wholeOf = ({ doubts, intentNames }: Model, { of, outcome }: Merged): number =>
  doubts && of.wholes ? of.wholes.weightIn(doubts, intentNames[outcome]!) : 0;

/** Decides a message: whole readings, weighed together with the question each of them asks. */
export function decide(
  model: Model,
  mentions: readonly Mention[],
  context: TalkContext = {},
  text = '',
): Decision {
  const plain = frameOf(mentions, context);
  const scores = new MessageScores(model, plain, meaningFeatures(text, context.meant));
  const frame: Frame = { ...plain, questions: scores.firstQuestions() };
  const all = ranked(
    model,
    frame,
    merged(model, frame, scores).toSorted((a, b) => b.p - a.p),
  );
  const sum = all.reduce((s, o) => s + o.p, 0) || 1;
  const best = all[0]!;
  const danger = shares(model.message, best.of.units, ...headOf(model, 'hazards'));
  const harmless = danger[model.hazardNames.length]!;
  const asked = apart(model.message, best.of.units, headOf(model, 'intents'), best.outcome);
  const signs = certaintyFeatures(
    best.p / sum,
    (all[1]?.p ?? 0) / sum,
    readingSigns(frame, best.of.state, best.question, 1 - harmless, asked),
  );
  return {
    frame,
    certainty: certainty(model.certainty, signs, wholeOf(model, best)),
    signs,
    hazards: new Map(model.hazardNames.map((name, k) => [name, danger[k]!])),
    options: all.map(({ outcome, of, p, own, question }) => ({
      intent: model.intentNames[outcome]!,
      stated: of.stated,
      probability: p / sum,
      state: of.state,
      units: of.units,
      roles: Math.log(own / question),
      question: Math.log(question),
    })),
  };
}
