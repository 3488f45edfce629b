import { connect } from 'node:net';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { VolatileStore } from '#memory/volatile/store.ts';
import type { Running } from '#telegram/ops/poll.ts';
import { serve } from '#telegram/ops/webhook.ts';
import { createBot } from '#telegram/updates/bot.ts';
import { parrot, silent } from './fake/bot.ts';
import { message, nowSec, update } from './fake/people.ts';
import { FakeTelegram } from './fake/server.ts';
import { token } from './fake/world.ts';

const secret = 'a-Secret_of_ours';
const header = 'x-telegram-bot-api-secret-token';
let telegram: FakeTelegram;
let store: VolatileStore;
let running: Running & { port: number };
let url: string;

beforeEach(async () => {
  telegram = await new FakeTelegram().start();
  store = new VolatileStore();
  await open();
});
afterEach(async () => {
  await running.stop();
  await telegram.stop();
});

async function open(answerWithinMs = 8000, isWaiting = true): Promise<void> {
  const bot = createBot(
    { token, apiRoot: telegram.root, isPaced: false },
    { converse: parrot, store, log: silent, now: () => nowSec * 1000 },
  );
  // The port is known only once it listens: the fake is told the real address after.
  running = await serve(bot, silent, { url: 'http://127.0.0.1/hook', secret, port: 0, answerWithinMs });
  url = `http://127.0.0.1:${running.port}/hook`;
  if (isWaiting) await telegram.until(() => telegram.webhookUrl !== undefined, 'setWebhook');
}
const post = async (
  body: string | object,
  headers: Record<string, string> = { [header]: secret },
): Promise<number> => {
  const text = typeof body === 'string' ? body : JSON.stringify(body);
  return (await fetch(url, { method: 'POST', body: text, headers })).status;
};
const ask = (text: string) => update({ message: message(text) as never });
const sent = (): string[] => telegram.world.sent().map(payload => payload.text);

test('sets itself up with its secret and its kinds of update', () => {
  expect(telegram.world.sent('setWebhook')[0]).toMatchObject({
    secret_token: secret,
    url: 'http://127.0.0.1/hook',
  });
  expect(telegram.world.sent('setWebhook')[0]?.allowed_updates).toContain('callback_query');
});

test.each([
  ['no secret', {}, 401],
  ['a wrong secret', { [header]: 'a-Secret_of_ourz' }, 401],
  ['a longer secret', { [header]: `${secret}x` }, 401],
  ['the secret', { [header]: secret }, 200],
])('%s: %s → %i', async (_what, headers, status) => {
  expect(await post(ask('/power fridge'), headers as Record<string, string>)).toBe(status);
  expect(sent()).toHaveLength(status === 200 ? 1 : 0);
});

test.each([
  ['no JSON', '{"update_id":', 400],
  ['no object', 'null', 400],
  ['no update', '{"hello":1}', 400],
  ['nothing', '', 400],
  ['two megabytes', 'x'.repeat(2_000_000), 413],
])('%s is refused and the server lives on', async (_what, body, status) => {
  expect(await post(body).catch(() => 413)).toBe(status);
  expect(await post(ask('/power fridge'))).toBe(200);
});

test('nothing is told without the secret, and another method is not allowed', async () => {
  expect((await fetch(new URL('/', url))).status).toBe(401);
  expect((await fetch(url, { headers: { [header]: secret } })).status).toBe(405);
});

test('odd shapes of known updates end nothing', async () => {
  for (const odd of [{ message: 1 }, { message: {} }, { message: { chat: null } }, { callback_query: {} }])
    await post({ ...update({}), ...odd });
  expect(await post(ask('/power fridge'))).toBe(200);
});

test('a client that goes away in the middle ends nothing', async () => {
  const socket = connect(running.port, '127.0.0.1');
  await new Promise(resolve => socket.once('connect', resolve));
  socket.write(`POST /hook HTTP/1.1\r\nhost: x\r\n${header}: ${secret}\r\ncontent-length: 100\r\n\r\n{"upd`);
  socket.destroy();
  expect(await post(ask('/power fridge'))).toBe(200);
});

test('delivered twice is answered once', async () => {
  const twice = ask('/power fridge');
  expect(await Promise.all([post(twice), post(twice), post(twice)])).toEqual([200, 200, 200]);
  expect(sent()).toHaveLength(1);
});

test('an update that another process has in work is not taken: Telegram shall come again', async () => {
  const given = ask('/power fridge');
  await store.claim(given.update_id, nowSec * 1000);
  expect(await post(given)).toBe(503);
  await store.release(given.update_id);
  expect(await post(given)).toBe(200);
  expect(sent()).toHaveLength(1);
});

test('a crash after memory was saved sends the reply that was kept, and changes memory once', async () => {
  const first = ask('/power fridge');
  const finish = store.finish.bind(store);
  store.finish = () => Promise.reject(new Error('the power went out'));
  await post(first);
  store.finish = finish;
  await store.release(first.update_id);
  await running.stop();
  await open(8000, false);
  const { revision } = await store.load(String(first.message?.chat.id));
  expect(await post(first)).toBe(200);
  expect((await store.load(String(first.message?.chat.id))).revision).toBe(revision);
  expect(sent()).toEqual(['Answer to Sam: fridge\nfirst', 'Answer to Sam: fridge\nfirst']);
});

test('Telegram is told in time to come again; the slow answer comes once', async () => {
  await running.stop();
  const gate = Promise.withResolvers<void>();
  const load = store.load.bind(store);
  store.load = async chat => {
    await gate.promise;
    return load(chat);
  };
  await open(200, false);
  const slow = ask('/power slow');
  expect(await post(slow)).toBe(503);
  expect(sent()).toEqual([]);
  gate.resolve();
  expect(await post(slow)).toBe(200);
  expect(sent()).toHaveLength(1);
});
