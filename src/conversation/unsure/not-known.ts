import { present } from '#basics/present.ts';
import { isSpoken } from '#basics/spoken.ts';
import { intentNamed } from '#intents';
import { isSameUnknown, type Unknown } from '#intents/untold.ts';
import type { Cue } from '#language/words/en/cues.ts';
import { isEmergency } from '../answering/safe.ts';
import { type Heard, heardNothing, nods } from '../hear.ts';
import type { Interpreted } from '../interpret.ts';
import { ownFrame, personKey } from '../kept/recall.ts';
import { pick } from '../kept/remembered.ts';
import type { Frame, Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { gearKinds } from '../turns/side-talk.ts';
import {
  asks,
  besides,
  contracted,
  denied,
  deniedOf,
  denying,
  fillers,
  finding,
  helping,
  notKnowing,
  ofNobody,
  ofOthers,
  opensElse,
  sayingAlone,
} from './not-known-words.ts';

/** An answer that says no more than that is short. */
const mostWords = 12;
/** So many words of its own such a line may have: "no idea, it's my brother's old bus". */
const mostOwn = 2;
/** A question back is answered within so long, ms. */
const openMs = 30 * 60_000;
/** Words in the longest phrase. */
const longest = 5;

type Saying = { readonly how: Unknown; readonly length: number; readonly isOf?: boolean };

/** What says at a word of a line that something isn't known: a phrase, the longest there, or a denial of knowing. */
function foundAt(said: readonly string[], at: number): Saying | undefined {
  for (let length = Math.min(longest, said.length - at); length > 0; length--) {
    const phrase = said.slice(at, at + length).join(' ');
    const how = (['unknown', 'where', 'usual'] as const).find(one => notKnowing[one].has(phrase));
    if (how) return { how, length };
  }
  const after = helping.has(said[at + 1] ?? '') ? at + 2 : at + 1;
  if (said[at] === 'how' && finding.has(said[after] ?? '')) return { how: 'where', length: after + 1 - at };
  const next = said[at + 1] ?? '';
  if (!denying.has(said[at] ?? '')) return undefined;
  if (denied.has(next)) return { how: 'unknown', length: 2 };
  return deniedOf.has(next) ? { how: 'unknown', length: 2, isOf: true } : undefined;
}

/**
 * How a short line says that what was asked for isn't known, if it says that.
 * @param most so many words it may have that are of something else
 * @param asked the name of who was asked
 */
function notKnownIn(
  { recognised }: Pick<Heard, 'recognised'>,
  most: number,
  asked?: string,
): Unknown | undefined {
  const { words, mentions } = recognised;
  const all = words
    .filter(isSpoken)
    .map(word => (Object.hasOwn(contracted, word) ? present(contracted[word]) : word));
  if (all.length === 0 || all.length > mostWords) return undefined;
  const said = all.filter(word => !fillers.has(word) && !ofOthers.has(word) && word !== asked);
  if (said.length === 1 && Object.hasOwn(sayingAlone, present(said[0]))) return sayingAlone[present(said[0])];
  const gear = new Set(
    mentions.flatMap(({ kind, from, to }) =>
      gearKinds.has(kind) || kind === 'amount' ? words.slice(from, to) : [],
    ),
  );
  const isOwn = (word: string | undefined): boolean =>
    word !== undefined && !besides.has(word) && !gear.has(word);
  const found: Unknown[] = [];
  const left: string[] = [];
  for (let at = 0; at < said.length; ) {
    const one = foundAt(said, at);
    const next = at + (one?.length ?? 1);
    // "I don't know him."
    if (one?.isOf && isOwn(said[next]) && !foundAt(said, next)) return undefined;
    if (one) found.push(one.how);
    else left.push(present(said[at]));
    at = next;
  }
  const how = (['where', 'unknown', 'usual'] as const).find(one => found.includes(one));
  if (!how) return undefined;
  const own = left.filter(isOwn).length;
  // "Is that normal?" asks something, "the usual suspects" says something else.
  if (how === 'usual' && asks.has(present(all[0]))) return undefined;
  const isElse = own > 0 && left.some(word => opensElse.has(word));
  return own > (how === 'unknown' ? most : 0) || isElse ? undefined : how;
}

/** A message that says that what the bot asked for isn't known, as the question that it was asked about. */
export interface NotKnown {
  readonly message: Message;
  readonly heard: Heard;
  /** Undefined: that was said already, and there is nothing new to say. */
  readonly how?: Unknown;
}

const isOpen = (frame: Frame | undefined, at: Date): frame is Frame =>
  frame?.asked !== undefined && frame.intent !== 'unclear' && at.getTime() - frame.at <= openMs;

/** The question back that a message answers: its writer's own, or somebody's for whom it speaks ("she wouldn't know"). */
function openFor(
  { frames }: Memory,
  { from, at, onto }: Message,
  spoken: readonly string[],
): Frame | undefined {
  const own = onto ?? ownFrame(frames, from);
  if (isOpen(own, at)) return own;
  const last = frames.at(-1);
  const isFor = spoken.some(word => ofOthers.has(word) || ofNobody.has(word) || word === last?.from);
  return onto === undefined && isFor && isOpen(last, at) ? last : undefined;
}

/** What is read of a line that says nothing but that: the question before with what the line tells. */
const asAsked = ({ intent, cues }: Pick<Frame, 'intent' | 'cues'>, facts: Heard['facts']): Heard => ({
  ...heardNothing(),
  intent,
  facts,
  cues: new Set((cues ?? []) as Cue[]),
  asRead: { intent, stated: facts },
  probability: 1,
  certainty: 1,
  options: [],
  isPicked: true,
});

/** Of two readings that were asked about the one that can be answered as it stands, the likelier first. */
const likelierOf = ({ options }: NonNullable<Memory['choice']>) =>
  options.find(({ intent, facts }) => {
    const asked = intentNamed(intent);
    return asked.needs.safeParse(pick(facts, asked.takes)).success;
  }) ?? options[0];

/** Numbers of a line that say something: "a normal one" tells none. */
const hasNumbers = ({ unread }: Heard): boolean => unread.some(({ text }) => /\d/.test(text));

/** Whether an answer with usual gear is asked for once more, with its working. */
const asksWorking = ({ cues, facts }: Heard): boolean =>
  cues.has('ask-working') && Object.keys(facts).length === 0;

/**
 * Whether a message says that its writer doesn't know what the bot asked for ("dunno", "where do I find that?", "just a
 * normal one"): then it is the same question, with usual gear in the place of that. Said among people it is talk.
 */
export function notKnown(memory: Memory, message: Message, heard: Heard): NotKnown | undefined {
  if (hasNumbers(heard) || isEmergency(heard.hazards)) return undefined;
  if (heard.isPicked || heard.forgetting || heard.undo || heard.corrects) return undefined;
  const from = personKey(message.from);
  if (memory.lessons[from]?.isQuiz) return undefined;
  const spoken = heard.recognised.words;
  const frame = openFor(memory, message, spoken);
  if (!frame) return undefined;
  const { talk, choice } = memory;
  const isLast = talk?.lastWriter === undefined || talk.lastWriter === from;
  // What somebody asked since is answered by it.
  if (!isLast && message.onto === undefined && talk?.said?.includes('1?')) return undefined;
  const onto = { ...message, from: frame.from, onto: frame };
  if (frame.untold && asksWorking(heard)) {
    const asked = asAsked(frame, {});
    return {
      message: onto,
      heard: { ...asked, cues: new Set([...asked.cues, 'ask-working']) },
      how: 'still',
    };
  }
  const how = notKnownIn(heard, isLast ? mostOwn : 0, frame.from);
  if (!how) return undefined;
  const facts = how === 'where' ? {} : heard.facts;
  const option = choice?.at === frame.at ? likelierOf(choice) : undefined;
  if (option)
    return nods.has(option.say)
      ? undefined
      : { message: onto, heard: asAsked({ ...option, cues: frame.cues }, option.facts), how };
  const isSaid = frame.untold !== undefined && how !== 'where' && Object.keys(facts).length === 0;
  if (isSaid) return { message, heard: { ...asAsked({ intent: 'none' }, {}), isPicked: undefined } };
  return { message: onto, heard: asAsked(frame, facts), how };
}

/** Whether all that a question lacks is what its asker has said not to know. */
export function isStillUnknown(memory: Memory, { from }: Message, { frame, missing }: Interpreted): boolean {
  const own = ownFrame(memory.frames, from);
  const untold = [own, frame].flatMap(one => (one?.from === personKey(from) ? (one.untold ?? []) : []));
  return (
    missing.length > 0 &&
    missing.every(({ key }) => key !== undefined && untold.some(one => isSameUnknown(one, key)))
  );
}
