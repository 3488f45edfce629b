import type { Transformer } from 'grammy';
import type { Message, Update } from 'grammy/types';

/** A supergroup numbers its own messages without gaps; its ids begin with -100. */
export const isDense = (chat: number): boolean => chat < -1_000_000_000_000;

type Numbered = Pick<Message, 'message_id' | 'chat'>;

const isNumbered = (value: unknown): value is Numbered =>
  typeof value === 'object' && value !== null && 'message_id' in value && 'chat' in value;

/**
 * The highest number of a message seen in private chats and small groups, which share one run of numbers. What is sent
 * later gets a higher one: so an answer that nobody could note stands behind this.
 */
export class Highest {
  #id = 0;

  /** Notes a message, heard or sent. */
  note({ chat, message_id }: Numbered): void {
    if (!isDense(chat.id) && message_id > this.#id) this.#id = message_id;
  }

  hear(update: Update): void {
    const message = update.message ?? update.edited_message ?? update.callback_query?.message;
    if (message !== undefined) this.note(message);
  }

  /** Notes what calls send. */
  readonly watch: Transformer = async (prev, method, payload, signal) => {
    const answered = await prev(method, payload, signal);
    if (answered.ok && isNumbered(answered.result)) this.note(answered.result);
    return answered;
  };

  /** Where an answer to be sent now will stand behind; undefined where that is not known, or the chat counts for itself. */
  of(chat: number): number | undefined {
    return this.#id === 0 || isDense(chat) ? undefined : this.#id;
  }
}
