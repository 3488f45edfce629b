import type { Message, User } from 'grammy/types';

/** The user that stands for an anonymous admin, and for posts of a linked channel (Bot API, `from`). */
const standIns = new Set([1_087_968_824, 136_817_688, 777_000]);

/**
 * The name under which a person is known in a chat: the first name, without what would break a line or turn
 * the writing direction. "" where there is none, and for anonymous admins, who share one stand-in.
 */
export function nameOf(user: User | undefined): string {
  if (user === undefined || standIns.has(user.id)) return '';
  const name = user.first_name
    .replace(/[\p{C}\s]+/gu, ' ')
    .trim()
    .slice(0, 60)
    .replace(/[\ud800-\udbff]$/, '');
  // Names are keys of the memory; these two are those of every object already.
  return name.toLowerCase() in Object.prototype ? `${name}.` : name;
}

/** Whether a message was written by a person: no bot, no channel's automatic forward, no channel. */
export function isByPerson(message: Message): boolean {
  if (message.chat.type === 'channel' || message.is_automatic_forward === true) return false;
  if (isAnonymousAdmin(message)) return true;
  if (message.sender_chat !== undefined) return message.sender_chat.type !== 'channel';
  return message.from !== undefined && !message.from.is_bot;
}

/** An admin who speaks as the group itself. */
export const isAnonymousAdmin = (message: Message): boolean => message.sender_chat?.id === message.chat.id;
