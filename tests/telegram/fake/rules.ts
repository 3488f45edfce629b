import type {
  InlineKeyboardMarkup,
  InlineQueryResultArticle,
  InputTextMessageContent,
  MessageEntity,
  ReplyKeyboardMarkup,
} from 'grammy/types';

/** A refusal as the Bot API words it. */
export class Refusal extends Error {
  readonly code: number;
  readonly parameters: Record<string, number> | undefined;
  constructor(code: number, description: string, parameters?: Record<string, number>) {
    super(description);
    this.code = code;
    this.parameters = parameters;
  }
}

const bad = (text: string): Refusal => new Refusal(400, `Bad Request: ${text}`);

/** Rules of texts, entities and buttons, from the Bot API's reference; "observed" ones are common knowledge of bot authors. */
export function checkText(text: unknown, limit = 4096): asserts text is string {
  if (typeof text !== 'string' || text.trim() === '') throw bad('message text is empty');
  if (!text.isWellFormed()) throw bad('strings must be encoded in UTF-8');
  if (text.length > limit) throw bad('message is too long');
}

/** Photos: at most 10 MB, width and height at most 10,000 together, at most 20 times as long as wide. */
export function checkPhoto(file: unknown): void {
  const bytes = file instanceof Uint8Array ? Buffer.from(file) : undefined;
  if (bytes === undefined) throw bad('there is no photo in the request');
  if (bytes.subarray(1, 4).toString() !== 'PNG') throw bad('IMAGE_PROCESS_FAILED');
  if (bytes.length > 10 * 1024 * 1024) throw bad('file is too big');
  const [width, height] = [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
  if (width + height > 10_000 || Math.max(width / height, height / width) > 20)
    throw bad('PHOTO_INVALID_DIMENSIONS');
}

/** Captions may be empty and are shorter than messages. */
export function checkCaption(caption: unknown, entities: readonly MessageEntity[] | undefined): void {
  if (caption === undefined) return;
  if (typeof caption !== 'string' || !caption.isWellFormed()) throw bad('strings must be encoded in UTF-8');
  if (caption.length > 1024) throw bad('message caption is too long');
  checkEntities(caption, entities);
}

const isInsidePair = (text: string, at: number): boolean =>
  /[\udc00-\udfff]/.test(text[at] ?? '') && /[\ud800-\udbff]/.test(text[at - 1] ?? '');

export function checkEntities(text: string, entities: readonly MessageEntity[] | undefined): void {
  if (entities === undefined) return;
  if (entities.length > 100) throw bad('too many entities (observed: more than 100 are dropped)');
  for (const { offset, length, type } of entities) {
    if (typeof type !== 'string') throw bad("can't parse MessageEntity: type must be a string");
    if (!Number.isInteger(offset) || offset < 0 || offset > text.length)
      throw bad(`entity beginning at UTF-16 offset ${offset} is out of the text`);
    if (!Number.isInteger(length) || length < 1 || offset + length > text.length)
      throw bad(`entity beginning at UTF-16 offset ${offset} ends after the end of the text`);
    if (isInsidePair(text, offset) || isInsidePair(text, offset + length))
      throw bad(`entity beginning at UTF-16 offset ${offset} begins or ends in a middle of a UTF-16 symbol`);
  }
}

export function checkButtons(
  markup: InlineKeyboardMarkup | ReplyKeyboardMarkup | undefined,
  isPrivate = true,
): void {
  if (markup === undefined) return;
  if ('keyboard' in markup) {
    checkKeys(markup, isPrivate);
    return;
  }
  const buttons = markup.inline_keyboard.flat();
  if (buttons.length > 100) throw bad('REPLY_MARKUP_TOO_LONG');
  for (const button of buttons) {
    if (!button.text.isWellFormed()) throw bad('strings must be encoded in UTF-8');
    if (button.text.trim() === '') throw bad('inline keyboard button text is empty');
    const bytes = 'callback_data' in button ? Buffer.byteLength(button.callback_data) : 1;
    if (bytes < 1 || bytes > 64) throw bad('BUTTON_DATA_INVALID');
  }
}

/** A result of an inline or a guest query: its id, its title, and the message that it becomes. */
export function checkArticle({
  id,
  title,
  description = '',
  input_message_content,
}: InlineQueryResultArticle): void {
  if (Buffer.byteLength(id) < 1 || Buffer.byteLength(id) > 64) throw bad('RESULT_ID_INVALID');
  if (title.trim() === '' || !`${title}${description}`.isWellFormed()) throw bad('ARTICLE_TITLE_EMPTY');
  const content = input_message_content as InputTextMessageContent;
  checkText(content.message_text);
  checkEntities(content.message_text, content.entities);
}

function checkKeys({ keyboard }: ReplyKeyboardMarkup, isPrivate: boolean): void {
  for (const key of keyboard.flat()) {
    if (typeof key === 'string') continue;
    if (key.text.trim() === '') throw bad('keyboard button text is empty');
    if ('request_location' in key && !isPrivate) throw bad('location can be requested in private chats only');
  }
}

interface CommandList {
  readonly commands: readonly { readonly command: string; readonly description: string }[];
  readonly language_code?: string;
}

export function checkCommands({ commands, language_code }: CommandList): void {
  if (commands.length > 100) throw bad('BOT_COMMANDS_TOO_MUCH');
  for (const { command, description } of commands) {
    if (!/^[a-z0-9_]{1,32}$/.test(command)) throw bad('BOT_COMMAND_INVALID');
    if (description.length < 1 || description.length > 256) throw bad('BOT_COMMAND_DESCRIPTION_INVALID');
  }
  if (language_code !== undefined && !/^([a-z]{2})?$/.test(language_code)) throw bad('LANG_CODE_INVALID');
}
