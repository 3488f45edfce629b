import type { Heard } from '../hear.ts';
import type { Message } from '../message.ts';
import { isIntent } from '../questions.ts';
import { factsIn } from '../unsure/two-readings.ts';
import { isAsking } from './asking.ts';

// "@billywatt so what battery does she need?": who is called by name and asked something has something to say.

/** What the bot is called where no transport knows its name. */
const names: ReadonlySet<string> = new Set(['bot', 'billywatt']);

/** Whether the bot is called: by its name or by its kind. */
export const isBotCalled = ({ recognised: { words } }: Heard, { isCalled: isByName }: Message): boolean =>
  isByName === true || words.some(word => names.has(word));

/** Less likely than this a reading is none. */
const leastLikely = 0.05;

/** What asks something of the bot by name is no talk among people: it is taken for the likeliest question, however unsure. */
export function calledOn(heard: Heard, message: Message): Heard {
  if (heard.intent !== 'none' || heard.cues.has('thanks') || !isBotCalled(heard, message)) return heard;
  const { recognised } = heard;
  const words = recognised.words.filter(word => !names.has(word));
  if (!isAsking({ ...heard, recognised: { ...recognised, words } }) && !heard.cues.has('question-mark'))
    return heard;
  const options = heard.options.filter(
    ({ intent, probability }) => intent !== 'none' && isIntent(intent) && probability >= leastLikely,
  );
  const [first] = options;
  if (!first) return { ...heard, intent: 'unclear', options: [] };
  return { ...heard, intent: first.intent, facts: factsIn(first.stated, heard), options };
}
