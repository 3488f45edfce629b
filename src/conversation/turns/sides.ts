import type { Reply } from '#answer/reply.ts';
import { isSpoken } from '#basics/spoken.ts';
import { intentNamed } from '#intents';
import { type Contest, sideOf } from '#intents/contests.ts';
import { factsOf } from '#intents/facts.ts';
import type { Recognised } from '#language/recognise/recognise.ts';
import type { Heard } from '../hear.ts';
import { personKey } from '../kept/recall.ts';
import type { Frame, Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { peopleIn, personMeant, whoIn, wordsWritten } from '../whose/people.ts';
import { isSayingVerb } from './claims.ts';
import { claimable } from './disputes.ts';
import { choiceIn, yesOrNo } from './side-words.ts';
import type { Sided } from './sided.ts';

/** What a question chooses between, where it is one of that kind. */
export const contestOf = ({ intent, facts, subject }: Frame): Contest | undefined =>
  intentNamed(intent).contest?.(factsOf(facts), subject);

/** The bot's own answer to a question, worked out only where somebody seems to take a side in it. */
export type AnswerTo = (question: Frame) => Reply | undefined;

/** The side that the bot's own answer takes. */
function sideTaken(frame: Frame, answer: AnswerTo): string | undefined {
  const own = answer(frame);
  return own && sideOf(own, contestOf(frame));
}

/** Whether a question was one of yes or no. */
const isYesOrNo = (frame: Frame, answer: AnswerTo): boolean =>
  frame.asked === undefined &&
  (frame.isCheck === true || ['yes', 'no'].includes(sideTaken(frame, answer) ?? ''));

/** What part of a line somebody says. */
export interface Part {
  readonly who: string;
  readonly words: readonly string[];
  /** Somebody is said to say it, or its writer says "I say". */
  readonly isSaid: boolean;
  /** Where in the line it begins. */
  readonly from: number;
}

const selves: ReadonlySet<string> = new Set(['i', 'me', 'we']);
const pronouns: ReadonlySet<string> = new Set(['he', 'she', 'they']);
/** Here the question begins whether who said it is right. */
const appealing: ReadonlySet<string> = new Set(['who', 'whos', 'whose', 'which', 'settle', 'verdict']);
const joining: ReadonlySet<string> = new Set(['and', 'but', 'while', 'so', 'bot', 'that', 'my']);

/** Who is said to say something at a word: the writer, who "she" is, a person named. */
function sayerAt(
  memory: Memory,
  message: Message,
  { mentions }: Recognised,
  words: readonly string[],
  at: number,
) {
  const word = words[at] ?? '';
  if (selves.has(word)) return personKey(message.from);
  if (pronouns.has(word)) return personMeant(memory, message, words.slice(0, at));
  const named = mentions.find(({ kind, to }) => kind === 'person' && to === at + 1);
  const isOwn = named !== undefined && (named.text.startsWith('my ') || words[named.from - 1] === 'my');
  const own = isOwn ? `${personKey(message.from)}'s ${named.text.replace('my ', '')}` : named?.text;
  return whoIn(word, new Set(peopleIn(memory))) ?? own;
}

/** "Bea says lithium and Cal says AGM": what each says; else the whole line, which its writer says. */
export function partiesIn(memory: Memory, message: Message, recognised: Recognised): Part[] {
  const written = wordsWritten(recognised);
  const end = written.findIndex((word, at) => at > 0 && appealing.has(word));
  const words = end < 0 ? written : written.slice(0, end);
  const sayers = words.flatMap((_, at) => {
    const who = isSayingVerb(words[at + 1] ?? '')
      ? sayerAt(memory, message, recognised, words, at)
      : undefined;
    return who === undefined ? [] : [{ who, at }];
  });
  if (sayers.length === 0)
    return [{ who: personKey(message.from), words: words.filter(isSpoken), isSaid: false, from: 0 }];
  return sayers.map(({ who, at }, i) => {
    const said = words.slice(at + 2, sayers[i + 1]?.at).filter(isSpoken);
    const first = said[0] === 'that' ? 1 : 0;
    const last = said.findLastIndex(word => !joining.has(word));
    return { who, words: said.slice(first, last + 1), isSaid: true, from: at };
  });
}

const against: ReadonlySet<string> = new Set(['wrong', 'rubbish', 'nah', 'no', 'nope', 'disagree']);
const bot: ReadonlySet<string> = new Set(['bot', 'bots']);
const mostWords = 24;

/** "Wrong bot, lithium": what is said after that. */
function withoutCall(words: readonly string[]): readonly string[] {
  const at = words.findIndex(word => bot.has(word));
  const isCall = at >= 0 && at <= 2 && words.slice(0, at + 2).some(word => against.has(word));
  const rest = words.slice(at + 1 + (against.has(words[at + 1] ?? '') ? 1 : 0));
  return isCall && rest.length > 0 ? rest : words;
}

/** The side that a part of a line takes of a question. */
function sideIn(frame: Frame, { words }: Part, answer: AnswerTo | undefined): string | undefined {
  const said = withoutCall(words);
  const contest = contestOf(frame);
  if (contest !== undefined) return choiceIn(contest, said);
  const says = answer && yesOrNo(said);
  return says && isYesOrNo(frame, answer) ? says : undefined;
}

const mostBack = 3;

/** "It won't, AGM is only half": what stands before its reason. */
function beforeReason({ recognised }: Heard): readonly string[] {
  const words = wordsWritten(recognised);
  const at = words.findIndex(word => word === ',' || word === '.' || word === ';');
  return at > 0 ? words.slice(0, at) : [];
}

/**
 * The sides that a message of a group takes without a number and that tells nothing else: "lithium", "no chance",
 * "Bea says it will, who's right?".
 */
export function sidesIn(memory: Memory, message: Message, heard: Heard, answer: AnswerTo): Sided | undefined {
  const { text, onto, kind } = message;
  if (kind !== 'group' || heard.words > mostWords || heard.corrects || heard.removed.length > 0)
    return undefined;
  if (/\d/.test(text.replace(/lifepo4/gi, ''))) return undefined;
  const { words } = heard.recognised;
  const parts = partiesIn(memory, message, heard.recognised);
  const isReported = parts.some(({ isSaid }) => isSaid);
  if (text.includes('?') && !isReported) return undefined;
  const isToBot = words.some(word => bot.has(word)) && words.some(word => against.has(word));
  const frames = onto ? [onto] : claimable(memory);
  for (const frame of frames) {
    // Who has asked and names one of the two turns their own question by that.
    const isTurn = frame.from === personKey(message.from) && !isReported && !isToBot;
    if (isTurn && contestOf(frame) !== undefined) continue;
    const sides = parts.flatMap(part => {
      // A yes is of the last question that can be answered by one.
      const isRecent = frames.indexOf(frame) < mostBack;
      const says =
        sideIn(frame, part, isRecent ? answer : undefined) ??
        (isRecent && frame.from !== personKey(message.from) && parts.length === 1 && !isReported
          ? sideIn(frame, { ...part, words: beforeReason(heard) }, answer)
          : undefined);
      return says === undefined ? [] : [{ who: part.who, says }];
    });
    if (sides.length < parts.length) continue;
    const isAsking = isToBot || (isReported && text.includes('?'));
    return { of: frame.at, sides, isAsking };
  }
  return undefined;
}
