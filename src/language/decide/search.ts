import { type Awaited, awaitedBy } from '../propose/answers.ts';
import { Candidates, offersOf, propose } from '../propose/candidates.ts';
import { slotsOf, turnOf } from '../propose/roles.ts';
import type { Mention } from '../recognise/mention.ts';
import type { Frame } from './frame.ts';
import { State } from './state.ts';
import type { Weigher } from './weigh.ts';

/**
 * Limits of the work that one message may ask for. People give forty at most a choice; from `manyTurns` on only the
 * likeliest way is followed, and what comes after `mostTurns` is left undecided.
 */
const manyTurns = 48;
const mostTurns = 96;
/** Longer than this (mentions) no message is an answer in words. */
const longestAnswer = 28;

/** What may stand between a count and what is counted: "3 x 100", "two of 90". */
const between: ReadonlySet<string> = new Set(['x', '×', '*', 'of', 'times']);
const mostCounted = 40;

/** A whole number right before another one may count it, and is decided once that one is: "two 90s", "3x100". */
function mayCount(mentions: readonly Mention[], at: number): boolean {
  const m = mentions[at]!;
  if (m.kind !== 'number' || !Number.isInteger(m.told) || m.told < 1 || m.told > mostCounted) return false;
  const next = mentions[at + 1];
  const counted = next && between.has(next.text) ? mentions[at + 2] : next;
  return counted?.kind === 'number' && counted.told > m.told;
}

/** The mentions that have a choice, in the order of their turns; plain words only where they may answer something. */
export function turnsOf(mentions: readonly Mention[], awaits: readonly Awaited[] = []): number[] {
  const out: number[] = [];
  const open = mentions.length <= longestAnswer ? awaits : [];
  for (let i = 0; i < mentions.length && out.length < mostTurns; i++) {
    const m = mentions[i]!;
    const awaited = awaitedBy(m);
    if (slotsOf(m).length > 0 && (!awaited || open.includes(awaited))) out.push(i);
  }
  const turn = (at: number): number => turnOf(mentions[at]!) + (mayCount(mentions, at) ? 0.5 : 0);
  return out.sort((a, b) => turn(a) - turn(b) || a - b);
}

interface Step {
  readonly state: State;
  readonly slot: number;
  readonly owner: number;
  readonly variant: number;
  readonly value: number;
  readonly score: number;
}

/** The best steps so far, best first; of equal ones the earlier first. */
class Best {
  readonly steps: Step[] = [];
  readonly #most: number;

  constructor(most: number) {
    this.#most = most;
  }

  offer(state: State, candidates: Candidates, k: number, score: number): void {
    const { steps } = this;
    if (steps.length === this.#most && score <= steps.at(-1)!.score) return;
    const step = {
      state,
      slot: candidates.slots[k]!,
      owner: candidates.owners[k]!,
      variant: candidates.variants[k]!,
      value: candidates.values[k]!,
      score,
    };
    let at = steps.length;
    while (at > 0 && steps[at - 1]!.score < score) at--;
    steps.splice(at, 0, step);
    if (steps.length > this.#most) steps.pop();
  }
}

const leastLog = -9;
/** A way so far behind the likeliest (of their logarithms) is followed no further: two messages in three have one or two. */
const farBehind = 4;
const nothing: ReadonlySet<number> = new Set();

/**
 * The likeliest ways to decide all mentions, best first; their scores are log-probabilities.
 * @param fixed mentions that are told for already
 */
export function search(
  weigher: Weigher,
  frame: Frame,
  width: number,
  fixed: ReadonlySet<number> = nothing,
): State[] {
  let beam: State[] = [State.empty(frame.mentions, frame.lean)];
  const candidates = new Candidates();
  const turns = turnsOf(frame.mentions, frame.awaits);
  const most = turns.length > manyTurns ? 1 : width;
  for (const at of turns) {
    if (fixed.has(at)) continue;
    const offers = offersOf(frame.mentions, at);
    const best = new Best(most);
    for (const state of beam) {
      propose(state, offers, candidates);
      if (candidates.count === 1) {
        best.offer(state, candidates, 0, state.score);
        continue;
      }
      weigher.weigh(state, at, candidates);
      for (let k = 0; k < candidates.count; k++) {
        const weight = weigher.weights[k]!;
        if (weight > leastLog) best.offer(state, candidates, k, state.score + weight);
      }
    }
    const least = (best.steps[0]?.score ?? 0) - farBehind;
    beam = best.steps
      .filter(({ score }) => score >= least)
      .map(s => s.state.with(at, s.slot, s.owner, s.variant, s.value, s.score));
  }
  return beam;
}
