import type { IntentName } from '#answer/answer.ts';
import { intentNamed } from '#intents';
import { valuesOf } from '#language/talk.ts';
import type { Cue } from '#language/words/en/cues.ts';
import { monthNames } from '#quantity/month-names.ts';
import { holds, isOf } from '#rig/correct.ts';
import { gearIn, hasGear } from '#rig/gear.ts';
import { hasDraw, isSameName } from '#rig/merge.ts';
import type { Stated, StatedLoad } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { lastFrame, ownFrame, personKey, rigFor } from '../kept/recall.ts';
import type { Frame, Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { undemanding } from '../questions.ts';
import { leastSure } from '../unsure/sureness.ts';
import { factsIn, readingsOf } from '../unsure/two-readings.ts';
import { borrowedIn } from '../whose/whose.ts';
import { isOwning } from './asking.ts';
import { chemistrySlip } from './chemistry-slip.ts';
import { asksItself, isPair, isPutAsQuestion, opensTurn, theirFrame } from './lean.ts';
import { circumstances } from './lent-by.ts';
import { asksWhyAlone, ofAnswerBefore, ofTheirAnswers } from './of-answer.ts';

// A message taken for another question than reading put first, by what the talk and its own words make likely.

/** Whether a value is put right that stands in a question: the talk confirms how it was read. */
export const isSlipOf = (frame: Frame | undefined, { corrects }: Heard): boolean =>
  corrects?.from !== undefined && frame !== undefined && holds(frame.facts, corrects.from);

/** "1.4 A, sorry" of somebody who has asked nothing and told a rig with just one such figure. */
function isSlipOfRig(memory: Memory, { from, kind, onto }: Message, heard: Heard): boolean {
  const { corrects, facts } = heard;
  if (!corrects || corrects.from !== undefined || onto || Object.keys(facts).length > 0) return false;
  const rig = rigFor(memory, heard, from, kind);
  return rig !== undefined && ownFrame(memory.frames, from) === undefined && isOf(rig.rig, corrects);
}

const mostWordsOfWhy = 6;

/** "Why only 25?", "you said 25": of the answer, in which that figure stood. */
function asksWhy({ recognised, words, intent, facts }: Heard): boolean {
  const [first = '', next] = recognised.words.filter(word => !idle.has(word));
  const isOfBot = ['you', 'u'].includes(first) && next === 'said';
  const figures = recognised.mentions.filter(({ kind }) => kind === 'amount' || kind === 'number');
  const isPlain = words <= mostWordsOfWhy && Object.keys(facts).length === 0 && figures.length === 1;
  return (first === 'why' || isOfBot) && isPlain && ['settle', 'none', 'unclear'].includes(intent);
}

/** What an open lesson offers to say. */
const lessonWords: ReadonlySet<string> = new Set(['next', 'quiz', 'stop', 'simpler']);

/** A message that puts right or takes out what the question before has is about that question, whatever its words look like. */
export function ofFrame(memory: Memory, message: Message, heard: Heard): Heard {
  const frame = lastFrame(memory, message.from);
  const { intent, removed } = heard;
  if (isSlipOfRig(memory, message, heard))
    return { ...heard, intent: 'rig', options: [], certainty: leastSure };
  const [word, ...words] = heard.recognised.words;
  const isOfLesson = heard.cues.has('simpler') || (words.length === 0 && lessonWords.has(word ?? ''));
  if (isOfLesson && memory.lessons[personKey(message.from)]?.isOpen)
    return { ...heard, intent: 'learn', facts: {}, options: [], certainty: leastSure };
  if (!frame) return heard;
  // "Show the working, Rick never believes anyone": of what was just answered.
  const told = Object.keys(heard.facts).filter(key => key !== 'voltsTaken');
  if (heard.cues.has('ask-working') && told.length === 0 && frame.asked === undefined)
    return { ...heard, intent: frame.intent, facts: {}, options: [] };
  const isAnswered =
    frame.asked === undefined &&
    (!undemanding.has(frame.intent) || intentNamed(frame.intent).isArgument === true);
  if (asksWhyAlone(heard) && isAnswered)
    return { ...heard, intent: frame.intent, facts: {}, options: [], certainty: leastSure };
  if (asksWhy(heard) && frame.asked === undefined && !undemanding.has(frame.intent)) {
    const cues = new Set<Cue>([...heard.cues, 'ask-why']);
    return { ...heard, intent: frame.intent, facts: {}, claims: [], cues, options: [], certainty: leastSure };
  }
  const own = ownFrame(memory.frames, message.from);
  const otherKind = own && !undemanding.has(own.intent) ? chemistrySlip(own, heard) : undefined;
  if (otherKind) return otherKind;
  const inTalk = own ? ofAnswerBefore(own, heard) : ofTheirAnswers(frame, heard);
  if (inTalk) return { ...heard, intent: inTalk, facts: {}, options: [], certainty: leastSure };
  const isOwnSlip =
    heard.corrects && heard.corrects.from === undefined && own && !undemanding.has(own.intent);
  // "1.4, sorry": of one's own question, whatever others asked since.
  const isAlone = valuesOf({ ...heard.facts }).every(([, value]) => value === heard.corrects?.to);
  if (isOwnSlip && isAlone && isOf(own.facts, heard.corrects))
    return { ...heard, intent: own.intent, facts: {}, claims: [], options: [], certainty: leastSure };
  if (!['none', 'unclear', 'rig'].includes(intent)) return heard;
  if (own && own === memory.frames.at(-1) && fillsIn(heard, own))
    return { ...heard, intent: own.intent, options: [], certainty: leastSure };
  const isSlip = isSlipOf(frame, heard);
  const isGone = removed.some(name =>
    frame.facts.loads?.some(load => load.name.includes(name) || name.includes(load.name)),
  );
  const hasRig = rigFor(memory, heard, message.from, message.kind) !== undefined;
  const isOfFrame = (isSlip || isGone) && !(intent === 'rig' && hasRig);
  return isOfFrame ? { ...heard, intent: frame.intent, options: [] } : heard;
}

/**
 * "With Ann's panel?", "and if hers was lithium?": what names another's gear and asks for nothing else turns a question,
 * hers where something of it changes, else the one replied to, one's own, the chat's.
 */
export function ofTheirs(memory: Memory, message: Message, heard: Heard): Heard {
  const first = heard.recognised.words.find(word => !idle.has(word)) ?? '';
  // "Would Col's do the rice cooker?": a person and a thing of the talk, of which nothing is doubtful.
  const isOfTalk = heard.possessions?.some(({ isSpoken }) => isSpoken) && heard.owner !== undefined;
  const [likeliest] = heard.options;
  if (isOfTalk && likeliest && likeliest.intent === heard.intent && likeliest.probability >= leastOfTalk)
    return { ...heard, certainty: Math.max(heard.certainty, leastSure) };
  const isWhole = asking.has(first) && !['none', 'settle', 'unclear'].includes(heard.intent);
  if (asksItself(heard) || isWhole || ['forget', 'settle'].includes(heard.intent)) return heard;
  const borrowed = borrowedIn(memory, message, heard);
  const isTelling = heard.intent === 'rig' && !isPutAsQuestion(heard) && !opensTurn(heard);
  const isTurn = borrowed !== undefined || isPutAsQuestion(heard) || opensTurn(heard);
  if (isTelling || !isTurn || (heard.owner === undefined && !borrowed)) return heard;
  const own = ownFrame(memory.frames, message.from);
  // "Mine with an 80 W panel?": of one's own question, where the words leave that open.
  const isMine = heard.owner === 'me' && Object.keys(heard.facts).length > 0;
  const frame =
    theirFrame(memory, message, heard) ??
    (borrowed ? (message.onto ?? own ?? memory.frames.at(-1)) : isMine ? (message.onto ?? own) : undefined);
  if (!frame || undemanding.has(frame.intent)) return heard;
  const reading = readingsOf(heard).find(({ intent }) => intent === frame.intent);
  const facts = reading ? factsIn(reading.stated, heard) : heard.facts;
  // "June's panel" is of no month.
  const { month: _month, ...rest } = facts;
  const isName = borrowed?.lent.some(({ who }) => isMonth(who));
  return {
    ...heard,
    intent: frame.intent,
    facts: isName ? rest : facts,
    claims: [],
    options: [],
    certainty: leastSure,
  };
}

const leastOfTalk = 0.5;

/** Words that open a question of its own, and what may stand before them. */
const asking: ReadonlySet<string> = new Set('can could will would is are does do should'.split(' '));
export const idle: ReadonlySet<string> = new Set('bot ok okay so hey and but'.split(' '));

const months: ReadonlySet<string> = new Set(monthNames.map(name => name.toLowerCase()));
const isMonth = (name: string): boolean => months.has(name);

/** "Settle it": where two have claimed something, nothing else can be meant. */
export function ofArgument({ claims }: Memory, heard: Heard): Heard {
  const isAsked = heard.intent === 'settle' && heard.cues.has('ask-who-is-right');
  const isOpen = new Set(claims.map(({ who }) => who)).size > 1;
  return isAsked && isOpen
    ? { ...heard, options: [], certainty: Math.max(heard.certainty, leastSure) }
    : heard;
}

/** As likely as this an unsure turn is of the question that it leans on, whatever else it may be taken for. */
const leastTurn = 0.15;
/** What is told is unsure itself where another reading of the same question is so likely, of the likeliest. */
const mostRival = 0.6;
const mostTurnWords = 14;
/** Likelier than this, a line is of the question that reading takes it for. */
const mostTorn = 0.6;

/**
 * An unsure line that asks nothing of its own and turns a question: of the one replied to, else of the speaker's own
 * last one, else of the chat's ("with two?", "and mine at 90 W?"). A person would not ask which.
 */
export function turnOfTalk(memory: Memory, message: Message, heard: Heard): Heard | undefined {
  if (asksItself(heard) || heard.words === 0 || heard.words > mostTurnWords) return undefined;
  const ofOwn = ownTurned(memory, message, heard);
  if (ofOwn) return ofOwn;
  if (heard.certainty >= leastSure) return undefined;
  const isTurning = opensTurn(heard) || heard.owner === 'me';
  const own = ownFrame(memory.frames, message.from);
  const readings = readingsOf(heard);
  // "And if it's 2.2 A?" of an argument: the same argument.
  const argued = message.onto ?? own;
  if (argued?.intent === 'settle' && opensTurn(heard) && hasGear(gearIn(heard.facts)))
    return { ...heard, intent: 'settle', options: [], certainty: leastSure };
  for (const frame of [message.onto, own, memory.frames.at(-1)]) {
    if (!frame || undemanding.has(frame.intent)) continue;
    const isOfReply = frame === message.onto && fitsIn(heard, frame);
    if (!isTurning && !isOfReply && !isOtherValue(heard, frame)) continue;
    const [first, second] = readings.filter(({ intent }) => isOfFrame(intent, frame));
    // "Same but donkey": what tells nothing and reads like talk turns nothing.
    const isNothing = first !== undefined && Object.keys(factsIn(first.stated, heard)).length === 0;
    if (isNothing && heard.intent === 'none' && message.onto === undefined && heard.owner === undefined)
      continue;
    if (!first || first.probability < leastTurn) {
      // "And at 150 Ah?" after one's own question is that question, though its words look like others.
      const isTorn = (readings[0]?.probability ?? 0) < mostTorn;
      if (frame === own && isTurning && isTorn && fitsIn(heard, frame))
        return { ...heard, intent: frame.intent, options: [], certainty: leastSure };
      continue;
    }
    // A reading that takes nothing from what turns a question is no rival of one that does.
    const isRival = second !== undefined && Object.keys(second.stated).length > 0;
    if (isRival && second.probability > mostRival * first.probability) return undefined;
    return {
      ...heard,
      intent: frame.intent,
      facts: factsIn(first.stated, heard),
      certainty: leastSure,
    };
  }
  return undefined;
}

/** Whether a reading is of the question before: the same, or one that became it ("will it keep a fridge going" of a panel alone). */
const isOfFrame = (intent: IntentName, frame: Frame): boolean =>
  intent === frame.intent || intentNamed(intent).becomes?.(frame.facts) === frame.intent;

/** "Oh, and October?" after somebody else has asked another question: one's own is meant, as far as it takes that. */
function ownTurned({ frames }: Memory, { from, onto }: Message, heard: Heard): Heard | undefined {
  const [own, last] = [ownFrame(frames, from), frames.at(-1)];
  if (onto || !own || !last || own === last || own.intent === last.intent || last.asked?.length)
    return undefined;
  const isTurn = opensTurn(heard) || isOtherValue(heard, own);
  // "And in December?" is of any question about the sun.
  const isWhere = Object.keys(heard.facts).every(key => circumstances.has(key));
  const isOfLast =
    heard.owner === undefined &&
    (isPair(heard.intent, last.intent) || (isWhere && heard.certainty < leastSure));
  if (!isTurn || !isOfLast || undemanding.has(own.intent) || !fitsIn(heard, own)) return undefined;
  return { ...heard, intent: own.intent, options: [], certainty: leastSure };
}

const mostValueWords = 5;

/** A few words that tell only what the question before takes: "in December?", "36 hours?", "at 80 %". */
const isOtherValue = (heard: Heard, frame: Frame): boolean =>
  heard.words <= mostValueWords && fitsIn(heard, frame);

/** Whether a line tells something, and only what the question takes. */
function fitsIn({ facts }: Heard, frame: Frame): boolean {
  const keys = Object.keys(facts) as (keyof Stated)[];
  const { takes } = intentNamed(frame.intent);
  return keys.length > 0 && keys.every(key => takes.includes(key));
}

/** "Fridge averages 40 W" after 40 W of it: the same figure of the same thing, told closer. */
export function isToldCloser({ loads = [], ...others }: Stated, before: Stated): boolean {
  const isSame = (load: StatedLoad): boolean =>
    hasDraw(load) &&
    !!before.loads?.some(
      one => isSameName(one.name, load.name) && one.powerW === load.powerW && one.currentA === load.currentA,
    );
  return Object.keys(others).length === 0 && loads.length > 0 && loads.every(isSame);
}

/**
 * "100Ah lithium" after one's own question that was answered without a battery: what that one had to do without, told
 * bare. What somebody says they have is told to be kept.
 */
function fillsIn(heard: Heard, frame: Frame): boolean {
  const { cues, facts, owner, words } = heard;
  const isBare = words <= mostValueWords && owner === undefined && !cues.has('save') && !isOwning(heard);
  const isNew = Object.keys(facts).every(key => frame.facts[key as keyof Stated] === undefined);
  return (
    isBare &&
    (isNew || isToldCloser(facts, frame.facts)) &&
    !undemanding.has(frame.intent) &&
    fitsIn(heard, frame)
  );
}
