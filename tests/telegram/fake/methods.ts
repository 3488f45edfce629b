import type { Message, MessageEntity } from 'grammy/types';
import {
  checkCaption,
  checkCommands,
  checkEntities,
  checkPhoto,
  checkReaction,
  checkRich,
  checkText,
  Refusal,
} from './rules.ts';
import { me, type Payload, type World } from './world.ts';

const bad = (text: string): Refusal => new Refusal(400, `Bad Request: ${text}`);
const unmodified =
  'message is not modified: specified new message content and reply markup are exactly the same as a current content and reply markup of the message';
const isSame = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
/** The bytes of an upload: in process the library's own wrapping, over the wire the bytes. */
const fileOf = (given: unknown): unknown =>
  given instanceof Uint8Array ? given : (given as { fileData?: unknown } | undefined)?.fileData;

/** The methods that the bot may call, each with the rules that the Bot API names. */
export const methodsOf = (world: World): Record<string, (payload: Payload) => unknown> => ({
  getMe: () => me,
  sendMessage: payload => {
    checkText(payload.text);
    checkEntities(payload.text, payload.entities);
    return world.post(payload, { text: payload.text, entities: payload.entities });
  },
  sendRichMessage: payload => {
    if (world.isOld) throw new Refusal(404, 'Not Found: method not found');
    checkRich(payload.rich_message);
    return world.post(payload, { rich_message: payload.rich_message });
  },
  setMessageReaction: payload => {
    const chat = world.chatOf(payload.chat_id);
    const key = `${chat} ${payload.message_id}`;
    if (!world.messages.has(key)) throw bad('message to react not found');
    if (world.withoutReactions.has(chat)) throw bad('REACTION_INVALID');
    checkReaction(payload.reaction);
    world.reactions.set(key, payload.reaction?.[0]?.emoji ?? '');
    return true;
  },
  editEphemeralMessageText: payload => {
    const old = world.whispers.own(payload);
    world.checkMarkup(payload, payload.chat_id);
    if (payload.rich_message === undefined) {
      checkText(payload.text);
      checkEntities(payload.text, payload.entities);
    }
    const text = payload.text ?? checkRich(payload.rich_message);
    const { text: _t, entities: _e, reply_markup: _m, ...rest } = old;
    const { entities, reply_markup } = payload;
    world.whispers.sent.set(payload.ephemeral_message_id, {
      ...rest,
      text,
      ...(entities && { entities }),
      ...(reply_markup && { reply_markup }),
    } as Message);
    return true;
  },
  sendDocument: payload => {
    checkCaption(payload.caption, payload.caption_entities);
    return world.post(payload, { caption: payload.caption });
  },
  sendPhoto: payload => {
    world.checkMayPicture(payload);
    checkPhoto(fileOf(payload.photo));
    checkCaption(payload.caption, payload.caption_entities);
    return world.post(payload, {
      caption: payload.caption,
      caption_entities: payload.caption_entities,
      photo: [{ file_id: 'p', file_unique_id: 'p', width: 1200, height: 675 }],
    });
  },
  editMessageMedia: payload => {
    const old = world.own(payload);
    world.checkMayPicture(payload);
    checkPhoto(fileOf(payload.media.media));
    checkCaption(payload.media.caption, payload.media.caption_entities);
    world.checkMarkup(payload, payload.chat_id);
    const { text: _text, entities: _entities, reply_markup: _markup, ...rest } = old;
    return world.put({
      ...rest,
      caption: payload.media.caption,
      caption_entities: payload.media.caption_entities,
      photo: [{ file_id: 'p', file_unique_id: 'p', width: 1200, height: 675 }],
      ...(payload.reply_markup && { reply_markup: payload.reply_markup }),
    } as Message);
  },
  editMessageCaption: payload => {
    const old = world.own(payload);
    if (old.caption === undefined) throw bad('there is no caption in the message to edit');
    checkCaption(payload.caption, payload.caption_entities);
    world.checkMarkup(payload, payload.chat_id);
    const { caption, caption_entities, reply_markup } = payload;
    if (
      isSame([old.caption, old.caption_entities, old.reply_markup], [caption, caption_entities, reply_markup])
    )
      throw bad(unmodified);
    return world.put({ ...old, caption, caption_entities, reply_markup } as Message);
  },
  editMessageReplyMarkup: payload => {
    const { reply_markup: old, ...rest } = world.own(payload);
    world.checkMarkup(payload, payload.chat_id);
    if (isSame(old ?? [], payload.reply_markup ?? [])) throw bad(unmodified);
    return world.put({
      ...rest,
      ...(payload.reply_markup && { reply_markup: payload.reply_markup }),
    } as Message);
  },
  deleteMessage: payload => {
    const key = `${world.chatOf(payload.chat_id)} ${payload.message_id}`;
    if (world.messages.get(key)?.from?.id !== me.id) throw bad('message to delete not found');
    return world.messages.delete(key);
  },
  editMessageText: payload => {
    const old = world.own(payload);
    if (old.text === undefined) throw bad('there is no text in the message to edit');
    if (payload.rich_message !== undefined && !world.isOld) {
      const rich = { ...old, text: checkRich(payload.rich_message), reply_markup: payload.reply_markup };
      return world.put(rich as Message);
    }
    checkText(payload.text);
    checkEntities(payload.text, payload.entities);
    world.checkMarkup(payload, payload.chat_id);
    const { text, entities, reply_markup } = payload;
    if (isSame([old.text, old.entities, old.reply_markup], [text, entities, reply_markup]))
      throw bad(unmodified);
    const { reply_markup: _, ...rest } = old;
    return world.put({
      ...rest,
      text: payload.text,
      entities: payload.entities as MessageEntity[],
      ...(payload.reply_markup && { reply_markup: payload.reply_markup }),
    } as Message);
  },
  answerCallbackQuery: payload => {
    if (!world.openPresses.delete(payload.callback_query_id))
      throw bad('query is too old and response timeout expired or query ID is invalid');
    if ((payload.text?.length ?? 0) > 200) throw bad('MESSAGE_TOO_LONG');
    const link = `https://t.me/${me.username}?start=`;
    if (payload.url !== undefined && !payload.url.startsWith(link)) throw bad('URL_INVALID');
    return true;
  },
  getChatMember: payload => ({
    status: world.admins.has(`${world.chatOf(payload.chat_id)} ${payload.user_id}`)
      ? 'administrator'
      : 'member',
    user: { id: payload.user_id, is_bot: false, first_name: 'x' },
  }),
  sendChatAction: payload => world.chatOf(payload.chat_id) !== undefined,
  setMyCommands: payload => {
    checkCommands(payload as Parameters<typeof checkCommands>[0]);
    return true;
  },
  setMyDescription: ({ description = '' }) => {
    if (description.length > 512) throw bad('BOT_DESCRIPTION_TOO_LONG');
    return true;
  },
  setMyShortDescription: ({ short_description = '' }) => {
    if (short_description.length > 120) throw bad('BOT_SHORT_DESCRIPTION_TOO_LONG');
    return true;
  },
  answerInlineQuery: payload => world.queries.answerInline(payload, world.now()),
  answerGuestQuery: payload => world.queries.answerGuest(payload),
  leaveChat: () => true,
});
