import { setTimeout as wait } from 'node:timers/promises';
import { createRunner, createSource, type UpdateSink } from '@grammyjs/runner';
import { type Bot, BotError, GrammyError } from 'grammy';
import type { Update } from 'grammy/types';
import { setMenus } from '#telegram/ui/menu.ts';
import { allowedUpdates } from '#telegram/updates/arriving/sort.ts';
import { Busy, Unkept } from '#telegram/updates/bot.ts';
import type { Log } from './deps.ts';
import { OffsetTracker, someDone } from './offset-tracker.ts';

/** A bot that is running. */
export interface Running {
  /** Takes no more updates, lets the running answers finish, and tells Telegram how far it came. */
  stop(): Promise<void>;
  /** Settles when the bot stops by itself; rejects when it can't go on. */
  readonly ended: Promise<void>;
}

export interface PollOptions {
  /** How long Telegram holds a call without updates, in seconds. */
  readonly timeoutSec?: number;
  /** First wait after a failed call; it doubles up to the last. */
  readonly backOffMs?: { readonly first: number; readonly last: number };
  /** How long an answer may take before the updates behind it pass, should it hold up a hundred of them (ms). */
  readonly overdueMs?: number;
  /** Called after each call that Telegram answered. */
  readonly onHeard?: () => void;
  /** Called when a call for updates begins, and when it has ended. */
  readonly onPolling?: (isRunning: boolean) => void;
}

/** Telegram hands out at most so many of the updates that are not confirmed yet. */
const mostAtOnce = 100;
/** The next call would bring again what is in work: it waits until all is done, or so long for new ones to come. */
const lookAgainMs = { busy: 250, idle: 1000 } as const;
const busyAgainMs = 5000;

const explain = (error: unknown): string => {
  if (!(error instanceof GrammyError)) return 'Telegram cannot be reached; trying again';
  if (error.error_code === 409)
    return 'another program polls with this BOT_TOKEN, or a webhook is set (409); stop the other one. Trying again';
  return `Telegram refuses to hand out updates (${error.error_code}); trying again`;
};

const isWebhookSet = (error: unknown): boolean =>
  error instanceof GrammyError && error.error_code === 409 && error.description.includes('webhook');

/** Runs a bot by long polling: updates of one chat in order, chats side by side. */
export function poll(bot: Bot, log: Log, options: PollOptions = {}): Running {
  const { timeoutSec = 30, backOffMs = { first: 300, last: 15_000 }, onHeard, onPolling } = options;
  const ended = Promise.withResolvers<void>();
  const taken = new OffsetTracker(options.overdueMs);
  const stopping = new AbortController();
  let isReady = false;

  const dropWebhook = async (): Promise<void> => {
    await bot.api
      .deleteWebhook()
      .catch(error => log.warn({ err: error }, 'the webhook could not be dropped'));
  };

  const retrying = async <T>(call: () => Promise<T>, signal: AbortSignal): Promise<T> => {
    for (let ms = backOffMs.first; ; ms = Math.min(ms * 2, backOffMs.last)) {
      try {
        return await call();
      } catch (error) {
        if (signal.aborted) throw error;
        const code = error instanceof GrammyError ? error.error_code : 0;
        if (code === 401 || (code === 404 && !isReady))
          throw new Error('Telegram does not know this BOT_TOKEN');
        if (isWebhookSet(error)) await dropWebhook();
        const pause = error instanceof GrammyError ? (error.parameters.retry_after ?? 0) * 1000 : 0;
        log.warn({ code, ...(code === 0 && { err: error }) }, explain(error));
        await wait(Math.max(ms, pause), undefined, { signal });
      }
    }
  };

  /** Sees an update through, however long the store or the line to Telegram is down: it stays unconfirmed. */
  const handle = async (update: Update): Promise<void> => {
    for (let ms = backOffMs.first; ; ms = Math.min(ms * 2, backOffMs.last)) {
      try {
        return await bot.handleUpdate(update);
      } catch (error) {
        const cause = error instanceof BotError ? error.error : error;
        const isComingAgain = cause instanceof Busy || cause instanceof Unkept;
        if (!(cause instanceof Busy)) log.error({ err: cause, update: update.update_id }, 'an update failed');
        if (!isComingAgain) return;
        await wait(cause instanceof Busy ? busyAgainMs : ms, undefined, { signal: stopping.signal });
      }
    }
  };

  const sink: UpdateSink<Update> = {
    size: () => taken.working.size,
    snapshot: () => [],
    handle: async updates => {
      const fresh = taken.fresh(updates);
      const jobs = fresh.map(update => taken.add(update.update_id, handle(update)));
      const isFull = updates.length >= mostAtOnce;
      if (isFull && jobs.length === 0 && taken.passOverdue())
        log.warn({}, 'an answer takes very long; the updates behind it go on');
      if (jobs.length === 0) await someDone(taken.working, taken.working.size, lookAgainMs.idle);
      // Where more wait, they come while the last of these are being answered.
      else await someDone(jobs, Math.ceil(jobs.length * (isFull ? 0.75 : 1)), lookAgainMs.busy);
      return mostAtOnce;
    },
  };

  const source = createSource<Update>({
    supply: async (_room, signal) => {
      const abort = signal as AbortSignal;
      if (!isReady) {
        bot.botInfo = await retrying(() => bot.api.getMe(), abort);
        onHeard?.();
        await dropWebhook();
        log.info({ readsAll: bot.botInfo.can_read_all_group_messages }, 'polling for updates');
        isReady = true;
        void setMenus(bot.api, log);
      }
      const [offset, limit] = [taken.offset, mostAtOnce];
      const ask = { offset, limit, timeout: timeoutSec, allowed_updates: allowedUpdates };
      const updates = await retrying(async () => {
        onPolling?.(true);
        return bot.api.getUpdates(ask, signal).finally(() => onPolling?.(false));
      }, abort);
      onHeard?.();
      return updates;
    },
  });
  const runner = createRunner(source, sink);
  runner.start();
  runner.task()?.then(
    () => ended.resolve(),
    error => ended.reject(error),
  );

  return {
    ended: ended.promise,
    stop: async () => {
      stopping.abort();
      await runner.stop();
      await taken.allDone();
      // Confirms what was handled, and takes nothing new in: the next start asks for that again.
      const { offset } = taken;
      if (offset > 0) await bot.api.getUpdates({ offset, limit: 1, timeout: 0 }).catch(() => {});
    },
  };
}
