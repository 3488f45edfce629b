import type { RequestContext } from '#intents/intent.ts';
import { type Kept, learnedNow, learnFrom, readingIn } from '#intents/learning.ts';
import { saidOf } from '#intents/learning-words.ts';
import type { Stated } from '#rig/rig.ts';
import { isPlainTurn, isSupposed } from '../answering/live.ts';
import type { Heard } from '../hear.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { ofNow } from '../questions.ts';
import { rigKeyOf } from '../whose/shared.ts';
import { rigFor } from './recall.ts';

/** A memory after what a message reads off a rig, and what there is to say of it. */
export interface Learnt {
  readonly memory: Memory;
  readonly lines: readonly string[];
}

/** Learns from a message that tells a reading of the rig that it is about. */
export function learnt(memory: Memory, message: Message, heard: Heard): Learnt {
  const nothing: Learnt = { memory, lines: [] };
  const isThought = isPlainTurn(heard) || isSupposed(heard);
  if (!ofNow.has(heard.intent) || isThought) return nothing;
  const about = rigFor(memory, heard, message.from, message.kind);
  const reading = about && readingIn(heard.facts, about.rig, message.at);
  if (!about || !reading) return nothing;
  const { rig } = about;
  const key = rigKeyOf(memory, about.key);
  const taught = learnFrom(memory.learned?.[key], rig, reading, message.at);
  if (!taught || taught.taken === 'nothing') return nothing;
  const { lines, kept } = saidOf(taught, rig, message.at);
  const learned = { ...memory.learned, [key]: copied(kept) };
  return { memory: { ...memory, learned }, lines };
}

/** The same in lists that nobody else holds. */
const copied = (kept: Kept): NonNullable<Memory['learned']>[string] => {
  const { said, ...rest } = kept;
  return {
    ...rest,
    mean: [...kept.mean],
    cov: [...kept.cov],
    gear: [...kept.gear],
    ...(said && { said: [...said] }),
  };
};

/** What was learnt of the rig that a question goes by, as far as it goes by that rig's gear. */
export function learnedFor(
  memory: Memory,
  owner: string | undefined,
  facts: Stated,
  at: Date,
): RequestContext['learned'] {
  const kept = owner === undefined ? undefined : memory.learned?.[rigKeyOf(memory, owner)];
  const rig = owner === undefined ? undefined : memory.rigs[owner];
  return kept && rig && learnedNow(kept, rig, facts, at);
}

/** What was learnt of an owner's rig. */
export const learnedOf = (memory: Memory, owner: string, at: Date): RequestContext['learned'] =>
  memory.rigs[owner] && learnedFor(memory, owner, memory.rigs[owner], at);
