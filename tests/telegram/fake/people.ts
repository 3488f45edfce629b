import type { CallbackQuery, Chat, Message, MessageEntity, Update, User } from 'grammy/types';
import { me } from './world.ts';

/** People and places of the tests; all invented. */
export const sam: User = { id: 1001, is_bot: false, first_name: 'Sam' };
export const kim: User = { id: 1002, is_bot: false, first_name: 'Kim' };
export const group = {
  id: -1001234567890,
  type: 'supergroup',
  title: 'Sunday campers',
} as Chat.SupergroupChat;
export const plainGroup = { id: -55, type: 'group', title: 'Old campers' } as Chat.GroupChat;
export const alone = { id: sam.id, type: 'private', first_name: 'Sam' } as Chat.PrivateChat;

/** The moment at which the tests play, in seconds. */
export const nowSec = 1_770_000_000;

let nextId = 1;

/** Marks commands and mentions as Telegram does. */
function entitiesOf(text: string): MessageEntity[] {
  const found = [...text.matchAll(/(?<=^|\s)([/@])([A-Za-z0-9_@]+)/g)];
  return found.map(match => ({
    type: match[1] === '/' ? 'bot_command' : 'mention',
    offset: match.index,
    length: match[0].length,
  }));
}

/** A message that somebody wrote; it gets its number in the chat when it arrives there. */
export function message(text: string | undefined, more: Partial<Message> = {}): Message {
  const entities = text === undefined ? [] : entitiesOf(text);
  return {
    message_id: nextId++,
    date: nowSec,
    chat: group,
    from: sam,
    ...(text !== undefined && { text }),
    ...(entities.length > 0 && { entities }),
    ...more,
  } as Message;
}

/** A message of the bot's. */
export const botMessage = (text: string, more: Partial<Message> = {}): Message =>
  message(text, { from: me, ...more });

/** A press on a button that stands under a message. */
export function press(on: Message, label: string | RegExp, from: User = sam): CallbackQuery {
  const buttons = on.reply_markup?.inline_keyboard.flat() ?? [];
  const button = buttons.find(({ text }) => (typeof label === 'string' ? text === label : label.test(text)));
  if (button === undefined || !('callback_data' in button)) throw new Error(`no button ${label}`);
  return { id: `press-${nextId++}`, from, message: on, chat_instance: 'x', data: button.callback_data };
}

let nextUpdate = 1;

/** An update with an id of its own. */
export const update = (given: Omit<Update, 'update_id'>): Update =>
  ({ update_id: nextUpdate++, ...given }) as Update;
