import { intentNamed } from '#intents';
import { factsOf } from '#intents/facts.ts';
import { asHabit } from '#intents/hours-told.ts';
import type { Intent } from '#intents/intent.ts';
import { isSetup } from '#intents/needs.ts';
import { hasUse } from '#intents/use.ts';
import type { Cue } from '#language/words/en/cues.ts';
import { isSameName } from '#rig/merge.ts';
import type { Stated } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { isOfOwn, ownFrame, ownKey, personKey } from '../kept/recall.ts';
import type { Frame, Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { undemanding } from '../questions.ts';
import { gearOf } from '../whose/gear-of.ts';
import { isOfChargeVolts, tellsKind } from './charge-volts.ts';
import { claimedOf, disputeOf, frameOfQuestion } from './disputes.ts';
import { sideAskedIn } from './side-asked.ts';

/**
 * How much of a question before goes into this one: all of it, what still holds, what was asked without the gear (how
 * long, to where), where and when alone, or nothing.
 */
type Extent = 'all' | 'gear' | 'asked' | 'circumstances' | 'none';

export interface Lean {
  readonly frame?: Frame;
  readonly extent: Extent;
}

/** Words that turn what was asked before. */
const turns: readonly Cue[] = ['what-if', 'make-it', 'and-with', 'same-again', 'correction'];
/** Words that open a message which turns the question before. */
const openings: ReadonlySet<string> = new Set(
  'and same what with without but make if how now only just plus minus add instead or then also even suppose say assuming'.split(
    ' ',
  ),
);
const fillers: ReadonlySet<string> = new Set(
  'ok okay so hey bot yeah yes no well right hmm oh ah'.split(' '),
);
const turnsWhole: readonly Cue[] = ['same-again', 'correction', 'remove'];

/**
 * Whether a question that tells all it needs is one of its own: turning words amid it ("a fan and a lamp") belong to
 * what it tells, those at its beginning to the talk.
 */
export function standsAlone({ cues, recognised }: Heard): boolean {
  const first = recognised.words.find(word => !fillers.has(word)) ?? '';
  const [next] = recognised.words.slice(recognised.words.indexOf(first) + 1);
  const isAsking = first === 'what' || first === 'how';
  const opens = isAsking ? ['if', 'about', 'happens'].includes(next ?? '') : openings.has(first);
  return !opens && !turnsWhole.some(cue => cues.has(cue));
}

/** Whether a line turns what was asked before, by its first word or a turning word. */
export const opensTurn = (heard: Heard): boolean =>
  !standsAlone(heard) || turns.some(cue => heard.cues.has(cue));

/** Whether two questions are one to a camper: how long it lasts, whether to the end of the trip, what is used a day. */
export const isPair = (a: string, b: string): boolean =>
  a === b || [a, b].every(name => name === 'run-time' || name === 'trip' || name === 'energy-budget');

/** Whether what is told is enough to answer by itself. */
export const isWhole = ({ takes, needs }: Intent, told: Stated): boolean =>
  takes.some(key => told[key] !== undefined) &&
  needs.safeParse(Object.fromEntries(Object.entries(told).filter(([key]) => takes.includes(key as never))))
    .success;

/** The question that a message may lean on: the one replied to, else the speaker's last, else the chat's. */
function frameFor(
  { frames }: Memory,
  { onto, from }: Message,
  intent: string,
  isOwnMeant: boolean,
  isTurning: boolean,
  isIdleTurn: boolean,
  isSameAsked: boolean,
): Frame | undefined {
  if (onto) return onto;
  // What was asked back about with nothing told is nothing to lean on; what is missing there waits for its answer.
  const told = frames.filter(
    ({ facts, intent: of, asked: wanted }) =>
      Object.keys(facts).length > 0 || (of !== 'unclear' && wanted?.length !== 0),
  );
  // An argument is about the chat's last question, whoever asks who is right.
  if (intent === 'settle') return told.findLast(frame => !undemanding.has(frame.intent)) ?? told.at(-1);
  const last = told.at(-1);
  const own = ownFrame(told, from);
  if (!own || !last || own === last) return own ?? last;
  // What was asked since of one's own things with others' is what the talk is of.
  if (tookFrom(last, from)) return last;
  // What somebody puts right or takes out, and what they call their own, is of their own question.
  if (isOwnMeant) return own;
  // "Same for us" after somebody else's question is of that.
  if (isSameAsked) return last;
  // What would change nothing of one's own question is of what was asked last.
  if (isIdleTurn && isPair(last.intent, intent) && isPair(own.intent, intent)) return last;
  // What waits for an answer takes it from anybody; and who speaks of the chat's question means that.
  const isOwnTurn = isTurning && isPair(own.intent, intent);
  const isOpen =
    last.asked !== undefined && last.asked.length > 0 && isPair(last.intent, intent) && !isOwnTurn;
  // Somebody else has told what one's own question waited for.
  const isGoneOn = own.asked !== undefined && last.onto === own.at;
  return isOpen || isGoneOn ? last : own;
}

/** Whether a question of somebody else went by things of a person, beside others. */
const tookFrom = ({ lent, facts }: Frame, from: string): boolean =>
  (facts.loads?.length ?? 0) > 1 &&
  lent?.some(one => one.who === personKey(from) && one.facts.loads !== undefined) === true;

/** "Same for us", "yeah same": nothing else is told. */
const isSameForSelf = (heard: Heard): boolean =>
  heard.cues.has('same-again') &&
  heard.words <= mostShort &&
  Object.keys(heard.facts).length === 0 &&
  (heard.owner === undefined || isOfWriter(heard.owner));

/** "Would it do on Kev's setup?" of who has just asked of that: all that it tells, their question has. */
function changesNothing({ facts, owner, lent }: Frame, heard: Heard): boolean {
  const told = Object.entries(heard.facts);
  const isSlip = heard.removed.length > 0 || heard.corrects !== undefined;
  const isAsking = [...heard.cues].some(cue => cue.startsWith('ask-') && cue !== 'ask-can-it');
  if (isSlip || isAsking || isOfWriter(heard.owner)) return false;
  const who = heard.owner && personKey(heard.owner);
  const isOfSame = who !== undefined && (owner === who || lent?.some(one => one.who === who) === true);
  const isThere = told.every(
    ([key, value]) => JSON.stringify(value) === JSON.stringify(facts[key as keyof Stated]),
  );
  return isThere && (told.length > 0 ? heard.possessions?.some(({ isOwn }) => !isOwn) === true : isOfSame);
}

/** Whether its words ask for something of their own ("how long", "what size"). */
export const asksItself = ({ cues }: Heard): boolean => [...cues].some(cue => cue.startsWith('ask-'));

/** The same, or with a question mark. */
export const isPutAsQuestion = (heard: Heard): boolean =>
  heard.cues.has('question-mark') || asksItself(heard);

const mostShort = 4;

/** "On 24 V?": a few words that ask and so answer nothing. */
const isShortQuestion = (heard: Heard): boolean =>
  heard.cues.has('question-mark') && heard.words <= mostShort && !asksItself(heard);

/** Whether a message speaks of somebody's gear who is not its writer. */
const isOfOther = ({ owner }: Heard, from: string): boolean =>
  owner !== undefined && owner !== 'me' && owner !== 'us' && personKey(owner) !== personKey(from);

/**
 * "And if hers was lithium?": the question of whom is spoken of, where it is the same one and something of it changes,
 * or where the writer has none of their own that could be asked of that person's gear.
 */
export function theirFrame({ frames }: Memory, { onto, from }: Message, heard: Heard): Frame | undefined {
  const owner = heard.owner;
  if (owner === undefined || !isOfOther(heard, from) || isSetup(heard.facts)) return undefined;
  const theirs = onto?.from === personKey(owner) ? onto : ownFrame(frames, owner);
  if (!theirs || undemanding.has(theirs.intent)) return undefined;
  const isChanged =
    Object.keys(heard.facts).length > 0 || heard.removed.length > 0 || heard.corrects !== undefined;
  return isChanged || onto === theirs || ownFrame(frames, from) === undefined ? theirs : undefined;
}

/** The question of the dispute that a message asks to be settled, or that it claims something of. */
function disputedFrame(memory: Memory, { from }: Message, heard: Heard): Frame | undefined {
  if (heard.sided) return frameOfQuestion(memory, heard.sided.of);
  if (heard.isAppeal) return frameOfQuestion(memory, disputeOf(memory, from));
  return heard.claims.length > 0 ? claimedOf(memory, heard.claims) : undefined;
}

/** The rig that a writer has told of their own. */
const ownRig = ({ rigs }: Memory, { from, kind }: Message): Stated => rigs[ownKey(from, kind)] ?? {};

/** "What if we leave the fan off" of who has told a rig with a fan, and asked nothing: of that rig, whatever others asked. */
function rigTurned(
  memory: Memory,
  message: Message,
  { removed, owner, facts }: Heard,
  { name, isArgument, isOfGear }: Intent,
): Frame | undefined {
  const last = memory.frames.at(-1);
  const rig = ownRig(memory, message);
  const isOwn = ownFrame(memory.frames, message.from) !== undefined || owner !== undefined;
  const isThere = removed.some(thing => rig.loads?.some(load => isSameName(load.name, thing)));
  if (!last || isOwn || message.onto || !isThere || isArgument || isOfGear || isSetup(facts))
    return undefined;
  const from = personKey(message.from);
  return { intent: name, facts: rig, claims: [], from, at: last.at, recalled: Object.keys(rig) };
}

const stays: ReadonlySet<string> = new Set(
  'trip trips nights days dates time weekend week place spot camp campsite stay plan itinerary question'.split(
    ' ',
  ),
);

/** "On the same trip": as long, there and then. */
const isSameStay = ({ recognised: { words } }: Heard): boolean =>
  words.some((word, at) => word === 'same' && stays.has(words[at + 1] ?? ''));

/** "Mine", "ours": of the writer, alone or with others. */
const isOfWriter = (owner: string | undefined): boolean => owner === 'me' || owner === 'us';

/** Seven hours asked of a day are seven a night in a question of how many nights. */
export const forDays = (lean: Lean, { name }: Intent): Lean =>
  lean.frame?.intent === 'energy-budget' && name !== lean.frame.intent && !intentNamed(name).isArgument
    ? { ...lean, frame: { ...lean.frame, facts: asHabit(lean.frame.facts) } }
    : lean;

/** How far a message leans on the talk. */
export function leanOf(memory: Memory, message: Message, heard: Heard, intent: Intent): Lean {
  const { cues, facts, removed, corrects, owner } = heard;
  const theirs = theirFrame(memory, message, heard);
  if (theirs && isPair(theirs.intent, intent.name)) return { frame: theirs, extent: 'all' };
  const isSlip = corrects !== undefined || removed.length > 0;
  const ofRig = rigTurned(memory, message, heard, intent);
  if (ofRig) return { frame: ofRig, extent: 'all' };
  // What turns an argument or asks for its working is about that argument, not about what was asked before it.
  const own = ownFrame(memory.frames, message.from);
  const last = own?.intent === intent.name ? own : memory.frames.at(-1);
  const isOfArgument =
    last?.intent === intent.name && heard.claims.length === 0 && !cues.has('ask-who-is-right');
  const disputed = intent.isArgument && !message.onto ? disputedFrame(memory, message, heard) : undefined;
  const frame =
    disputed ??
    (intent.isArgument && isOfArgument && !message.onto
      ? last
      : frameFor(
          memory,
          message,
          intent.name,
          isSlip || cues.has('correction') || isOfWriter(owner),
          opensTurn(heard) || isShortQuestion(heard),
          own !== undefined && changesNothing(own, heard),
          isSameForSelf(heard),
        ));
  if (!frame) return { extent: 'none' };
  const isOwn = frame.from === personKey(message.from) || tookFrom(frame, message.from);
  const isTold = Object.keys(facts).length > 0;
  if (isSetup(facts)) {
    const isPlainTurn = isOwn && (isSlip || turns.some(cue => cues.has(cue))) && owner === undefined;
    if (isPlainTurn && isPair(frame.intent, intent.name)) return { frame, extent: 'all' };
    // "Mine's a 75 Ah AGM and a 1.4 A fridge, same question": as long, to the same hour.
    const isSameAsked =
      cues.has('same-again') || isSameStay(heard) || (message.onto !== undefined && opensTurn(heard));
    if (!isOwn && isSameAsked && isPair(frame.intent, intent.name)) return { frame, extent: 'asked' };
    return isOwn && owner === undefined ? { frame, extent: 'circumstances' } : { extent: 'none' };
  }
  // "Same for me": the whole of it, of one's own gear where that is known.
  const isSameForMe = !isOwn && !isOfOther(heard, message.from) && cues.has('same-again');
  if (isSameForMe && isPair(frame.intent, intent.name) && !message.onto)
    return { frame, extent: gearOf(memory, personKey(message.from)) ? 'asked' : 'all' };
  // "And mine?", "Kim's rig": the same question of other gear.
  const isOwnGear = isOwn && isOfWriter(owner);
  if (owner !== undefined && !isOwnGear) return { frame, extent: 'circumstances' };
  if (intent.isArgument) return { frame, extent: 'all' };
  const isOfVolts = intent.name === 'charge-level' && isOfChargeVolts(frame) && tellsKind(facts);
  const isSame = isPair(frame.intent, intent.name) || isOfVolts;
  // What somebody else was asked for is answered by a figure, not by another whole question.
  const isAnother = !frame.asked?.length || hasUse(factsOf(facts));
  const isApart = isTold && !isOwn && isAnother && !isSlip && !message.onto && standsAlone(heard);
  const isNew = isTold && !isOwn && !isSlip && !message.onto && asksItself(heard);
  if ((isApart || isNew) && isWhole(intent, facts)) return { extent: 'none' };
  // "How long will my fan last?" is of the asker's own gear: somebody else's battery is not meant.
  if (isApart && heard.recognised.words.some(word => word === 'our' || word === 'i'))
    return { frame, extent: 'circumstances' };
  if (!isOwn && isAnother && !isSlip && !message.onto && isOfOwn(heard))
    return { frame, extent: 'circumstances' };
  // "How long will it last?" of who has told a rig is of that, whatever others asked since.
  const isLeft = corrects === undefined && asksItself(heard);
  const isPlain = !isOwn && !message.onto && !isTold && (!isSlip || isLeft) && !cues.has('same-again');
  if (isPlain && standsAlone(heard) && isSame && isWhole(intent, ownRig(memory, message)))
    // "Will I?": as long as they asked.
    return { frame, extent: heard.words <= mostShort && cues.has('ask-can-it') ? 'asked' : 'circumstances' };
  // What only got a question back is all still meant.
  if (isSame || (frame.asked !== undefined && isOwn)) return { frame, extent: 'all' };
  // "What size would we need instead": for as long as before.
  const isInstead =
    !isTold && intentNamed(intent.name).takes.includes('durationH') && cues.has('ask-what-size');
  // "How many of those would flatten it?": of goes as long as before.
  const isOfGoes = !isTold && isOwn && sideAskedIn(heard) === 'goes';
  return { frame, extent: isInstead || isOfGoes ? 'all' : 'gear' };
}
