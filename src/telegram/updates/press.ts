import type { Api } from 'grammy';
import type { CallbackQuery, Message } from 'grammy/types';
import { deliver, type Room } from '#telegram/delivery/deliver.ts';
import { placeOf, type Sent } from '#telegram/delivery/send.ts';
import { type Button, hash, pressedText, readButton } from '#telegram/ui/buttons.ts';
import { lay } from '#telegram/ui/lay.ts';
import { askPlace, showPicture, showWorking } from '#telegram/ui/show.ts';
import { addressed, type Me } from './addressed.ts';
import type { Kept } from './kept.ts';
import { askOf, keptOf } from './respond.ts';
import { think } from './think.ts';

/** The short notes over the chat that only the one who pressed sees (at most 200 characters). */
export const toasts = {
  old: 'That button is from an older version of me. Please ask again.',
  gone: "I can't see that message any more. Please ask again.",
  notYours: 'Only the person who asked, or an admin, can use these buttons. Ask me yourself with /power.',
  moved: 'The talk has moved on. Ask again, and I show it.',
} as const;

/** Answers a press: at once with a word or none, then by an edit in the answer's place. */
export async function press(
  room: Room,
  api: Api,
  me: Me,
  update: number,
  query: CallbackQuery,
): Promise<Sent | undefined> {
  const reply = (toast?: keyof typeof toasts) =>
    api.answerCallbackQuery(query.id, toast ? { text: toasts[toast] } : {}).catch(error => {
      // Too late is no fault: after a restart the press may be minutes old.
      room.deps.log.debug({ err: error }, 'a press could not be answered');
    });
  const button = query.data === undefined ? undefined : readButton(query.data);
  if (button === undefined) return void (await reply('old'));
  const message = query.message;
  if (message === undefined || message.date === 0) return void (await reply('gone'));
  const full = message as Message;
  if (!(await mayPress(room, full, button, query.from.id))) return void (await reply('notYours'));

  const kept = room.kept.ofAnswer(full.chat.id, full.message_id) ?? (await recovered(room, me, full));
  // A second tap, or one on a keyboard that has been replaced: the first one is being answered.
  if (button.answer !== (kept?.shown ?? hash(shownOf(full)))) return void (await reply());
  if (button.action === 'working') {
    await reply(kept?.hasWorking ? undefined : 'moved');
    return kept?.hasWorking ? showWorking(room, full, button, kept) : undefined;
  }
  if (button.action === 'picture') {
    await reply(kept?.hasPicture ? undefined : 'moved');
    return kept?.hasPicture ? showPicture(room, full, button, kept) : undefined;
  }
  if (button.action === 'place') {
    await reply();
    return askPlace(room, full);
  }
  const text = pressedText(full, query.data!);
  await reply(text === undefined ? 'old' : undefined);
  return text === undefined ? undefined : askNext(room, update, full, button, kept, text, query);
}

/** The words that stand in a message, be they below a picture. */
const shownOf = (message: Message): string => message.text ?? message.caption ?? '';

async function mayPress(room: Room, message: Message, button: Button, person: number): Promise<boolean> {
  if (message.chat.type === 'private' || button.asker === person) return true;
  return room.admins.has(message.chat.id, person);
}

/** After a restart: answers the question again, without saving, and trusts it only if it gives the same words. */
async function recovered(room: Room, me: Me, answer: Message): Promise<Kept | undefined> {
  const question = answer.reply_to_message as Message | undefined;
  const meant = question === undefined ? undefined : addressed(question, me);
  if (question === undefined || meant === undefined) return undefined;
  const thought = await think(room, askOf({ message: { ...question, chat: answer.chat } as Message, meant }));
  const laid = lay(thought, 0);
  const isSame = laid.said.text === shownOf(answer);
  return isSame ? keptOf(thought, answer.message_id, hash(meant.text), laid) : undefined;
}

async function askNext(
  room: Room,
  update: number,
  answer: Message,
  button: Button,
  kept: Kept | undefined,
  text: string,
  query: CallbackQuery,
): Promise<Sent | undefined> {
  const asker = answer.reply_to_message?.from;
  const at = { chat: answer.chat.id, id: answer.message_id };
  const ask = {
    chat: at.chat,
    kind: answer.chat.type === 'private' ? ('private' as const) : ('group' as const),
    person: query.from.id,
    // An admin who presses for somebody else asks about that one's rig.
    whose: asker?.id === button.asker ? asker : query.from,
    text,
    at: new Date(room.deps.now()),
    onto: kept?.onto,
  };
  const place = placeOf(answer);
  const done = await deliver(room, update, ask, thought => ({
    place,
    at,
    ...lay(thought, button.asker, text),
  }));
  const { sent, thought, reply } = done;
  if (sent !== undefined)
    room.kept.change(at.chat, at.id, keptOf(thought, sent.id, kept?.question ?? '', reply));
  return sent;
}
