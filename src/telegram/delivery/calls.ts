import { type Api, InputFile } from 'grammy';
import type { Message } from 'grammy/types';
import { unpaced } from './pace.ts';
import type { Content, Place, SentMessage } from './place.ts';

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
  const { said, picture, rich } = content;
  const { text, entities } = said;
  const where = { ...whereOf(place, content), ...(content.isUrgent && { [unpaced]: true }) };
  if (picture !== undefined)
    return api.sendPhoto(place.chat, fileOf(picture), {
      caption: text,
      ...(entities.length > 0 && { caption_entities: entities }),
      ...where,
    });
  if (rich !== undefined)
    return api.raw.sendRichMessage({ chat_id: place.chat, rich_message: rich, ...where });
  return api.sendMessage(place.chat, text, {
    ...(entities.length > 0 && { entities }),
    ...where,
    ...noPreview,
  });
}

/** Edits a message, once; of one with a picture only the words below it, where that is wanted. */
export async function callEdit(
  api: Api,
  { chat, id, onlyFor }: SentMessage,
  { said, buttons, picture }: Content,
  part: 'picture' | 'caption',
): Promise<unknown> {
  const { text, entities } = said;
  // Only a search puts an answer there as a caption.
  const markup = {
    ...(buttons && { reply_markup: buttons }),
    ...(part === 'caption' && { [unpaced]: true }),
  };
  const words = { text, ...(entities.length > 0 && { entities }), ...noPreview, ...markup };
  if (onlyFor !== undefined)
    return api.raw.editEphemeralMessageText({
      chat_id: chat,
      receiver_user_id: onlyFor,
      ephemeral_message_id: -id,
      ...words,
    });
  if (picture === undefined) return api.raw.editMessageText({ chat_id: chat, message_id: id, ...words });
  const captioned = { caption: text, ...(entities.length > 0 && { caption_entities: entities }) };
  if (part === 'caption') return api.editMessageCaption(chat, id, { ...captioned, ...markup });
  const media = { type: 'photo', media: fileOf(picture), ...captioned } as const;
  return api.editMessageMedia(chat, id, media, { ...markup });
}
