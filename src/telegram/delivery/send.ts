import { setTimeout as wait } from 'node:timers/promises';
import { type Api, GrammyError } from 'grammy';
import type { InlineKeyboardMarkup, Message } from 'grammy/types';
import { present } from '#basics/present.ts';
import { type Moved, movedByError } from '#telegram/updates/arriving/migrate.ts';
import {
  isGone,
  isLine,
  isMuted,
  isOtherKind,
  isOthers,
  isUneditable,
  isUnmodified,
  isUnsent,
  isUnwhisperable,
} from './again/fault.ts';
import { type Content, idOf, type Place, type SentMessage } from './again/place.ts';
import { callEdit, callSend, type Part } from './calls.ts';
import { Held, type Hold } from './hold.ts';

/** What the sender tells of: a chat that moved, or is closed to us. */
export interface Events {
  readonly onMoved: (moved: Moved) => Promise<void>;
  readonly onGone: (chat: number) => Promise<void>;
  /** Whether the bot may tell one person of a group anything, unasked: as an admin. */
  readonly mayWhisper: (chat: number) => Promise<boolean>;
}

/** Whose message it is that an answer was put into. */
export type Found = 'ours' | 'others' | 'none' | 'unknown';

const hasCode = (error: unknown, code: number): boolean =>
  error instanceof GrammyError && error.error_code === code;

/** Refused for its form or its place; a server that doesn't know rich messages has no such method either. */
const isRefused = (error: unknown): boolean => hasCode(error, 400) || hasCode(error, 404);

const bare = ({ rich: _rich, ...content }: Content): Content => ({
  ...content,
  said: { ...content.said, entities: [] },
});
/** The same without what was refused: a group may forbid pictures, an old server knows no rich message. */
function undressed({ picture, rich, ...content }: Content): Content | undefined {
  if (picture !== undefined) return { ...content, rich };
  return rich === undefined ? undefined : content;
}

/** Of a picture its caption is kept, which says it all; who has more to keep puts that in its place. */
function marked(held: Held, place: Place, { picture: _picture, file: _file, ...content }: Content): Held {
  held.unsent ??= { place, ...content };
  return held;
}
const { isInteger } = Number;

/** Sends and edits answers so that a refusal for a small reason never costs the answer. */
export class Sender {
  readonly #api: Api;
  readonly #events: Events;
  readonly #hold: Hold;
  readonly #backOffMs: readonly number[];

  constructor(
    api: Api,
    events: Events,
    hold: Hold,
    backOffMs: readonly number[] = [500, 1500, 4000, 10_000, 30_000],
  ) {
    this.#api = api;
    this.#events = events;
    this.#hold = hold;
    this.#backOffMs = backOffMs;
  }

  /**
   * @returns the message, or undefined where the chat is closed to us, or one person alone can't be told
   * @throws Held, and what it could not get around
   */
  async send(place: Place, content: Content): Promise<SentMessage | undefined> {
    if (place.onlyFor !== undefined) return this.#whisper(place, content);
    try {
      return await this.#send(place, content);
    } catch (error) {
      if (error instanceof Held) throw marked(error, place, content);
      const move = movedByError(error, place.chat);
      if (move !== undefined) {
        await this.#events.onMoved(move);
        return this.#send({ chat: move.to }, content);
      }
      if (isGone(error)) await this.#events.onGone(place.chat);
      if (isGone(error)) return undefined;
      const plainer = isRefused(error) ? undressed(content) : undefined;
      if (plainer !== undefined) return this.send(place, plainer);
      if (isMuted(error)) return undefined;
      // Whatever Telegram disliked, the words alone will do.
      if (hasCode(error, 400)) return this.#send({ ...place, thread: undefined }, bare(content));
      throw error;
    }
  }

  /**
   * Tells one person of a group; where that can't be, tells all what all may see, and them in private what nobody
   * else should: never the one in the place of the other.
   */
  async #whisper(place: Place, content: Content): Promise<SentMessage | undefined> {
    const { onlyFor, ...open } = place;
    const { person, press, command } = present(onlyFor);
    const isOwnMatter = press !== undefined || command !== undefined;
    const isFutile = !isOwnMatter && !(await this.#events.mayWhisper(place.chat));
    if (isFutile && content.instead !== undefined) return this.send(open, content.instead);
    try {
      const sent = await this.#send(place, content);
      if (sent.onlyFor !== undefined) return sent;
      // A server that passes over what it doesn't know has shown it to all.
      await this.#api.deleteMessage(sent.chat, sent.id).catch(() => undefined);
    } catch (error) {
      if (isGone(error)) await this.#events.onGone(place.chat);
      if (isGone(error)) return undefined;
      const isOfForm = isRefused(error) && !isUnwhisperable(error);
      const plainer = isOfForm ? undressed(content) : undefined;
      if (plainer !== undefined) return this.#whisper(place, plainer);
      if (isMuted(error)) return undefined;
      if (!isRefused(error)) throw error;
    }
    if (content.instead !== undefined && !isOwnMatter) return this.send(open, content.instead);
    // A tap has another way to tell: its caller's.
    return press === undefined ? this.#inPrivate(person, content) : undefined;
  }

