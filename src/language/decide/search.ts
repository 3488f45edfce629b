import { type Candidate, candidatesOf } from '../propose/candidates.ts';
import * as slot from '../propose/slots.ts';
import type { Mention } from '../recognise/mention.ts';
import { contextFeatures, type Frame, ownerFeatures } from './features.ts';
import { hidden, type Model, score } from './model.ts';
import { State } from './state.ts';

/** The mentions that have a choice, in the order of their turns. */
export function turnsOf(mentions: readonly Mention[]): number[] {
  const out: number[] = [];
  for (let i = 0; i < mentions.length; i++) if (slot.slotsOf(mentions[i]!).length > 0) out.push(i);
  return out.sort((a, b) => slot.turnOf(mentions[a]!) - slot.turnOf(mentions[b]!) || a - b);
}

/** Log-probabilities of the candidates of one mention. */
export function weigh(
  model: Model,
  frame: Frame,
  state: State,
  at: number,
  candidates: readonly Candidate[],
  units: Float32Array,
): Float64Array {
  const features: number[] = [];
  contextFeatures(frame, state, at, features);
  hidden(model.slots, features, units);
  const bySlot = new Map<number, number>();
  const out = new Float64Array(candidates.length);
  const { index, values } = model.owners;
  let top = -Infinity;
  const own: number[] = [];
  for (let k = 0; k < candidates.length; k++) {
    const c = candidates[k]!;
    let base = bySlot.get(c.slot);
    if (base === undefined) {
      base = score(model.slots, units, c.slot);
      bySlot.set(c.slot, base);
    }
    if (c.slot !== slot.none) {
      own.length = 0;
      ownerFeatures(frame, state, at, c, own);
      for (const f of own) {
        const row = index.get(f);
        if (row !== undefined) base += values[row]!;
      }
    }
    out[k] = base;
    if (base > top) top = base;
  }
  let sum = 0;
  for (let k = 0; k < out.length; k++) sum += Math.exp(out[k]! - top);
  const norm = top + Math.log(sum);
  for (let k = 0; k < out.length; k++) out[k]! -= norm;
  return out;
}

const leastLog = -9;
const nothing: ReadonlySet<number> = new Set();

/**
 * The likeliest ways to decide all mentions, best first; their scores are log-probabilities.
 * @param fixed mentions that are told for already
 */
export function search(
  model: Model,
  frame: Frame,
  width: number,
  fixed: ReadonlySet<number> = nothing,
): State[] {
  let beam: State[] = [State.empty(frame.mentions, frame.spokenOf !== undefined)];
  const units = new Float32Array(model.slots.bias.length);
  for (const at of turnsOf(frame.mentions)) {
    if (fixed.has(at)) continue;
    const next: { state: State; c: Candidate; score: number }[] = [];
    for (const state of beam) {
      const candidates = candidatesOf(state, at);
      if (candidates.length === 1) {
        next.push({ state, c: candidates[0]!, score: state.score });
        continue;
      }
      const weights = weigh(model, frame, state, at, candidates, units);
      for (let k = 0; k < candidates.length; k++)
        if (weights[k]! > leastLog) next.push({ state, c: candidates[k]!, score: state.score + weights[k]! });
    }
    next.sort((a, b) => b.score - a.score);
    beam = next
      .slice(0, width)
      .map(({ state, c, score: s }) => state.with(at, c.slot, c.owner, c.variant, c.value, s));
  }
  return beam;
}
