import type { SentMessage } from '#telegram/delivery/again/place.ts';
import { postFirst } from '#telegram/delivery/deliver.ts';
import type { OutgoingReply } from '#telegram/delivery/reply.ts';
import { hash } from '#telegram/ui/buttons.ts';
import { allSubjects, helpPage, type Page, pages, subjectPage } from '#telegram/ui/help.ts';
import { render } from '#telegram/ui/render.ts';
import { changes } from '#telegram/ui/settings-page.ts';
import { shownOf } from '#telegram/ui/show.ts';
import { showAlone } from '../people/own-copy.ts';
import { think } from '../think.ts';
import { messageAt, placeAfter } from './ask-next.ts';
import type { Pressed } from './pressed.ts';
import { changeSettings, maySet, pageOf } from './settings.ts';

const kindOf = ({ message }: Pressed) => (message.chat.type === 'private' ? 'private' : 'group');

/** A page shown to whoever taps its door, alone; where that can't be, the tap opens the chat with the bot, on it. */
export async function pressedPage(
  pressed: Pressed,
  page: Page | undefined = pages[pressed.button.index],
): Promise<SentMessage | undefined> {
  const { room, query, message, reply } = pressed;
  if (page === undefined) return void (await reply('old'));
  const ask = { chat: message.chat.id, person: query.from.id, text: page, at: new Date(room.deps.now()) };
  const laid = render(await think(room, { ...ask, kind: kindOf(pressed) }), query.from.id);
  const { said, buttons } = laid;
  if (message.chat.type === 'private') {
    await reply();
    return turnTo(pressed, { said, buttons });
  }
  const link = `https://t.me/${room.me().username}?start=${page}`;
  return showAlone(pressed, { said, buttons }, [undefined, { url: link }]);
}

/** Puts a page in the place of the one that a button stands under. */
const turnTo = (pressed: Pressed, page: Pick<OutgoingReply, 'said' | 'buttons'>) =>
  postFirst(pressed.room, { at: messageAt(pressed), place: placeAfter(pressed), ...page });

/** Turns the help to a subject and back. Before others only its asker turns it. */
export async function pressedSubject(pressed: Pressed): Promise<SentMessage | undefined> {
  const { room, query, message, button, reply } = pressed;
  const isOwn =
    message.receiver_user?.id === query.from.id ||
    button.asker === query.from.id ||
    (await maySet(room, message, query.from.id));
  if (!isOwn) return void (await reply('notYours'));
  const page =
    button.index === allSubjects
      ? helpPage(kindOf(pressed), button.asker)
      : subjectPage(button.index, button.asker);
  await reply(page === undefined ? 'old' : undefined);
  if (page === undefined || button.answer !== hash(shownOf(message))) return undefined;
  return turnTo(pressed, page);
}

/** Changes a setting, once a tap, and shows them as they are now. */
export async function pressedSetting(pressed: Pressed): Promise<SentMessage | undefined> {
  const { room, update, query, message, button, reply } = pressed;
  if (!(await maySet(room, message, query.from.id))) return void (await reply('onlyAdmin'));
  const change = changes[button.index];
  await reply(change === undefined ? 'old' : undefined);
  if (change === undefined || button.answer !== hash(shownOf(message))) return undefined;
  return changeSettings(room, update, message.chat.id, change, settings => ({
    at: messageAt(pressed),
    place: placeAfter(pressed),
    ...pageOf(room, message, settings, button.asker),
  }));
}
