import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { request as ask } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { HttpError } from 'grammy';
import type { Update } from 'grammy/types';
import { converse } from '#conversation/converse.ts';
import { openStore } from '#memory/open.ts';
import { makeLog } from '#src/log.ts';
import type { Log } from '#telegram/ops/deps.ts';
import { serve } from '#telegram/ops/webhook.ts';
import { createBot } from '#telegram/updates/bot.ts';
import { me, token } from '../telegram/fake/world.ts';
import { canaries, chance, nonsense } from './nonsense.ts';
import { freePort, key } from './process.ts';

/** One request in so many goes in by the webhook, as bytes: whole, cut off, or no JSON at all. */
const webhookEvery = 100;
const atOnce = 50;

/** Calls of the bot, answered as Telegram would, or with what it says when something is wrong. */
function stub(c: ReturnType<typeof chance>) {
  let id = 0;
  return async (_prev: unknown, method: string, payload: { chat_id?: number; text?: string }) => {
    const dice = c.next();
    if (dice < 0.002)
      throw new HttpError('Network request failed', new Error(`reset: /bot${token}/${method}`));
    if (dice < 0.006)
      return { ok: false, error_code: 403, description: 'Forbidden: bot was blocked by the user' };
    if (dice < 0.01) return { ok: false, error_code: 400, description: 'Bad Request: message text is empty' };
    if (method === 'getChatMember')
      return { ok: true, result: { status: c.of(['member', 'administrator']) } };
    if (method === 'getMe') return { ok: true, result: me };
    const chat = { id: payload.chat_id, type: 'private' };
    return { ok: true, result: { message_id: ++id, date: 0, chat, text: payload.text } };
  };
}

/** What is wrong with the store's file after the flood. */
function faultsOf(path: string): string[] {
  const faults: string[] = [];
  const bytes = readFileSync(path);
  for (const word of canaries)
    if (bytes.includes(word) || bytes.includes(Buffer.from(word, 'utf16le')))
      faults.push(`the file shows ${word}`);
  const db = new DatabaseSync(path);
  const check = Object.values(db.prepare('PRAGMA integrity_check').get() ?? {})[0];
  if (check !== 'ok') faults.push(`the file is damaged: ${check}`);
  const open = db.prepare('SELECT count(*) AS n FROM claims WHERE is_done = 0 AND update_id > 0').get();
  if (open?.n !== 0) faults.push(`${open?.n} updates were left open`);
  db.close();
  return faults;
}

/** Opens and checks each memory: the store reads none that is not whole. */
async function readAll(path: string): Promise<{ memories: number; faults: string[] }> {
  const store = await openStore(`sqlite:${path}`, { key });
  const faults = new Set<string>();
  let memories = 0;
  for (let id = -3000; id <= 3000; id++)
    await store.load(String(id)).then(
      ({ revision }) => (memories += revision === 0 ? 0 : 1),
      error => faults.add(String(error)),
    );
  await store.close();
  return { memories, faults: [...faults] };
}

function post(port: number, body: string | Buffer, secret: string, isCut: boolean): Promise<number> {
  return new Promise(resolve => {
    const headers = {
      'x-telegram-bot-api-secret-token': secret,
      'content-length': Buffer.byteLength(body) + (isCut ? 9 : 0),
    };
    const call = ask({ host: '127.0.0.1', port, method: 'POST', path: '/hook', headers }, response => {
      response.resume();
      response.once('close', () => resolve(response.statusCode ?? 0));
    });
    call.once('error', () => resolve(0));
    if (!isCut) return void call.end(body);
    call.write(body, () => call.destroy());
  });
}

