import type { Rig, Stated } from '#rig/rig.ts';
import type { Lent } from './origins.ts';

/** What runs, of several people, as one line speaks of all of it together. */
export interface Joined {
  /** The loads of all, and what else the line borrows. */
  readonly facts: Stated;
  readonly lent: readonly Lent[];
  /** Gear that is named as somebody's of whom it isn't known. */
  readonly unknown: readonly (keyof Rig)[];
}
