import { Candidates, offersOf, propose } from '../propose/candidates.ts';
import * as slot from '../propose/slots.ts';
import type { Option } from './decide.ts';
import type { Frame } from './frame.ts';
import type { Model } from './model.ts';
import { turnsOf } from './search.ts';
import { State } from './state.ts';
import { Weigher } from './weigh.ts';

/** One reason for a reading, in words, with its weight in nats: how far it leads the next best. */
export interface Reason {
  readonly reason: string;
  readonly weight: number;
}

const mostReasons = 12;
const rounded = (value: number): number => Math.round(value * 100) / 100;

/** Where a role stands among the candidates, −1 if it does not. */
function placeIn(
  { count, slots, owners, variants }: Candidates,
  s: number,
  owner: number,
  variant: number,
): number {
  for (let k = 0; k < count; k++)
    if (slots[k] === s && owners[k] === owner && variants[k] === variant) return k;
  return -1;
}

/** Why a reading was decided so: each figure's and thing's role with its lead, and the question's. */
export function because(model: Model, frame: Frame, { state, intent, question }: Option): Reason[] {
  const out: Reason[] = [];
  const weigher = new Weigher(model, frame);
  const candidates = new Candidates();
  let path = State.empty(frame.mentions, frame.lean);
  for (const at of turnsOf(frame.mentions, frame.awaits)) {
    const [s, owner, variant] = [state.slots[at]!, state.owners[at]!, state.variants[at]!];
    // Told for by a plan of days.
    if (s < 0) continue;
    propose(path, offersOf(frame.mentions, at), candidates);
    const taken = placeIn(candidates, s, owner, variant);
    if (candidates.count > 1 && taken >= 0) {
      weigher.weigh(path, at, candidates);
      const weights = weigher.weights.subarray(0, candidates.count);
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