  /** Telegram lets a bot write to those alone who wrote to it. */
  async #inPrivate(
    person: number,
    { instead: _instead, ...content }: Content,
  ): Promise<SentMessage | undefined> {
    try {
      return await this.#send({ chat: person }, content);
    } catch (error) {
      if (isGone(error) || isRefused(error)) return undefined;
      throw error;
    }
  }

  /** Puts something else in the place of an answer; where that is gone, or has no room for it, sends it anew. */
  async edit(at: SentMessage, place: Place, content: Content): Promise<SentMessage | undefined> {
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
   * Puts words in the place of words.
   * @returns whether they stand there now; not so where a picture is there, or nothing can be edited
   * @throws Held
   */
  async words(at: SentMessage, content: Content): Promise<boolean> {
    try {
      await this.#edit(at, content);
      return true;
    } catch (error) {
      if (isUnmodified(error)) return true;
      if (error instanceof GrammyError && error.error_code < 500) return false;
      throw error;
    }
  }

  /** Adds a picture to words that stand, at once. @returns whether it is there: a chat may forbid pictures */
  async illustrate(at: SentMessage, content: Content): Promise<boolean> {
    try {
      await this.#hold.during(at.chat, () => callEdit(this.#api, at, content, 'whole', false));
      return true;
    } catch (error) {
      if (isUnmodified(error)) return true;
      if (error instanceof GrammyError || error instanceof Held) return false;
      throw error;
    }
  }

  /**
   * Puts an answer into a message of which nobody knows whose it is.
   * @param parts as what it may stand there, the likelier first
   * @returns whose it is: 'ours' now holds the answer; 'none' where no message is; 'unknown' where none can be told
   */
  async lay(at: SentMessage, content: Content, parts: readonly Part[]): Promise<Found> {
    for (const part of parts)
      try {
        await this.#edit(at, content, part, false);
        return 'ours';
      } catch (error) {
        if (isUnmodified(error)) return 'ours';
        if (isOthers(error)) return 'others';
        if (isUneditable(error)) return 'none';
        if (isOtherKind(error)) continue;
        if (hasCode(error, 400) || hasCode(error, 403)) return 'unknown';
        throw error;
      }
    // The bot's own, and no such answer.
    return 'others';
  }

  /** Changes only the buttons of an answer. That they stay is no fault worth an answer. */
  async rebutton(at: SentMessage, buttons: InlineKeyboardMarkup | undefined): Promise<void> {
    const markup = buttons === undefined ? {} : { reply_markup: buttons };
    await this.#api.editMessageReplyMarkup(at.chat, at.id, markup).catch(() => undefined);
  }

  /** Puts a reaction on a message. @returns whether it stands there: a chat may forbid them */
  async react({ chat, replyTo }: Place, emoji: '\u{1F44D}' | '\u{1F44C}'): Promise<boolean> {
    if (replyTo === undefined) return false;
    const call = () => this.#api.setMessageReaction(chat, replyTo, [{ type: 'emoji', emoji }]);
    try {
      return await this.#hold.during(chat, call);
    } catch (error) {
      if (error instanceof GrammyError && !isLine(error)) return false;
      throw error;
    }
  }

  async #send(place: Place, content: Content): Promise<SentMessage> {
    const sent: Message = await this.#again(
      () => this.#hold.during(place.chat, () => callSend(this.#api, place, content)),
      isUnsent,
    );
    const isWhisper = isInteger(sent.ephemeral_message_id) && place.onlyFor !== undefined;
    return { chat: place.chat, id: idOf(sent), ...(isWhisper && { onlyFor: present(place.onlyFor).person }) };
  }

  async #edit(at: SentMessage, content: Content, part: Part = 'whole', isPaced = true): Promise<void> {
    const call = () => callEdit(this.#api, at, content, part, isPaced);
    // To edit twice says nothing twice.
    await this.#again(() => this.#hold.during(at.chat, call), isLine);
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
