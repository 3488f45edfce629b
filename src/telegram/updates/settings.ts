import type { Message } from 'grammy/types';
import type { Memory } from '#conversation/memory.ts';
import type { BotContext } from '#telegram/delivery/deliver.ts';
import { placeOf, type SentMessage } from '#telegram/delivery/place.ts';
import { picturesMessage, settingsMessage } from '#telegram/ui/commands.ts';
import { say } from '#telegram/ui/say.ts';
import { settingsPage } from '#telegram/ui/settings-page.ts';
import { isAnonymousAdmin } from './people.ts';

/** Where the operator told no mains voltage, V. */
const usualMainsV = 230;

const off = /^(off|no|none|text)$/i;
/** The ground that pictures are on. */
const grounds: Readonly<Record<string, boolean>> = { dark: true, light: false };

const begins = (text: string, command: string): boolean => text === command || text.startsWith(`${command} `);

/** Whether a message stands for a command about settings. */
export const isSettingsWish = (text: string): boolean =>
  begins(text, picturesMessage) || begins(text, settingsMessage);

const kindOf = ({ chat }: Pick<Message, 'chat'>) => (chat.type === 'private' ? 'private' : 'group');

/** The page of a chat's settings as they are. */
export const pageOf = (
  room: BotContext,
  at: Pick<Message, 'chat'>,
  settings: Memory['settings'],
  asker: number,
) => settingsPage(settings, kindOf(at), asker, room.settings.mainsV ?? usualMainsV);

/** Whether somebody may change the settings of a chat: in a group an admin. */
export async function maySet(
  room: BotContext,
  { chat }: Pick<Message, 'chat'>,
  person: number,
): Promise<boolean> {
  return chat.type === 'private' || room.admins.has(chat.id, person);
}

/** Changes a chat's settings. @returns them as they are now */
export async function changeSettings(
  room: BotContext,
  chat: number,
  change: (settings: Memory['settings']) => Memory['settings'],
): Promise<Memory['settings']> {
  const { store } = room.deps;
  const { memory, revision } = await store.load(String(chat));
  const settings = change(memory.settings);
  await store.save(String(chat), { ...memory, settings }, revision);
  return settings;
}

/** Shows the settings, or sets how pictures come: "/pictures off", "dark", or turned over where nothing was said. */
export async function answerSettings(
  room: BotContext,
  message: Message,
  text: string,
): Promise<SentMessage | undefined> {
  const chat = message.chat.id;
  const asker = isAnonymousAdmin(message) ? 0 : (message.from?.id ?? 0);
  const place = placeOf(message);
  if (begins(text, settingsMessage)) {
    const { memory } = await room.deps.store.load(String(chat));
    return room.sender.send(place, pageOf(room, message, memory.settings, asker));
  }
  const isSure = isAnonymousAdmin(message) || (await maySet(room, message, asker));
  if (!isSure) return room.sender.send(place, { said: say('Only an admin can set that for the group.') });
  const rest = text.slice(picturesMessage.length).trim();
  const isDark = grounds[rest.toLowerCase()];
  if (isDark !== undefined) {
    await changeSettings(room, chat, settings => ({ ...settings, isDark }));
    return room.sender.send(place, {
      said: say(`Done: pictures are on ${rest.toLowerCase()} ground from now on.`),
    });
  }
  const { pictures } = await changeSettings(room, chat, settings => ({
    ...settings,
    pictures: rest === '' ? settings.pictures === false : !off.test(rest),
  }));
  const line = pictures
    ? 'Done: trips come with a picture again.'
    : 'Done: only words here. “/pictures on” brings the pictures back.';
  return room.sender.send(place, { said: say(line) });
}
