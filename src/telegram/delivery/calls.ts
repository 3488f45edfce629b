import { type Api, InputFile } from 'grammy';
import type { Message } from 'grammy/types';
import type { Content, Place, SentMessage } from './again/place.ts';
import { unpaced } from './pace.ts';

const fileOf = (picture: Buffer): InputFile => new InputFile(picture, 'chart.png');
const noPreview = { link_preview_options: { is_disabled: true } } as const;

/** What a message replies to, its topic, who sees it and its buttons, as the Bot API wants them. */
function whereOf({ replyTo, thread, onlyFor }: Place, { keys, buttons }: Content) {
  const markup = keys ?? buttons;
  const reply =
    onlyFor?.command !== undefined
      ? { ephemeral_message_id: onlyFor.command }
      : replyTo !== undefined && onlyFor === undefined
        ? { message_id: replyTo, allow_sending_without_reply: true }
        : undefined;
  return {
    ...(reply && { reply_parameters: reply }),
    ...(thread !== undefined && { message_thread_id: thread }),
    ...(onlyFor && {
      ephemeral_message_parameters: {
        receiver_user_id: onlyFor.person,
        ...(onlyFor.press !== undefined && { callback_query_id: onlyFor.press }),
      },
    }),
    ...(markup && { reply_markup: markup }),
  };
}

/** Sends a message, once. */
export async function callSend(api: Api, place: Place, content: Content): Promise<Message> {
  const { said, picture, file, rich } = content;
  const { text, entities } = said;
  const where = { ...whereOf(place, content), ...(content.isUrgent && { [unpaced]: true }) };
  const captioned = { caption: text, ...(entities.length > 0 && { caption_entities: entities }), ...where };
  if (file !== undefined)
    return api.sendDocument(place.chat, new InputFile(file.bytes, file.name), captioned);
  if (picture !== undefined) return api.sendPhoto(place.chat, fileOf(picture), captioned);
  if (rich !== undefined)
    return api.raw.sendRichMessage({ chat_id: place.chat, rich_message: rich, ...where });
  return api.sendMessage(place.chat, text, {
    ...(entities.length > 0 && { entities }),
    ...where,
    ...noPreview,
  });
}

/** What an edit is of: all of it, or of one with a picture or a file only the words below it. */
export type Part = 'whole' | 'caption';

/** Edits a message, once. @param isPaced whether it waits for its turn: what only looks, or only adds, does not */
export async function callEdit(
  api: Api,
  { chat, id, onlyFor }: SentMessage,
  { said, buttons, picture }: Content,
  part: Part,
  isPaced: boolean,
): Promise<unknown> {
  const { text, entities } = said;
  const markup = { ...(buttons && { reply_markup: buttons }), ...(!isPaced && { [unpaced]: true }) };
  const words = { text, ...(entities.length > 0 && { entities }), ...noPreview, ...markup };
  if (onlyFor !== undefined)
    return api.raw.editEphemeralMessageText({
      chat_id: chat,
      receiver_user_id: onlyFor,
      ephemeral_message_id: -id,
      ...words,
    });
  const captioned = { caption: text, ...(entities.length > 0 && { caption_entities: entities }) };
  if (part === 'caption') return api.editMessageCaption(chat, id, { ...captioned, ...markup });
  if (picture === undefined) return api.raw.editMessageText({ chat_id: chat, message_id: id, ...words });
  const media = { type: 'photo', media: fileOf(picture), ...captioned } as const;
  return api.editMessageMedia(chat, id, media, { ...markup });
}
