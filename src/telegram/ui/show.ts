import type { InlineKeyboardMarkup, Message } from 'grammy/types';
import { type BotContext, drawn } from '#telegram/delivery/deliver.ts';
import { idOf, placeOf, type SentMessage } from '#telegram/delivery/place.ts';
import type { Kept } from '#telegram/updates/kept.ts';
import { workingOf } from '#telegram/updates/think.ts';
import { type Button, hash, keyboard } from './buttons.ts';
import { captionLimit, captionOf } from './caption.ts';
import { chartTable, workingTable } from './rich.ts';
import { say, withWorking, workingAlone } from './say.ts';
import { labels } from './words.ts';

/** Private chats of which it is remembered that a key stands there. */
const mostKeyed = 10_000;

const sentOf = (answer: Message): SentMessage => ({
  chat: answer.chat.id,
  id: idOf(answer),
  ...(answer.receiver_user && { onlyFor: answer.receiver_user.id }),
});

/** The buttons of an answer that are left when some of it has been shown. */
const left = (text: string, { asker }: Button, kept: Kept): InlineKeyboardMarkup | undefined =>
  keyboard(text, asker, kept.next, {
    hasWorking: kept.hasWorking,
    hasPicture: kept.hasPicture,
    lacksPlace: kept.lacksPlace,
  });

/**
 * Shows the working below its answer. Below a picture there is no room for it: there it is a message of its own.
 * It is shown once, so a second tap on the way does nothing.
 */
export async function showWorking(
  room: BotContext,
  answer: Message,
  button: Button,
  kept: Kept,
): Promise<SentMessage | undefined> {
  const at = sentOf(answer);
  const after: Kept = { ...kept, hasWorking: false };
  const again = kept.again();
  const working = workingOf(again);
  if (answer.text === undefined) {
    await room.sender.send(placeOf(answer), {
      said: workingAlone(labels.steps, working),
      rich: workingTable(labels.steps, again.working),
    });
    room.kept.change(at.chat, at.id, after);
    await room.sender.rebutton(at, left(answer.caption ?? '', button, after));
    return at;
  }
  const said = withWorking(answer.text, answer.entities ?? [], working);
  const buttons = left(said.text, button, after);
  const sent = await room.sender.edit(at, placeOf(answer), { said, buttons });
  if (sent !== undefined)
    room.kept.change(at.chat, at.id, { ...after, answerId: sent.id, shown: hash(said.text) });
  return sent;
}

/** Sends the picture of an answer in reply to it, with all its numbers as words; where pictures are refused a table of them, else words. */
export async function showPicture(
  room: BotContext,
  answer: Message,
  button: Button,
  kept: Kept,
): Promise<SentMessage | undefined> {
  const at = sentOf(answer);
  const after: Kept = { ...kept, hasPicture: false };
  const chart = kept.again().chart?.();
  if (chart === undefined) return at;
  const shown = answer.text ?? answer.caption ?? '';
  const said = say(captionOf(chart), { limit: captionLimit });
  const dressed = { picture: await drawn(room, chart, at.chat), rich: chartTable(chart) };
  await room.sender.send(placeOf(answer), { said, ...dressed });
  room.kept.change(at.chat, at.id, after);
  await room.sender.rebutton(at, left(shown, button, after));
  return at;
}

/** Asks where somebody is, with a key that shares it; only they can see and press it. */
export async function askPlace(room: BotContext, answer: Message): Promise<SentMessage | undefined> {
  const { share, shareHow } = labels;
  const keys = {
    keyboard: [[{ text: share, request_location: true as const }]],
    resize_keyboard: true,
    one_time_keyboard: true,
  };
  const sent = await room.sender.send({ chat: answer.chat.id }, { said: say(shareHow), keys });
  if (room.keyed.size >= mostKeyed) room.keyed.clear();
  room.keyed.add(answer.chat.id);
  return sent;
}
