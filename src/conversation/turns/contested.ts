import type { Reply } from '#answer/reply.ts';
import { intentNamed } from '#intents';
import type { RequestContext, SideTaken } from '#intents/intent.ts';
import type { Claim } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import type { Frame, Memory } from '../memory.ts';
import { claimable, frameOfQuestion, isSide, questionOf } from './disputes.ts';
import { contestOf } from './sides.ts';

/** The question argued about, or the last one before it that was answered; an argument has no answer of its own. */
const lastAnswered = (memory: Memory, question: Frame): Frame | undefined =>
  [question, ...claimable(memory)].find(
    ({ asked, intent }) => asked === undefined && !intentNamed(intent).isArgument,
  );

/**
 * Who takes which side of a question, where that is what is argued about: no two numbers are claimed of it. Nobody where
 * no number is told either: the bot's own answer is then all there is.
 * @param frame the question, or an argument about it
 * @param answer the bot's own answer to a question
 */
export function contestedIn(
  memory: Memory,
  { sided, claims: said, facts }: Heard,
  claims: readonly Claim[],
  frame: Frame | undefined,
  answer: (question: Frame) => Reply | undefined,
): RequestContext['contested'] {
  const question = frame && frameOfQuestion(memory, questionOf(frame));
  // What is told with it makes another question of it ("and a 1500 W one?").
  const isTold = said.length > 0 || Object.keys(facts).length > 0;
  if (!question || claims.length > 1 || isTold) return undefined;
  const now = sided?.sides ?? [];
  const before = memory.claims
    .filter(isSide)
    .filter(({ of, who }) => of === questionOf(question) && now.every(one => one.who !== who))
    .map(({ who, says }): SideTaken => ({ who, says }));
  const sides = [...before, ...now];
  if (sides.length === 0 && claims.length > 0) return undefined;
  const answered = sides.length > 0 ? question : lastAnswered(memory, question);
  if (!answered) return undefined;
  return { sides, contest: contestOf(answered), answer: () => answer(answered) };
}
