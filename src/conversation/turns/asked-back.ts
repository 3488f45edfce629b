import type { Heard } from '../hear.ts';
import { ownFrame } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { leastSure } from '../unsure/sureness.ts';
import { factsIn } from '../unsure/two-readings.ts';

/** An answer to a question back is short. */
const mostWords = 6;
/** Less likely than this it answers nothing. */
const leastLikely = 0.15;

/**
 * What was asked back for and is told now goes into the question that lacked it: "120 Ah AGM" after "How big is the
 * battery?" is no new rig, and nothing to ask about once more.
 */
export function answeringBack(memory: Memory, message: Message, heard: Heard): Heard {
  const own = ownFrame(memory.frames, message.from);
  if (!own?.asked?.length || heard.certainty >= leastSure || heard.words > mostWords) return heard;
  if (heard.cues.has('question-mark')) return heard;
  const option = heard.options.find(
    ({ intent, probability }) => intent === own.intent && probability >= leastLikely,
  );
  if (!option) return heard;
  const facts = factsIn(option.stated, heard);
  if (Object.keys(facts).length === 0) return heard;
  return { ...heard, intent: own.intent, facts, certainty: leastSure };
}
