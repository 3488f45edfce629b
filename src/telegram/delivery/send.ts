import { setTimeout as wait } from 'node:timers/promises';
import { type Api, GrammyError, InputFile } from 'grammy';
import type { InlineKeyboardMarkup, Message, ReplyKeyboardMarkup, ReplyKeyboardRemove } from 'grammy/types';
import type { Say } from '#telegram/ui/say.ts';
import { type Moved, movedByError } from '#telegram/updates/migrate.ts';
import {
  isGone,
  isLine,
  isMuted,
  isOtherKind,
  isOthers,
  isUneditable,
  isUnmodified,
  isUnsent,
} from './fault.ts';
import { unpaced } from './pace.ts';

/** Where a message goes: the chat, the question it replies to, and the topic, where it is really one. */
export interface Place {
  readonly chat: number;
  readonly replyTo?: number;
  readonly thread?: number;
  /** The one person of a group who sees it (Bot API 10.2); everybody, where not given. */
  readonly onlyFor?: number;
}

/** What goes out: words, and with them a picture, whose caption they are then. */
export interface Content {
  readonly said: Say;
  readonly buttons?: InlineKeyboardMarkup;
  /** Keys instead of buttons; only in private chats. */
  readonly keys?: ReplyKeyboardMarkup | ReplyKeyboardRemove;
  /** A PNG. */
  readonly picture?: Buffer;
}

/** A message that stands in a chat; the id is 0 for one that only its asker sees, which can't be changed later. */
export interface Sent {
  readonly chat: number;
  readonly id: number;
}

/** What the sender tells of: a chat that moved, or is closed to us. */
export interface Events {
  readonly onMoved: (moved: Moved) => Promise<void>;
  readonly onGone: (chat: number) => Promise<void>;
}

/** In General and in groups without topics a thread id is not a topic, and sending it back is refused. */
export const placeOf = (message: Message): Place => ({
  chat: message.chat.id,
  replyTo: message.message_id,
  thread: message.is_topic_message === true ? message.message_thread_id : undefined,
});

const hasCode = (error: unknown, code: number): boolean =>
  error instanceof GrammyError && error.error_code === code;

const bare = (content: Content): Content => ({ ...content, said: { ...content.said, entities: [] } });
const fileOf = (picture: Buffer): InputFile => new InputFile(picture, 'chart.png');

/** Sends and edits answers so that a refusal for a small reason never costs the answer. */
export class Sender {
  readonly #api: Api;
  readonly #events: Events;
  readonly #backOffMs: readonly number[];

  constructor(api: Api, events: Events, backOffMs: readonly number[] = [500, 1500, 4000, 10_000, 30_000]) {
    this.#api = api;
    this.#events = events;
    this.#backOffMs = backOffMs;
  }

  /** @returns the message, or undefined where the chat is closed to us; throws what it could not get around */
  async send(place: Place, content: Content): Promise<Sent | undefined> {
    try {
      return await this.#send(place, content);
    } catch (error) {
      const move = movedByError(error, place.chat);
      if (move !== undefined) {
        await this.#events.onMoved(move);
        return this.#send({ chat: move.to }, content);
      }
      if (isGone(error)) await this.#events.onGone(place.chat);
      if (isGone(error)) return undefined;
      // A group may forbid pictures and allow words.
      if (content.picture !== undefined && hasCode(error, 400))
        return this.send(place, { ...content, picture: undefined });
      if (isMuted(error)) return undefined;
      // Not every group and server knows messages for one person.
      if (place.onlyFor !== undefined && hasCode(error, 400))
        return this.send({ ...place, onlyFor: undefined }, content);
      // Whatever Telegram disliked, the words alone will do.
      if (hasCode(error, 400)) return this.#send({ ...place, thread: undefined }, bare(content));
      throw error;
    }
  }

