import { sayingVerbs } from '#language/words/en/people.ts';
import type { Heard } from './hear.ts';
import type { Memory } from './memory.ts';
import type { Message } from './message.ts';
import { personKey } from './recall.ts';
import { factsIn } from './two-readings.ts';

/** Whether anybody else has claimed something that could be argued about. */
const isArgued = ({ claims }: Memory, from: string): boolean =>
  claims.some(({ who }) => personKey(who) !== from);

/** Whether its words claim or ask who is right. */
const isClaiming = ({ cues, recognised, claims }: Heard): boolean =>
  cues.has('ask-who-is-right') || claims.length > 1 || recognised.words.some(word => sayingVerbs.has(word));

/**
 * A message without the reading that takes it for an argument, where there can be none: its writer has asked something,
 * nobody else has claimed anything, and no word of it claims. "Make it 90 W" after one's own
 * question turns it.
 */
export function withoutDispute(memory: Memory, message: Message, heard: Heard): Heard {
  const from = personKey(message.from);
  const own = memory.frames.findLast(frame => frame.from === from);
  const isPossible = own === undefined || own.intent === 'settle' || isArgued(memory, from);
  if (isPossible || isClaiming(heard)) return heard;
  const options = heard.options.filter(({ intent }) => intent !== 'settle');
  const [first] = options;
  if (!first || options.length === heard.options.length) return heard;
  const share = options.reduce((sum, { probability }) => sum + probability, 0);
  const certainty = Math.min(1, heard.certainty / Math.max(share, 1e-6));
  if (heard.intent !== 'settle') return { ...heard, options, certainty };
  return {
    ...heard,
    options,
    certainty: first.probability / share,
    intent: first.intent,
    facts: factsIn(first.stated, heard),
    claims: [],
  };
}
