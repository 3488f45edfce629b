import { type HazardCode, hazardCodes } from '#rig/hazard-codes.ts';
import { earlier, featuresOf, meaningOf } from './features.ts';
import { decide } from './model.ts';
import { hazardsOf, ruledOut, type Told } from './told.ts';

/** What a message stands in. */
export interface Talk {
  /** Earlier messages of the same talk, oldest first: what the same people wrote, and what the bot asked. */
  readonly before?: readonly string[];
}

/** How much of a talk counts: as long as a question and its corrections last. */
const talkLength = 4;

/**
 * The dangers that a message shows, in whatever words, the most urgent first; none where it is harmless.
 * Reads no facts: what facts and memory show is `hazardsOf`.
 */
export function hazardsIn(text: string, { before = [] }: Talk = {}): readonly HazardCode[] {
  const talk = before.slice(-talkLength);
  return decide(featuresOf(meaningOf(text, talk), earlier(talk)));
}

/**
 * The dangers of a message as its words, its facts and memory show them together, the most urgent first.
 * @param told what was read from the message, with what memory adds
 */
export function hazardsOfMessage(text: string, told: Told, talk: Talk = {}): readonly HazardCode[] {
  const out = ruledOut(told);
  const found = new Set([...hazardsIn(text, talk).filter(code => !out.includes(code)), ...hazardsOf(told)]);
  return hazardCodes.filter(code => found.has(code));
}
