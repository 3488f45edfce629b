import { candidatesOf } from '../propose/candidates.ts';
import * as slot from '../propose/slots.ts';
import type { Option } from './decide.ts';
import type { Frame } from './features.ts';
import type { Model } from './model.ts';
import { turnsOf, weigh } from './search.ts';
import { State } from './state.ts';

/** One reason for a reading, in words, with its weight in nats: how far it leads the next best. */
export interface Reason {
  readonly reason: string;
  readonly weight: number;
}

const mostReasons = 12;
const rounded = (value: number): number => Math.round(value * 100) / 100;

/** Why a reading was decided so: each figure's and thing's role with its lead, and the question's. */
export function because(model: Model, frame: Frame, { state, intent, question }: Option): Reason[] {
  const out: Reason[] = [];
  const units = new Float32Array(model.slots.bias.length);
  let path = State.empty(frame.mentions, frame.spokenOf !== undefined);
  for (const at of turnsOf(frame.mentions)) {
    const [s, owner, variant] = [state.slots[at]!, state.owners[at]!, state.variants[at]!];
    // Told for by a plan of days.
    if (s < 0) continue;
    const candidates = candidatesOf(path, at);
    const taken = candidates.findIndex(c => c.slot === s && c.owner === owner && c.variant === variant);
    if (candidates.length > 1 && taken >= 0) {
      const weights = weigh(model, frame, path, at, candidates, units);
      const next = Math.max(...weights.filter((_, k) => k !== taken));
      const of = owner >= 0 ? ` of “${frame.mentions[owner]!.text}”` : '';
      const role = s === slot.none ? 'nothing to the question' : `${slot.slots[s]!.name}${of}`;
      const { text, unit } = frame.mentions[at]!;
      const isAmount = frame.mentions[at]!.kind === 'amount';
      out.push({
        reason: `“${text}${isAmount && unit ? ` ${unit}` : ''}” is ${role}`,
        weight: rounded(weights[taken]! - next),
      });
    }
    path = path.with(at, s, owner, variant, state.values[at]!, 0);
  }
  // The least sure first: that is where a reader looks for what went wrong.
  out.sort((a, b) => a.weight - b.weight);
  return [
    { reason: `the words and what they state ask for ${intent}`, weight: rounded(question) },
    ...out,
  ].slice(0, mostReasons);
}
