import type { Heard } from '../hear.ts';
import type { Message } from '../message.ts';
import { askedInWords } from '../questions.ts';
import { isAsking } from '../turns/asking.ts';

/**
 * What would be asked back, and asks a plain question by its very words: that question, of which nothing is worked
 * out. Undefined where it asks none, where a danger is seen, and where the bot's own words or a wish are what it is.
 */
export function askedPlainly(heard: Heard, { text }: Message): Heard | undefined {
  if (heard.hazards.length > 0 || heard.issues.length > 0 || heard.isPicked || heard.forgetting || heard.undo)
    return undefined;
  if (!text.includes('?') && !isAsking(heard) && !heard.cues.has('ask-what-is')) return undefined;
  const intent = askedInWords(heard);
  if (intent === undefined) return undefined;
  return {
    ...heard,
    intent,
    facts: {},
    claims: [],
    removed: [],
    corrects: undefined,
    certainty: 1,
    options: [],
  };
}
