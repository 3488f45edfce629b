import type { Message, MessageEntity, UserFromGetMe } from 'grammy/types';
import { present } from '#basics/present.ts';
import { commandMessage } from '#telegram/ui/commands.ts';

/** Who the bot is: the part of `getMe` that addressing needs. */
export type Me = Pick<UserFromGetMe, 'id' | 'username'>;

/** A message meant for the bot: its text without the address, and whose words they are. */
export interface Addressed {
  readonly text: string;
  /** The message that holds the question: the one replied to, where the address stands alone. */
  readonly source: Message;
  /** The bot is called by its name. */
  readonly isCalled?: boolean;
  /** The bot's own message that was replied to. */
  readonly answerId?: number;
}

const textOf = (message: Message): string => message.text ?? message.caption ?? '';
const entitiesOf = (message: Message): readonly MessageEntity[] =>
  message.entities ?? message.caption_entities ?? [];

const tidy = (text: string): string => text.replace(/[ \t\u00a0]{2,}/g, ' ').trim();

/** Whether a mention is of the bot, of somebody else, or neither. */
function mentioned(text: string, entity: MessageEntity, me: Me): 'me' | 'other' | undefined {
  if (entity.type === 'text_mention') return entity.user.id === me.id ? 'me' : 'other';
  if (entity.type !== 'mention') return undefined;
  const name = text.slice(entity.offset + 1, entity.offset + entity.length);
  return name.toLowerCase() === me.username.toLowerCase() ? 'me' : 'other';
}

/** The text without the mentions of the bot. */
function withoutMe(text: string, entities: readonly MessageEntity[], me: Me): string {
  const mine = entities.filter(entity => mentioned(text, entity, me) === 'me').toReversed();
  const bare = mine.reduce(
    (left, entity) => `${left.slice(0, entity.offset)} ${left.slice(entity.offset + entity.length)}`,
    text,
  );
  return tidy(bare.replace(/^\s*[,:;-]\s*/, ''));
}

/** A command at the start: its name, the bot it names, and the rest. Entities may be missing (captions). */
function commandOf(text: string): { name: string; bot?: string; rest: string } | undefined {
  const match = /^\/([A-Za-z0-9_]{1,32})(?:@([A-Za-z0-9_]{1,64}))?(?=\s|$)/.exec(text);
  if (match === null) return undefined;
  return { name: present(match[1]), bot: match[2], rest: tidy(text.slice(match[0].length)) };
}

/** The message replied to, unless it is the one that opened a forum topic: every topic message "replies" to that. */
function repliedTo(message: Message): Message | undefined {
  const reply = message.reply_to_message;
  return reply === undefined || reply.forum_topic_created !== undefined ? undefined : (reply as Message);
}

/**
 * Whether a message is meant for the bot, and what it says without the address.
 * In private chats everything is; in groups a command, a mention of the bot, or a reply to its message.
 * A message that turns to somebody else is left alone, also as a reply to the bot.
 */
export function addressed(message: Message, me: Me): Addressed | undefined {
  const text = textOf(message);
  const isPrivate = message.chat.type === 'private';
  const reply = repliedTo(message);
  const answerId = reply?.from?.id === me.id ? reply.message_id : undefined;

  const command = commandOf(text);
  if (command !== undefined) {
    if (command.bot !== undefined && command.bot.toLowerCase() !== me.username.toLowerCase())
      return undefined;
    const isAlone = command.name.toLowerCase() === 'power' && command.rest === '';
    if (isAlone && reply !== undefined && answerId === undefined) return about(reply, me);
    const meant = commandMessage(command.name, command.rest);
    if (meant !== undefined) return { text: meant, source: message, answerId };
    return isPrivate ? { text: tidy(text.slice(1)), source: message, answerId } : undefined;
  }

  const entities = entitiesOf(message);
  const mentions = entities.map(entity => mentioned(text, entity, me));
  if (isPrivate) return { text: withoutMe(text, entities, me), source: message, answerId };
  if (mentions.includes('me')) {
    const bare = withoutMe(text, entities, me);
    if (bare === '' && reply !== undefined && answerId === undefined) return about(reply, me);
    return { text: bare === '' ? 'help' : bare, source: message, isCalled: true, answerId };
  }
  if (answerId === undefined || mentions.includes('other')) return undefined;
  return text !== '' || message.location !== undefined
    ? { text: tidy(text), source: message, answerId }
    : undefined;
}

/** The bot was called to somebody's message: that message is the question. */
function about(reply: Message, me: Me): Addressed | undefined {
  const text = withoutMe(textOf(reply), entitiesOf(reply), me);
  return text === '' ? undefined : { text, source: reply };
}
