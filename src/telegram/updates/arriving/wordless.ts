import type { Message } from 'grammy/types';
import { placeOf, type SentMessage } from '#telegram/delivery/again/place.ts';
import { keptAndSent } from '#telegram/delivery/deliver.ts';
import type { BotContext, OutgoingReply } from '#telegram/delivery/reply.ts';
import { say } from '#telegram/ui/say.ts';
import { loadedOr } from './damaged.ts';

const line =
  'Nice, but I only read words, and places that you share. Write it short: fridge 1.2A, 100Ah, 3 days?';

/** Says once to each private chat what the bot can't read: voice notes, polls, contacts, pictures without words. */
export async function answerWordless(
  room: BotContext,
  update: number,
  message: Message,
): Promise<SentMessage | undefined> {
  const loaded = await loadedOr(room.deps.store.load(String(message.chat.id)));
  if (loaded === 'damaged' || loaded.memory.settings.isWordlessTold) return undefined;
  const { memory, revision } = loaded;
  const told = { ...memory, settings: { ...memory.settings, isWordlessTold: true } };
  const reply: OutgoingReply = { place: placeOf(message), said: say(line), askedMs: message.date * 1000 };
  return keptAndSent(room, update, { memory: told, revision }, reply);
}
