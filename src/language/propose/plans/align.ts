import { present } from '#basics/present.ts';
import type { Fact, Mark, PlanSymbol } from './symbol.ts';

/** What it costs to read a fact and its day apart, in units of a comma between them. */
const cost = {
  after: 0.5,
  turn: 0.6,
  past: 2,
  empty: 1.5,
  twice: 5,
  drop: 6,
  dropSoft: 1.5,
  stop: [0, 1, 2, 3],
} as const;
const reach = 4;
const beam = 24;
const keyBit: Readonly<Record<string, number>> = { drivingH: 1, sky: 2, generatorH: 4, mainsH: 8 };

export interface Aligned {
  readonly fact: Fact;
  readonly mark: Mark;
}

interface State {
  readonly cost: number;
  readonly back?: State;
  readonly fact?: Fact;
  readonly mark: number;
  readonly keys: number;
  /** Whether the fact before stood after its mark (1) or before it (2). */
  readonly side: number;
}

/**
 * Gives each fact to the mark before or after it, in order: the cheapest way over the whole message, so that
 * "3 h friday, none saturday" and "friday 3 h, saturday none" are both read without saying which it is.
 */
export function align(symbols: readonly PlanSymbol[]): readonly Aligned[] {
  const marks: { readonly mark: Mark; readonly at: number }[] = [];
  const stops: number[] = [0];
  symbols.forEach((s, i) => {
    if (s.kind === 'mark') marks.push({ mark: s, at: i });
    stops.push(stops[i]! + (s.kind === 'stop' ? cost.stop[s.weight as 1 | 2 | 3] : 0));
  });
  if (marks.length === 0) return [];
  let states: State[] = [{ cost: 0, mark: -1, keys: 0, side: 0 }];
  let before = -1;
  symbols.forEach((s, i) => {
    if (s.kind === 'mark') before++;
    if (s.kind !== 'fact') return;
    const next = new Map<number, State>();
    const offer = (state: State): void => {
      const id = ((state.mark + 1) * 8 + state.keys) * 3 + state.side;
      const known = next.get(id);
      if (!known || state.cost < known.cost) next.set(id, state);
    };
    const bit = keyBit[s.key ?? ''] ?? 0;
    for (const state of states) {
      offer({
        ...state,
        cost: state.cost + (s.isSoft ? cost.dropSoft : cost.drop),
        back: state,
        fact: undefined,
      });
      for (
        let k = Math.max(0, state.mark, before - reach);
        k <= Math.min(marks.length - 1, before + reach);
        k++
      ) {
        const { mark, at } = marks[k]!;
        const isAfter = at > i;
        if (isAfter && mark.by === 'turns' && !mark.isNamed) continue;
        const apart = Math.abs(stops[at]! - stops[i]!);
        const past = isAfter ? k - before - 1 : before - k;
        const isSame = k === state.mark;
        const empties = isSame ? 0 : k - state.mark - 1;
        const side = isAfter ? 2 : 1;
        const turn = state.side !== 0 && state.side !== side ? cost.turn : 0;
        const twice = isSame && (state.keys & bit) !== 0 ? cost.twice : 0;
        offer({
          cost:
            state.cost +
            apart +
            past * cost.past +
            (isAfter ? cost.after : 0) +
            empties * cost.empty +
            twice +
            turn,
          back: state,
          fact: s,
          mark: k,
          keys: isSame ? state.keys | bit : bit,
          side,
        });
      }
    }
    // A beam keeps long messages linear; plans that people write stay well inside it.
    states = [...next.values()].sort((a, b) => a.cost - b.cost).slice(0, beam);
  });
  let best: State | undefined;
  for (const state of states) {
    const total = state.cost + (marks.length - 1 - state.mark) * cost.empty;
    if (!best || total < best.cost) best = { ...state, cost: total };
  }
  const out: Aligned[] = [];
  for (let state = best; state; state = state.back)
    if (state.fact) out.push({ fact: state.fact, mark: present(marks[state.mark]).mark });
  return out.reverse();
}
