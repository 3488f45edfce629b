import type { Facts } from '#rig/rig.ts';
import type { Intent, Needs } from './intent.ts';
import { type Need, needs } from './needs.ts';

/** What is a question's own: all of `Intent`, where the facts it takes and lacks are lists. */
type Definition<N> = Omit<Intent<N>, 'takes' | 'needs' | 'needsOn'> & {
  /** Keys of Facts that it takes; memory fills in only these. None where it is absent. */
  readonly takes?: readonly (keyof Facts)[];
  /** What it can't do without, in the order in which it is asked for. Nothing where it is absent. */
  readonly needs?: readonly Need[];
  /** What it can't do without where the words name its subject, in place of `needs`. */
  readonly needsOn?: (subject: string) => readonly Need[];
};

/**
 * A question out of what is its own.
 * @typeParam N - the facts as its needs guarantee them; they are held by the needs, when a question is asked
 */
export function defineIntent<N = Facts>(own: Definition<N>): Intent<N> {
  const { takes = [], needs: list = [], needsOn, ...traits } = own;
  const needed = (some: readonly Need[]) => needs(takes, some) as Needs<N>;
  return {
    ...traits,
    takes,
    needs: needed(list),
    ...(needsOn && { needsOn: (subject: string) => needed(needsOn(subject)) }),
  };
}
