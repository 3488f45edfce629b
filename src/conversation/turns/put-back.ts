import { isSameName, isShortFor } from '#rig/merge.ts';
import type { StatedLoad } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { ownFrame, ownKey, personKey } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { undemanding } from '../questions.ts';
import { leastSure } from '../unsure/sureness.ts';

// "Put the fan back": what was taken out of a question stands in it again.

const putting: ReadonlySet<string> = new Set(
  'put add bring have leave plug take turn switch with'.split(' '),
);
const mostWords = 8;

/** The things that a line says are back. */
function namedBack({ recognised: { words, mentions }, words: count }: Heard): string[] {
  const back = words.indexOf('back');
  const isPut = back > 0 && words.slice(0, back).some(word => putting.has(word));
  if (!isPut || count > mostWords || words[back + 1] === 'to') return [];
  return mentions.flatMap(mention => (mention.kind === 'thing' ? [mention.key] : []));
}

/** A thing of the writer's, as they told it in a question before or of their rig. */
function toldBefore({ frames, rigs }: Memory, { from, kind }: Message, name: string): StatedLoad | undefined {
  const own = frames.filter(frame => frame.from === personKey(from)).reverse();
  const loads = [...own.map(({ facts }) => facts), rigs[ownKey(from, kind)]].flatMap(
    facts => facts?.loads ?? [],
  );
  return loads.find(load => isSameName(load.name, name) || isShortFor(name, load.name));
}

/** A line that puts things back, as a turn of its writer's own question. */
export function putBack(memory: Memory, message: Message, heard: Heard): Heard {
  const names = namedBack(heard);
  const frame = message.onto ?? ownFrame(memory.frames, message.from);
  if (names.length === 0 || !frame || undemanding.has(frame.intent)) return heard;
  const things = names.flatMap(name => toldBefore(memory, message, name) ?? []);
  if (things.length < names.length) return heard;
  const { loads: _named, ...facts } = heard.facts;
  return {
    ...heard,
    intent: frame.intent,
    facts: { ...facts, loads: things },
    removed: [],
    claims: [],
    cues: new Set([...heard.cues, 'add']),
    options: [],
    certainty: leastSure,
  };
}
