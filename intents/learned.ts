import type { Assumption } from '#engine/assumption.ts';
import { type Bank, bankIn } from '#engine/battery/bank.ts';
import type { Facts, LearnedOfRig } from '#rig/rig.ts';

const parts = { learnedDraw: 'draw', learnedSun: 'sun' } as const;

/** Facts with what the readings of their rig have taught: nobody states it, so it is no fact by itself. */
type Taught = Facts & { readonly learned?: LearnedOfRig | undefined };

/** What readings have taught of the rig that the facts are of. */
const learnedIn = (facts: Facts): LearnedOfRig | undefined => (facts as Taught).learned;

/** The facts with what the readings of their rig have taught. */
export const withLearned = <F extends Facts>(facts: F, learned: LearnedOfRig | undefined): F =>
  learned ? { ...facts, learned } : facts;

/** "Learnt from 6 readings". */
const whyOf = ({ readings }: LearnedOfRig): string => `learnt from ${readings} readings`;

/** What readings have taught of the draw or the sun, as an assumption in % of what was told; undefined where they don't tell. */
export function learnedAssumption(name: keyof typeof parts, facts: Facts): Assumption | undefined {
  const learned = learnedIn(facts);
  const factor = learned?.[parts[name]];
  if (!learned || !factor) return undefined;
  const { value, low, high } = factor;
  return { name, value: 100 * value, low: 100 * low, high: 100 * high, unit: '%', why: whyOf(learned) };
}

/** The bank of the facts, with the capacity that readings have taught. */
export function bankFor(facts: Facts): Bank | undefined {
  const bank = bankIn(facts);
  const learned = learnedIn(facts);
  if (!bank || !learned?.capacity) return bank;
  return { ...bank, learnedShare: { name: 'age', ...learned.capacity, unit: '', why: whyOf(learned) } };
}