/** Feeds a bot with a real store a flood of sense and nonsense. @returns whether it took it all in its stride */
export async function fuzz(count: number): Promise<boolean> {
  const folder = mkdtempSync(join(tmpdir(), 'faults-'));
  const path = join(folder, 'memory.db');
  const faults: string[] = [];
  const seen = (what: string) => (error: unknown) =>
    void faults.push(`${what}: ${error instanceof Error ? error.stack?.slice(0, 300) : error}`);
  process.on('unhandledRejection', seen('an unhandled rejection'));
  process.on('uncaughtException', seen('an uncaught exception'));
  const levels = new Map<string, number>();
  const keep = (line: string): void => {
    for (const word of [...canaries, token.slice(10)])
      if (line.includes(word)) faults.push(`the log shows ${word}`);
  };
  const lines = makeLog('info', { write: keep });
  /** The sound updates of the batch in work. */
  const sound = new Map<number, Update>();
  const put = (level: 'debug' | 'info' | 'warn' | 'error') => (fields: object, words: string) => {
    levels.set(level, (levels.get(level) ?? 0) + 1);
    lines[level](fields, words);
    // Nothing that Telegram could send may make us fail; what it could not, may be refused, and is.
    const { update, origin, err } = fields as { update?: number; origin?: string; err?: Error };
    if (
      level !== 'info' &&
      update !== undefined &&
      sound.has(update) &&
      origin !== 'refused' &&
      origin !== 'network'
    )
      faults.push(
        `a sound update failed: ${words}: ${err?.stack?.slice(0, 300)}\n    ${JSON.stringify(sound.get(update))}`,
      );
  };
  const log: Log = { debug: put('debug'), info: put('info'), warn: put('warn'), error: put('error') };
  const store = await openStore(`sqlite:${path}`, { key });
  const c = chance(20_261_125);
  let clock = Date.now();
  const bot = createBot(
    { token, isPaced: false },
    { converse, store, log, now: () => clock },
    { botInfo: me },
  );
  bot.api.config.use(stub(chance(7)) as never);
  const [port, secret] = [await freePort(), 'a-secret-of-at-least-32-characters'];
  const server = await serve(bot, log, { url: `http://127.0.0.1:${port}/hook`, secret, port });
  const began = performance.now();
  let refused = 0;
  let slowestMs = 0;
  try {
    for (let i = 0; i < count; ) {
      const jobs: Promise<unknown>[] = [];
      sound.clear();
      for (; jobs.length < atOnce && i < count; i++) {
        // Fifty a second: else the limit of a person would soon keep all from being read.
        clock += 20;
        const { update, isSound } = nonsense(c, i + 1, Math.floor(clock / 1000));
        if (isSound) sound.set(update.update_id, update);
        const from = performance.now();
        const done = () => {
          slowestMs = Math.max(slowestMs, performance.now() - from);
        };
        if (i % webhookEvery !== 0) {
          jobs.push(bot.handleUpdate(update).then(done, () => void refused++));
          continue;
        }
        const body = JSON.stringify(update);
        const kind = c.below(6);
        const bytes =
          kind === 0 ? body.slice(0, c.below(body.length)) : kind === 1 ? Buffer.from(body, 'utf16le') : body;
        jobs.push(
          post(
            server.port,
            kind === 2 ? 'x'.repeat(1_200_000) : bytes,
            kind === 3 ? 'no' : secret,
            kind === 4,
          ),
        );
      }
      await Promise.all(jobs);
    }
    const seconds = (performance.now() - began) / 1000;
    const isUp =
      (await post(server.port, JSON.stringify({ update_id: 4 * count, poll: {} }), secret, false)) === 200;
    if (!isUp) faults.push('the server does not answer any more');
    await server.stop();
    await store.close();
    const { memories, faults: unread } = await readAll(path);
    faults.push(...unread, ...faultsOf(path));
    const levelsText = [...levels].map(([level, n]) => `${level} ${n}`).join(', ');
    console.log(`
Fuzz: ${count} updates of every kind, well formed and not, one in ${webhookEvery} of them by the webhook
  ${seconds.toFixed(0)} s, ${Math.round((seconds * 1e6) / count)} µs each; ${refused} handed back; batches of ${atOnce} took ${slowestMs.toFixed(0)} ms at most
  logged                    ${levelsText}
  the store's file          ${(statSync(path).size / 1e6).toFixed(1)} MB, whole; ${memories} memories, each opened and checked
  faults                    ${faults.length}`);
    for (const fault of new Set(faults)) console.log(`  FAULT ${fault}`);
    return faults.length === 0;
  } finally {
    process.removeAllListeners('unhandledRejection').removeAllListeners('uncaughtException');
    rmSync(folder, { recursive: true, force: true });
  }
}
