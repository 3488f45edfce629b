import { isSpotted } from '#intents/spotting.ts';
import type { Heard } from '../hear.ts';
import { ownFrame } from '../kept/recall.ts';
import type { Frame, Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { asTurn } from './as-turn.ts';

// "I'm only seeing 3" after what panels give: amps that were read, held against that.

const mostWords = 9;
/** Words beside a figure that was read off. */
const shows: readonly string[] = [
  'only|just|seeing|see|saw|showing|shows|show|getting|get|gets|got|reads|reading|read|says|doing|does|making|makes|puts|putting|gives|giving -if -add -panel* -another -hours -days',
];
/** Panels of so many watts an amp give no more: a bare figure above is none of amps. */
const leastWPerA = 10;

/** The watts of the panels that a question was of. */
const wattsOf = ({ facts }: Frame): number =>
  (facts.solar ?? []).reduce((sum, { powerW = 0, count = 1 }) => sum + powerW * count, 0);

/** A short line that tells what is read of the panels just asked about, as whether that is right. */
export function seenLess(memory: Memory, { from, onto }: Message, heard: Heard): Heard {
  const frame = onto ?? ownFrame(memory.frames, from) ?? memory.frames.at(-1);
  const { recognised, words, corrects, removed } = heard;
  if (frame?.intent !== 'solar-yield' || words > mostWords || corrects || removed.length > 0) return heard;
  const [figure, more] = recognised.mentions.filter(({ kind }) => kind === 'number' || kind === 'amount');
  const isAmps = figure?.dimension === 'current' || (figure?.kind === 'number' && figure.unit === undefined);
  const watts = wattsOf(frame);
  if (!figure || more || !isAmps || figure.value <= 0 || watts === 0) return heard;
  if (figure.value > watts / leastWPerA || !isSpotted(recognised.words, shows)) return heard;
  return asTurn(heard, { intent: 'solar-yield', facts: { netCurrentA: figure.value }, subject: 'reading' });
}
