import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { emptyMemory } from '#conversation/memory.ts';
import { VolatileStore } from '#memory/volatile/store.ts';
import { readConfig } from '#src/config.ts';
import { Health } from '#telegram/ops/health.ts';
import { makeMetrics } from '#telegram/ops/metrics.ts';
import { poll } from '#telegram/ops/poll.ts';
import { serve } from '#telegram/ops/webhook.ts';
import { allowedUpdates, sort } from '#telegram/updates/arriving/sort.ts';
import { createBot } from '#telegram/updates/bot.ts';
import { parrot, silent } from '../fake/bot.ts';
import { Refusal } from '../fake/rules.ts';
import { FakeTelegram } from '../fake/server.ts';
import { token } from '../fake/world.ts';
import { alone, fridge, group, kim, me, message, nowSec, sam, scene, textOf, update } from './one-group.ts';

const root = new URL('../../..', import.meta.url).pathname;

test('row 31: as a guest it answers once, by no memory of the chat, and by the asker’s own rig where they say "my"', async () => {
  const s = scene();
  const call = (text: string, id: string) =>
    s.give({ guest_message: message(text, { guest_query_id: id, from: sam }) as never });
  await s.store.save(
    String(group.id),
    { ...emptyMemory(), rigs: { '': { batteries: [{ capacityAh: 55 }] } } } as never,
    0,
  );
  await s.tell('/rig 100Ah AGM, fridge 1.2A');
  await call('@camp_power_bot how long will my rig last?', 'a');
  await call(`@camp_power_bot ${fridge}`, 'b');
  const [own, other] = s.world.sent('answerGuestQuery');
  expect(own?.result.input_message_content.message_text).toContain('100 Ah AGM');
  expect(JSON.stringify(own)).not.toContain('55');
  expect(other?.guest_query_id).toBe('b');
  expect(s.world.sent('answerGuestQuery')).toHaveLength(2);
  const twin = message(`@camp_power_bot ${fridge}`, { from: kim });
  await s.give({ message: twin as never });
  await s.give({ guest_message: { ...twin, guest_query_id: 'c' } as never });
  expect(s.world.sent('answerGuestQuery')).toHaveLength(2);
  expect(s.answers(group.id)).toHaveLength(1);
});

test('row 32: one short hello to a new group, never again; links open what they say and change nothing', async () => {
  const s = scene();
  const change = (from: string, to: string) =>
    s.give({
      my_chat_member: {
        chat: group,
        from: sam,
        date: nowSec,
        old_chat_member: { status: from },
        new_chat_member: { status: to },
      } as never,
    });
  await change('left', 'member');
  await s.say('/start@camp_power_bot x');
  await change('member', 'left');
  await change('left', 'member');
  expect(s.answers(group.id)).toHaveLength(1);
  expect(textOf(s.last(group.id)).length).toBeLessThan(200);
  await s.tell('/rig 100Ah AGM');
  await s.tell('/start rig');
  expect(textOf(s.last(alone.id))).toContain('100 Ah AGM');
  await s.tell('/start forget');
  expect(Object.keys((await s.store.load(String(alone.id))).memory.rigs)).toEqual(['']);
});

test('row 33: a picture has a caption with all numbers, and where pictures are forbidden the words come alone', async () => {
  const s = scene();
  const trip = '/power 4 days, 120Ah lithium, fridge 1.8A average, 160W solar in Dubbo in October';
  await s.say(trip);
  expect(s.last(group.id).caption).toMatch(/\d+ %/);
  expect(s.last(group.id).photo).toBeDefined();
  s.world.withoutPhotos.add(group.id);
  await s.say(trip);
  expect(s.last(group.id).text).toMatch(/\d+ %/);
  expect(s.answers(group.id)).toHaveLength(2);
});

describe('row 34', () => {
  beforeEach(() => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  });
  afterEach(() => {
    vi.useRealTimers();
  });
  test('row 34: "typing" only where the work is slow, its refusal is of no interest', async () => {
    const [store, gate] = [new VolatileStore(), Promise.withResolvers<void>()];
    const s = scene({ store });
    await s.say(`/power ${fridge}`);
    expect(s.world.sent('sendChatAction')).toEqual([]);
    const load = store.load.bind(store);
    store.load = async chat => {
      await gate.promise;
      return load(chat);
    };
    s.world.faults.push({
      method: 'sendChatAction',
      fault: new Refusal(400, 'Bad Request: message thread not found'),
    });
    const slow = s.say(`/power ${fridge}`);
    await vi.advanceTimersByTimeAsync(600);
    gate.resolve();
    await slow;
    expect(s.answers(group.id)).toHaveLength(2);
    expect(s.errors()).toEqual([]);
  });
});

