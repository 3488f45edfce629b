import type { SideTaken } from '#intents/intent.ts';

/** Sides that a message takes, of a question. */
export interface Sided {
  readonly of: number;
  readonly sides: readonly SideTaken[];
  /** It is said to the bot against its answer, or asks who is right: it wants an answer. */
  readonly isAsking: boolean;
}
