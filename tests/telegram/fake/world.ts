import type { CallbackQuery, Chat, Message, Update, UserFromGetMe } from 'grammy/types';
import { Floods } from './floods.ts';
import { methodsOf } from './methods.ts';
import { Queries } from './queries.ts';
import { checkButtons, Refusal } from './rules.ts';
import { Whispers } from './whispers.ts';

export const token = '123456789:abcdefghijklmnopqrstuvwxyz_ABCDE-12';

export const me: UserFromGetMe = {
  id: 123456789,
  is_bot: true,
  first_name: 'Billywatt',
  username: 'camp_power_bot',
  can_join_groups: true,
  can_read_all_group_messages: false,
  supports_inline_queries: true,
} as UserFromGetMe;

/** The payload of any call, as it comes over the wire. */
// biome-ignore lint/suspicious/noExplicitAny: what comes in is what is to be checked
export type Payload = Record<string, any>;

export interface Call {
  readonly method: string;
  readonly payload: Payload;
}

const bad = (text: string): Refusal => new Refusal(400, `Bad Request: ${text}`);

/** Which run of numbers a chat's messages are counted in. */
const runOf = (chat: number): number | 'others' => (chat < -1_000_000_000_000 ? chat : 'others');

/** A fault to come: a refusal, a line cut before or after the call was carried out, or a 5xx after it was. */
export type Fault = Refusal | 'cut-before' | 'cut-after' | 'lost-after';

/** Chats, messages and presses as Telegram would hold them, with its rules. In memory, no network. */
export class World {
  readonly calls: Call[] = [];
  readonly messages = new Map<string, Message>();
  readonly admins = new Set<string>();
  /** Chats closed to the bot, with Telegram's words. */
  readonly closed = new Map<number, string>();
  readonly movedTo = new Map<number, number>();
  readonly deadThreads = new Set<number>();
  /** Chats that forbid pictures. */
  readonly withoutPhotos = new Set<number>();
  readonly openPresses = new Set<string>();
  /** Calls that broke a rule. */
  readonly refused: string[] = [];
  /** Faults to come, by method: each is used once. */
  readonly faults: { method: string; fault: Fault }[] = [];
  /** What only one person sees. */
  readonly whispers = new Whispers();
  readonly floods = new Floods();
  /** Inline and guest queries without an answer. */
  readonly queries = new Queries();
  /** Which bot wrote last in a group, of all bots there. */
  readonly lastBot = new Map<number, number>();
  /** The one reaction of the bot's on a message, by chat and message. */
  readonly reactions = new Map<string, string>();
  /** Chats that forbid reactions. */
  readonly withoutReactions = new Set<number>();
  /** A server of before 2026: it knows no rich and no ephemeral messages, and passes over fields it doesn't know. */
  isOld = false;
  /** The time there, ms. */
  now: () => number = Date.now;
  readonly #heard = new WeakSet<object>();
  readonly #bansTold = new Set<number>();
  /** Messages with keys instead of buttons, which can't be edited. */
  readonly #keyed = new Set<string>();
  /** The highest number given: a supergroup counts for itself, all other chats together. */
  readonly #lastId = new Map<number | 'others', number>();

  /** Puts a message into a chat: one of a person, or the bot's. */
  put(message: Message): Message {
    const { id } = message.chat;
    this.#lastId.set(runOf(id), Math.max(this.#lastId.get(runOf(id)) ?? 0, message.message_id));
    this.messages.set(`${message.chat.id} ${message.message_id}`, message);
    return message;
  }

