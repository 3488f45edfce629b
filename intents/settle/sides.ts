import type { Reply } from '#answer/reply.ts';
import { list, sentence } from '#answer/say.ts';
import { isSameSide, sideOf } from '../contests.ts';
import type { RequestContext, SideTaken } from '../intent.ts';
import { nameOf } from './claims.ts';

const be = (names: readonly string[]): string => {
  const [only] = names.length === 1 ? names : [];
  return only === undefined || only === 'you' || only === 'they' ? 'are' : 'is';
};

/** "Bea and Dot say lithium; you say AGM." */
function whoSaid(sides: readonly SideTaken[], from: string): string {
  const said = [...new Set(sides.map(({ says }) => says))].map(says => {
    const names = sides.filter(side => side.says === says).map(({ who }) => nameOf(who, from));
    return `${list(names)} ${names.length > 1 || be(names) === 'are' ? 'say' : 'says'} ${says}`;
  });
  return sentence(`${said.join('; ')}.`);
}

/** Who is right, by the side that the bot's own answer takes. */
function verdictOn(sides: readonly SideTaken[], own: string | undefined, from: string): string {
  const names = (some: readonly SideTaken[]): string[] => some.map(({ who }) => nameOf(who, from));
  if (own === undefined) return 'That is not for me to call.';
  if (own === 'tight') return 'Too close to call.';
  const right = names(sides.filter(({ says }) => isSameSide(says, own)));
  if (right.length > 0) return `${sentence(list(right))} ${be(right)} right.`;
  return sides.length === 1 ? 'I stand by my answer.' : 'None of you, by what I know.';
}

/** Settles an argument without numbers by the bot's own answer to the question; undefined where there is none. */
export function answerSides({ contested, from }: RequestContext): Reply | undefined {
  const answer = contested && contested.sides.length > 0 ? contested.answer() : undefined;
  if (!contested || !answer) return undefined;
  const { sides, contest } = contested;
  const own = sideOf(answer, contest);
  const closest = sides.find(({ says }) => own !== undefined && isSameSide(says, own));
  return {
    ...answer,
    headline: `${verdictOn(sides, own, from)} ${answer.headline}`,
    lines: [whoSaid(sides, from), ...(answer.lines ?? []).slice(0, 2)],
    figures: { ...answer.figures, ...(closest && { closest: { value: closest.who } }) },
    remember: undefined,
  };
}

const asksNumbers = 'Tell me each one’s number, and I say who is closest.';

/** The bot's own answer to what is argued about, where nobody has told a number or a side of it. */
export function answerAlone({ contested }: RequestContext): Reply | undefined {
  const answer = contested?.sides.length === 0 ? contested.answer() : undefined;
  if (!answer) return undefined;
  // What was answered in words stands as it is: no number of anybody's could be nearer.
  const isInWords = Object.keys(answer.figures ?? {}).length === 0;
  const isYesOrNo = (answer.verdict ?? null) !== null;
  return {
    ...answer,
    headline: `By ${isInWords ? 'what I know' : 'my count'}: ${answer.headline}`,
    lines: [...(isYesOrNo || isInWords ? [] : [asksNumbers]), ...(answer.lines ?? []).slice(0, 2)],
    remember: undefined,
  };
}