describe('over the wire', () => {
  let telegram: FakeTelegram;
  const stops: (() => Promise<unknown>)[] = [];
  beforeEach(async () => {
    telegram = await new FakeTelegram().start();
  });
  afterEach(async () => {
    for (const stop of stops.splice(0)) await stop();
    await telegram.stop();
  });
  const bot = (at = telegram.root) =>
    createBot(
      { token, apiRoot: at, isPaced: false },
      { converse: parrot, store: new VolatileStore(), log: silent, now: () => nowSec * 1000 },
    );

  test('row 35: the webhook wants its secret, takes no large body, and answers 200', async () => {
    const running = await serve(bot(), silent, { url: 'http://127.0.0.1/hook', secret: 'ours', port: 0 });
    stops.push(() => running.stop());
    await telegram.until(() => telegram.webhookUrl !== undefined, 'setWebhook');
    const post = async (body: string, secret?: string): Promise<number> => {
      const headers: Record<string, string> =
        secret === undefined ? {} : { 'x-telegram-bot-api-secret-token': secret };
      return (await fetch(`http://127.0.0.1:${running.port}/hook`, { method: 'POST', body, headers })).status;
    };
    const question = JSON.stringify(update({ message: message('/power fridge') as never }));
    expect(await post(question)).toBe(401);
    expect(await post(question, 'theirs')).toBe(401);
    expect(await post(question, 'ours')).toBe(200);
    expect(await post(`"${'x'.repeat(1_100_000)}"`, 'ours').catch(() => 413)).toBe(413);
    expect(telegram.world.sent()).toHaveLength(1);
  });

  test('row 36: told to stop it finishes its answer, confirms it and ends with 0; a second poller is told of', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'row-'));
    const child = spawn(process.execPath, [join(root, 'src/boot.mjs'), 'main'], {
      cwd: folder,
      env: {
        PATH: process.env.PATH,
        MEMORY_KEY: 'ab'.repeat(32),
        BOT_TOKEN: token,
        TELEGRAM_API_ROOT: telegram.root,
        LOG_LEVEL: 'warn',
      },
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    stops.push(async () => child.kill('SIGKILL'));
    let log = '';
    child.stderr.on('data', chunk => {
      log += chunk;
    });
    const ended = once(child, 'close');
    telegram.hold('sendMessage');
    telegram.happen({
      message: message('/power fridge 1.2A, 100Ah, 3 days?', {
        date: Math.floor(Date.now() / 1000),
      }) as never,
    });
    await telegram.until(() => telegram.held > 0, 'an answer on its way');
    child.kill('SIGTERM');
    telegram.release();
    expect((await ended)[0]).toBe(0);
    expect(telegram.unconfirmed).toEqual([]);
    expect(telegram.world.sent()).toHaveLength(1);
    expect(log).toBe('');
  });

  test('row 38: started with Telegram down it recovers by itself; a bad setting is named', async () => {
    const port = Number(new URL(telegram.root).port);
    await telegram.stop();
    const running = poll(bot(), silent, { timeoutSec: 1, backOffMs: { first: 5, last: 20 } });
    running.ended.catch(() => {});
    telegram = await new FakeTelegram().start(port);
    telegram.happen({ message: message('/power fridge') as never });
    await telegram.until(() => telegram.world.sent().length === 1, 'an answer');
    await running.stop();
    expect(() => readConfig({ BOT_TOKEN: 'nonsense' })).toThrow(/^BOT_TOKEN must be/);
  });

  test('row 39: the kinds of update asked for are those that are handled', async () => {
    const running = poll(bot(), silent, { timeoutSec: 1 });
    await telegram.until(() => telegram.world.sent('getUpdates').length > 0, 'a poll');
    await running.stop();
    const asked: string[] = telegram.world.sent('getUpdates')[0]?.allowed_updates;
    expect(asked).toEqual([...allowedUpdates]);
    const change = {
      chat: group,
      from: sam,
      date: nowSec,
      old_chat_member: { status: 'member' },
      new_chat_member: { status: 'left', user: kim },
    };
    const one = message('/power 60W');
    const given: Record<string, object> = {
      message: one,
      edited_message: one,
      callback_query: { id: '1', from: sam, chat_instance: 'x', data: 'x' },
      my_chat_member: change,
      chat_member: change,
      inline_query: { id: '1', from: sam, query: 'x', offset: '' },
      guest_message: { ...one, guest_query_id: 'g' },
    };
    for (const kind of asked)
      expect([kind, sort(update({ [kind]: given[kind] } as never), me, nowSec * 1000)?.kind]).not.toContain(
        undefined,
      );
    for (const kind of [
      'channel_post',
      'poll',
      'message_reaction',
      'chosen_inline_result',
      'business_message',
    ])
      expect(sort(update({ [kind]: one } as never), me, nowSec * 1000)).toBeUndefined();
  });
});

test('row 37: alive by answering; ready by a poll that runs and a store that writes; metrics name nobody', async () => {
  const clock = { now: 1_000_000 };
  const metrics = makeMetrics();
  const health = new Health({ now: () => clock.now, heardWithinMs: 90_000 });
  health.opened(new VolatileStore());
  const isReady = async () => (await health.report()).isReady;
  expect(await isReady()).toBe(false);
  // Refused at once, as by another poller: not ready.
  health.polling(true);
  clock.now += 200;
  health.polling(false);
  expect(await isReady()).toBe(false);
  health.heard();
  expect(await isReady()).toBe(true);
  // Nothing happens for hours, and a poll is held: ready; the poll hangs for over a minute: not.
  clock.now += 200_000;
  health.polling(true);
  clock.now += 20_000;
  expect(await isReady()).toBe(true);
  clock.now += 50_000;
  expect(await isReady()).toBe(false);
  const s = scene({ meter: metrics });
  await s.say('/power secretword fridge 1.2A, 100Ah, 3 days?');
  expect(await metrics.page()).toContain('billywatt_updates_total{kind="question",end="done"} 1');
  expect(await metrics.page()).not.toMatch(/secretword|Sam|\b1001\b/);
});

test('row 40: the whole suite runs offline: a connection out of this machine throws', () => {
  expect(() => connect(443, '192.0.2.1')).toThrow('a test reaches out to 192.0.2.1');
  expect(() => connect({ host: 'example.org', port: 443 })).toThrow('a test reaches out to example.org');
});
