import type { Cue } from '#language/words/en/cues.ts';
import type { Heard } from '../hear.ts';
import { ownFrame } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { asTurn } from './as-turn.ts';
import { isOfChargeVolts, tellsKind } from './charge-volts.ts';
import { opensTurn } from './lean.ts';

// "It's lithium", "and if it was AGM?" after the volts of a charge: are they right for that kind?

const mostWords = 9;

/** Words that ask something else of that kind. */
const ofElse: ReadonlySet<string> = new Set(
  'how why which when where who better long last lasts cut cuts off trips price weigh'.split(' '),
);

/** A line that tells the kind of the battery whose charge was just judged, as that question again. */
export function ofVolts(memory: Memory, { from, onto }: Message, heard: Heard): Heard {
  const frame = onto ?? ownFrame(memory.frames, from) ?? memory.frames.at(-1);
  const { facts, words, recognised, corrects, removed, cues } = heard;
  if (!frame || !isOfChargeVolts(frame) || !tellsKind(facts) || words > mostWords) return heard;
  const isElse = recognised.words.some(word => ofElse.has(word)) && !opensTurn(heard);
  if (corrects || removed.length > 0 || isElse || cues.has('save')) return heard;
  return asTurn(heard, { intent: 'charge-level', cues: new Set<Cue>([...cues, 'ask-can-it']) });
}
