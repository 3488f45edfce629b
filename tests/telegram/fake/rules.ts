import type {
  InlineKeyboardButton,
  InlineKeyboardMarkup,
  InlineQueryResultArticle,
  InputTextMessageContent,
  MessageEntity,
  ReplyKeyboardMarkup,
  ReplyKeyboardRemove,
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
  // Telegram cuts white space off at both ends, and every offset behind it is then another.
  if (text.trimStart() !== text) throw bad('the text begins with white space, so its entities move');
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

const entityTypes = new Set(
  'mention hashtag cashtag bot_command url email phone_number bold italic underline strikethrough spoiler blockquote expandable_blockquote code pre text_link text_mention custom_emoji date_time'.split(
    ' ',
  ),
);
const quotes = new Set(['blockquote', 'expandable_blockquote']);

/** Entities lie apart or one inside the other, and no quote lies in a quote (Bot API, "Formatting options"). */
function checkNesting(entities: readonly MessageEntity[]): void {
  const end = (e: MessageEntity): number => e.offset + e.length;
  for (const [at, a] of entities.entries())
    for (const b of entities.slice(at + 1)) {
      const isCrossed =
        (a.offset < b.offset && end(a) > b.offset && end(a) < end(b)) ||
        (b.offset < a.offset && end(b) > a.offset && end(b) < end(a));
      if (isCrossed) throw bad("can't parse entities: entities overlap");
      const doMeet = a.offset < end(b) && b.offset < end(a);
      if (doMeet && quotes.has(a.type) && quotes.has(b.type))
        throw bad("can't parse entities: blockquotes can't be nested");
    }
}

export function checkEntities(text: string, entities: readonly MessageEntity[] | undefined): void {
  if (entities === undefined) return;
  checkNesting(entities);
  for (const entity of entities) {
    if (!entityTypes.has(entity.type))
      throw bad(`can't parse MessageEntity: unsupported type ${entity.type}`);
    if (entity.type === 'text_link' && !/^(https?|tg):/.test(entity.url)) throw bad('URL_INVALID');
    if (
      entity.type === 'date_time' &&
      !(Number.isInteger(entity.unix_time) && /^(r|w?[dD]?[tT]?)$/.test(entity.date_time_format ?? ''))
    )
      throw bad("can't parse MessageEntity: date_time");
  }
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

/** What a keyboard may hold where. */
export interface Keyed {
  readonly isPrivate?: boolean;
  readonly isInlineOn?: boolean;
}

type Markup = InlineKeyboardMarkup | ReplyKeyboardMarkup | ReplyKeyboardRemove;

export function checkButtons(markup: Markup | undefined, where: Keyed = {}): void {
  if (markup === undefined) return;
  if ('keyboard' in markup) {
    checkKeys(markup, where.isPrivate ?? true);
    return;
  }
  if ('remove_keyboard' in markup) {
    if (markup.remove_keyboard !== true) throw bad('field "remove_keyboard" must be true');
    return;
  }
  const buttons = markup.inline_keyboard.flat();
  if (buttons.length > 100) throw bad('REPLY_MARKUP_TOO_LONG');
  if (markup.inline_keyboard.some(row => row.length > 8 || row.length === 0)) throw bad('BUTTON_ROW_INVALID');
  for (const button of buttons) checkButton(button, where);
}

const dressings = new Set(['text', 'style', 'icon_custom_emoji_id']);

/** Exactly one thing that a button does; what it is within its limits. */
function checkButton(button: InlineKeyboardButton, { isInlineOn = true }: Keyed): void {
  if (!button.text.isWellFormed()) throw bad('strings must be encoded in UTF-8');
  if (button.text.trim() === '') throw bad('inline keyboard button text is empty');
  const does = Object.keys(button).filter(key => !dressings.has(key));
  if (does.length !== 1)
    throw bad("can't parse inline keyboard button: exactly one optional field must be used");
  if (button.style !== undefined && !['danger', 'success', 'primary'].includes(button.style))
    throw bad("can't parse inline keyboard button: style");
  if ('callback_data' in button) {
    const bytes = Buffer.byteLength(button.callback_data);
    if (bytes < 1 || bytes > 64) throw bad('BUTTON_DATA_INVALID');
  } else if ('url' in button) {
    if (!/^(https?|tg):\/\//.test(button.url)) throw bad('BUTTON_URL_INVALID');
  } else if ('copy_text' in button) {
    if (button.copy_text.text.length < 1 || button.copy_text.text.length > 256)
      throw bad('BUTTON_COPY_TEXT_INVALID');
  } else if ('switch_inline_query' in button || 'switch_inline_query_chosen_chat' in button) {
    const query =
      'switch_inline_query' in button
        ? button.switch_inline_query
        : (button.switch_inline_query_chosen_chat.query ?? '');
    if (!isInlineOn) throw bad('BUTTON_TYPE_INVALID');
    if (query.length > 256) throw bad('QUERY_TOO_LONG');
  } else throw bad('BUTTON_TYPE_INVALID');
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
  if (keyboard.flat().length === 0) throw bad('reply keyboard is empty');
  for (const key of keyboard.flat()) {
    if (typeof key === 'string') continue;
    if (key.text.trim() === '') throw bad('keyboard button text is empty');
    if ('request_location' in key && !isPrivate) throw bad('location can be requested in private chats only');
  }
}

interface CommandList {
  readonly commands: readonly {
    readonly command: string;
    readonly description: string;
    readonly is_ephemeral?: boolean;
  }[];
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

/** The reactions that a bot may give; a few of the fixed list (Bot API, `ReactionTypeEmoji`). */
const reactions = new Set(['\u{1F44D}', '\u{1F44E}', '\u2764', '\u{1F44C}', '\u{1F64F}', '\u{1F44F}']);

export function checkReaction(given: readonly { type: string; emoji?: string }[] | undefined): void {
  if ((given?.length ?? 0) > 1) throw bad('REACTIONS_TOO_MANY');
  for (const { type, emoji } of given ?? [])
    if (type !== 'emoji' || !reactions.has(emoji ?? '')) throw bad('REACTION_INVALID');
}

/** Rich messages: 32,768 characters, 500 blocks, 20 columns, and exactly one way of writing them. */
export function checkRich(rich: { blocks?: readonly object[]; markdown?: string; html?: string }): string {
  const ways = [rich.blocks, rich.markdown, rich.html].filter(way => way !== undefined);
  if (ways.length !== 1) throw bad('exactly one of html, markdown and blocks must be used');
  if (rich.blocks === undefined) return rich.markdown ?? rich.html ?? '';
  const texts: string[] = [];
  let blocks = 0;
  const look = (value: unknown): void => {
    if (typeof value === 'string') texts.push(value);
    else if (Array.isArray(value)) value.forEach(look);
    else if (value !== null && typeof value === 'object') {
      const {
        type: _type,
        cells,
        text,
        blocks: inner,
        summary,
        caption,
        ...rest
      } = value as Record<string, unknown>;
      if (Array.isArray(cells)) {
        blocks += cells.length;
        if (cells.some(row => (row as unknown[]).length > 20)) throw bad('TABLE_TOO_WIDE');
      }
      if (Array.isArray(inner)) blocks += inner.length;
      for (const part of [cells, text, inner, summary, caption]) if (part !== undefined) look(part);
      for (const key of Object.keys(rest))
        if (!richKeys.has(key)) throw bad(`can't parse rich message: unknown field ${key}`);
    }
  };
  blocks += rich.blocks.length;
  rich.blocks.forEach(look);
  const text = texts.join('\n');
  if (text.trim() === '') throw bad('message text is empty');
  if (!text.isWellFormed()) throw bad('strings must be encoded in UTF-8');
  if (text.length > 32_768) throw bad('message is too long');
  if (blocks > 500) throw bad('RICH_MESSAGE_TOO_MANY_BLOCKS');
  return text;
}

const richKeys = new Set(
  'align valign is_header is_bordered is_striped is_compact colspan rowspan is_open size expression'.split(
    ' ',
  ),
);
