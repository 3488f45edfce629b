import type { z } from 'zod';
import type { Reply } from '#answer/reply.ts';
import { without } from '#basics/without.ts';
import { fits } from '#rig/fits.ts';
import { gearKeys } from '#rig/gear.ts';
import { mergeFacts } from '#rig/merge.ts';
import { factsSchema, mostKept, type Rig, rigSchema, type Stated } from '#rig/rig.ts';
import { readAt, stillTold } from '../answering/live.ts';
import type { Interpreted } from '../interpret.ts';
import {
  choiceSchema,
  emptyMemory,
  type Frame,
  frameSchema,
  framesKept,
  type LessonProgress,
  type Memory,
} from '../memory.ts';
import type { Message } from '../message.ts';
import { passingBy } from '../questions.ts';
import { dcdcTold } from '../told/charger-told.ts';
import { unusualUnits } from '../told/units.ts';
import { openQuestions } from '../turns/disputes.ts';
import { heardBy } from '../turns/lent-by.ts';
import { rigKeyOf, withRig } from '../whose/shared.ts';
import { withoutPerson } from '../whose/without-person.ts';
import { keepClaims } from './claims-kept.ts';
import { personKey } from './recall.ts';
import { talkAfter } from './talk-read.ts';

/** What was done with a message, as far as memory cares. */
export interface Done {
  readonly reply: Reply;
  /** The bot asked something back. */
  readonly isBack: boolean;
  /** The words in which it asked, or a quiz did. */
  readonly asked?: string;
  /** What is missing its asker has said not to know. */
  readonly isUnknown?: boolean;
}

const ofRig: ReadonlySet<string> = new Set(gearKeys);

/** The memory after a message. Never touches the one handed in. */
export function remember(memory: Memory, message: Message, read: Interpreted, done: Done): Memory {
  const { intent, heard, setting, two } = read;
  const wish = done.isBack ? undefined : done.reply.remember;
  if (wish?.forget === 'chat') return emptyMemory();
  const from = personKey(message.from);
  const at = message.at.getTime();
  let next: Memory = {
    ...memory,
    claims: keepClaims(memory, read, from, at, isSettled(read, done)),
    talk: talkAfter(memory, message, heard, done.asked),
    choice: two && sound(choiceSchema, { at, options: two.options.map(option => ({ ...option })) }),
  };
  next = { ...next, forgetting: stillOpen(next, read, from) };
  if (wish?.asksToForget) next = { ...next, forgetting: { from, at, request: { ...wish.asksToForget } } };
  if (wish?.forget === 'me') next = withoutPerson(next, from, setting.ownKey);
  // What somebody's rig is now counts for more than what they asked before.
  if (wish?.rigs)
    next = {
      ...next,
      rigs: changedRigs(next, wish.rigs),
      undo: wish.isFinal ? undefined : { from, at, rigs: before(memory, wish.rigs) },
      frames: next.frames.filter(f => f.from !== from),
    };
  if (wish?.lesson)
    next = {
      ...next,
      lessons: lessonsWith(next.lessons, from, { ...wish.lesson, done: [...wish.lesson.done] }),
    };
  // "It's minus 5 here this morning": no question, and the next one is asked in that cold.
  const isTold = intent.name === 'rig' || intent.name === 'unclear';
  const told = { ...(isTold ? withoutGear(heard.facts) : {}), ...dcdcTold(heard) };
  if (isTold || told.chargers)
    next = {
      ...next,
      passing: sound(factsSchema, passingOf(next, heard, told, at, from)),
      passingAt: at,
      passingFrom: from,
    };
  const isOpen = two !== undefined || (intent.name === 'unclear' && Object.keys(heard.facts).length > 0);
  if (isOpen || !passingBy.has(intent.name))
    next = { ...next, frames: framed(next, frameOf(message, read, done)) };
  return strip({ ...next, learned: ofRigs(next) });
}

/** Whether the bot says who is right. */
const isSettled = ({ intent }: Interpreted, { reply, isBack }: Done): boolean =>
  intent.isArgument === true && !isBack && Object.keys(reply.figures ?? {}).length > 0;

/** What was learnt of rigs that are there: it goes with them. */
function ofRigs({ learned, rigs }: Memory): Memory['learned'] {
  const kept = Object.entries(learned ?? {}).filter(([owner]) => rigs[owner] !== undefined);
  return kept.length > 0 ? Object.fromEntries(kept) : undefined;
}

/** The questions with one more, the oldest of a person who asked often first to go. */
function framed(memory: Memory, frame: Frame): Frame[] {
  const { frames } = memory;
  if (!sound(frameSchema, frame)) return [...frames];
  // What is argued about stays till it is settled or old.
  const argued = [...openQuestions(memory)].slice(-mostArgued);
  const free = frames.filter(one => !argued.includes(one.at));
  const own = free.filter(one => one.from === frame.from);
  const gone = own.length >= framesOfOne ? own[0] : frames.length >= framesKept ? free[0] : undefined;
  const kept = [...frames.filter(one => one !== gone), frame].slice(-framesKept);
  return kept.map((one, i) =>
    i < kept.length - wordedFrames ? { ...one, cues: undefined, recalled: undefined } : one,
  );
}

