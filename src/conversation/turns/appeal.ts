import { isSpoken } from '#basics/spoken.ts';
import type { Heard } from '../hear.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { disputeOf } from './disputes.ts';
import { type AnswerTo, sidesIn } from './sides.ts';

// "Bot?", "so who?": asking who is right, and nothing else.

const around: ReadonlySet<string> = new Set(
  'bot billywatt billy so well then ok okay hey oi come on now and mate pls please right but go'.split(' '),
);
const asking: ReadonlySet<string> = new Set(
  `who,whos right,who is right,whose right,who wins,whos it,who is it,who was,which,which is it,whos closest,whos closer,who is closest,who is closer,verdict,your call,your verdict,your view,your turn,
you decide,you tell us,you tell them,you tell him,you tell her,tell us,tell them,tell him,tell her,tell em,settle it,settle this,settle that,over to you,what do you say,what do you reckon,what do you think,
what say you,say something,whos got it,whos correct,who is correct,who has it,whos wrong,who is wrong,which of us,which one of us,help us out,sort us out,back me up,am i,am i not,who do you reckon,who`
    .split(',')
    .map(phrase =>
      phrase
        .trim()
        .split(' ')
        .filter(word => !around.has(word))
        .join(' '),
    ),
);

/** Whether words ask the bot who is right, and nothing else. */
export function isAppealing(all: readonly string[]): boolean {
  const words = all.filter(isSpoken);
  const rest = words.filter(word => !around.has(word)).join(' ');
  return (words.some(word => word === 'bot' || word === 'billywatt') && rest === '') || asking.has(rest);
}

/** Whether a line asks who is right, where somebody claims something. */
const isAppeal = (memory: Memory, { from }: Message, { recognised: { words } }: Heard): boolean =>
  isAppealing(words) && disputeOf(memory, from) !== undefined;

/** As sure as if it had been read so: its words are the talk's own. */
export const plainly = { owner: undefined, options: [], issues: [], certainty: 1, probability: 1 } as const;

/**
 * A message that takes a side in the talk of a group, or asks who is right: kept in silence, or settled where it is
 * said to the bot. Undefined for any other.
 */
export function appealed(
  memory: Memory,
  message: Message,
  heard: Heard,
  answer: AnswerTo,
): Heard | undefined {
  // "Yes, forget" is no side in anything.
  if (heard.forgetting) return undefined;
  if (heard.gearAsked) return heard;
  // What is said of the trade is of that, and of no question before.
  if (heard.held && (heard.isAppeal || heard.intent === 'none')) return heard;
  const sided = sidesIn(memory, message, heard, answer);
  if (sided)
    return sided.isAsking
      ? { ...heard, ...plainly, intent: 'settle', facts: {}, claims: [], sided, isAppeal: true }
      : { ...heard, ...plainly, intent: 'none', claims: [], sided };
  return isAppeal(memory, message, heard)
    ? { ...heard, ...plainly, intent: 'settle', facts: {}, isAppeal: true }
    : undefined;
}
