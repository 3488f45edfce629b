import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { VolatileStore } from '#memory/volatile/store.ts';
import { Health, numbers, serveProbes } from '#telegram/ops/health.ts';
import { makeMetrics } from '#telegram/ops/metrics.ts';
import { serve } from '#telegram/ops/webhook.ts';
import { Limits } from '#telegram/updates/arriving/limits.ts';
import { createBot } from '#telegram/updates/bot.ts';
import { parrot, silent, stage } from '../telegram/fake/bot.ts';
import { message, nowSec, sam, update } from '../telegram/fake/people.ts';
import { FakeTelegram } from '../telegram/fake/server.ts';
import { token } from '../telegram/fake/world.ts';
import { freePort } from './process.ts';

describe('limits', () => {
  const clock = { now: 0 };
  const limits = () => new Limits(() => clock.now, { person: 2, group: 3, alone: 4 });
  beforeEach(() => {
    clock.now = 0;
  });

  test('one line for a person who asks too much, then silence for a minute', () => {
    const l = limits();
    expect([1, 2, 3, 4].map(() => l.note(-1, 7, false))).toEqual([
      'answer',
      'answer',
      'ask for a pause',
      'silence',
    ]);
    clock.now = 59_999;
    expect(l.note(-1, 7, false)).toBe('silence');
    clock.now = 60_000;
    expect(l.note(-1, 7, false)).toBe('answer');
  });

  test('a group has a limit of its own, whoever asks; another group is free', () => {
    const l = limits();
    expect([1, 2, 3, 4, 5].map(person => l.note(-1, person, false))).toEqual([
      'answer',
      'answer',
      'answer',
      'ask for a pause',
      'silence',
    ]);
    expect(l.note(-2, 1, false)).toBe('answer');
  });

  test('somebody who asks now and then is never stopped', () => {
    const l = limits();
    for (let i = 0; i < 100; i++, clock.now += 30_000) expect(l.note(-1, 7, false)).toBe('answer');
  });

  test('a flood of people does not fill the memory', () => {
    const l = new Limits(() => 0);
    for (let i = 0; i < 30_000; i++) l.note(i + 1, i + 1, true);
    expect(l.note(1, 1, true)).toBe('answer');
  });
});

describe('health', () => {
  const clock = { now: 1_000_000 };
  let store: VolatileStore;
  let health: Health;
  let server: { stop(): Promise<void> };
  let root: string;
  const get = async (path: string, method = 'GET') => {
    const response = await fetch(`${root}${path}`, { method });
    return { status: response.status, text: await response.text() };
  };
  beforeEach(async () => {
    clock.now = 1_000_000;
    store = new VolatileStore();
    health = new Health({ now: () => clock.now, heardWithinMs: 90_000 });
    const port = await freePort();
    root = `http://127.0.0.1:${port}`;
    server = await serveProbes(health.probe, port);
  });
  afterEach(() => server.stop());

  test('alive at once; ready when Telegram was heard of and the store takes writes', async () => {
    expect(await get('/healthz')).toMatchObject({ status: 200 });
    expect(await get('/readyz')).toMatchObject({
      status: 503,
      text: expect.stringContaining('not open yet'),
    });
    health.opened(store);
    clock.now += 5000;
    expect(await get('/readyz')).toMatchObject({ status: 503, text: expect.stringContaining('not heard') });
    health.heard();
    expect(await get('/readyz')).toMatchObject({ status: 200 });
  });

  test('not ready: Telegram not heard of for long, a store that refuses writes or hangs, a stop', async () => {
    health.opened(store);
    health.heard();
    clock.now += 90_001;
    expect((await get('/readyz')).status).toBe(503);
    health.heard();
    expect((await get('/readyz')).status).toBe(200);
    const { claim } = store;
    store.claim = () => Promise.reject(new Error('read only'));
    clock.now += 5000;
    expect(await get('/readyz')).toMatchObject({
      status: 503,
      text: expect.stringContaining('not writable'),
    });
    store.claim = claim;
    clock.now += 5000;
    expect((await get('/readyz')).status).toBe(200);
    health.stopping();
    expect((await get('/readyz')).status).toBe(503);
    expect((await get('/healthz')).status).toBe(200);
  });

  test('the store is looked at every two seconds at most, however often somebody asks', async () => {
    let looks = 0;
    const claim = store.claim.bind(store);
    store.claim = (...args) => {
      looks++;
      return claim(...args);
    };
    health.opened(store);
    for (let i = 0; i < 20; i++) await get('/readyz');
    expect(looks).toBe(1);
  });

  test.each([
    ['/', 'GET'],
    ['/healthz', 'POST'],
    ['/metrics', 'GET'],
  ])('%s by %s is nothing', async (path, method) => {
    expect((await get(path, method)).status).toBe(404);
  });
});

