import { intentNamed } from '#intents';
import { unitsOf } from '#intents/settle/unsaid.ts';
import { unitOf } from '#quantity/quantity.ts';
import type { Claim } from '#rig/rig.ts';
import { personKey } from '../kept/recall.ts';
import type { ClaimKept, Frame, Memory, SideKept } from '../memory.ts';
import { undemanding } from '../questions.ts';

// What people argue about: a question of the chat, and who claimed what of it.

/** Whether a kept claim takes a side, and tells no number. */
export const isSide = (claim: ClaimKept | SideKept): claim is SideKept => 'says' in claim;

/** The question that a frame is about, by its time: an argument is about another one. */
export const questionOf = ({ intent, onto, at }: Frame): number =>
  intentNamed(intent).isArgument ? (onto ?? at) : at;

/** A side that somebody took of a maxim of the trade. */
export type MaximSide = SideKept & { readonly maxim: string };

/** Whether a kept claim is of a maxim, and of no question. */
export const isOfMaxim = (claim: ClaimKept | SideKept): claim is MaximSide =>
  isSide(claim) && claim.maxim !== undefined;

/** The questions that people can claim something of, the newest first. */
export const claimable = ({ frames }: Pick<Memory, 'frames'>): Frame[] =>
  frames.filter(({ intent }) => !undemanding.has(intent)).reverse();

/** The question of a time, as it was asked; else the argument about it. */
export const frameOfQuestion = ({ frames }: Memory, of: number | undefined): Frame | undefined =>
  of === undefined
    ? undefined
    : (frames.findLast(frame => frame.at === of && !undemanding.has(frame.intent)) ??
      frames.findLast(frame => questionOf(frame) === of));

/** The dispute that a word to the bot is of: the latest open one of its writer's, else of anybody's, else the last that was settled. */
export function disputeOf(memory: Memory, from: string): number | undefined {
  const claims = memory.claims.filter(({ of }) => frameOfQuestion(memory, of) !== undefined);
  const open = claims.filter(({ isSettled }) => !isSettled);
  const isOwn = ({ who }: { readonly who: string }): boolean => personKey(who) === personKey(from);
  return [open.filter(isOwn), open, claims].map(some => some.at(-1)?.of).find(of => of !== undefined);
}

/** Questions that people still argue about. */
export const openQuestions = ({ claims }: Memory): ReadonlySet<number> =>
  new Set(claims.flatMap(({ of, isSettled }) => (of === undefined || isSettled ? [] : [of])));

const dimensionOf = (unit: string): string | undefined => unitOf(unit)?.dimension;

/** Whether the answer of a question can be told in the unit of a claim. */
const fits = ({ intent, subject }: Frame, { unit }: Claim): boolean =>
  unitsOf(intent, subject).some(one => dimensionOf(one) === dimensionOf(unit));

/** The question that claims are of: the last one, or one before it whose answer is in their unit. */
export function claimedOf(memory: Memory, claims: readonly Claim[]): Frame | undefined {
  const [last, ...before] = claimable(memory);
  const [claim] = claims;
  if (!last || !claim || !unitOf(claim.unit) || fits(last, claim)) return last;
  return before.find(frame => fits(frame, claim)) ?? last;
}
