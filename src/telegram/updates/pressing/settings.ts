import type { Message } from 'grammy/types';
import type { Memory } from '#conversation/memory.ts';
import { placeOf, type SentMessage } from '#telegram/delivery/again/place.ts';
import { keptAndSent, postFirst } from '#telegram/delivery/deliver.ts';
import type { BotContext, OutgoingReply } from '#telegram/delivery/reply.ts';
import { picturesMessage, settingsMessage } from '#telegram/ui/commands.ts';
import { say } from '#telegram/ui/say.ts';
import { settingsPage } from '#telegram/ui/settings-page.ts';
import { isAnonymousAdmin } from '../people/people.ts';

type Settings = Memory['settings'];

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

/** Changes a chat's settings and says so: both are kept together, so that a crash in between turns nothing twice. */
export async function changeSettings(
  room: BotContext,
  update: number,
  chat: number,
  change: (settings: Settings) => Settings,
  say: (settings: Settings) => OutgoingReply,
): Promise<SentMessage | undefined> {
  const { memory, revision } = await room.deps.store.load(String(chat));
  const settings = change(memory.settings);
  return keptAndSent(room, update, { memory: { ...memory, settings }, revision }, say(settings));
}

/** How "/pictures" turns the settings, by what was typed after it: over, where nothing was. */
function picturesBy(rest: string): (settings: Settings) => Settings {
  const isDark = grounds[rest.toLowerCase()];
  if (isDark !== undefined) return settings => ({ ...settings, isDark });
  return settings => ({ ...settings, pictures: rest === '' ? settings.pictures === false : !off.test(rest) });
}

/** Shows the settings, or sets how pictures come: "/pictures off", "dark", or turned over where nothing was said. */
export async function answerSettings(
  room: BotContext,
  update: number,
  message: Message,
  text: string,
): Promise<SentMessage | undefined> {
  const chat = message.chat.id;
  const asker = isAnonymousAdmin(message) ? 0 : (message.from?.id ?? 0);
  const place = placeOf(message);
  if (begins(text, settingsMessage)) {
    const { memory } = await room.deps.store.load(String(chat));
    return postFirst(room, { place, ...pageOf(room, message, memory.settings, asker) });
  }
  const isSure = isAnonymousAdmin(message) || (await maySet(room, message, asker));
  if (!isSure) return postFirst(room, { place, said: say('Only an admin can set that for the group.') });
  const rest = text.slice(picturesMessage.length).trim();
  const ground = grounds[rest.toLowerCase()] !== undefined;
  return changeSettings(room, update, chat, picturesBy(rest), ({ pictures }) => {
    const line = pictures
      ? 'Done: trips come with a picture again.'
      : 'Done: only words here. “/pictures on” brings the pictures back.';
    return {
      place,
      said: say(ground ? `Done: pictures are on ${rest.toLowerCase()} ground from now on.` : line),
    };
  });
}