test('numbers have a server of their own, which tells nothing else', async () => {
  const served = await serveProbes(numbers(makeMetrics()), 0);
  const get = (path: string, method = 'GET') => fetch(`http://127.0.0.1:${served.port}${path}`, { method });
  const page = await get('/metrics');
  expect([page.status, page.headers.get('content-type')]).toEqual([
    200,
    expect.stringContaining('text/plain'),
  ]);
  expect(await page.text()).toContain('billywatt_updates_in_work');
  for (const [path, method] of [
    ['/healthz', 'GET'],
    ['/metrics', 'POST'],
    ['/', 'GET'],
  ])
    expect((await get(present(path), method)).status).toBe(404);
  await served.stop();
});

test('metrics count updates, calls and floods, and name nobody', async () => {
  const metrics = makeMetrics();
  const s = stage({ meter: metrics });
  for (let i = 0; i < 13; i++)
    await s.give({
      message: message(`/power secretword ${i}`, { from: { ...sam, first_name: 'Wobble' } }) as never,
    });
  const page = await metrics.page();
  expect(page).toMatch(/billywatt_updates_total\{kind="question",end="done"\} 13/);
  expect(page).toMatch(/billywatt_floods_total\{verdict="silence"\} 2/);
  expect(page).toMatch(/billywatt_update_seconds_count 13/);
  expect(page).not.toMatch(/secretword|Wobble|1001234567890/);
});

test('the webhook’s port tells operators without the secret, and calls count as heard', async () => {
  const telegram = await new FakeTelegram().start();
  const store = new VolatileStore();
  const health = new Health({ now: Date.now });
  health.opened(store);
  const bot = createBot(
    { token, apiRoot: telegram.root, isPaced: false },
    { converse: parrot, store, log: silent, now: () => nowSec * 1000 },
  );
  const running = await serve(bot, silent, {
    url: 'http://127.0.0.1/hook',
    secret: 'a-secret-of-at-least-32-characters',
    port: 0,
    probe: health.probe,
    onHeard: () => health.heard(),
  });
  const root = `http://127.0.0.1:${running.port}`;
  await telegram.until(() => telegram.webhookUrl !== undefined, 'setWebhook');
  expect((await fetch(`${root}/healthz`)).status).toBe(200);
  await expect.poll(async () => (await fetch(`${root}/readyz`)).status).toBe(200);
  expect((await fetch(`${root}/hook`, { method: 'POST', body: '{}' })).status).toBe(401);
  await running.stop();
  await telegram.stop();
});

test('with two hundred updates in work Telegram is told to come again, and nothing is lost', async () => {
  const telegram = await new FakeTelegram().start();
  const store = new VolatileStore();
  const gate = Promise.withResolvers<void>();
  const load = store.load.bind(store);
  store.load = async chat => {
    await gate.promise;
    return load(chat);
  };
  const bot = createBot(
    { token, apiRoot: telegram.root, isPaced: false },
    { converse: parrot, store, log: silent, now: () => nowSec * 1000 },
  );
  const running = await serve(bot, silent, {
    url: 'http://127.0.0.1/hook',
    secret: 'a-secret-of-at-least-32-characters',
    port: 0,
  });
  await telegram.until(() => telegram.webhookUrl !== undefined, 'setWebhook');
  const headers = { 'x-telegram-bot-api-secret-token': 'a-secret-of-at-least-32-characters' };
  const post = async (i: number) => {
    const chat = { id: 10_000 + i, type: 'private', first_name: 'x' };
    const body = JSON.stringify(update({ message: message('fridge', { chat } as never) as never }));
    return (await fetch(`http://127.0.0.1:${running.port}/hook`, { method: 'POST', body, headers })).status;
  };
  const statuses: number[] = [];
  const all = Array.from({ length: 230 }, async (_, i) => statuses.push(await post(i)));
  await expect.poll(() => statuses.length, { timeout: 10_000 }).toBe(30);
  expect(new Set(statuses)).toEqual(new Set([503]));
  gate.resolve();
  await Promise.all(all);
  expect(statuses.filter(status => status === 200)).toHaveLength(200);
  await running.stop();
  await telegram.stop();
});
