import { doubtful } from '#rig/correct.ts';
import { mergeFacts } from '#rig/merge.ts';
import { partsOf } from '../answering/facts-in-words.ts';
import type { Heard } from '../hear.ts';
import { ownFrame } from '../kept/recall.ts';
import type { Frame, Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { isIntent } from '../questions.ts';
import type { Two } from './two-readings.ts';

/** "Sorry, 80" after 100 Ah and a 90 W panel: which of the two is put right is asked, with both as they would be. */
export function doubtOf(memory: Memory, { from, onto }: Message, heard: Heard): Two | undefined {
  const frame: Frame | undefined = onto ?? ownFrame(memory.frames, from);
  if (!frame || !heard.corrects || !isIntent(heard.intent)) return undefined;
  const told = Object.keys(heard.facts).length > 0;
  const [one, other] = told ? [] : doubtful(frame.facts, heard.corrects);
  if (!one || !other) return undefined;
  const [say, sayOther] = [one, other].map(facts => partsOf(facts, frame.facts).join(', ').slice(0, 60));
  if (!say || !sayOther || say === sayOther) return undefined;
  const { intent } = frame;
  return {
    options: [
      { say, intent, facts: one },
      { say: sayOther, intent, facts: other },
    ],
    shared: mergeFacts(frame.facts, {}),
  };
}
