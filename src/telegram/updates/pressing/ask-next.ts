import type { User } from 'grammy/types';
import { idOf, type Place, placeOf, type SentMessage } from '#telegram/delivery/again/place.ts';
import { deliver } from '#telegram/delivery/deliver.ts';
import { render } from '#telegram/ui/render.ts';
import type { Kept } from '../kept.ts';
import { keptOf } from '../respond.ts';
import type { Ask } from '../think.ts';
import type { Pressed } from './pressed.ts';

/** Whose question a press puts: an admin who presses for somebody else asks about that one's things. */
function whose({ message, button, query }: Pressed): Pick<Ask, 'whose' | 'person'> {
  const asker: User | undefined = message.reply_to_message?.from;
  // Asked in the group's name, it is put in the group's name, which only an admin could press for.
  if (button.asker === 0) return {};
  return { person: query.from.id, whose: asker?.id === button.asker ? asker : query.from };
}

/** Where the answer to a press goes should its message be gone. */
export function placeAfter({ message, query }: Pressed): Place {
  if (message.ephemeral_message_id === undefined) return placeOf(message);
  return { chat: message.chat.id, onlyFor: { person: query.from.id, press: query.id } };
}

/** The message that a press stands under. */
export const messageAt = ({ message, query }: Pressed): SentMessage => ({
  chat: message.chat.id,
  id: idOf(message),
  ...(message.ephemeral_message_id !== undefined && { onlyFor: query.from.id }),
});

/** Asks what stands on a button, and puts the answer in the place of the one before. */
export async function askNext(
  pressed: Pressed,
  kept: Kept | undefined,
  text: string,
): Promise<SentMessage | undefined> {
  const { room, update, message, button } = pressed;
  const at = messageAt(pressed);
  const place = placeAfter(pressed);
  const ask: Ask = {
    chat: at.chat,
    kind: message.chat.type === 'private' ? 'private' : 'group',
    ...whose(pressed),
    text,
    at: new Date(room.deps.now()),
    onto: kept?.onto,
  };
  const done = await deliver(room, update, ask, draft => ({
    place,
    at,
    ...render(draft, button.asker, { byButton: text }),
  }));
  const { sent, draft, reply } = done;
  if (sent !== undefined)
    room.kept.change(at.chat, at.id, keptOf(draft, sent.id, kept?.question ?? '', reply));
  return sent;
}
