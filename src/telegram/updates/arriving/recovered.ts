import type { Message } from 'grammy/types';
import { idOf } from '#telegram/delivery/again/place.ts';
import type { BotContext } from '#telegram/delivery/reply.ts';
import { hash } from '#telegram/ui/buttons.ts';
import { render } from '#telegram/ui/render.ts';
import { shownOf } from '#telegram/ui/show.ts';
import type { Kept } from '../kept.ts';
import { askOf, keptOf } from '../respond.ts';
import { think } from '../think.ts';
import { addressed, type Me } from './addressed.ts';

/** After a restart: answers the question again, without saving, and trusts it only if it gives the same words. */
export async function recovered(room: BotContext, me: Me, answer: Message): Promise<Kept | undefined> {
  const question = answer.reply_to_message as Message | undefined;
  const meant = question === undefined ? undefined : addressed(question, me);
  if (question === undefined || meant === undefined) return undefined;
  const draft = await think(room, askOf({ message: { ...question, chat: answer.chat } as Message, meant }));
  const laid = render(draft, 0);
  const isSame = laid.said.text === shownOf(answer);
  if (!isSame) return undefined;
  const kept = keptOf(draft, idOf(answer), hash(meant.text), laid);
  return { ...kept, hasPicture: kept.hasPicture && answer.photo === undefined };
}
