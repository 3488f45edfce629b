import { present } from '#basics/present.ts';
import type { Facts } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import { type Bank, bankIn } from '../battery/bank.ts';
import { bankResistanceOhm } from '../battery/limits.ts';
import { blocksAt } from '../battery/tables.ts';
import { batteryFuses, branchA, type FuseKind, fullBlockV, shortMilliohm } from './fuse-kinds.ts';
import { bankShortCircuit } from './pair-rules.ts';

/** What a bank can drive into a dead short (A), on the high side: nobody waits for its BMS. */
export function shortCircuitA(bank: Bank, trace?: Trace): number {
  const R_i = bankResistanceOhm(bank, shortMilliohm[bank.chemistry], trace);
  return run(bankShortCircuit, { V_b: bank.voltageV, R_i }, trace);
}

/** What a fuse sits on: the highest voltage it may have to break, V, and the current into a short, A, where it is known. */
export interface FuseSource {
  readonly fullV: number;
  readonly shortA?: number;
}

/** A bank (or, unknown, a system of so many nominal volts) as a fuse sees it. */
export const fuseSource = (voltageV: number, bank?: Bank, trace?: Trace): FuseSource => {
  const blocks = Math.max(blocksAt(bank?.voltageV ?? voltageV), blocksAt(voltageV));
  return { fullV: blocks * fullBlockV, shortA: bank && shortCircuitA(bank, trace) };
};

/** What the fuses of a rig of so many nominal volts sit on; a bank without a size tells nothing of its current. */
export const sourceOf = (facts: Facts, voltageV: number): FuseSource => fuseSource(voltageV, bankIn(facts));

/** The kind of a fuse, and what stands before it. */
export interface FuseType {
  readonly kind: FuseKind;
  /** It can't break what the bank gives, so it stands behind this one, which sits at the battery. */
  readonly behind?: FuseKind;
  /** More than even the best kind breaks: each battery needs its own. */
  readonly isTooStrong: boolean;
}

const highest = present(batteryFuses.at(-1));

/** The plainest kind sold in that rating (A) and for that voltage that breaks a current (A). */
const plainest = (ratingA: number, fullV: number, shortA: number): FuseKind =>
  batteryFuses.find(
    kind => kind.fromA <= ratingA && ratingA <= kind.toA && kind.mostV >= fullV && kind.breaksA >= shortA,
  ) ?? highest;

/** The kind of fuse for a rating (A) on a bank: small ones go to a fuse block behind its main fuse, the others sit on it. */
export function fuseTypeFor(ratingA: number, { fullV, shortA = 0 }: FuseSource): FuseType {
  const isTooStrong = shortA > highest.breaksA;
  if (ratingA > branchA) return { kind: plainest(ratingA, fullV, shortA), isTooStrong };
  const kind = plainest(ratingA, fullV, 0);
  const behind = kind.breaksA >= shortA ? undefined : plainest(branchA * 2.5, fullV, shortA);
  return { kind, behind, isTooStrong };
}
