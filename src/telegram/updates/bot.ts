import { sequentialize } from '@grammyjs/runner';
import { Bot, type BotConfig, type Context } from 'grammy';
import { type AnswerLink as Answered, ClaimLost, StoreFailed } from '#conversation/memory-store.ts';
import {
  Cut,
  faultId,
  faultLine,
  isUnsent,
  isWorthTelling,
  originOf,
} from '#telegram/delivery/again/fault.ts';
import { Highest } from '#telegram/delivery/again/highest.ts';
import { Parked } from '#telegram/delivery/again/parked.ts';
import { placeOf, type SentMessage } from '#telegram/delivery/again/place.ts';
import { Poison } from '#telegram/delivery/again/poison.ts';
import { callOver } from '#telegram/delivery/call.ts';
import { keepUnsent, postAgain, postFirst } from '#telegram/delivery/deliver.ts';
import { Held, Hold } from '#telegram/delivery/hold.ts';
import { lineTo } from '#telegram/delivery/line.ts';
import { pace, retryFloods } from '#telegram/delivery/pace.ts';
import type { BotContext, OutgoingReply } from '#telegram/delivery/reply.ts';
import { Sender } from '#telegram/delivery/send.ts';
import { Turns } from '#telegram/delivery/turns.ts';
import type { BotSettings, Deps } from '#telegram/ops/deps.ts';
import { dropAt } from '#telegram/ui/hello.ts';
import { Pictures } from '#telegram/ui/pictures.ts';
import { Clock } from './arriving/clock.ts';
import { Judge } from './arriving/judge.ts';
import { askedMs, goodForMs, LateAnswers, tellLoss } from './arriving/late-answers.ts';
import type { RateDecision } from './arriving/limits.ts';
import type { Moved } from './arriving/migrate.ts';
import { orderKeys } from './arriving/order.ts';
import { PendingAcks } from './arriving/pending-acks.ts';
import { sharedVerdict } from './arriving/shared-limits.ts';
import { type Job, sort } from './arriving/sort.ts';
import { makeHandle } from './handle.ts';
import { KeptAnswers } from './kept.ts';
import { Admins } from './people/admins.ts';

/** An update that another process has in work: it must not be acknowledged, so that it comes again if that one dies. */
export class Busy extends Error {
  override readonly name = 'Busy';
}

/** The store or the line to Telegram failed around an update, which is not lost: it must come again. */
export class Unkept extends Error {
  override readonly name = 'Unkept';
}

/** Which message answered a question; of a press there is nothing to note, its answer keeps its place. */
const answeredBy = (job: Job, sent: SentMessage | undefined): Answered | undefined =>
  !sent || sent.id <= 0 || job.kind !== 'question'
    ? undefined
    : { chat: String(sent.chat), question: String(job.message.message_id), answer: String(sent.id) };

/** The chat whose memory a job may change; undefined where it changes none. */
function lockOf(job: Job): string | undefined {
  switch (job.kind) {
    case 'question':
      return String(job.message.chat.id);
    case 'press':
      return String(job.query.message?.chat.id ?? job.query.from.id);
    case 'membership':
      return String(job.member.chat.id);
    case 'wordless':
      return String(job.message.chat.id);
    case 'left':
      return String(job.chat);
    case 'moved':
    case 'inline':
    case 'guest':
      return undefined;
    default:
      return job satisfies never;
  }
}

/** The bot's own id, which its token begins with and which stays when the token is renewed. */
const idOf = (token: string): number => Number(token.split(':')[0]);

/** For tests: who the bot is, without asking Telegram, the calls as they would go out, the waits between tries (ms). */
export type BotOptions = Pick<BotConfig<Context>, 'botInfo' | 'client'> & {
  readonly backOffMs?: readonly number[];
};

/** A bot, how it takes up what it still owed when its process ended, and when no picture is on its way any more. */
export type CampBot = Bot & { resume(): Promise<void>; settled(): Promise<void> };

/**
 * Makes a bot that is ready to be given updates, by polling or by webhook; it is not started.
 * An update is sorted first (silence costs nothing), then waits its turn in its chat, then is claimed, so that one
 * delivered twice is answered once, and then handled inside one boundary for faults.
 */