  /** Somebody writes or edits a message: a new one gets its number; one told of again has it. */
  hear(update: Partial<Update>): void {
    const { message, edited_message } = update;
    this.queries.hear(update, this.now());
    const written = message ?? edited_message;
    if (written === undefined || this.#heard.has(written)) return;
    this.#heard.add(written);
    if (written.ephemeral_message_id !== undefined) {
      this.whispers.heard(written, this.now());
      return;
    }
    if (message !== undefined) message.message_id = this.nextId(message.chat.id);
    if (message?.from?.is_bot && message.sender_chat === undefined)
      this.lastBot.set(message.chat.id, message.from.id);
    this.put(written);
  }

  /** Somebody taps a button. */
  tap(query: CallbackQuery): void {
    this.openPresses.add(query.id);
    this.whispers.tapped(query, this.now());
  }

  /** The number of the next message of a chat. */
  nextId(chat: number): number {
    return (this.#lastId.get(runOf(chat)) ?? 0) + 1;
  }

  sent(method = 'sendMessage'): Payload[] {
    return this.calls.filter(call => call.method === method).map(call => call.payload);
  }

  /** The fault that waits for a method, taken off the list. */
  takeFault(method: string): Fault | undefined {
    const at = this.faults.findIndex(entry => entry.method === method);
    return at < 0 ? undefined : this.faults.splice(at, 1)[0]?.fault;
  }

  /** Carries a call out. @throws Refusal */
  call(method: string, payload: Payload): unknown {
    this.calls.push({ method, payload });
    const handler = this.#methods[method];
    if (handler === undefined) throw new Refusal(404, 'Not Found: method not found');
    try {
      return handler(payload);
    } catch (error) {
      this.refused.push(`${method}: ${(error as Error).message}`);
      throw error;
    }
  }

  chatOf(id: unknown): number {
    const chat = Number(id);
    if (!Number.isInteger(chat)) throw bad('chat not found');
    const reason = this.closed.get(chat);
    if (reason !== undefined) throw new Refusal(403, `Forbidden: ${reason}`);
    const to = this.movedTo.get(chat);
    if (to !== undefined)
      throw new Refusal(400, 'Bad Request: group chat was upgraded to a supergroup chat', {
        migrate_to_chat_id: to,
      });
    return chat;
  }

  /** Whether the bot is an admin there. */
  isAdmin(chat: number): boolean {
    return this.admins.has(`${chat} ${me.id}`);
  }

  /** The bot's own message that a call names. */
  own(payload: Payload): Message {
    const chat = this.chatOf(payload.chat_id);
    this.floods.check(chat, this.now(), this.#bansTold);
    const key = `${chat} ${payload.message_id}`;
    const old = this.messages.get(key);
    if (!(payload.message_id > 0) || old === undefined) throw bad('message to edit not found');
    if (old.from?.id !== me.id || this.#keyed.has(key)) throw bad("message can't be edited");
    return old;
  }

  checkMarkup(payload: Payload, chat: number): void {
    checkButtons(payload.reply_markup, { isPrivate: chat > 0, isInlineOn: me.supports_inline_queries });
  }

  /** @throws Refusal in a chat that forbids pictures */
  checkMayPicture({ chat_id }: Payload): void {
    if (this.withoutPhotos.has(Number(chat_id))) throw bad('not enough rights to send photos to the chat');
  }

  post(payload: Payload, content: Partial<Message>): Message {
    const chat = this.chatOf(payload.chat_id);
    this.floods.check(chat, this.now(), this.#bansTold);
    const reply = payload.reply_parameters;
    const to = this.isOld ? undefined : payload.ephemeral_message_parameters;
    if (reply?.ephemeral_message_id !== undefined && to === undefined)
      throw bad('a reply to an ephemeral message must be ephemeral');
    if (reply !== undefined && reply.ephemeral_message_id === undefined && !(reply.message_id > 0))
      throw bad('invalid message identifier specified to reply');
    const target = reply && this.messages.get(`${chat} ${reply.message_id}`);
    const isNeeded = to !== undefined || reply?.allow_sending_without_reply !== true;
    if (reply?.message_id !== undefined && !target && isNeeded) throw bad('message to be replied not found');
    if (payload.message_thread_id !== undefined && this.deadThreads.has(payload.message_thread_id))
      throw bad('message thread not found');
    this.checkMarkup(payload, chat);
    const markup = payload.reply_markup;
    const isInline = markup?.inline_keyboard !== undefined;
    const message = {
      message_id: this.nextId(chat),
      date: Math.floor(this.now() / 1000),
      chat: { id: chat, type: chat > 0 ? 'private' : 'supergroup' } as Chat,
      from: me,
      ...(target && { reply_to_message: target }),
      ...(isInline && { reply_markup: markup }),
      ...content,
    } as Message;
    if (to !== undefined) {
      if (markup !== undefined && !isInline) throw bad('ephemeral messages take inline keyboards only');
      this.whispers.check(payload, this.now(), this.isAdmin(chat));
      return this.whispers.put({ ...message, receiver_user: { id: to.receiver_user_id } } as Message);
    }
    this.lastBot.set(chat, me.id);
    if (markup !== undefined && !isInline) this.#keyed.add(`${chat} ${message.message_id}`);
    return this.put(message);
  }

  readonly #methods = methodsOf(this);
}
