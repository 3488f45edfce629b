import type { Heard } from '../hear.ts';
import { ownFrame, personKey } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { leastSure } from '../unsure/sureness.ts';
import { factsIn } from '../unsure/two-readings.ts';
import { isSaying } from './claims.ts';
import { isOfMaxim } from './disputes.ts';
import { opensTurn } from './lean.ts';

/** Whether anybody else has claimed something that could be argued about. */
export const isArgued = ({ claims }: Memory, from: string): boolean =>
  claims.some(claim => !isOfMaxim(claim) && personKey(claim.who) !== from);

/** Whether the last question of the chat is a person's own and has its answer: a figure told then is set against that. */
export function isAnsweredLast({ frames }: Memory, from: string): boolean {
  const last = frames.at(-1);
  return last !== undefined && last.from === from && last.asked === undefined && last.intent !== 'settle';
}

/** Whether its words claim or ask who is right. */
const isClaiming = ({ cues, recognised, claims }: Heard): boolean =>
  cues.has('ask-who-is-right') ||
  claims.length > 1 ||
  isSaying(recognised.words) ||
  (claims.length > 0 && recognised.words.some(word => word === 'right' || word === 'wrong'));

/** "I get 60" of who has just got another answer, plainly read so. */
const isRejoinder = (memory: Memory, from: string, heard: Heard): boolean =>
  heard.intent === 'settle' &&
  heard.certainty >= leastSure &&
  heard.claims.length > 0 &&
  !opensTurn(heard) &&
  isAnsweredLast(memory, from);

/** As likely as this, a reading tells something that turns a question. */
const leastTold = 0.02;

/** Cues that ask for a figure: what a question wants that is no argument. */
const ofFigure = [
  'ask-how-long',
  'ask-what-size',
  'ask-how-much',
  'ask-yield',
  'ask-total',
  'ask-charge-level',
  'ask-drop',
  'ask-lowest',
  'ask-crank',
] as const;

/** Whether its words ask for a figure, or of the writer's own gear or another's: a question, and no side in an argument. */
const isQuestion = ({ cues, owner, owners }: Heard): boolean =>
  (owner !== undefined && owners.length < 2) || ofFigure.some(cue => cues.has(cue));

/**
 * A message without the reading that takes it for an argument, where there can be none: no word of it claims, and it
 * asks for a figure, turns a question that was no argument, or nobody else has claimed anything. "Make it 90 W" after
 * one's own question turns it, whatever others guessed meanwhile.
 */
export function withoutDispute(memory: Memory, message: Message, heard: Heard): Heard {
  const from = personKey(message.from);
  const own = ownFrame(memory.frames, from);
  const turned = message.onto ?? own ?? memory.frames.at(-1);
  const isOfArgument = turned?.intent === 'settle';
  const isTelling =
    heard.corrects !== undefined ||
    heard.removed.length > 0 ||
    heard.options.some(
      ({ stated, probability }) =>
        probability >= leastTold && Object.keys(stated).some(key => key !== 'claims'),
    );
  const isTurn =
    turned !== undefined && !isOfArgument && isTelling && (opensTurn(heard) || heard.corrects !== undefined);
  const isPossible =
    !isTurn &&
    !isQuestion(heard) &&
    (own === undefined || isOfArgument || isArgued(memory, from) || isRejoinder(memory, from, heard));
  if (isPossible || isClaiming(heard)) return heard;
  const options = heard.options.filter(({ intent }) => intent !== 'settle');
  const [first] = options;
  if (!first || options.length === heard.options.length) return heard;
  const share = options.reduce((sum, { probability }) => sum + probability, 0);
  const certainty = Math.min(1, heard.certainty / Math.max(share, 1e-6));
  if (heard.intent !== 'settle') return { ...heard, options, certainty };
  return {
    ...heard,
    options,
    certainty: first.probability / share,
    intent: first.intent,
    facts: factsIn(first.stated, heard),
    claims: [],
  };
}
