import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { findServer, type Server } from '../memory/postgres-server.ts';
import { message } from '../telegram/fake/people.ts';
import { FakeTelegram } from '../telegram/fake/server.ts';
import { makeDatabase } from './database.ts';
import { Door } from './door.ts';
import { freePort, type Run, start } from './process.ts';

let server: Server | string;
let telegram: FakeTelegram;
let run: Run | undefined;
let door: Door;
let folder: string;

beforeAll(async () => {
  server = await findServer();
});
afterAll(async () => {
  if (typeof server !== 'string') await server.stop();
});
beforeEach(async () => {
  telegram = await new FakeTelegram().start();
  folder = mkdtempSync(join(tmpdir(), 'down-'));
});
afterEach(async () => {
  run?.child.kill('SIGKILL');
  await run?.ended;
  run = undefined;
  await door?.shut();
  await telegram.stop();
  rmSync(folder, { recursive: true, force: true });
});

const ask = (text = '/power fridge 1.2A, 100Ah?') =>
  telegram.happen({ message: message(text, { date: Math.floor(Date.now() / 1000) }) as never });
const sent = () => telegram.world.sent();
/** The server's own database, behind a door that is still shut. */
async function doorToDatabase(): Promise<Door> {
  if (typeof server === 'string') throw new Error(`no PostgreSQL: ${server}`);
  door = new Door(await freePort(), await makeDatabase(server.url));
  return door;
}
async function stops(): Promise<void> {
  run?.child.kill('SIGTERM');
  expect(await run?.ended).toBe(0);
}

test('started with the database down: alive, not ready, and there when it comes', async () => {
  const { url } = await doorToDatabase();
  const [port, numbers] = [await freePort(), await freePort()];
  const ports = { PORT: String(port), METRICS_PORT: String(numbers) };
  run = start(folder, { TELEGRAM_API_ROOT: telegram.root, DATABASE_URL: url, ...ports });
  const status = (path: string) =>
    fetch(`http://127.0.0.1:${port}${path}`).then(
      response => response.status,
      () => 0,
    );
  await expect.poll(() => status('/healthz'), { timeout: 8000 }).toBe(200);
  expect(await status('/readyz')).toBe(503);
  ask();
  await expect.poll(() => run?.log(), { timeout: 8000 }).toContain('the memory cannot be reached');
  await door.open();
  await telegram.until(() => sent().length === 1, 'an answer', 15_000);
  await expect.poll(() => status('/readyz'), { timeout: 8000 }).toBe(200);
  const page = await (await fetch(`http://127.0.0.1:${numbers}/metrics`)).text();
  expect(page).toContain('billywatt_updates_total{kind="question",end="done"} 1');
  expect(page).toContain('billywatt_calls_total{method="sendMessage",status="200"} 1');
  await stops();
});

test('told to stop while the database is down: it stops', async () => {
  const { url } = await doorToDatabase();
  run = start(folder, { TELEGRAM_API_ROOT: telegram.root, DATABASE_URL: url });
  await expect.poll(() => run?.log(), { timeout: 8000 }).toContain('the memory cannot be reached');
  await stops();
});

test('the database goes away and comes back: what was asked meanwhile is answered, once', async () => {
  const { url } = await (await doorToDatabase()).open();
  run = start(folder, { TELEGRAM_API_ROOT: telegram.root, DATABASE_URL: url });
  ask();
  await telegram.until(() => sent().length === 1, 'an answer', 15_000);
  await telegram.until(() => telegram.unconfirmed.length === 0, 'it confirmed', 15_000);
  await door.shut();
  ask('/power fridge 2A, 100Ah?');
  ask('/power what if lithium?');
  await expect.poll(() => run?.log(), { timeout: 8000 }).toContain('an update failed');
  expect(sent()).toHaveLength(1);
  await door.open();
  await telegram.until(() => sent().length === 3, 'the answers', 15_000);
  await telegram.until(() => telegram.unconfirmed.length === 0, 'all confirmed', 15_000);
  expect(sent()).toHaveLength(3);
  await stops();
});

test('started with Telegram down: there when it comes', async () => {
  const { root } = telegram;
  await telegram.stop();
  run = start(folder, { TELEGRAM_API_ROOT: root, DATABASE_URL: 'sqlite:memory.db' });
  await expect.poll(() => run?.log(), { timeout: 8000 }).toContain('Telegram cannot be reached');
  telegram = await new FakeTelegram().start(Number(new URL(root).port));
  ask();
  await telegram.until(() => sent().length === 1, 'an answer', 15_000);
  await stops();
});

test('a wrong password is no passing trouble: exit 1 and one line, without the password', async () => {
  run = start(folder, {
    TELEGRAM_API_ROOT: telegram.root,
    DATABASE_URL: 'memory:',
    MEMORY_KEY: 'ab'.repeat(32),
    PORT: new URL(telegram.root).port,
  });
  expect(await run.ended).toBe(1);
  expect(run.log()).toMatch(/EADDRINUSE/);
  expect(run.log().trim().split('\n')).toHaveLength(1);
});
