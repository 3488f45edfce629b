import type { HazardCode } from '#rig/hazard-codes.ts';

/** What an answer says first where a danger is seen, and what it must not say. */
export interface HazardAnswer {
  readonly code: HazardCode;
  /** The first line: no, or what to do, and why. */
  readonly first: string;
  /** What to do instead, one or two short sentences. */
  readonly instead: string;
  /** In an emergency, whom to call. */
  readonly call?: string | undefined;
  /** Where it hands over to licensed people, makers and local codes. */
  readonly defers: string;
  /** What no answer with this danger may hold, tried by tests on every such answer. */
  readonly never: readonly RegExp[];
  readonly source: string;
  /** The first line in a few words, where a talk has had it in full. */
  readonly shortly?: string;
  /** What is said in the place of it where the message tells it closer. */
  readonly closer?: readonly Closer[];
}

/** What one way to show a danger wants said, by the concepts that the message speaks of (`language/hazards`). */
interface Closer {
  /** Of each list one at least. */
  readonly of: readonly (readonly string[])[];
  readonly not: readonly string[];
  readonly says: Pick<HazardAnswer, 'first' | 'instead' | 'defers'> & Partial<Pick<HazardAnswer, 'call'>>;
}
