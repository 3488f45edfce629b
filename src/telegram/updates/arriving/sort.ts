import type { CallbackQuery, ChatMemberUpdated, InlineQuery, Message, Update, User } from 'grammy/types';
import { isByPerson } from '../people/people.ts';
import { type Addressed, addressed, type Me } from './addressed.ts';
import { type Moved, moved } from './migrate.ts';

/** What there is to do for one update. */
export type Job =
  | {
      readonly kind: 'question';
      readonly message: Message;
      readonly isEdit: boolean;
      readonly meant: Addressed;
    }
  | { readonly kind: 'press'; readonly query: CallbackQuery }
  /** Something without words, in private. */
  | { readonly kind: 'wordless'; readonly message: Message }
  /** Somebody is no longer in a group. */
  | { readonly kind: 'left'; readonly chat: number; readonly user: User }
  | { readonly kind: 'moved'; readonly moved: Moved }
  | { readonly kind: 'membership'; readonly member: ChatMemberUpdated }
  | { readonly kind: 'inline'; readonly query: InlineQuery }
  | { readonly kind: 'guest'; readonly message: Message; readonly text: string };

/** A message to answer. */
export type Question = Extract<Job, { kind: 'question' }>;

/** The kinds of update that are asked for: exactly those that `sort` reads. */
export const allowedUpdates = [
  'message',
  'edited_message',
  'callback_query',
  'my_chat_member',
  'chat_member',
  'inline_query',
  'guest_message',
] as const;

/** How old a question may be when it arrives, in seconds: in groups the talk has moved on sooner. */
export const staleAfterSec = { group: 10 * 60, private: 24 * 60 * 60 } as const;

/** From when on a question in private is answered together with others of its age (s). */
const lateAfterSec = 60 * 60;

/** Whether a question is hours old: the bot was away when it was asked. */
export const isLate = ({ message, isEdit }: Question, nowMs: number): boolean =>
  message.chat.type === 'private' && !isEdit && nowMs / 1000 - message.date > lateAfterSec;

/** Telegram keeps updates for 24 hours. What seems older by far means that a clock is wrong, which shall not silence us. */
const oldestPossibleSec = 36 * 60 * 60;

const isStale = (message: Message, nowMs: number): boolean => {
  const sent = message.edit_date ?? message.date;
  const limit = message.chat.type === 'private' ? staleAfterSec.private : staleAfterSec.group;
  const age = nowMs / 1000 - sent;
  return age > limit && age < oldestPossibleSec;
};

/**
 * Decides what to do with an update; undefined means nothing, in silence. Pure.
 * @param nowMs milliseconds since 1970
 * @param allowedChats chats that are answered; all, where not given
 */
export function sort(
  update: Update,
  me: Me,
  nowMs: number,
  allowedChats?: ReadonlySet<number>,
): Job | undefined {
  const chat = chatOf(update);
  const isAllowed = allowedChats === undefined || (chat !== undefined && allowedChats.has(chat));
  const move = moved(update);
  // A move is heard in the new chat, which the list can't know yet.
  if (move !== undefined && (isAllowed || allowedChats.has(move.from))) return { kind: 'moved', moved: move };
  if (move !== undefined || !isAllowed) return undefined;
  if (update.callback_query !== undefined) return { kind: 'press', query: update.callback_query };
  if (update.my_chat_member !== undefined) return { kind: 'membership', member: update.my_chat_member };
  if (update.inline_query !== undefined) return { kind: 'inline', query: update.inline_query };
  if (update.guest_message !== undefined) return guest(update.guest_message, me, nowMs);
  const left = leaver(update, me);
  if (left !== undefined) return left;
  const message = update.message ?? update.edited_message;
  if (message === undefined || !isByPerson(message) || message.via_bot?.id === me.id) return undefined;
  if (isStale(message, nowMs)) return undefined;
  if (!hasWords(message))
    return isWordless(message) && update.message !== undefined ? { kind: 'wordless', message } : undefined;
  const meant = addressed(message, me);
  return meant && { kind: 'question', message, isEdit: update.edited_message !== undefined, meant };
}

/** A guest is called by name, so the message is meant; what is left to find is what it says. */
function guest(message: Message, me: Me, nowMs: number): Job | undefined {
  if (!isByPerson(message) || message.guest_query_id === undefined || isStale(message, nowMs))
    return undefined;
  const text = addressed(message, me)?.text ?? message.text ?? message.caption ?? '';
  return text === '' ? undefined : { kind: 'guest', message, text };
}

/** Who is no longer in a group: told by a service message, and to a bot that is an admin by an update of its own. */
function leaver({ message, chat_member: change }: Update, me: Me): Job | undefined {
  const gone = message?.left_chat_member;
  if (message !== undefined && gone !== undefined)
    return gone.id === me.id ? undefined : { kind: 'left', chat: message.chat.id, user: gone };
  const isOut = change?.new_chat_member.status === 'left' || change?.new_chat_member.status === 'kicked';
  return change !== undefined && isOut
    ? { kind: 'left', chat: change.chat.id, user: change.new_chat_member.user }
    : undefined;
}

/** Service messages have nothing to read. */
const hasWords = (message: Message): boolean =>
  message.text !== undefined || message.caption !== undefined || message.location !== undefined;

const wordless = [
  'voice',
  'video_note',
  'audio',
  'video',
  'photo',
  'sticker',
  'animation',
  'document',
  'poll',
  'contact',
  'dice',
  'story',
  'checklist',
] as const;

/** What people send in private that can't be read. */
const isWordless = (message: Message): boolean =>
  message.chat.type === 'private' && wordless.some(kind => message[kind] !== undefined);

/** The chat of an update; of one from a chat that the bot is not in, the person's own. */
const chatOf = (update: Update): number | undefined =>
  (
    update.message ??
    update.edited_message ??
    update.callback_query?.message ??
    update.my_chat_member ??
    update.chat_member
  )?.chat.id ?? (update.callback_query ?? update.inline_query ?? update.guest_message)?.from?.id;
