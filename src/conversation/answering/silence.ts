import { isSetup } from '#intents/needs.ts';
import type { Cue } from '#language/words/en/cues.ts';
import { gearIn } from '#rig/gear.ts';
import { isSameName } from '#rig/merge.ts';
import type { Heard } from '../hear.ts';
import type { Interpreted } from '../interpret.ts';
import { ownFrame, personKey } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { isAsking, isAskingMore, opensAsking } from '../turns/asking.ts';
import { isBotCalled } from '../turns/called.ts';
import { isSaying } from '../turns/claims.ts';
import { isAnsweredLast, isArgued } from '../turns/dispute.ts';
import { opensTurn } from '../turns/lean.ts';
import { leastSure } from '../unsure/sureness.ts';
import { isCalled } from '../whose/people.ts';

/** Whether a question is told once more, another way: nothing new is said, and the question before is answered. */
export const isReplay = ({ heard, frame, intent }: Interpreted): boolean =>
  frame?.intent === intent.name &&
  Object.keys(heard.facts).length === 0 &&
  heard.claims.length === 0 &&
  frame.asked === undefined;

/** Words that ask something of the answer before, though they tell nothing new. */
const asksAnew: readonly Cue[] = ['ask-working', 'ask-why', 'simpler', 'same-again', 'what-if'];

/** Whether it names whose gear it is of: "n Jo's". */
const isOfNamed = ({ owner, cues, recognised: { words } }: Heard): boolean =>
  owner !== undefined && isCalled(owner, words) && !cues.has('thanks');

/**
 * Whether it only looks like the question before: nothing new, nothing asked ("ta", "better", "pfff"), or thanks with
 * a word of what was answered.
 */
function isSideTalk(read: Interpreted, message: Message): boolean {
  const { text, onto } = message;
  const { heard, frame, intent } = read;
  if (
    onto ||
    text.includes('?') ||
    isBotCalled(heard, message) ||
    isOfNamed(heard) ||
    opensAsking(heard) ||
    (heard.words > 1 && (isAskingMore(heard) || asksAnew.some(cue => heard.cues.has(cue))))
  )
    return false;
  // One word that may be two questions asks neither: "better".
  const isLone = read.two !== undefined && heard.words === 1 && Object.keys(heard.facts).length === 0;
  if (isLone) return true;
  const isThanks = heard.cues.has('thanks') && frame?.intent === intent.name && frame.asked === undefined;
  return isThanks || (isReplay(read) && heard.removed.length === 0 && heard.corrects === undefined);
}

const ofRig: readonly Cue[] = ['rig', 'show', 'save', 'mine'];

/** Whether it is taken for a word on a rig and yet tells nothing, shows nothing, and takes nothing off that is there. */
function isIdleRig({ intent, heard, setting }: Interpreted, message: Message): boolean {
  if (intent.name !== 'rig' || heard.undo || heard.owner !== undefined) return false;
  // Nothing of this person's is there to be put right.
  const isThere = Object.keys(setting.rigs[personKey(message.from)] ?? {}).length > 0;
  if (heard.corrects && isThere) return false;
  if (isBotCalled(heard, message) || opensAsking(heard)) return false;
  if (ofRig.some(cue => heard.cues.has(cue)) || heard.cues.has('own-statement')) return false;
  // "Nice fridge": a thing that is only named is nobody's yet.
  const gear = Object.entries(gearIn(heard.facts));
  if (gear.some(([key, value]) => key !== 'loads' || !isIdle(key, value))) return false;
  const things = Object.values(setting.rigs).flatMap(rig => rig.loads ?? []);
  return heard.removed.every(name => !things.some(load => isSameName(load.name, name)));
}

/** Whether it is said to the bot: by its name, or by a question. */
const isAddressed = (heard: Heard, message: Message): boolean =>
  message.onto !== undefined || message.text.includes('?') || isBotCalled(heard, message);

/**
 * Whether somebody sets a figure of their own against a claim that stands, plainly so by its reading or out loud; against
 * an answer only out loud, but for who has just got it.
 */
