import type { IntentName } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { areaOfGauge } from '#quantity/gauge.ts';
import { symbolOf } from '#quantity/quantity.ts';
import type { Claim } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { personKey } from '../kept/recall.ts';
import type { Frame, Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { plainly } from './appeal.ts';
import { isAskingPlainly } from './asking.ts';
import { isBotCalled } from './called.ts';
import { claimable } from './disputes.ts';

// "I've got a 100 A fuse on mine, just do that": what somebody has is told as a tip after another's question.

const owning: ReadonlySet<string> = new Set(
  'mine mines ours ive weve i we same just like use used using run running put got whack chuck stick'.split(
    ' ',
  ),
);
const mostWords = 16;
/** A tip follows the question so soon, ms. */
const openMs = 30 * 60_000;
/** A fuse of more than so many times the one that is wanted leaves its cable unguarded. */
const largest = 1.6;
/** A cable of less than so much of what is wanted gets hot, or loses too much. */
const thinnest = 0.97;

/** Gear and figures of a line that tells more than one size: that is no tip, but a rig. */
const others: ReadonlySet<string> = new Set(
  'thing battery chemistry station solar controller charger inverter alternator'.split(' '),
);

/** What a tip is told in, by the question; and whether it would do harm there, by the question's own answer. */
const tipped: Partial<
  Record<
    IntentName,
    { readonly dimensions: readonly string[]; readonly isHarm: (tip: number, of: Reply) => boolean }
  >
> = {
  'fuse-size': {
    dimensions: ['current'],
    isHarm: (tip, { figures }) => tip > largest * Number(figures?.fuseRating?.value),
  },
  'cable-size': {
    dimensions: ['area', 'gauge'],
    isHarm: (tip, { figures }) => tip < thinnest * Number(figures?.conductorArea?.value),
  },
};

/**
 * What somebody has, told as a tip after another's question of a cable or fuse: weighed aloud where it would do harm
 * there, else kept in silence. Undefined for any other line.
 * @param answer the bot's own answer to a question
 */
export function tipTold(
  memory: Memory,
  message: Message,
  heard: Heard,
  answer: (frame: Frame) => Reply | undefined,
): Heard | undefined {
  const { kind, text, onto, at } = message;
  const { recognised, hazards, words } = heard;
  const [frame] = claimable(memory);
  const row = frame && tipped[frame.intent];
  const from = personKey(message.from);
  if (!row || kind !== 'group' || onto || frame.from === from || frame.asked) return undefined;
  // That a fuse is too large is what the tip is weighed for.
  const isDanger = hazards.some(code => code !== 'bigger-fuse');
  if (at.getTime() - frame.at > openMs || isDanger || words > mostWords) return undefined;
  if (text.includes('?') || isAskingPlainly(heard) || isBotCalled(heard, message)) return undefined;
  if (!recognised.words.some(word => owning.has(word))) return undefined;
  if (recognised.mentions.some(one => others.has(one.kind))) return undefined;
  const figures = recognised.mentions.filter(
    ({ kind: of, value }) => of === 'amount' || (of === 'number' && value !== 1),
  );
  const [figure] = figures;
  if (figures.length !== 1 || figure?.dimension === undefined) return undefined;
  const { dimension } = figure;
  if (!row.dimensions.includes(dimension)) return undefined;
  const claim: Claim = { who: from, value: figure.value, unit: symbolOf(dimension) };
  const own = answer(frame);
  const size = dimension === 'gauge' ? areaOfGauge(figure.value) : figure.value;
  const isHarm = own !== undefined && row.isHarm(size, own);
  const told = { facts: {}, hazards: [], removed: [], corrects: undefined, claims: [claim] } as const;
  return isHarm
    ? { ...heard, ...plainly, ...told, intent: 'settle', isAppeal: true }
    : { ...heard, ...plainly, ...told, intent: 'none' };
}
