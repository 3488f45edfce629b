import type {
  InlineKeyboardMarkup,
  InputRichMessage,
  Message,
  ReplyKeyboardMarkup,
  ReplyKeyboardRemove,
} from 'grammy/types';
import type { Say } from '#telegram/ui/say.ts';

/**
 * The one person of a group who sees a message (Bot API 10.2). A bot that is no admin may send one only as the answer
 * to that person's tap or to their ephemeral command, within 15 seconds, and has to name it.
 */
interface Whisper {
  readonly person: number;
  /** The tap that it answers. */
  readonly press?: string;
  /** The ephemeral command that it answers; nobody else knows that it was given. */
  readonly command?: number;
}

/** Where a message goes: the chat, the question it replies to, and the topic, where it is really one. */
export interface Place {
  readonly chat: number;
  readonly replyTo?: number;
  readonly thread?: number;
  /** Everybody sees it, where not given. */
  readonly onlyFor?: Whisper;
}

/** What goes out: words, and with them a picture, whose caption they are then. */
export interface Content {
  readonly said: Say;
  readonly buttons?: InlineKeyboardMarkup;
  /** Keys instead of buttons; only in private chats. */
  readonly keys?: ReplyKeyboardMarkup | ReplyKeyboardRemove;
  /** A PNG. */
  readonly picture?: Buffer;
  /** A file; the words are its caption. */
  readonly file?: { readonly bytes: Buffer; readonly name: string };
  /** The same as a rich message, with tables; where that is refused, the words alone. */
  readonly rich?: InputRichMessage;
  /** What everybody may see, where it can't be shown to one person alone; nothing, where not given. */
  readonly instead?: Pick<Content, 'said' | 'buttons'>;
  /** Goes out before the chat's turn: a word that only counts now. */
  readonly isUrgent?: boolean;
}

/** A message that stands in a chat. One that a single person sees counts apart: its number is below 0. */
export interface SentMessage {
  readonly chat: number;
  readonly id: number;
  /** Who sees it, where that is one person. */
  readonly onlyFor?: number;
}

/** What was to be said and was not: where, and in the place of which message. */
export interface Unsent extends Omit<Content, 'picture' | 'file'> {
  readonly place: Place;
  readonly at?: SentMessage;
}

/** The number of a message, below 0 for one that a single person sees. */
export const idOf = (message: Pick<Message, 'message_id' | 'ephemeral_message_id'>): number =>
  message.ephemeral_message_id === undefined ? message.message_id : -message.ephemeral_message_id;

/** Where an answer to a message goes. In General and in groups without topics a thread id is no topic, and refused. */
export function placeOf(message: Message): Place {
  const thread = message.is_topic_message === true ? message.message_thread_id : undefined;
  const place = { chat: message.chat.id, ...(thread !== undefined && { thread }) };
  const { ephemeral_message_id: command } = message;
  if (command === undefined) return { ...place, replyTo: message.message_id };
  return { ...place, onlyFor: { person: message.from?.id ?? 0, command } };
}