export function createBot(settings: BotSettings, deps: Deps, options: BotOptions = {}): CampBot {
  const { log, store, meter } = deps;
  const { token, apiRoot } = settings;
  const { backOffMs, botInfo, client } = options;
  const bot = new Bot(token, {
    botInfo,
    client: { apiRoot, fetch: callOver(lineTo(apiRoot), apiRoot), timeoutSeconds: 60, ...client },
  });
  if (meter !== undefined) bot.api.config.use(meter.watch);
  bot.api.config.use(...(settings.isPaced === false ? [retryFloods()] : pace()));
  const highest = new Highest();
  bot.api.config.use(highest.watch);

  const allowed = settings.allowedChats && new Set(settings.allowedChats);
  const kept = new KeptAnswers();
  const onMoved = async ({ from, to }: Moved): Promise<void> => {
    await store.move(String(from), String(to));
    kept.drop(from);
    log.info({ from, to }, 'a group became a supergroup');
    if (!allowed?.has(from)) return;
    allowed.add(to);
    log.warn({ from, to }, 'write the new chat id into ALLOWED_CHATS before the next start');
  };
  const onGone = async (chat: number): Promise<void> => {
    log.info({ chat }, 'a chat is closed to the bot');
    await store.leave(String(chat), dropAt(deps.now()));
  };
  const hold = new Hold(deps.now, settings.isPaced === false ? undefined : new Turns(deps.now));
  const admins = new Admins(bot.api, deps.now);
  const mayWhisper = (chat: number): Promise<boolean> => admins.has(chat, idOf(token));
  const sender = new Sender(bot.api, { onMoved, onGone, mayWhisper }, hold, backOffMs);
  const room: BotContext = {
    settings,
    deps,
    kept,
    sender,
    admins,
    pictures: new Pictures(),
    highest,
    hold,
    drawing: new Set(),
    keyed: new Set(),
    me: () => bot.botInfo,
    bot: idOf(settings.token),
  };
  const parked = new Parked(hold, deps.now, log, (chat, lost) => tellLoss(room, chat, lost));
  const owed = new PendingAcks(store);
  const late = new LateAnswers(room, parked, owed);
  const handle = makeHandle(room, bot.api, onMoved, late.backlog);
  const inOrder = sequentialize<Context>(ctx => orderKeys(ctx.update));

  /** The one boundary: a fault is logged with an id, and the chat is told that id where it makes sense. */
  const failed = async (update: number, job: Job, error: unknown): Promise<void> => {
    const id = faultId();
    log.error({ err: error, fault: id, origin: originOf(error), update }, 'an update failed');
    if (job.kind !== 'question' || !isWorthTelling(error)) return;
    await sender
      .send(placeOf(job.message), { said: { text: faultLine(id), entities: [] } })
      .catch(again => log.error({ err: again, fault: id }, 'the fault could not be told'));
  };

  const poison = new Poison();
  /** Comes back to an update when its chat may be written to again. */
  const park = (ctx: Context, job: Job, verdict: RateDecision, held: Held): Promise<void> =>
    parked.put(held.chat, {
      askedMs: askedMs(job, deps.now()),
      goodForMs: goodForMs(held.chat),
      run: () => inTurn(ctx, job, verdict, !held.mayStand),
      drop: () => owed.finish(ctx.update.update_id, undefined),
    });

  /** What was asked for outlives this process. */
  const keep = (update: number, job: Job, held: Held): Promise<void> =>
    keepUnsent(room, update, held, askedMs(job, deps.now())).catch(error =>
      log.warn({ err: error, update }, 'an answer that waits could not be kept'),
    );

  const work = async (ctx: Context, job: Job, verdict: RateDecision, wasHeld: boolean): Promise<void> => {
    const update = ctx.update.update_id;
    if (await owed.pay(update)) return;
    const claim = await store.claim(update, deps.now());
    if (claim.state === 'busy') throw new Busy('the update is in work elsewhere');
    if (claim.state === 'done') return log.info({ update }, 'a repeated update is passed over');
    let answered: Answered | undefined;
    try {
      const isCounted = claim.state === 'new' && job.kind === 'question' && !job.isEdit;
      const agreed = isCounted ? await sharedVerdict(store, job, verdict, deps.now()) : verdict;
      if (agreed !== verdict) meter?.flooded(agreed);
      if (agreed === 'silence') return await owed.finish(update, undefined);
      // After a crash the memory may be saved already: then only the reply is due.
      const reply = claim.state === 'again' ? claim.reply : undefined;
      const isKept = reply !== undefined;
      // What a ban kept back was never sent.
      const send = wasHeld || (claim.state === 'again' && claim.isUnsent) ? postFirst : postAgain;
      const sent = isKept
        ? await sendKept(send, JSON.parse(reply) as OutgoingReply)
        : await handle(ctx, job, agreed);
      if (sent === 'kept') return await owed.release(update);
      answered = answeredBy(job, sent);
    } catch (error) {
      if (error instanceof ClaimLost) return log.info({ update }, 'another process took an update over');
      if (error instanceof Held) await keep(update, job, error);
      // Given back first: with the store gone this throws, nothing is told, and the update comes again.
      await owed.release(update, error instanceof Held && !error.mayStand);
      if (error instanceof Held) return park(ctx, job, verdict, error);
      // What was kept, or asked, is seen to when the line or the store is there again.
      const isPassing = isUnsent(error) || error instanceof StoreFailed;
      if (isPassing || (error instanceof Cut && !poison.isOne(update, error))) throw error;
      await failed(update, job, error);
    }
    await owed.finish(update, answered);
  };

  /** What stands there now is not what was known of that answer: its buttons find out by the message. */
  const sendKept = async (send: typeof postFirst, reply: OutgoingReply): Promise<SentMessage | undefined> => {
    const sent = await send(room, reply);
    if (reply.at !== undefined) kept.lose(reply.at.chat, reply.at.id);
    return sent;
  };

  const inTurn = (ctx: Context, job: Job, verdict: RateDecision, wasHeld = false): Promise<void> => {
    const chat = lockOf(job);
    return inOrder(ctx, () =>
      chat === undefined
        ? work(ctx, job, verdict, wasHeld)
        : store.withLock(chat, () => work(ctx, job, verdict, wasHeld)),
    ) as Promise<void>;
  };

  /** An update that can't be read will not read better when it comes again: it is passed over. */
  const read = (ctx: Context): { job: Job } | undefined => {
    try {
      highest.hear(ctx.update);
      clock.check(ctx.update);
      const job = sort(ctx.update, ctx.me, deps.now(), allowed);
      orderKeys(ctx.update);
      return job && { job };
    } catch (error) {
      log.warn({ err: error, update: ctx.update.update_id }, 'an update could not be read');
      return undefined;
    }
  };

  const clock = new Clock(deps.now, log);
  const judge = new Judge(deps.now);
  /** Beyond the limit a press only ends its spinner, which nothing waits for. */
  const passOver = (job: Job): void => {
    if (job.kind === 'press') bot.api.answerCallbackQuery(job.query.id).catch(() => undefined);
  };

  bot.use(async ctx => {
    const meant = read(ctx);
    if (meant === undefined) return;
    const { job } = meant;
    const verdict = judge.of(ctx.update, job);
    if (verdict !== 'answer') meter?.flooded(verdict);
    const ended = meter?.began(job.kind);
    if (verdict === 'silence') {
      passOver(job);
      return ended?.('done');
    }
    try {
      await parked.flush(Number(lockOf(job)));
      await inTurn(ctx, job, verdict);
      ended?.('done');
    } catch (error) {
      ended?.(error instanceof Busy ? 'busy' : 'broken');
      // Faults of the answer were caught above: what is left are the store's, and of a line that is down.
      throw error instanceof Busy ? error : new Unkept('an update could not be finished', { cause: error });
    }
  });
  bot.catch(({ error, ctx }) => log.error({ err: error, update: ctx.update.update_id }, 'an update failed'));
  const settled = async (): Promise<void> => {
    while (room.drawing.size > 0) await Promise.all(room.drawing);
  };
  return Object.assign(bot, { resume: () => late.resume(), settled });
}
