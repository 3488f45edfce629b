import type { Cue } from '#language/words/en/cues.ts';
import { hasGear } from '#rig/gear.ts';
import type { Heard } from '../hear.ts';
import { ownKey, personKey } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { undemanding } from '../questions.ts';
import { leastSure } from '../unsure/sureness.ts';
import { gearOf } from '../whose/gear-of.ts';

// "For me too", "and for us?": somebody else's question, of one's own gear.

const selves: ReadonlySet<string> = new Set('me us mine ours myself ourselves'.split(' '));
const around: ReadonlySet<string> = new Set(
  'and what whats about how for of with on too also same well as then now ok bot please pls'.split(' '),
);
const mostWords = 6;

/** A line that only says whose gear the question just asked is of now. */
export function forSelf(memory: Memory, message: Message, heard: Heard): Heard {
  const words = heard.recognised.words.filter(word => /^\p{L}/u.test(word));
  const self = words.some(word => selves.has(word));
  const isBare = words.length <= mostWords && words.every(word => selves.has(word) || around.has(word));
  // "Me too" agrees with anything; a question is turned by "for me", "and mine".
  const isTurning = words.some(word => ['for', 'and', 'about', 'same'].includes(word));
  const frame = message.onto ?? memory.frames.at(-1);
  if (!self || !isBare || !isTurning || !frame || heard.issues.length > 0) return heard;
  const from = personKey(message.from);
  if (frame.from === from || frame.asked !== undefined || undemanding.has(frame.intent)) return heard;
  const isOurs = words.some(word => word === 'us' || word === 'ours') && memory.rigs[''] !== undefined;
  const own = gearOf(memory, from, ownKey(message.from, message.kind)) ?? {};
  if (!isOurs && !hasGear(own) && heard.intent === 'none') return heard;
  return {
    ...heard,
    intent: frame.intent,
    owner: isOurs ? 'us' : 'me',
    facts: {},
    claims: [],
    ...(!isOurs && { cues: new Set<Cue>([...heard.cues, 'same-again']) }),
    options: [],
    certainty: leastSure,
  };
}
