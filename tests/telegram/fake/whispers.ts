import type { CallbackQuery, Message } from 'grammy/types';
import { present } from '#basics/present.ts';
import { Refusal } from './rules.ts';
import type { Payload } from './world.ts';

const bad = (text: string): Refusal => new Refusal(400, `Bad Request: ${text}`);

/** How long after a tap or an ephemeral command a bot may answer it for its sender alone (Bot API, Features). */
const usualWithinMs = 15_000;

interface Cause {
  readonly chat: number;
  readonly person: number;
  readonly atMs: number;
  /** Whether the tap was on a message that only its asker saw. */
  readonly isOnEphemeral?: boolean;
}

/**
 * Messages that one person of a group sees (Bot API 10.2, 10.3). Any bot may send one within 15 seconds of a tap or of
 * an ephemeral command, naming it; a bot that is an admin may at any time. They have no number of their own in the chat.
 */
export class Whispers {
  readonly sent = new Map<number, Message>();
  withinMs = usualWithinMs;
  /** The words in which one is refused that no tap, command or admin allows. */
  refusal = bad('BOT_NOT_ADMIN');
  readonly #taps = new Map<string, Cause>();
  readonly #commands = new Map<number, Cause>();
  #last = 9000;

  /** Somebody taps a button. */
  tapped({ id, from, message }: CallbackQuery, atMs: number): void {
    const isOnEphemeral = message !== undefined && 'ephemeral_message_id' in message;
    this.#taps.set(id, { chat: message?.chat.id ?? 0, person: from.id, atMs, isOnEphemeral });
  }

  /** Somebody sends a command that only the bot sees. */
  heard(message: Message, atMs: number): void {
    this.#commands.set(present(message.ephemeral_message_id), {
      chat: message.chat.id,
      person: present(message.from).id,
      atMs,
    });
  }

  /** Checks whether a message may go to one person. @throws Refusal */
  check(payload: Payload, atMs: number, isAdmin: boolean): void {
    const { ephemeral_message_parameters: to, reply_parameters: reply, chat_id: chat } = payload;
    if (!Number.isInteger(to.receiver_user_id)) throw bad('user not found');
    if (Number(chat) > 0) throw this.refusal;
    const isMeant = (cause: Cause | undefined): boolean =>
      cause !== undefined &&
      cause.chat === chat &&
      cause.person === to.receiver_user_id &&
      atMs - cause.atMs <= this.withinMs;
    if (to.callback_query_id !== undefined) {
      const tap = this.#taps.get(to.callback_query_id);
      if (!isMeant(tap)) throw bad('query is too old and response timeout expired or query ID is invalid');
      if (tap?.isOnEphemeral && to.replace_callback_query_message)
        throw bad('an ephemeral message is edited by its own methods');
    } else if (reply?.ephemeral_message_id !== undefined) {
      if (!isMeant(this.#commands.get(reply.ephemeral_message_id)))
        throw bad('message to be replied not found');
    } else if (!isAdmin) throw this.refusal;
  }

  put(message: Message): Message {
    const whisper = { ...message, message_id: 0, ephemeral_message_id: ++this.#last } as Message;
    this.sent.set(this.#last, whisper);
    return whisper;
  }

  /** The whisper that an edit names. @throws Refusal */
  own({ chat_id, receiver_user_id, ephemeral_message_id }: Payload): Message {
    const whisper = this.sent.get(ephemeral_message_id);
    if (whisper?.chat.id !== chat_id || whisper?.receiver_user?.id !== receiver_user_id)
      throw bad('message to edit not found');
    return present(whisper);
  }
}