function isObjection(
  memory: Memory,
  { claims, recognised, intent, certainty }: Heard,
  from: string,
): boolean {
  if (claims.length === 0) return false;
  const isLoud = isSaying(recognised.words);
  const isSureClaim = intent === 'settle' && certainty >= leastSure;
  const isAnswered = memory.frames.some(frame => frame.from !== from && frame.asked === undefined);
  return (
    (isLoud && isAnswered) ||
    ((isLoud || isSureClaim) && isArgued(memory, from)) ||
    (isSureClaim && isAnsweredLast(memory, from))
  );
}

/** Facts that are told of anything: they make no question by themselves. */
const saidOfAnything: ReadonlySet<string> = new Set([
  'durationH',
  'until',
  'ambientC',
  'sky',
  'place',
  'month',
]);

const idleKeys: ReadonlySet<string> = new Set(['loads', 'batteries', 'chargers']);
const saysNothing: ReadonlySet<string> = new Set(['name', 'chemistry', 'role', 'kind']);

/** Whether a fact says nothing that a sum could take: a figure of anything, a thing that is only named, a kind of battery. */
function isIdle(key: string, value: unknown): boolean {
  if (saidOfAnything.has(key)) return true;
  const rows = (Array.isArray(value) ? value : [value]) as readonly Readonly<Record<string, unknown>>[];
  return idleKeys.has(key) && rows.every(row => Object.keys(row).every(name => saysNothing.has(name)));
}

/**
 * A remark among people: of somebody who has asked nothing, to nobody by name, that asks nothing, turns nothing, tells no
 * setup and takes nobody's side out loud ("14 hours tops", "told her to get the bigger one"). What it claims is kept
 * for when the bot is asked.
 */
function isRemark(memory: Memory, { intent, heard, two, frame }: Interpreted, message: Message): boolean {
  const from = personKey(message.from);
  const { cues, facts, corrects, removed } = heard;
  if (isAddressed(heard, message) || isAsking(heard) || opensTurn(heard) || isSetup(facts)) return false;
  if (intent.isOfGear || (intent.isTalk && !two) || corrects || removed.length > 0) return false;
  if (heard.claims.length > 1 || Object.entries(facts).some(([key, value]) => !isIdle(key, value)))
    return false;
  if (cues.has('correction') || isObjection(memory, heard, from)) return false;
  const isOfTalk = memory.frames.length > 0 || memory.claims.length > 0 || memory.talk !== undefined;
  // "Overcast like Oz's face" is no turn of Oz's question.
  const isOfOther = frame !== undefined && frame.from !== from;
  const hasAsked = ownFrame(memory.frames, from) !== undefined;
  return isOfTalk && (!hasAsked || intent.isArgument === true || isOfOther);
}

/**
 * Whether the bot has just asked something, this person or nobody in particular, or anybody who tells a fact now: what
 * they say is read as the answer.
 */
function isAnswering({ talk }: Memory, { facts }: Heard, { from }: Message): boolean {
  if (!talk?.asked?.length) return false;
  const isAsked = talk.lastFrom === undefined || talk.lastFrom === personKey(from);
  return isAsked || Object.keys(facts).length > 0;
}

/** Whether a message is written in a script that the bot can't read. */
export const isStrange = ({ issues, facts }: Heard): boolean =>
  issues.some(({ code }) => code === 'other-language') && Object.keys(facts).length === 0;

/** So short, a line without a word that asks says nothing. */
const mostWordless = 2;

/** Whether nothing is said: talk among people, in which nobody is in danger. */
export function isSilent(memory: Memory, read: Interpreted, message: Message): boolean {
  const { hazards, heard, intent } = read;
  if (message.kind !== 'group' || hazards.length > 0 || heard.isPicked || heard.isAppeal || isStrange(heard))
    return false;
  if (intent.name === 'none') return true;
  if (isAnswering(memory, heard, message)) return false;
  // What is read for sure as a question is one, though it tells nothing new; but a turn of somebody else's may be a joke of it.
  const isOfOther = read.frame !== undefined && read.frame.from !== personKey(message.from);
  // "Oh good" has no word that asks anything.
  const isWordless = isReplay(read) && heard.words <= mostWordless && heard.cues.size === 0;
  if (heard.certainty >= leastSure && !isOfOther && !intent.isArgument && !isWordless) return false;
  return isSideTalk(read, message) || isIdleRig(read, message) || isRemark(memory, read, message);
}
