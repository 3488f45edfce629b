import type { Api } from 'grammy';
import type { CallbackQuery, Message } from 'grammy/types';
import { present } from '#basics/present.ts';
import { idOf, type SentMessage } from '#telegram/delivery/again/place.ts';
import type { BotContext } from '#telegram/delivery/reply.ts';
import { hash, pressedText, readButton } from '#telegram/ui/buttons.ts';
import { askPlace, shownOf, showPicture, showWorking } from '#telegram/ui/show.ts';
import type { Me } from '../arriving/addressed.ts';
import { recovered } from '../arriving/recovered.ts';
import type { Kept } from '../kept.ts';
import { ownCopy } from '../people/own-copy.ts';
import { askNext } from './ask-next.ts';
import type { Pressed } from './pressed.ts';
import { pressedPage, pressedSetting, pressedSubject } from './pressed-page.ts';
import { maySet } from './settings.ts';
import { toasts } from './toasts.ts';

/** Answers a press: at once with a word or none, then by an edit in the answer's place, or to the presser alone. */
export async function press(
  room: BotContext,
  api: Api,
  me: Me,
  update: number,
  query: CallbackQuery,
): Promise<SentMessage | undefined> {
  const reply: Pressed['reply'] = async (toast, more = {}) => {
    const told = { ...(toast && { text: toasts[toast] }), ...more };
    await api.answerCallbackQuery(query.id, told).catch(error => {
      // Too late is no fault: after a restart the press may be minutes old.
      room.deps.log.debug({ err: error }, 'a press could not be answered');
    });
  };
  const button = query.data === undefined ? undefined : readButton(query.data);
  if (button === undefined) return void (await reply('old'));
  const given = query.message;
  if (given === undefined || given.date === 0) return void (await reply('gone'));
  const message = given as Message;
  if (room.hold.banMs(message.chat.id) > 0) return void (await reply('held'));
  const pressed: Pressed = { room, api, update, query, message, button, reply };
  if (button.action === 'page') return pressedPage(pressed);
  if (button.action === 'subject') return pressedSubject(pressed);
  if (button.action === 'set') return pressedSetting(pressed);
  return pressedAnswer(pressed, me);
}

/** What a press under an answer does. */
async function pressedAnswer(pressed: Pressed, me: Me): Promise<SentMessage | undefined> {
  const { room, query, message, button, reply } = pressed;
  const isOwn = await mayPress(pressed);
  const isShown = button.action === 'working' || button.action === 'picture';
  if (!isOwn && !isShown) return void (await reply('notYours'));

  const kept = room.kept.ofAnswer(message.chat.id, idOf(message)) ?? (await recovered(room, me, message));
  // A second tap, or one on a keyboard that has been replaced: the first one is being answered.
  if (button.answer !== (kept?.shown ?? hash(shownOf(message)))) return void (await reply());
  if (isShown) {
    const isThere = button.action === 'working' ? kept?.hasWorking : kept?.hasPicture;
    if (kept === undefined || !isThere) return void (await reply('moved'));
    return isOwn ? shown(pressed, kept) : ownCopy(pressed, kept);
  }
  if (button.action === 'place') {
    await reply();
    return askPlace(room, message);
  }
  const text = pressedText(message, present(query.data));
  // Before others, help is for who wants it.
  if (text === 'help' && message.chat.type !== 'private') return pressedPage(pressed, 'help');
  await reply(text === undefined ? 'old' : undefined);
  return text === undefined ? undefined : askNext(pressed, kept, text);
}

async function shown(
  { room, message, button, reply }: Pressed,
  kept: Kept,
): Promise<SentMessage | undefined> {
  await reply();
  const show = button.action === 'working' ? showWorking : showPicture;
  return show(room, message, button, kept);
}

/** Whether somebody may turn an answer: who asked; of what was asked in the group's name, an admin. */
async function mayPress({ room, message, button, query }: Pressed): Promise<boolean> {
  const person = query.from.id;
  return message.receiver_user?.id === person || button.asker === person || maySet(room, message, person);
}
