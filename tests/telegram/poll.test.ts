import { afterEach, beforeEach, expect, test } from 'vitest';
import { VolatileStore } from '#memory/volatile/store.ts';
import type { Converse, Log } from '#telegram/ops/deps.ts';
import { poll, type Running } from '#telegram/ops/poll.ts';
import { allowedUpdates } from '#telegram/updates/arriving/sort.ts';
import { createBot } from '#telegram/updates/bot.ts';
import { parrot, silent } from './fake/bot.ts';
import { group, message, nowSec, plainGroup } from './fake/people.ts';
import { Refusal } from './fake/rules.ts';
import { FakeTelegram } from './fake/server.ts';
import { token } from './fake/world.ts';

const backOffMs = { first: 5, last: 20 };
let telegram: FakeTelegram;
const running: Running[] = [];

beforeEach(async () => {
  telegram = await new FakeTelegram().start();
});
afterEach(async () => {
  await Promise.all(running.splice(0).map(bot => bot.stop()));
  await telegram.stop();
});

function start({
  converse = parrot,
  log = silent,
  root = telegram.root,
  store = new VolatileStore(),
}: {
  converse?: Converse;
  log?: Log;
  root?: string;
  store?: VolatileStore;
} = {}): Running {
  const bot = createBot(
    { token, apiRoot: root, isPaced: false },
    { converse, store, log, now: () => nowSec * 1000 },
  );
  const run = poll(bot, log, { timeoutSec: 5, backOffMs });
  run.ended.catch(() => {});
  running.push(run);
  return run;
}
const ask = (text: string, chat: object = group) =>
  telegram.happen({ message: message(text, { chat } as never) as never });
const sent = (): string[] => telegram.world.sent().map(payload => payload.text);

test('answers, asks only for the kinds it handles, and confirms what it handled', async () => {
  start();
  ask('/power fridge');
  ask('morning all');
  await telegram.until(() => telegram.unconfirmed.length === 0, 'all confirmed');
  expect(sent()).toEqual(['Answer to Sam: fridge\nfirst']);
  expect(telegram.world.sent('getUpdates')[0]).toMatchObject({ allowed_updates: [...allowedUpdates] });
});

test('a slow chat does not hold up another', async () => {
  telegram.world.faults.push({ method: 'getChatMember', fault: 'cut-before' });
  const gate = Promise.withResolvers<void>();
  const store = new VolatileStore();
  const load = store.load.bind(store);
  store.load = async chat => {
    if (chat === String(group.id)) await gate.promise;
    return load(chat);
  };
  start({ store });
  ask('/power slow');
  ask('/power quick', plainGroup);
  await telegram.until(() => sent().length === 1, 'the quick answer');
  expect(sent()[0]).toContain('quick');
  gate.resolve();
  await telegram.until(() => sent().length === 2, 'the slow answer');
});

test('starts with Telegram down and recovers by itself', async () => {
  const root = telegram.root;
  await telegram.stop();
  const warned: string[] = [];
  start({ root, log: { ...silent, warn: (_fields, text) => void warned.push(text) } });
  await new Promise(resolve => setImmediate(resolve));
  telegram = await new FakeTelegram().start(Number(new URL(root).port));
  ask('/power fridge');
  await telegram.until(() => sent().length === 1, 'an answer');
});

test.each([
  ['500', new Refusal(502, 'Bad Gateway')],
  ['a flood', new Refusal(429, 'Too Many Requests: retry after 0', { retry_after: 0 })],
  ['a conflict', new Refusal(409, 'Conflict: terminated by other getUpdates request')],
  ['a cut connection', 'cut-before' as const],
])('polling goes on after %s', async (_what, fault) => {
  telegram.world.faults.push({ method: 'getUpdates', fault });
  start();
  ask('/power fridge');
  await telegram.until(() => sent().length === 1, 'an answer');
});

test('a second poller is explained in one line', async () => {
  const warned: string[] = [];
  telegram.world.faults.push({ method: 'getUpdates', fault: new Refusal(409, 'Conflict: x') });
  start({ log: { ...silent, warn: (_fields, text) => void warned.push(text) } });
  ask('/power fridge');
  await telegram.until(() => sent().length === 1, 'an answer');
  expect(warned).toEqual([expect.stringMatching(/^another program polls .*\(409\)/)]);
});

test('a token that Telegram does not know ends the run with one line', async () => {
  telegram.world.faults.push({ method: 'getMe', fault: new Refusal(401, 'Unauthorized') });
  await expect(start().ended).rejects.toThrow(/^Telegram does not know this BOT_TOKEN$/);
});

test('an answer cut after it arrived is not sent again', async () => {
  telegram.world.faults.push({ method: 'sendMessage', fault: 'cut-after' });
  start();
  ask('/power fridge');
  ask('/power next');
  await telegram.until(() => sent().length === 2, 'the next answer');
  expect(sent().map(text => text.split('\n')[0])).toEqual(['Answer to Sam: fridge', 'Answer to Sam: next']);
});

test('a stop lets the running answer finish, and confirms it', async () => {
  const gate = Promise.withResolvers<void>();
  const store = new VolatileStore();
  const load = store.load.bind(store);
  store.load = async chat => {
    await gate.promise;
    return load(chat);
  };
  const claim = store.claim.bind(store);
  const begun = Promise.withResolvers<void>();
  store.claim = async (update, at) => {
    begun.resolve();
    return claim(update, at);
  };
  const run = start({ store });
  ask('/power fridge');
  await begun.promise;
  const stopped = run.stop();
  gate.resolve();
  await stopped;
  expect(sent()).toHaveLength(1);
  expect(telegram.unconfirmed).toEqual([]);
});
