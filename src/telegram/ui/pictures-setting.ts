import type { Message } from 'grammy/types';
import type { Room } from '#telegram/delivery/deliver.ts';
import { placeOf, type Sent } from '#telegram/delivery/send.ts';
import { isAnonymousAdmin } from '#telegram/updates/people.ts';
import { picturesMessage } from './commands.ts';
import { say } from './say.ts';

const off = /^(off|no|none|text)$/i;

/** Whether a message stands for the command that sets pictures. */
export const isPicturesWish = (text: string): boolean =>
  text === picturesMessage || text.startsWith(`${picturesMessage} `);

/** Sets whether trips come as pictures in a chat, or turns it over where nothing was said; in groups only for an admin. */
export async function setPictures(room: Room, message: Message, text: string): Promise<Sent | undefined> {
  const { store } = room.deps;
  const chat = message.chat.id;
  const place = placeOf(message);
  const { memory, revision } = await store.load(String(chat));
  const isSure = message.chat.type === 'private' || isAnonymousAdmin(message);
  if (!isSure && !(await room.admins.has(chat, message.from?.id ?? 0)))
    return room.sender.send(place, {
      said: say('Only an admin can set that for the group.'),
    });
  const rest = text.slice(picturesMessage.length).trim();
  const pictures = rest === '' ? memory.settings.pictures === false : !off.test(rest);
  await store.save(String(chat), { ...memory, settings: { ...memory.settings, pictures } }, revision);
  const line = pictures
    ? 'Done: trips come with a picture again.'
    : 'Done: only words here. “/pictures on” brings the pictures back.';
  return room.sender.send(place, { said: say(line) });
}
