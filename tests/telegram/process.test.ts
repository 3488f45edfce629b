import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { message } from './fake/people.ts';
import { FakeTelegram } from './fake/server.ts';
import { token } from './fake/world.ts';

const root = new URL('../..', import.meta.url).pathname;
const question = '/power fridge 1.2A, 100Ah, 3 days?';
let telegram: FakeTelegram;
let child: ChildProcess | undefined;
let folder: string;

beforeEach(async () => {
  telegram = await new FakeTelegram().start();
  folder = mkdtempSync(join(tmpdir(), 'bot-'));
});
afterEach(async () => {
  child?.kill('SIGKILL');
  await telegram.stop();
});

/** Starts the program as `npm start` does, in a folder of its own. */
function start(env: Record<string, string>) {
  const process_ = spawn(process.execPath, [join(root, 'src/boot.mjs'), 'main'], {
    cwd: folder,
    env: { PATH: process.env.PATH, MEMORY_KEY: 'ab'.repeat(32), LOG_LEVEL: 'info', ...env },
    stdio: ['pipe', 'pipe', 'pipe'],
  });
  child = process_;
  const out = { stdout: '', stderr: '' };
  process_.stdout.on('data', chunk => {
    out.stdout += chunk;
  });
  process_.stderr.on('data', chunk => {
    out.stderr += chunk;
  });
  const ended = once(process_, 'close').then(([code]) => code as number);
  return { process: process_, out, ended };
}
const bot = (more: Record<string, string> = {}) =>
  start({ BOT_TOKEN: token, TELEGRAM_API_ROOT: telegram.root, ...more });
const ask = (text = question) => {
  const date = Math.floor(Date.now() / 1000);
  return telegram.happen({ message: message(text, { date }) as never });
};
const sent = (): string[] => telegram.world.sent().map(payload => payload.text);

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as { port: number };
  server.close();
  return port;
}

describe('by polling', () => {
  test('answers, stops on SIGTERM with exit 0, and a new start does not answer again', async () => {
    const first = bot();
    ask();
    await telegram.until(() => sent().length === 1, 'an answer');
    first.process.kill('SIGTERM');
    expect(await first.ended).toBe(0);
    expect(telegram.unconfirmed).toEqual([]);
    expect(first.out.stderr).not.toContain(token.slice(10));
    expect(first.out.stderr).not.toMatch(/fridge|Sam/);
  });

  test('killed in the middle of an answer, the next start gives it', async () => {
    telegram.world.faults.push({ method: 'sendMessage', fault: 'cut-before' });
    telegram.hold('sendMessage');
    const first = bot();
    const update = ask();
    await telegram.until(() => telegram.held > 0, 'an answer on its way');
    first.process.kill('SIGKILL');
    await first.ended;
    telegram.release();
    expect(telegram.unconfirmed).toEqual([update]);
    const second = bot();
    await telegram.until(() => sent().length === 1, 'the answer');
    second.process.kill('SIGTERM');
    expect(await second.ended).toBe(0);
    expect(sent()).toHaveLength(1);
  });
});

test('by webhook: sets it, answers, and stops on SIGINT with exit 0', async () => {
  const port = await freePort();
  const run = bot({
    WEBHOOK_URL: `http://127.0.0.1:${port}/hook`,
    WEBHOOK_SECRET: 'a-secret-of-at-least-32-characters',
    PORT: String(port),
  });
  await telegram.until(() => telegram.webhookUrl !== undefined, 'setWebhook');
  ask();
  await telegram.until(() => telegram.deliveries.length === 1, 'a delivery');
  expect(telegram.deliveries[0]?.status).toBe(200);
  expect(sent()).toHaveLength(1);
  const wrong = await fetch(`http://127.0.0.1:${port}/hook`, { method: 'POST', body: '{}' });
  expect(wrong.status).toBe(401);
  run.process.kill('SIGINT');
  expect(await run.ended).toBe(0);
});

test('without a token: a chat on the terminal, also when the input is a pipe', async () => {
  const run = start({ DATABASE_URL: 'memory:' });
  run.process.stdin?.end('fridge 1.2A, 100Ah, 3 days?\n');
  expect(await run.ended).toBe(0);
  expect(run.out.stdout).toMatch(/\d/);
  expect(run.out.stderr).toBe('');
});

test('a bad setting: exit 2 and one line', async () => {
  const run = start({ BOT_TOKEN: 'nonsense' });
  expect(await run.ended).toBe(2);
  expect(run.out.stderr).toMatch(/^BOT_TOKEN must be .*\n$/);
});
