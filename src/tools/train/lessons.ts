import type { Ragged } from './ragged.ts';

/** How a net is fitted. */
export interface FitOptions {
  readonly units: number;
  readonly epochs: number;
  /** Epochs after features of little weight are dropped. */
  readonly after: number;
  readonly rate: number;
  readonly l2: number;
  /** Features are left out with this chance while learning. */
  readonly drop: number;
  /** A feature is learned where at least so many meanings have it. */
  readonly least: number;
  /** How many features are kept. */
  readonly keep: number;
  readonly leastOwner: number;
  readonly keepOwners: number;
  readonly dropOwner: number;
  readonly seed: number;
  /** How many nets are fitted from other beginnings and averaged. */
  readonly members: number;
}

/** One choice to learn from: what surrounds a mention, its candidates, which are right. */
export interface Choice {
  readonly context: Int32Array;
  readonly slots: Int16Array;
  /** Features of owners, a list a candidate. */
  readonly owners: Ragged;
  readonly gold: number[];
  readonly group: number;
  readonly weight?: number;
}

/** What one example teaches one head: which outcomes are right. */
export interface Lesson {
  readonly head: number;
  readonly gold: readonly number[];
  readonly weight?: number;
}

export interface Example {
  readonly features: readonly number[];
  readonly group: number;
  readonly lessons: readonly Lesson[];
}