  /** Puts something else in the place of an answer; where that is gone, or has no room for it, sends it anew. */
  async edit(at: Sent, place: Place, content: Content): Promise<Sent | undefined> {
    try {
      await this.#edit(at, content);
      return at;
    } catch (error) {
      if (isUnmodified(error)) return at;
      if (isGone(error)) await this.#events.onGone(at.chat);
      if (isGone(error)) return undefined;
      if (isUneditable(error) || movedByError(error, at.chat) !== undefined) return this.send(place, content);
      if (!hasCode(error, 400)) throw error;
      if (content.picture !== undefined) return this.edit(at, place, { ...content, picture: undefined });
      if (isMuted(error)) return undefined;
      if (isOtherKind(error)) {
        // A picture can't become words again.
        await this.#api.deleteMessage(at.chat, at.id).catch(() => undefined);
        return this.send(place, content);
      }
      await this.#edit(at, bare(content));
      return at;
    }
  }

  /**
   * Puts an answer into a message of which nobody knows whose it is; a picture has its caption put there.
   * @returns whose it is: 'ours' now holds the answer; 'none' where no message is; 'unknown' where none can be told
   */
  async lay(at: Sent, content: Content): Promise<'ours' | 'others' | 'none' | 'unknown'> {
    try {
      await this.#edit(at, content, 'caption');
      return 'ours';
    } catch (error) {
      if (isUnmodified(error)) return 'ours';
      if (isOthers(error)) return 'others';
      if (isUneditable(error)) return 'none';
      // The bot's own, and no such answer.
      if (isOtherKind(error)) return 'others';
      if (hasCode(error, 400) || hasCode(error, 403) || hasCode(error, 429)) return 'unknown';
      throw error;
    }
  }

  /** Changes only the buttons of an answer. That they stay is no fault worth an answer. */
  async rebutton(at: Sent, buttons: InlineKeyboardMarkup | undefined): Promise<void> {
    const markup = buttons === undefined ? {} : { reply_markup: buttons };
    await this.#api.editMessageReplyMarkup(at.chat, at.id, markup).catch(() => undefined);
  }

  async #send(place: Place, { said, buttons, keys, picture }: Content): Promise<Sent> {
    const markup = keys ?? (place.onlyFor === undefined ? buttons : undefined);
    const where = {
      ...(place.replyTo !== undefined && {
        reply_parameters: { message_id: place.replyTo, allow_sending_without_reply: true },
      }),
      ...(place.thread !== undefined && { message_thread_id: place.thread }),
      ...(place.onlyFor !== undefined && {
        ephemeral_message_parameters: { receiver_user_id: place.onlyFor },
      }),
      ...(markup !== undefined && { reply_markup: markup }),
    };
    const { text, entities } = said;
    const call = (): Promise<Message> =>
      picture === undefined
        ? this.#api.sendMessage(place.chat, text, {
            ...(entities.length > 0 && { entities }),
            ...where,
            link_preview_options: { is_disabled: true },
          })
        : this.#api.sendPhoto(place.chat, fileOf(picture), {
            caption: text,
            ...(entities.length > 0 && { caption_entities: entities }),
            ...where,
          });
    const sent = await this.#again(call, isUnsent);
    return { chat: place.chat, id: sent.message_id };
  }

  async #edit(
    { chat, id }: Sent,
    { said, buttons, picture }: Content,
    part: 'picture' | 'caption' = 'picture',
  ): Promise<void> {
    const { text, entities } = said;
    // Only a search puts an answer there as a caption.
    const markup = {
      ...(buttons && { reply_markup: buttons }),
      ...(part === 'caption' && { [unpaced]: true }),
    };
    const captioned = { caption: text, ...(entities.length > 0 && { caption_entities: entities }) };
    const call = (): Promise<unknown> => {
      if (picture === undefined)
        return this.#api.editMessageText(chat, id, text, {
          ...(entities.length > 0 && { entities }),
          ...markup,
          link_preview_options: { is_disabled: true },
        });
      if (part === 'caption') return this.#api.editMessageCaption(chat, id, { ...captioned, ...markup });
      const media = { type: 'photo', media: fileOf(picture), ...captioned } as const;
      return this.#api.editMessageMedia(chat, id, media, { ...markup });
    };
    // To edit twice says nothing twice.
    await this.#again(call, isLine);
  }

  /** Tries again as long as that is safe: a message only while it can't have arrived. */
  async #again<T>(call: () => Promise<T>, isSafe: (error: unknown) => boolean): Promise<T> {
    for (const ms of this.#backOffMs) {
      try {
        return await call();
      } catch (error) {
        if (!isSafe(error)) throw error;
        await wait(ms);
      }
    }
    return call();
  }
}
