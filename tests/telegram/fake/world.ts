import type { Chat, Message, MessageEntity, Update, UserFromGetMe } from 'grammy/types';
import {
  checkArticle,
  checkButtons,
  checkCaption,
  checkCommands,
  checkEntities,
  checkPhoto,
  checkText,
  Refusal,
} from './rules.ts';

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

const unmodified =
  'message is not modified: specified new message content and reply markup are exactly the same as a current content and reply markup of the message';
const isSame = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
const bad = (text: string): Refusal => new Refusal(400, `Bad Request: ${text}`);

/** Which run of numbers a chat's messages are counted in. */
const runOf = (chat: number): number | 'others' => (chat < -1_000_000_000_000 ? chat : 'others');

/** The bytes of an upload: in process the library's own wrapping, over the wire the bytes. */
const fileOf = (given: unknown): unknown =>
  given instanceof Uint8Array ? given : (given as { fileData?: unknown } | undefined)?.fileData;

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
  readonly faults: { method: string; fault: Refusal | 'cut-before' | 'cut-after' }[] = [];
  readonly #heard = new WeakSet<object>();
  #ephemeral = 0;
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
  hear({ message, edited_message }: Partial<Update>): void {
    const written = message ?? edited_message;
    if (written === undefined || this.#heard.has(written)) return;
    this.#heard.add(written);
    if (message !== undefined) message.message_id = this.nextId(message.chat.id);
    this.put(written);
  }

  /** The number of the next message of a chat. */
  nextId(chat: number): number {
    return (this.#lastId.get(runOf(chat)) ?? 0) + 1;
  }

  sent(method = 'sendMessage'): Payload[] {
    return this.calls.filter(call => call.method === method).map(call => call.payload);
  }

  /** The fault that waits for a method, taken off the list. */
  takeFault(method: string): Refusal | 'cut-before' | 'cut-after' | undefined {
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

  #chat(id: unknown): number {
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

  /** The bot's own message that a call names. */
  #own(payload: Payload): Message {
    const old = this.messages.get(`${this.#chat(payload.chat_id)} ${payload.message_id}`);
    if (old === undefined) throw bad('message to edit not found');
    if (old.from?.id !== me.id) throw bad("message can't be edited");
    return old;
  }

  #send(payload: Payload, content: Partial<Message>): Message {
    const chat = this.#chat(payload.chat_id);
    const reply = payload.reply_parameters;
    const target = reply && this.messages.get(`${chat} ${reply.message_id}`);
    if (reply && !target && reply.allow_sending_without_reply !== true)
      throw bad('message to be replied not found');
    if (payload.message_thread_id !== undefined && this.deadThreads.has(payload.message_thread_id))
      throw bad('message thread not found');
    checkButtons(payload.reply_markup, chat > 0);
    return this.put({
      message_id: this.nextId(chat),
      date: Math.floor(Date.now() / 1000),
      chat: { id: chat, type: chat > 0 ? 'private' : 'supergroup' } as Chat,
      from: me,
      ...(target && { reply_to_message: target }),
      ...(payload.reply_markup && { reply_markup: payload.reply_markup }),
      ...content,
    } as Message);
  }

  readonly #methods: Record<string, (payload: Payload) => unknown> = {
    getMe: () => me,
    sendMessage: payload => {
      checkText(payload.text);
      checkEntities(payload.text, payload.entities);
      const onlyFor = payload.ephemeral_message_parameters?.receiver_user_id;
      if (onlyFor !== undefined && Number(payload.chat_id) > 0)
        throw bad('ephemeral messages are for groups');
      // An ephemeral message has the id 0.
      const id = onlyFor === undefined ? {} : { message_id: 0, ephemeral_message_id: ++this.#ephemeral };
      return this.#send(payload, { text: payload.text, entities: payload.entities, ...id });
    },
    sendDocument: payload => {
      checkCaption(payload.caption, payload.caption_entities);
      return this.#send(payload, { caption: payload.caption });
    },
    sendPhoto: payload => {
      if (this.withoutPhotos.has(Number(payload.chat_id)))
        throw bad('not enough rights to send photos to the chat');
      checkPhoto(fileOf(payload.photo));
      checkCaption(payload.caption, payload.caption_entities);
      return this.#send(payload, {
        caption: payload.caption,
        caption_entities: payload.caption_entities,
        photo: [{ file_id: 'p', file_unique_id: 'p', width: 1200, height: 675 }],
      });
    },
    editMessageMedia: payload => {
      const old = this.#own(payload);
      checkPhoto(fileOf(payload.media.media));
      checkCaption(payload.media.caption, payload.media.caption_entities);
      checkButtons(payload.reply_markup);
      const { text: _text, entities: _entities, reply_markup: _markup, ...rest } = old;
      return this.put({
        ...rest,
        caption: payload.media.caption,
        caption_entities: payload.media.caption_entities,
        photo: [{ file_id: 'p', file_unique_id: 'p', width: 1200, height: 675 }],
        ...(payload.reply_markup && { reply_markup: payload.reply_markup }),
      } as Message);
    },
    editMessageCaption: payload => {
      const old = this.#own(payload);
      if (old.caption === undefined) throw bad('there is no caption in the message to edit');
      checkCaption(payload.caption, payload.caption_entities);
      checkButtons(payload.reply_markup);
      const { caption, caption_entities, reply_markup } = payload;
      if (
        isSame(
          [old.caption, old.caption_entities, old.reply_markup],
          [caption, caption_entities, reply_markup],
        )
      )
        throw bad(unmodified);
      return this.put({ ...old, caption, caption_entities, reply_markup } as Message);
    },
    editMessageReplyMarkup: payload => {
      const { reply_markup: old, ...rest } = this.#own(payload);
      checkButtons(payload.reply_markup);
      if (isSame(old ?? [], payload.reply_markup ?? [])) throw bad(unmodified);
      return this.put({
        ...rest,
        ...(payload.reply_markup && { reply_markup: payload.reply_markup }),
      } as Message);
    },
    deleteMessage: payload => {
      const { chat, message_id } = this.#own(payload);
      return this.messages.delete(`${chat.id} ${message_id}`);
    },
    editMessageText: payload => {
      const old = this.#own(payload);
      if (old.text === undefined) throw bad('there is no text in the message to edit');
      checkText(payload.text);
      checkEntities(payload.text, payload.entities);
      checkButtons(payload.reply_markup);
      const { text, entities, reply_markup } = payload;
      if (isSame([old.text, old.entities, old.reply_markup], [text, entities, reply_markup]))
        throw bad(unmodified);
      const { reply_markup: _, ...rest } = old;
      return this.put({
        ...rest,
        text: payload.text,
        entities: payload.entities as MessageEntity[],
        ...(payload.reply_markup && { reply_markup: payload.reply_markup }),
      } as Message);
    },
    answerCallbackQuery: payload => {
      if (!this.openPresses.delete(payload.callback_query_id))
        throw bad('query is too old and response timeout expired or query ID is invalid');
      if ((payload.text?.length ?? 0) > 200) throw bad('MESSAGE_TOO_LONG');
      return true;
    },
    getChatMember: payload => ({
      status: this.admins.has(`${payload.chat_id} ${payload.user_id}`) ? 'administrator' : 'member',
      user: { id: payload.user_id, is_bot: false, first_name: 'x' },
    }),
    sendChatAction: payload => this.#chat(payload.chat_id) !== undefined,
    setMyCommands: payload => {
      checkCommands(payload as Parameters<typeof checkCommands>[0]);
      return true;
    },
    setMyDescription: () => true,
    setMyShortDescription: () => true,
    answerInlineQuery: payload => {
      if (payload.results.length > 50) throw bad('RESULTS_TOO_MUCH');
      for (const result of payload.results) checkArticle(result);
      return true;
    },
    answerGuestQuery: payload => {
      checkArticle(payload.result);
      return { inline_message_id: 'guest-1' };
    },
    leaveChat: () => true,
  };
}
