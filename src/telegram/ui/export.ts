import type { Memory } from '#conversation/memory.ts';
import type { MemoryStore } from '#conversation/memory-store.ts';
import type { Content } from '#telegram/delivery/again/place.ts';
import type { OutgoingReply } from '#telegram/delivery/reply.ts';

/** The part of a group's memory that one person brought in. */
export function partOf(memory: Memory, name: string): Partial<Memory> {
  const key = name.toLowerCase();
  const { rigs, learned, lessons, claims, frames } = memory;
  return {
    rigs: rigs[key] === undefined ? {} : { [key]: rigs[key] },
    ...(learned?.[key] && { learned: { [key]: learned[key] } }),
    lessons: lessons[key] === undefined ? {} : { [key]: lessons[key] },
    claims: claims.filter(({ who }) => who.toLowerCase() === key),
    frames: frames.filter(frame => frame.from === key),
  };
}

/** What is kept of a chat, or of one person in it, as a file. */
export async function exportFile(
  store: Pick<MemoryStore, 'load'>,
  { chat, name }: NonNullable<OutgoingReply['exports']>,
): Promise<NonNullable<Content['file']>> {
  const { memory } = await store.load(String(chat));
  const kept = name === undefined ? memory : partOf(memory, name);
  return { bytes: Buffer.from(`${JSON.stringify(kept, null, 2)}\n`), name: 'kept.json' };
}
