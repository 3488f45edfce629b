import type { Api, Context } from 'grammy';
import type { CallbackQuery, ChatMemberUpdated } from 'grammy/types';
import type { Room } from '#telegram/delivery/deliver.ts';
import { placeOf, type Sent } from '#telegram/delivery/send.ts';
import { whenSlow } from '#telegram/delivery/typing.ts';
import { exportMessage } from '#telegram/ui/commands.ts';
import { sendExport } from '#telegram/ui/export.ts';
import { dropAt, helloText, isArrival, passage } from '#telegram/ui/hello.ts';
import { isPicturesWish, setPictures } from '#telegram/ui/pictures-setting.ts';
import { say } from '#telegram/ui/say.ts';
import { answerGuest, answerInline } from './elsewhere.ts';
import { pauseLine, type Verdict } from './limits.ts';
import type { Moved } from './migrate.ts';
import { press } from './press.ts';
import { respond } from './respond.ts';
import type { Job, Question } from './sort.ts';
import { Twins } from './twins.ts';

/** Does what one update asks for. @returns the message that answered it, where there is one */
export type Handle = (ctx: Context, job: Job, verdict: Verdict) => Promise<Sent | undefined>;

/** Makes the handler of a bot's jobs; what it remembers between them lives in memory and may be lost. */
export function makeHandle(room: Room, api: Api, onMoved: (moved: Moved) => Promise<void>): Handle {
  const { deps, sender } = room;
  const twins = new Twins();
  const greeted = new Set<number>();

  /** A press beyond the limit gets its word once, and then only ends its spinner. */
  const pressed = async (ctx: Context, query: CallbackQuery, verdict: Verdict): Promise<Sent | undefined> => {
    if (verdict === 'answer') return press(room, api, ctx.me, ctx.update.update_id, query);
    await api.answerCallbackQuery(query.id, { text: pauseLine }).catch(() => undefined);
    return undefined;
  };

  const answer = async (update: number, job: Question, verdict: Verdict): Promise<Sent | undefined> => {
    const { message, meant, isEdit } = job;
    if (!isEdit && twins.isSecond('message', message)) return undefined;
    const isPrivate = message.chat.type === 'private';
    if (verdict === 'ask for a pause') return sender.send(placeOf(message), { said: say(pauseLine) });
    if (meant.text === exportMessage) return sendExport(room, api, message);
    if (isPicturesWish(meant.text)) return setPictures(room, message, meant.text);
    // Telegram sends it for whoever adds the bot by a link, right beside the hello.
    if (!isPrivate && greeted.has(message.chat.id) && /^\/start\b/.test(message.text ?? '')) return undefined;
    return whenSlow(api, placeOf(message), () => respond(room, update, job));
  };

  /** Says hello once in a group that is new; one that has a memory, or was greeted, knows the bot. */
  const changed = async (ctx: Context, member: ChatMemberUpdated): Promise<void> => {
    const chat = member.chat.id;
    deps.log.info({ chat, status: member.new_chat_member.status }, 'membership changed');
    const way = passage(member);
    if (way === 'out') await deps.store.leave(String(chat), dropAt(deps.now()));
    if (way === 'in') await deps.store.rejoin(String(chat));
    if (!isArrival(member) || greeted.has(chat)) return;
    greeted.add(chat);
    if ((await deps.store.load(String(chat))).revision !== 0) return;
    await sender.send({ chat }, { said: say(helloText(ctx.me)) });
  };

  return async (ctx, job, verdict) => {
    switch (job.kind) {
      case 'question':
        return answer(ctx.update.update_id, job, verdict);
      case 'press':
        return pressed(ctx, job.query, verdict);
      case 'moved':
        await onMoved(job.moved);
        return undefined;
      case 'membership':
        await changed(ctx, job.member);
        return undefined;
      case 'inline':
        await answerInline(room, api, job.query);
        return undefined;
      case 'guest':
        if (!twins.isSecond('guest', job.message)) await answerGuest(room, api, job.message, job.text);
        return undefined;
    }
  };
}
