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

/** The mentions that have a choice, in the order of their turns. */
export function turnsOf(mentions: readonly Mention[]): number[] {
  const out: number[] = [];
  for (let i = 0; i < mentions.length && out.length < mostTurns; i++)
    if (slotsOf(mentions[i]!).length > 0) out.push(i);
  return out.sort((a, b) => turnOf(mentions[a]!) - turnOf(mentions[b]!) || a - b);
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
  let beam: State[] = [State.empty(frame.mentions, frame.spokenOf !== undefined)];
  const candidates = new Candidates();
  const turns = turnsOf(frame.mentions);
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
    beam = best.steps.map(s => s.state.with(at, s.slot, s.owner, s.variant, s.value, s.score));
  }
  return beam;
}
