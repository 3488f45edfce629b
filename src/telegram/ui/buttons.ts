import { hash as digest } from 'node:crypto';
import type { InlineKeyboardButton, InlineKeyboardMarkup, Message } from 'grammy/types';
import { present } from '#basics/present.ts';
import { confirmation } from '#conversation/turns/requests.ts';
import { labels } from './words.ts';

/** Version of the data in a button; older ones get a polite word. */
const version = '1';

const letters = {
  /** Ask what stands on the button. */
  next: 'n',
  working: 'w',
  picture: 'p',
  /** Ask where somebody is. */
  place: 'l',
  /** Show a page: the help, the privacy notice. */
  page: 'h',
  /** Show the examples of a subject, or with `allSubjects` the list. */
  subject: 's',
  /** Change a setting. */
  set: 'c',
} as const;
export type Action = keyof typeof letters;
const actions = Object.fromEntries(
  Object.entries(letters).map(([action, letter]) => [letter, action]),
) as Record<string, Action>;

/** What a button does, and for whom. */
export interface Button {
  readonly action: Action;
  readonly index: number;
  /** Who asked, 0 for the group itself: only they, or an admin, may press what changes the answer. */
  readonly asker: number;
  /** Which answer the button stood under, to tell a second tap from a first. */
  readonly answer: string;
}

/** A short hash: enough to compare two texts without keeping either. */
export const hash = (text: string): string => digest('sha256', text, 'base64url').slice(0, 8);

/** A button's data, at most 64 bytes: "1|n|0|k3j2h1|Ab12Cd34". */
export const buttonData = (button: Button): string =>
  [version, letters[button.action], button.index, button.asker.toString(36), button.answer].join('|');

/** Reads a button's data; undefined for anything that this version did not write. */
export function readButton(data: string): Button | undefined {
  const match = /^1\|([nwplhsc])\|(\d{1,2})\|([0-9a-z]{1,12})\|([\w-]{8})$/.exec(data);
  if (match === null) return undefined;
  return {
    action: present(actions[present(match[1])]),
    index: Number(match[2]),
    asker: Number.parseInt(present(match[3]), 36),
    answer: present(match[4]),
  };
}

/** What is asked by the buttons that lead to deleting, in small letters. */
const deletes: ReadonlySet<string> = new Set([
  confirmation,
  labels.forget.toLowerCase(),
  'forget me',
  'forget my rig',
]);

/** Makes the buttons of one message. */
export function buttonsOf(shownText: string, asker: number) {
  const answer = hash(shownText);
  return (action: Action, text: string, index = 0): InlineKeyboardButton => ({
    text,
    callback_data: buttonData({ action, index, asker, answer }),
    // What deletes looks like it.
    ...(deletes.has(text.toLowerCase()) && { style: 'danger' as const }),
  });
}

/** What else there is to see of an answer than its words. */
export interface Extras {
  readonly hasWorking: boolean;
  readonly hasPicture: boolean;
  /** Whether the chat wants a table in place of a picture. */
  readonly isTable?: boolean;
  /** Whether it would be closer with a place. */
  readonly lacksPlace?: boolean;
  /** The rig in a line that the bot reads, for the clipboard. */
  readonly rigLine?: string;
  /** The question, where it stands alone, to be answered in another chat. */
  readonly question?: string;
}

/** Telegram's limits of what a button copies, and of an inline query. */
const mostChars = 256;

/** Buttons under an answer: each next question on its own row, then what else there is to see, then the place. */
export function keyboard(
  shownText: string,
  asker: number,
  next: readonly string[],
  { hasWorking, hasPicture, isTable = false, lacksPlace = false, rigLine, question }: Extras,
): InlineKeyboardMarkup | undefined {
  const button = buttonsOf(shownText, asker);
  const rows = next
    .slice(0, 3)
    .map(text => text.toWellFormed().trim())
    // The same wish has a button of its own, which shows it in place.
    .filter(text => text !== '' && text !== labels.workingWish)
    .map((text, index) => [button('next', text, index)]);
  const extras = [
    ...(hasWorking ? [button('working', labels.working)] : []),
    ...(hasPicture ? [button('picture', isTable ? labels.table : labels.picture)] : []),
  ];
  if (extras.length > 0) rows.push(extras);
  const goods = [
    ...(rigLine && rigLine.length <= mostChars
      ? [{ text: labels.copyRig, copy_text: { text: rigLine } }]
      : []),
    ...(question && question.length <= mostChars ? [passOn(question)] : []),
  ];
  if (goods.length > 0) rows.push(goods);
  if (lacksPlace) rows.push([button('place', labels.place)]);
  return rows.length === 0 ? undefined : { inline_keyboard: rows };
}

const passOn = (query: string): InlineKeyboardButton => ({
  text: labels.pass,
  switch_inline_query_chosen_chat: { query, allow_user_chats: true, allow_group_chats: true },
});

/** The words on the button that was pressed: they are the question. */
export function pressedText(message: Message | undefined, data: string): string | undefined {
  const buttons = message?.reply_markup?.inline_keyboard.flat() ?? [];
  return buttons.find(button => 'callback_data' in button && button.callback_data === data)?.text;
}
