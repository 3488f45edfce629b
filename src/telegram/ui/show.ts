import type { InlineKeyboardMarkup, Message } from 'grammy/types';
import type { Answer } from '#answer/answer.ts';
import type { Chart } from '#answer/chart/chart.ts';
import { idOf, placeOf, type SentMessage } from '#telegram/delivery/again/place.ts';
import { postFirst } from '#telegram/delivery/deliver.ts';
import type { BotContext, OutgoingReply } from '#telegram/delivery/reply.ts';
import type { Kept } from '#telegram/updates/kept.ts';
import { workingOf } from '#telegram/updates/think.ts';
import { type Button, hash, keyboard } from './buttons.ts';
import { captionLimit, captionOf } from './caption.ts';
import { chartTable, workingTable } from './rich.ts';
import { say, withWorking, workingAlone } from './say.ts';
import { labels } from './words.ts';

/** The words that stand in a message, be they below a picture. */
export const shownOf = (message: Message): string => message.text ?? message.caption ?? '';

/** Private chats of which it is remembered that a key stands there. */
const mostKeyed = 10_000;

const sentOf = (answer: Message): SentMessage => ({
  chat: answer.chat.id,
  id: idOf(answer),
  ...(answer.receiver_user && { onlyFor: answer.receiver_user.id }),
});

/** The buttons of an answer that are left when some of it has been shown. */
function left(text: string, { asker }: Button, kept: Kept): InlineKeyboardMarkup | undefined {
  const { hasWorking, hasPicture, isTable, lacksPlace } = kept;
  return keyboard(text, asker, kept.next, { hasWorking, hasPicture, isTable, lacksPlace });
}

/** The working of an answer in a message of its own: a table, and plain text where that is refused. */
export const workingAside = ({ working }: Pick<Answer, 'working'>): Pick<OutgoingReply, 'said' | 'rich'> => ({
  said: workingAlone(labels.steps, workingOf({ working })),
  rich: workingTable(labels.steps, working),
});

/** A chart with all its numbers as words, which are a table where pictures are refused; or at once as that table. */
export function chartAside(chart: Chart, isTable: boolean): Pick<OutgoingReply, 'said' | 'rich' | 'chart'> {
  const rich = chartTable(chart);
  if (isTable) return { said: say(captionOf(chart)), rich };
  return { said: say(captionOf(chart), { limit: captionLimit }), rich, chart };
}

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
  if (answer.text === undefined) {
    const buttons = left(shownOf(answer), button, after);
    const more = { of: at, shows: 'working' as const, ...(buttons && { buttons }) };
    await postFirst(room, { place: placeOf(answer), ...workingAside(again), more });
    return at;
  }
  const said = withWorking(answer.text, answer.entities ?? [], workingOf(again));
  const buttons = left(said.text, button, after);
  const sent = await postFirst(room, { at, place: placeOf(answer), said, ...(buttons && { buttons }) });
  if (sent !== undefined)
    room.kept.change(at.chat, at.id, { ...after, answerId: sent.id, shown: hash(said.text) });
  return sent;
}

/** Sends the picture of an answer in reply to it, or its table, with all its numbers as words. */
export async function showPicture(
  room: BotContext,
  answer: Message,
  button: Button,
  kept: Kept,
): Promise<SentMessage | undefined> {
  const at = sentOf(answer);
  const chart = kept.again().chart?.();
  if (chart === undefined) return at;
  const buttons = left(shownOf(answer), button, { ...kept, hasPicture: false });
  const more = { of: at, shows: 'picture' as const, ...(buttons && { buttons }) };
  await postFirst(room, { place: placeOf(answer), ...chartAside(chart, kept.isTable), more });
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
  const sent = await postFirst(room, { place: { chat: answer.chat.id }, said: say(shareHow), keys });
  if (room.keyed.size >= mostKeyed) room.keyed.clear();
  room.keyed.add(answer.chat.id);
  return sent;
}
