import { createHash } from 'node:crypto';
import type { InlineKeyboardMarkup, Message } from 'grammy/types';
import { labels } from './words.ts';

/** Version of the data in a button; older ones get a polite word. */
const version = '1';

/** What a button does: ask a next question, show the working, send a picture, or ask where somebody is. */
export interface Button {
  readonly action: 'next' | 'working' | 'picture' | 'place';
  readonly index: number;
  /** Who asked: only they, or an admin, may press. */
  readonly asker: number;
  /** Which answer the button stood under, to tell a second tap from a first. */
  readonly answer: string;
}

const letters = { next: 'n', working: 'w', picture: 'p', place: 'l' } as const;
const actions = { n: 'next', w: 'working', p: 'picture', l: 'place' } as const;

/** A short hash: enough to compare two texts without keeping either. */
export const hash = (text: string): string =>
  createHash('sha256').update(text).digest('base64url').slice(0, 8);

/** A button's data, at most 64 bytes: "1|n|0|k3j2h1|Ab12Cd34". */
export const buttonData = (button: Button): string =>
  [version, letters[button.action], button.index, button.asker.toString(36), button.answer].join('|');

/** Reads a button's data; undefined for anything that this version did not write. */
export function readButton(data: string): Button | undefined {
  const match = /^1\|([nwpl])\|(\d)\|([0-9a-z]{1,12})\|([\w-]{8})$/.exec(data);
  if (match === null) return undefined;
  return {
    action: actions[match[1] as keyof typeof actions],
    index: Number(match[2]),
    asker: Number.parseInt(match[3]!, 36),
    answer: match[4]!,
  };
}

/** What else there is to see of an answer than its words. */
export interface Extras {
  readonly hasWorking: boolean;
  readonly hasPicture: boolean;
  /** Whether it would be closer with a place. */
  readonly lacksPlace?: boolean;
}

/** Buttons under an answer: each next question on its own row, then the working and the picture, then the place. */
export function keyboard(
  shownText: string,
  asker: number,
  next: readonly string[],
  { hasWorking, hasPicture, lacksPlace = false }: Extras,
): InlineKeyboardMarkup | undefined {
  const answer = hash(shownText);
  const button = (action: Button['action'], text: string, index = 0) => ({
    text,
    callback_data: buttonData({ action, index, asker, answer }),
  });
  const rows = next
    .slice(0, 3)
    .map(text => text.toWellFormed().trim())
    // The same wish has a button of its own, which shows it in place.
    .filter(text => text !== '' && text !== labels.workingWish)
    .map((text, index) => [button('next', text, index)]);
  const extras = [
    ...(hasWorking ? [button('working', labels.working)] : []),
    ...(hasPicture ? [button('picture', labels.picture)] : []),
  ];
  if (extras.length > 0) rows.push(extras);
  if (lacksPlace) rows.push([button('place', labels.place)]);
  return rows.length === 0 ? undefined : { inline_keyboard: rows };
}

/** The words on the button that was pressed: they are the question. */
export function pressedText(message: Message | undefined, data: string): string | undefined {
  const buttons = message?.reply_markup?.inline_keyboard.flat() ?? [];
  return buttons.find(button => 'callback_data' in button && button.callback_data === data)?.text;
}
