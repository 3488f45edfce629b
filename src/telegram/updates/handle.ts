import type { Api, Context } from 'grammy';
import type { CallbackQuery, ChatMemberUpdated, User } from 'grammy/types';
import type { Backlog } from '#telegram/delivery/again/backlog.ts';
import { placeOf, type SentMessage } from '#telegram/delivery/again/place.ts';
import type { BotContext } from '#telegram/delivery/reply.ts';
import { whenSlow } from '#telegram/delivery/typing.ts';
import { exportMessage } from '#telegram/ui/commands.ts';
import { dropAt, helloText, isArrival, passage } from '#telegram/ui/hello.ts';
import { say } from '#telegram/ui/say.ts';
import { answerGuest, answerInline } from './arriving/elsewhere.ts';
import { pauseLine, type RateDecision } from './arriving/limits.ts';
import type { Moved } from './arriving/migrate.ts';
import { isLate, type Job, type Question } from './arriving/sort.ts';
import { Twins } from './arriving/twins.ts';
import { answerWordless } from './arriving/wordless.ts';
import { withoutUser } from './people/names.ts';
import { sendExport } from './people/own-file.ts';
import { press } from './pressing/press.ts';
import { answerSettings, isSettingsWish } from './pressing/settings.ts';
import { respond } from './respond.ts';

/** What became of an update: the message that answered it, where there is one; 'kept': it goes out later. */
type Done = SentMessage | 'kept' | undefined;

/** Does what one update asks for. */
export type Handle = (ctx: Context, job: Job, verdict: RateDecision) => Promise<Done>;

/** Makes the handler of a bot's jobs; what it remembers between them lives in memory and may be lost. */
export function makeHandle(
  room: BotContext,
  api: Api,
  onMoved: (moved: Moved) => Promise<void>,
  backlog: Backlog,
): Handle {
  const { deps, sender } = room;
  const twins = new Twins();
  const greeted = new Set<number>();

  /** A press beyond the limit gets its word once, and then only ends its spinner. */
  const pressed = async (
    ctx: Context,
    query: CallbackQuery,
    verdict: RateDecision,
  ): Promise<SentMessage | undefined> => {
    if (verdict === 'answer') return press(room, api, ctx.me, ctx.update.update_id, query);
    await api.answerCallbackQuery(query.id, { text: pauseLine }).catch(() => undefined);
    return undefined;
  };

  const answer = async (update: number, job: Question, verdict: RateDecision): Promise<Done> => {
    const { message, meant, isEdit } = job;
    if (!isEdit && twins.isSecond('message', message)) return undefined;
    const isPrivate = message.chat.type === 'private';
    // In a ban the pause is kept without the word.
    if (verdict === 'ask for a pause' && room.hold.banMs(message.chat.id) > 0) return undefined;
    if (verdict === 'ask for a pause')
      return sender.send(placeOf(message), { said: say(pauseLine), isUrgent: true });
    if (meant.text === exportMessage) return sendExport(room, message);
    if (isSettingsWish(meant.text)) return answerSettings(room, update, message, meant.text);
    // Telegram sends it for whoever adds the bot by a link, right beside the hello.
    if (!isPrivate && greeted.has(message.chat.id) && /^\/start\b/.test(message.text ?? '')) return undefined;
    if (isLate(job, deps.now())) return later(update, job);
    return whenSlow(api, placeOf(message), async () => (await respond(room, update, job))?.sent);
  };

  /** What was asked hours ago is answered together with what was asked beside it. */
  const later = async (update: number, job: Question): Promise<Done> => {
    const { message, meant } = job;
    const done = await respond(room, update, job, true);
    if (done === undefined || done.reply.said.text === '') return undefined;
    const { said } = done.reply;
    backlog.add(message.chat.id, { update, said, question: meant.text, askedSec: message.date });
    return 'kept';
  };

  /** Who leaves a group takes along what they told there. */
  const left = async (chat: number, user: User): Promise<void> => {
    const { memory, revision } = await deps.store.load(String(chat));
    const without = withoutUser(memory, user, room.bot);
    if (without !== memory) await deps.store.save(String(chat), without, revision);
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
    await sender.send({ chat }, { said: say(helloText(ctx.me)) }).catch(error => {
      greeted.delete(chat);
      throw error;
    });
  };

  return async (ctx, job, verdict) => {
    switch (job.kind) {
      case 'question':
        return answer(ctx.update.update_id, job, verdict);
      case 'press':
        return pressed(ctx, job.query, verdict);
      case 'wordless':
        return answerWordless(room, ctx.update.update_id, job.message);
      case 'left':
        await left(job.chat, job.user);
        return undefined;
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
      default:
        return job satisfies never;
    }
  };
}
