import { contextFeatures } from '#language/decide/context-features.ts';
import { Decided } from '#language/decide/decided.ts';
import { type Frame, frameOf, type TalkContext } from '#language/decide/frame.ts';
import { meaningFeatures } from '#language/decide/message.ts';
import { ownerFeatures } from '#language/decide/owner-features.ts';
import { State } from '#language/decide/state.ts';
import { drawOf, supplyFeatures } from '#language/decide/supply-features.ts';
import { type Candidate, candidatesOf } from '#language/propose/candidates.ts';
import { type Plan, planOf, withoutZeros, withZeros } from '#language/propose/plans.ts';
import * as slot from '#language/propose/slots.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { compare } from './compare.ts';
import type { Group } from './groups.ts';
import type { Choice, Example } from './lessons.ts';
import { type Derivation, derivationsOf } from './oracle.ts';
import { ragged } from './ragged.ts';

export interface Wording {
  readonly group: Group;
  readonly groupIndex: number;
  readonly text: string;
  readonly frame: Frame;
  readonly derivations: readonly Derivation[];
  readonly context: TalkContext;
  /** The plan of days that the message may tell, and which ways to take it are right. */
  readonly plan?: Plan;
  readonly planGold: readonly number[];
  /** The meanings of its words as dangers go. */
  readonly meanings: readonly number[];
}

/** Which ways to take a plan say what the label says; [0], not at all, where none does. */
function rightPlans(plan: Plan, want: unknown): number[] {
  if (!want) return [0];
  const fits = [plan.days, withZeros(plan.days), withoutZeros(plan.days)].flatMap((days, k) => {
    const { missing, extra } = compare({ days }, { days: want });
    return missing.length + extra.length === 0 ? [k + 1] : [];
  });
  return fits.length > 0 ? fits : [0];
}

export function wordingsOf(groups: readonly Group[], contextOf: (group: Group) => TalkContext): Wording[] {
  return groups.flatMap((group, groupIndex) => {
    const context = contextOf(group);
    return group.wordings.map(text => {
      const { mentions } = recognise(text);
      const plan = planOf(mentions);
      const planGold = plan ? rightPlans(plan, group.states.days) : [0];
      const fixed = plan && planGold[0] !== 0 ? new Set(plan.used) : undefined;
      const frame = frameOf(mentions, context);
      const derivations = derivationsOf(
        mentions,
        group.states as Record<string, unknown>,
        fixed,
        frame.spokenOf,
        frame,
      ).map(d => (group.states.days && !fixed ? { ...d, errors: d.errors + 1 } : d));
      return {
        group,
        groupIndex,
        text,
        context,
        frame,
        derivations,
        plan,
        planGold,
        meanings: meaningFeatures(text, context.meant),
      };
    });
  });
}

const isSame = (c: Candidate, s: { slot: number; owner: number; variant: number }): boolean =>
  c.slot === s.slot && c.owner === s.owner && c.variant === s.variant;

/** The choices along the best derivation of a wording. */
export function choicesOf(w: Wording, most = 2): Choice[] {
  const [best] = w.derivations;
  // Of a partial label extra facts are no fault, as none are proposed that it doesn't tell.
  if (!best || best.errors > most) return [];
  const out: Choice[] = [];
  let state = State.empty(w.frame.mentions, w.frame.lean);
  let alike = w.derivations;
  best.steps.forEach((step, k) => {
    const candidates = candidatesOf(state, step.at);
    const gold: number[] = [];
    alike = alike.filter(d => d.steps[k] !== undefined);
    candidates.forEach((c, n) => {
      if (alike.some(d => d.steps[k]!.at === step.at && isSame(c, d.steps[k]!))) gold.push(n);
    });
    // Of a wording that can't be read whole only what is right is learned.
    const isWhole = best.errors === 0 && !w.group.isPartial;
    if (candidates.length > 1 && gold.length > 0 && (isWhole || step.slot !== slot.none)) {
      const context: number[] = [];
      contextFeatures(w.frame, state, step.at, context);
      const decided = new Decided(w.frame, state, step.at);
      out.push({
        context: Int32Array.from(context),
        slots: Int16Array.from(candidates, c => c.slot),
        owners: ragged(
          candidates.map(c => {
            const own: number[] = [];
            if (c.slot !== slot.none) ownerFeatures(w.frame, decided, step.at, c, own);
            return own;
          }),
        ),
        gold,
        group: w.groupIndex,
      });
    }
    alike = alike.filter(d => isSame({ ...step, value: 0 }, d.steps[k]!));
    const taken = candidates.find(c => isSame(c, step));
    state = state.with(step.at, step.slot, step.owner, step.variant, taken?.value ?? Number.NaN, 0);
  });
  return out;
}

/** What the loads of a wording teach of their supply; a thing of mains that the label leaves open teaches little. */
export function suppliesOf(w: Wording): Example[] {
  const [best] = w.derivations;
  if (!best || best.errors > 0 || w.group.isPartial) return [];
  let state = State.empty(w.frame.mentions, w.frame.lean);
  for (const s of best.steps) {
    const taken = candidatesOf(state, s.at).find(c => isSame(c, s));
    state = state.with(s.at, s.slot, s.owner, s.variant, taken?.value ?? Number.NaN, 0);
  }
  const rows = (w.group.states.loads ?? []) as { name?: string; supply?: string }[];
  return state.loads().flatMap(i => {
    const m = w.frame.mentions[i]!;
    const row =
      rows.find(r => compare({ name: m.text }, { name: r.name }, 'loads').missing.length === 0) ??
      (rows.length === 1 ? rows[0] : undefined);
    if (!row) return [];
    const features: number[] = [];
    supplyFeatures(w.frame, drawOf(state, i), i, features);
    return [
      {
        features,
        group: w.groupIndex,
        lessons: [
          {
            head: 0,
            gold: [row.supply === 'ac' ? 1 : 0],
            weight: row.supply ? 1 : m.supply === 'ac' ? 0.15 : 0.4,
          },
        ],
      },
    ];
  });
}
