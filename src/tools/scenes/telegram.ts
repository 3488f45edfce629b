import type { Bot } from 'grammy';
import type { Chat, InlineKeyboardMarkup, Message, Update, User } from 'grammy/types';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { VolatileStore } from '#memory/volatile/store.ts';
import type { Log } from '#telegram/ops/deps.ts';
import { createBot } from '#telegram/updates/bot.ts';

/** Something that is seen in the group, in the order in which it happens. */
export type Seen =
  | { readonly kind: 'said'; readonly who: string; readonly text: string; readonly to?: string }
  | { readonly kind: 'did'; readonly text: string }
  | {
      readonly kind: 'answer';
      readonly text: string;
      readonly buttons: readonly string[];
      readonly isEdit: boolean;
      /** The one person who sees it. */
      readonly onlyFor?: string;
      readonly picture?: Buffer;
    };

const token = '123456789:abcdefghijklmnopqrstuvwxyz_ABCDE-12';
const me = { id: 123_456_789, is_bot: true, first_name: 'Billywatt', username: 'camp_power_bot' };
/** The moment at which the scenes play: a Thursday in January 2026, s. */
const startSec = Date.UTC(2026, 0, 15, 9) / 1000;
const silent: Log = { debug() {}, info() {}, warn() {}, error() {} };

// biome-ignore lint/suspicious/noExplicitAny: the payload of any call
type Payload = Record<string, any>;

/** A group with the real bot in it, and no network: its calls end here, and are written down. */
export class Group {
  readonly seen: Seen[] = [];
  readonly admins = new Set<number>();
  readonly #bot: Bot;
  readonly #store = new VolatileStore();
  readonly #messages = new Map<number, Message>();
  readonly #people = new Map<number, string>();
  readonly #chat = {
    id: -1_001_234_567_890,
    type: 'supergroup',
    title: 'Sunday campers',
  } as Chat.SupergroupChat;
  #id = 100;
  #update = 1;
  #sec = startSec;

  constructor() {
    const deps = { converse, store: this.#store, log: silent, now: () => this.#sec * 1000 };
    this.#bot = createBot({ token, isPaced: false }, deps, { botInfo: me as Bot['botInfo'] });
    this.#bot.api.config.use(async (_prev, method, payload) => {
      return { ok: true, result: await this.#call(method, (payload ?? {}) as Payload) } as never;
    });
  }

  /** Somebody writes; `to` is the bot's newest answer where they reply to it. @returns the message */
  async say(
    who: User,
    text: string,
    more: { isReply?: boolean; at?: Partial<Message> } = {},
  ): Promise<Message> {
    const reply = more.isReply ? this.newest : undefined;
    this.#people.set(who.id, fullName(who));
    this.seen.push({ kind: 'said', who: fullName(who), text, ...(reply && { to: me.first_name }) });
    const message = this.#message({
      from: who,
      text,
      ...(reply && { reply_to_message: reply as never }),
      ...more.at,
    });
    await this.#give({ message: message as never });
    return message;
  }

  /** Somebody changes what they wrote. */
  async edit(message: Message, text: string): Promise<void> {
    this.seen.push({ kind: 'did', text: `${fullName(present(message.from))} edits that to: ${text}` });
    await this.#give({ edited_message: { ...message, text, edit_date: this.#sec } as never });
  }

  /** Somebody shares where they are, in reply to the newest answer. */
  async share(who: User, latitude: number, longitude: number): Promise<void> {
    this.seen.push({ kind: 'did', text: `${fullName(who)} shares a location, in reply to that` });
    const location = { latitude, longitude };
    const message = this.#message({ from: who, location, reply_to_message: this.newest as never });
    await this.#give({ message: message as never });
  }

  /** Somebody presses a button of the bot's newest answer that has it. */
  async press(who: User, label: string): Promise<void> {
    const on = [...this.#messages.values()].findLast(m => labelsOf(m).includes(label));
    const button = on?.reply_markup?.inline_keyboard.flat().find(({ text }) => text === label);
    if (on === undefined || button === undefined || !('callback_data' in button))
      throw new Error(`no button “${label}” in the scene`);
    this.seen.push({ kind: 'did', text: `${fullName(who)} presses “${label}”` });
    const query = {
      id: `${this.#update}`,
      from: who,
      message: on,
      chat_instance: 'x',
      data: button.callback_data,
    };
    await this.#give({ callback_query: query as never });
  }

  /** The bot comes into the group. */
  async join(who: User): Promise<void> {
    this.seen.push({ kind: 'did', text: `${fullName(who)} adds ${me.first_name} to the group` });
    const change = { old_chat_member: { status: 'left' }, new_chat_member: { status: 'member' } };
    await this.#give({
      my_chat_member: { chat: this.#chat, from: who, date: this.#sec, ...change } as never,
    });
  }

  get newest(): Message | undefined {
    return [...this.#messages.values()].findLast(m => m.from?.id === me.id);
  }

  #message(of: Partial<Message>): Message {
    this.#sec += 20;
    return { message_id: ++this.#id, date: this.#sec, chat: this.#chat, ...of } as Message;
  }

  #give(given: Omit<Update, 'update_id'>): Promise<void> {
    return this.#bot.handleUpdate({ update_id: this.#update++, ...given } as Update);
  }

  async #call(method: string, payload: Payload): Promise<unknown> {
    switch (method) {
      case 'sendMessage':
      case 'sendPhoto':
      case 'editMessageText':
      case 'editMessageMedia':
        return this.#answer(method, payload);
      case 'editMessageReplyMarkup': {
        const old = present(this.#messages.get(payload.message_id));
        this.#messages.set(old.message_id, { ...old, reply_markup: payload.reply_markup } as Message);
        return true;
      }
      case 'answerCallbackQuery':
        if (payload.text) this.seen.push({ kind: 'did', text: `A note over the chat: “${payload.text}”` });
        return true;
      case 'setMessageReaction':
        this.seen.push({ kind: 'did', text: `${me.first_name} reacts with a thumb` });
        return true;
      case 'getChatMember':
        return { status: this.admins.has(payload.user_id) ? 'administrator' : 'member' };
      default:
        return true;
    }
  }

  #answer(method: string, payload: Payload): Message {
    const isEdit = method.startsWith('edit');
    const media = payload.media ?? payload;
    const file = payload.photo ?? payload.media?.media;
    const text: string = payload.text ?? media.caption;
    const onlyFor = payload.ephemeral_message_parameters?.receiver_user_id;
    const reply_markup = payload.reply_markup as InlineKeyboardMarkup | undefined;
    const id = isEdit ? payload.message_id : ++this.#id;
    const message = {
      ...this.#messages.get(id),
      message_id: id,
      date: this.#sec,
      chat: this.#chat,
      from: me,
      ...(file ? { caption: text, photo: [{}] } : { text }),
      entities: payload.entities,
      reply_markup,
      ...(onlyFor && { ephemeral_message_id: id }),
    } as unknown as Message;
    this.#messages.set(id, message);
    this.seen.push({
      kind: 'answer',
      text,
      isEdit,
      buttons: labelsOf(message),
      ...(onlyFor && { onlyFor: this.#people.get(onlyFor) }),
      // The library's wrapping of an upload holds the bytes as they were given.
      ...(file && { picture: (file as { fileData: Buffer }).fileData }),
    });
    return message;
  }
}

const fullName = ({ first_name, last_name }: User): string =>
  [first_name, last_name].filter(Boolean).join(' ');

const labelsOf = (message: Message): string[] =>
  (message.reply_markup?.inline_keyboard.flat() ?? []).map(button => button.text);
