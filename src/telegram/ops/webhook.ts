import { timingSafeEqual } from 'node:crypto';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { setTimeout as wait } from 'node:timers/promises';
import { type Bot, BotError } from 'grammy';
import type { Update } from 'grammy/types';
import { plain } from '#telegram/delivery/line.ts';
import { setMenus } from '#telegram/ui/menu.ts';
import { allowedUpdates } from '#telegram/updates/arriving/sort.ts';
import { Busy } from '#telegram/updates/bot.ts';
import type { Log } from './deps.ts';
import { type Probe, tell } from './health.ts';
import type { Running } from './poll.ts';

export interface WebhookOptions {
  readonly url: string;
  readonly secret: string;
  readonly port: number;
  /**
   * How long Telegram waits for an answer that is still in work. Then it is told to come again (503): it keeps
   * the update and its chat's later ones meanwhile, so that a crash loses none, and finds it answered.
   */
  readonly answerWithinMs?: number;
  readonly backOffMs?: { readonly first: number; readonly last: number };
  /** Answers an operator's questions, which need no secret. */
  readonly probe?: Probe;
  /** Called when Telegram took the webhook, and at each of its calls. */
  readonly onHeard?: () => void;
}

/** An update is a few kB; the largest messages stay far below this. */
const mostBytes = 1_000_000;
/** With more in work than this, Telegram is told to come again: it keeps what waits, we would only pile it up. */
const mostAtOnce = 200;

const isSecret = (given: string | string[] | undefined, secret: string): boolean => {
  const [a, b] = [Buffer.from(typeof given === 'string' ? given : ''), Buffer.from(secret)];
  return a.length === b.length && timingSafeEqual(a, b);
};

/** Reads a body up to the limit; undefined where it is longer. */
async function read(request: IncomingMessage): Promise<string | undefined> {
  const parts: Buffer[] = [];
  let bytes = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    bytes += part.length;
    if (bytes > mostBytes) return undefined;
    parts.push(part);
  }
  return Buffer.concat(parts).toString('utf8');
}

function parse(body: string): Update | undefined {
  try {
    const update: unknown = JSON.parse(body);
    const isUpdate =
      typeof update === 'object' && update !== null && Number.isSafeInteger((update as Update).update_id);
    return isUpdate ? (update as Update) : undefined;
  } catch {
    return undefined;
  }
}

/** A server for Telegram's calls. Whatever comes in, it answers and lives on. */
export async function serve(
  bot: Bot,
  log: Log,
  options: WebhookOptions,
): Promise<Running & { port: number }> {
  const { answerWithinMs = 8000, backOffMs = { first: 300, last: 15_000 } } = options;
  const working = new Set<Promise<unknown>>();
  let reading = 0;
  const stopping = new AbortController();
  const known = Promise.withResolvers<void>();

  /** 200 when answered; 503 asks Telegram to come again. */
  const take = async (update: Update): Promise<number> => {
    const job = bot.handleUpdate(update).then(
      () => 200,
      error => {
        const cause = error instanceof BotError ? error.error : error;
        if (!(cause instanceof Busy)) log.error({ err: cause, update: update.update_id }, 'an update failed');
        return 503;
      },
    );
    working.add(job);
    job.finally(() => working.delete(job));
    const timer = new AbortController();
    const late = wait(answerWithinMs, 503, { signal: timer.signal }).catch(() => 503);
    const status = await Promise.race([job, late]);
    timer.abort();
    return status;
  };

  /** The secret decides, not the path: a proxy in front may have changed that. */
  const answer = async (request: IncomingMessage): Promise<number> => {
    if (!isSecret(request.headers['x-telegram-bot-api-secret-token'], options.secret)) return 401;
    options.onHeard?.();
    if (request.method !== 'POST') return 405;
    if (working.size + reading >= mostAtOnce) return 503;
    reading++;
    const body = await read(request).finally(() => reading--);
    if (body === undefined) return 413;
    const update = parse(body);
    if (update === undefined) return 400;
    // Before getMe has answered nobody knows who is addressed.
    if (!bot.isInited()) await Promise.race([known.promise, wait(answerWithinMs)]);
    return bot.isInited() && !stopping.signal.aborted ? take(update) : 503;
  };

  const server = plain.createServer((request, response) => {
    // A balancer's open connection would keep the server open for as long as it is used.
    if (stopping.signal.aborted) response.setHeader('connection', 'close');
    const told = options.probe?.(request);
    if (told !== undefined) return tell(response, told);
    answer(request)
      .catch(error => {
        log.warn({ err: error }, 'a request broke off');
        return 400;
      })
      .then(status => {
        if (stopping.signal.aborted && !response.headersSent) response.setHeader('connection', 'close');
        finish(request, response, status);
      });
  });
  server.requestTimeout = 15_000;
  server.headersTimeout = 10_000;
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(options.port, resolve);
  });
  const { port } = server.address() as { port: number };
  log.info({ port }, 'listening for updates');

  const register = async (): Promise<void> => {
    for (let ms = backOffMs.first; ; ms = Math.min(ms * 2, backOffMs.last)) {
      try {
        bot.botInfo = await bot.api.getMe();
        known.resolve();
        await bot.api.setWebhook(options.url, {
          secret_token: options.secret,
          allowed_updates: allowedUpdates,
        });
        log.info({}, 'the webhook is set');
        options.onHeard?.();
        return setMenus(bot.api, log);
      } catch (error) {
        const code = (error as { error_code?: number }).error_code ?? 0;
        if (code === 401 || code === 404) throw new Error('Telegram does not know this BOT_TOKEN');
        log.warn({ code, err: error }, 'the webhook could not be set; trying again');
        await wait(ms, undefined, { signal: stopping.signal });
      }
    }
  };
  const ended = register().catch(error => {
    if (!stopping.signal.aborted) throw error;
  });

  return {
    port,
    // Registering ends; serving does not.
    ended: ended.then(() => new Promise<void>(resolve => server.once('close', () => resolve()))),
    stop: async () => {
      stopping.abort();
      const closed = new Promise<void>(resolve => server.close(() => resolve()));
      await Promise.all(working);
      server.closeIdleConnections();
      await closed;
    },
  };
}

function finish(request: IncomingMessage, response: ServerResponse, status: number): void {
  if (response.headersSent || response.destroyed) return;
  const isBroken = status === 413 || status === 400;
  response.writeHead(status, {
    'content-length': 0,
    ...(status === 503 && { 'retry-after': '2' }),
    ...(isBroken && { connection: 'close' }),
  });
  response.end();
  if (status === 413) request.destroy();
}
