import { type Api, GrammyError, InputFile } from 'grammy';
import type { Message } from 'grammy/types';
import type { Memory } from '#conversation/memory.ts';
import type { BotContext } from '#telegram/delivery/deliver.ts';
import { isGone } from '#telegram/delivery/fault.ts';
import { placeOf, type SentMessage } from '#telegram/delivery/place.ts';
import { nameIn } from '#telegram/updates/names.ts';
import { isAnonymousAdmin } from '#telegram/updates/people.ts';
import { say } from './say.ts';

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

/** Sends a person what is kept of them, as a file, and only to them. */
export async function sendExport(
  room: BotContext,
  api: Api,
  message: Message,
): Promise<SentMessage | undefined> {
  const person = message.from?.id;
  const place = placeOf(message);
  const { memory } = await room.deps.store.load(String(message.chat.id));
  const isPrivate = message.chat.type === 'private';
  const kept = isPrivate ? memory : partOf(memory, nameIn(memory, message.from, room.bot).name);
  if (person === undefined || isAnonymousAdmin(message))
    return room.sender.send(place, { said: say('I keep nothing of people who speak as the group.') });
  const file = new InputFile(Buffer.from(`${JSON.stringify(kept, null, 2)}\n`), 'kept.json');
  try {
    const send = () =>
      api.sendDocument(person, file, {
        caption: isPrivate ? 'All that I keep of this chat.' : 'All that I keep of you in that group.',
        ...(isPrivate && {
          reply_parameters: { message_id: message.message_id, allow_sending_without_reply: true },
        }),
      });
    const sent = await room.hold.during(person, send);
    return isPrivate ? { chat: person, id: sent.message_id } : undefined;
  } catch (error) {
    // Telegram lets a bot write to a person only after they wrote to it.
    const isUnknown = isGone(error) || (error instanceof GrammyError && error.error_code === 400);
    if (isPrivate || !isUnknown) throw error;
    const how = 'I send that in private only. Open a chat with me, press Start, and ask here again.';
    return room.sender.send(place, { said: say(how) });
  }
}