/** How many of the newest questions keep how they were worded and what they took from memory. */
const wordedFrames = 2;

const framesOfOne = 2;
/** Questions argued about that aren't let go. */
const mostArgued = 2;
const mostLenders = 4;

/** What is new, if the store would take it (no battery of 1e30 Ah): one odd number must not cost the whole answer. */
const sound = <T>(schema: z.ZodType, value: T): T | undefined => (fits(schema)(value) ? value : undefined);

const frameOf = (
  message: Message,
  { intent, facts, heard, setting, missing, two, frame, hazards, mainsV, lent }: Interpreted,
  done: Done,
): Frame => ({
  intent: two?.options[0].intent ?? intent.name,
  // "Until 7am" is told, and the hours to it are others an hour later.
  facts: facts.until === undefined ? facts : without(facts, 'durationH'),
  lent:
    lent.length > 0
      ? lent.slice(0, mostLenders).map(({ who, facts: theirs }) => ({ who, facts: theirs }))
      : undefined,
  // Kept once, with the chat's claims.
  claims: [],
  owner: setting.owner,
  from: personKey(message.from),
  at: message.at.getTime(),
  readAt: readAt(heard.facts, facts, frame),
  onto: frame?.at,
  units: unusualUnits(setting.units),
  mainsV,
  hazards: hazards.length > 0 ? [...hazards] : undefined,
  conversion: heard.conversion && { ...heard.conversion },
  recalled: setting.recalled.size > 0 ? [...setting.recalled] : undefined,
  cues: setting.parsed.cues.size > 0 ? [...setting.parsed.cues].slice(0, 80) : undefined,
  isCheck:
    setting.parsed.cues.has('ask-can-it') && !setting.parsed.cues.has('ask-how-long') ? true : undefined,
  subject: setting.subject,
  asked: done.isBack || intent.name === 'unclear' ? missing.slice(0, 10).map(({ ask }) => ask) : undefined,
  untold:
    done.isUnknown && missing.length > 0 ? missing.flatMap(({ key }) => key ?? []).slice(0, 10) : undefined,
});

/** A wish to forget is over once its asker has spoken again. */
const stillOpen = ({ forgetting }: Memory, { heard }: Interpreted, from: string): Memory['forgetting'] =>
  forgetting?.from === from || heard.forgetting?.stage === 'confirmed' ? undefined : forgetting;

/** The rigs that change, as they are before. */
const before = (memory: Memory, change: Readonly<Record<string, Rig | null>>): Record<string, Rig | null> =>
  Object.fromEntries(Object.keys(change).map(owner => [rigKeyOf(memory, owner), memory.rigs[owner] ?? null]));

/** Whether a rig may be kept: one that is there already, or one more. */
const isRoom = (rigs: Memory['rigs'], owner: string): boolean =>
  rigs[owner] !== undefined || Object.keys(rigs).length < mostKept.rigs;

/** The lessons with one person's, who comes last; of too many the ones longest untouched go. */
function lessonsWith(lessons: Memory['lessons'], from: string, lesson: LessonProgress): Memory['lessons'] {
  const { [from]: _old, ...others } = lessons;
  const kept = Object.entries(others).slice(1 - mostKept.rigs);
  return { ...Object.fromEntries(kept), [from]: lesson };
}

function changedRigs(memory: Memory, change: Readonly<Record<string, Rig | null>>): Memory['rigs'] {
  let { rigs } = memory;
  for (const [owner, rig] of Object.entries(change))
    if (rig === null || (isRoom(rigs, owner) && sound(rigSchema, rig)))
      rigs = withRig({ ...memory, rigs }, owner, rig);
  return rigs;
}

/** No air in a camp is hotter, °C: what is, is a battery's or a thing's own heat, and of nobody else's question. */
const hottestAirC = 48;

const withoutGear = ({ ambientC, ...facts }: Stated): Stated => ({
  ...Object.fromEntries(Object.entries(facts).filter(([key]) => !ofRig.has(key))),
  ...(ambientC !== undefined && ambientC <= hottestAirC && { ambientC }),
});

/** Told in the talk and no rig: days, driving, sky, and a charger without amps. */
function passingOf(
  { passing, passingAt = 0, passingFrom }: Memory,
  heard: Interpreted['heard'],
  told: Stated,
  at: number,
  from: string,
): Stated | undefined {
  const old = stillTold(heardBy(passing, passingFrom, from), at - passingAt, heard);
  return Object.keys(told).length > 0 ? mergeFacts(old ?? {}, told) : old;
}

/** Leaves out keys without a value, so that what is stored reads back the same; a copy through and through. */
function strip<T>(value: T): T {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(strip) as T;
  const kept: Record<string, unknown> = {};
  for (const [key, part] of Object.entries(value)) if (part !== undefined) kept[key] = strip(part);
  return kept as T;
}
