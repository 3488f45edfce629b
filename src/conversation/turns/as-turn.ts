import type { Heard } from '../hear.ts';
import { leastSure } from '../unsure/sureness.ts';

/** A line as the turn that it plainly is, whatever it was read as: sure enough to be answered, and nobody's claim. */
export const asTurn = (heard: Heard, turn: Partial<Heard>): Heard => ({
  ...heard,
  claims: [],
  options: [],
  certainty: Math.max(heard.certainty, leastSure),
  ...turn,
});
