import type { ChatMemberUpdated, Message } from 'grammy/types';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { VolatileStore } from '#memory/volatile/store.ts';
import { commands, menuOf } from '#telegram/ui/commands.ts';
import { partOf } from '#telegram/ui/export.ts';
import { setMenus } from '#telegram/ui/menu.ts';
import { pauseLine } from '#telegram/updates/arriving/limits.ts';
import { type Stage, silent, stage } from './fake/bot.ts';
import { alone, group, kim, message, nowSec, plainGroup, sam } from './fake/people.ts';
import { checkCommands, Refusal } from './fake/rules.ts';
import { me } from './fake/world.ts';

let s: Stage;
beforeEach(() => {
  s = stage();
});
afterEach(() => {
  vi.useRealTimers();
});
const ask = (text: string, more: Partial<Message> = {}) => s.give({ message: message(text, more) as never });

describe('coming into a group', () => {
  const member = (from: string, to: string): ChatMemberUpdated =>
    ({
      chat: group,
      from: sam,
      date: nowSec,
      old_chat_member: { status: from },
      new_chat_member: { status: to },
    }) as never;
  const change = (from: string, to: string) => s.give({ my_chat_member: member(from, to) });

  test('one short hello that says how to ask', async () => {
    await change('left', 'member');
    expect(s.answers().map(m => m.text)).toEqual([
      expect.stringContaining('/power fridge 1.2A, 100Ah, 3 days?'),
    ]);
    expect(s.answers()[0]?.text).not.toContain('mention');
  });
  test.each([
    [
      'again',
      [
        ['left', 'member'],
        ['member', 'left'],
        ['left', 'member'],
      ],
      1,
    ],
    ['made admin', [['member', 'administrator']], 0],
    ['thrown out', [['member', 'kicked']], 0],
  ] as [string, [string, string][], number][])('%s', async (_what, steps, hellos) => {
    for (const [from, to] of steps) await change(from, to);
    expect(s.answers()).toHaveLength(hellos);
  });
  test('a group that the bot knows already gets none', async () => {
    await ask('/power fridge');
    await change('left', 'member');
    expect(s.answers()).toHaveLength(1);
  });
  test('a group where it may not write gets none, and nothing fails', async () => {
    s.world.faults.push({
      method: 'sendMessage',
      fault: new Refusal(400, 'Bad Request: not enough rights to send text messages to the chat'),
    });
    await change('left', 'restricted');
    expect(s.logged.filter(entry => entry.level === 'error')).toEqual([]);
  });
});

describe('shut out', () => {
  const day = 86_400_000;
  const shut = (chat: object, from: string, to: string) =>
    s.give({
      my_chat_member: {
        chat,
        from: sam,
        date: nowSec,
        old_chat_member: { status: from },
        new_chat_member: { status: to },
      } as never,
    });
  const left = async (chat: number, days: number): Promise<boolean> => {
    s.clock.now += days * day;
    await s.store.prune({ claims: 0 });
    return (await s.store.load(String(chat))).revision !== 0;
  };
  beforeEach(() => {
    const clock = { now: nowSec * 1000 };
    s = stage({ store: new VolatileStore({ now: () => clock.now }), clock });
  });

  test.each([
    ['thrown out of a group', group, 'kicked'],
    ['having left a group', group, 'left'],
    ['blocked in private', alone, 'kicked'],
  ])('%s: what is kept goes after 30 days', async (_what, chat, status) => {
    await ask('/power fridge', { chat });
    await shut(chat, 'member', status);
    expect(await left(chat.id, 29)).toBe(true);
    expect(await left(chat.id, 1)).toBe(false);
  });
  test('by a refusal, where nobody told: the same', async () => {
    await ask('/power fridge');
    s.world.closed.set(group.id, 'the group chat was deleted');
    await ask('/power fan');
    expect(await left(group.id, 30)).toBe(false);
  });
  test('let in again in time: all of it is there, and no second hello', async () => {
    await ask('/power fridge');
    await shut(group, 'member', 'kicked');
    expect(await left(group.id, 20)).toBe(true);
    await shut(group, 'left', 'member');
    expect(await left(group.id, 100)).toBe(true);
    expect(s.answers()).toHaveLength(1);
  });
  test('made a plain member from admin: nothing happens', async () => {
    await ask('/power fridge');
    await shut(group, 'administrator', 'member');
    expect(await left(group.id, 100)).toBe(true);
  });
});

describe('inline', () => {
  const type = (query: string) => s.give({ inline_query: { id: 'q', from: sam, query, offset: '' } });
  const last = () => present(s.world.sent('answerInlineQuery').at(-1));

  test('without a rig the answer is everybody’s, and kept for five minutes', async () => {
    await type('fridge 1.2A 100Ah');
    expect(last()).toMatchObject({ cache_time: 300, is_personal: false });
    const [result] = last().results;
    expect(result.title).toBe('Answer to nobody: fridge 1.2A 100Ah');
    expect(result.input_message_content.message_text).toContain('\n\nfridge 1.2A 100Ah');
    expect(Buffer.byteLength(result.id)).toBeLessThanOrEqual(64);
  });
  test('with a rig it is the asker’s own', async () => {
    await s.store.save(String(sam.id), { ...emptyMemory(), rigs: { '': {} } }, 0);
    await type('fridge 1.2A');
    expect(last()).toMatchObject({ cache_time: 10, is_personal: true });
  });
  test('nothing typed yet: how to ask', async () => {
    await type(' ');
    expect(last()).toMatchObject({ results: [], button: { start_parameter: 'help' } });
  });
  test('leaves nothing behind', async () => {
    await type('fridge 1.2A');
    expect((await s.store.load(String(sam.id))).revision).toBe(0);
  });
});

describe('as a guest', () => {
  const call = (text: string, more: Partial<Message> = {}) =>
    s.give({ guest_message: message(text, { guest_query_id: 'g1', ...more }) as never });
  const given = () => s.world.sent('answerGuestQuery');

  test('answers once, and looks nothing up by the chat’s id', async () => {
    await s.store.save(
      String(group.id),
      { ...emptyMemory(), claims: [{ who: 'x', value: 1, unit: 'h' }] },
      0,
    );
    const load = vi.spyOn(s.store, 'load');
    await call('@camp_power_bot 60W in amps?');
    expect(given()).toHaveLength(1);
    expect(given()[0]).toMatchObject({ guest_query_id: 'g1', result: { type: 'article' } });
    expect(given()[0]?.result.input_message_content.message_text).toContain('Answer to Sam: 60W in amps?');
    expect(load).not.toHaveBeenCalled();
  });
  test('the asker’s own rig only where they say "my"', async () => {
    const load = vi.spyOn(s.store, 'load');
    await call('@camp_power_bot will my fridge last?');
    expect(load.mock.calls).toEqual([[String(sam.id)]]);
  });
  test('called to somebody’s message, that is the question', async () => {
    await call('@camp_power_bot', { reply_to_message: message('60W in amps?', { from: kim }) as never });
    expect(given()[0]?.result.input_message_content.message_text).toContain('60W in amps?');
  });
  test.each([
    ['message first', true],
    ['guest query first', false],
  ])('the same words as a message too are answered once: %s', async (_what, isMessageFirst) => {
    const one = message('@camp_power_bot 60W in amps?');
    const steps = [
      () => s.give({ message: one as never }),
      () => s.give({ guest_message: { ...one, guest_query_id: 'g1', chat: { ...group, id: -77 } } as never }),
    ];
    for (const step of isMessageFirst ? steps : steps.toReversed()) await step();
    expect(given().length + s.world.sent().length).toBe(1);
  });
});

describe('/export', () => {
  test('in private: a file, in reply', async () => {
    await ask('/export', { chat: alone });
    expect(s.world.sent('sendDocument')[0]).toMatchObject({
      chat_id: sam.id,
      reply_parameters: expect.anything(),
    });
  });
  test('in a group: to the person alone', async () => {
    await ask('/export');
    expect(s.world.sent('sendDocument')[0]?.chat_id).toBe(sam.id);
    expect(s.world.sent()).toEqual([]);
  });
  test('to one who never wrote in private: how to get it', async () => {
    s.world.closed.set(sam.id, "bot can't initiate conversation with a user");
    await ask('/export');
    expect(s.answers(group.id)[0]?.text).toContain('Open a chat with me');
  });
  test('holds what the person brought in and nobody else’s', () => {
    const memory = {
      ...emptyMemory(),
      rigs: { sam: {}, kim: {}, '': {} },
      claims: [{ who: 'Kim', value: 4, unit: 'd' }],
    };
    expect(partOf(memory, 'Sam')).toEqual({ rigs: { sam: {} }, lessons: {}, claims: [], frames: [] });
  });
});

test('one person who asks without end is asked for a pause, once, and passed over for a minute; others are not', async () => {
  for (let i = 0; i < 35; i++) await ask(`/power ${i}`);
  expect(s.answers()).toHaveLength(11);
  expect(s.answers().at(-1)?.text).toBe(pauseLine);
  await ask('/power mine', { from: kim });
  expect(s.answers().at(-1)?.text).toContain('mine');
  s.clock.now += 61_000;
  await ask('/power later', { date: nowSec + 61 });
  expect(s.answers()).toHaveLength(13);
});

test('"typing" is shown only where the answer takes a while, and a refusal is of no interest', async () => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  await ask('/power quick');
  expect(s.world.sent('sendChatAction')).toEqual([]);
  const gate = Promise.withResolvers<void>();
  const store = new VolatileStore();
  const load = store.load.bind(store);
  store.load = async chat => {
    await gate.promise;
    return load(chat);
  };
  s = stage({ store });
  s.world.faults.push({
    method: 'sendChatAction',
    fault: new Refusal(400, 'Bad Request: message thread not found'),
  });
  const slow = ask('/power slow');
  await vi.advanceTimersByTimeAsync(600);
  gate.resolve();
  await slow;
  expect(s.answers()).toHaveLength(1);
});

describe('help in a group', () => {
  test('is seen by its asker alone, where the bot is an admin', async () => {
    s.world.admins.add(`${group.id} ${me.id}`);
    await ask('/help');
    expect(s.world.sent()).toHaveLength(1);
    expect(s.world.sent()[0]).toMatchObject({ ephemeral_message_parameters: { receiver_user_id: sam.id } });
    expect(s.answers()).toEqual([]);
  });
  test('is a door for all where it is no admin, or is refused', async () => {
    await ask('/help');
    s.clock.now += 6 * 60_000;
    s.world.admins.add(`${group.id} ${me.id}`);
    s.world.faults.push({
      method: 'sendMessage',
      fault: new Refusal(400, 'Bad Request: EPHEMERAL_NOT_ALLOWED'),
    });
    await ask('/help', { date: nowSec + 360 });
    const door = expect.stringContaining('/power fridge 1.2A');
    expect(s.answers().map(m => m.text)).toEqual([door, door]);
    expect(s.world.whispers.sent.size).toBe(0);
  });
  test('in private is an ordinary message', async () => {
    await ask('/help', { chat: alone });
    expect(s.world.sent()[0]).not.toHaveProperty('ephemeral_message_parameters');
  });
});

describe('what is not understood', () => {
  beforeEach(() => {
    s = stage({ converse });
  });

  test('in a group: one question back, before all, with buttons for its asker', async () => {
    await ask('/power 2 x 110ah gel and a 5A load nonstop, how many hours');
    const [back] = s.answers();
    expect(back?.text?.length).toBeLessThan(300);
    expect(back?.text).toContain('?');
    expect(s.world.sent()).toHaveLength(1);
    expect(s.world.sent()[0]).not.toHaveProperty('ephemeral_message_parameters');
  });
  test('in a script that it can’t read: so too, with a door to the help', async () => {
    await ask('/power 日本語で書きます');
    const [back] = s.answers();
    expect(back?.text).toContain('I read English so far');
    expect(JSON.stringify(back?.reply_markup)).toContain('Show the help');
  });
  test('talk among people gets no answer, not even where the bot is called', async () => {
    await ask('/power who brings the guitar');
    expect(s.world.sent()).toEqual([]);
    expect(s.logged.filter(entry => entry.level === 'error')).toEqual([]);
  });
  test('a number that is missing is asked for before all, so that the reply to it can bring it', async () => {
    await ask('/power what cable for 20A?');
    expect(s.world.sent()[0]).not.toHaveProperty('ephemeral_message_parameters');
    const [back] = s.answers();
    expect(back?.text).toMatch(/\? To work that out I need how long the cable is/);
    await ask('4 m', { reply_to_message: back as never });
    expect(s.answers().at(-1)?.text).toMatch(/^\d+ mm²/);
  });
  test('in private it is an ordinary message', async () => {
    await ask('the quick brown fox jumps over the lazy dog', { chat: alone });
    expect(s.world.sent()[0]).not.toHaveProperty('ephemeral_message_parameters');
  });
});

describe('pictures can be turned off', () => {
  const trip = '4 days, 120Ah lithium, fridge 1.8A average, 160W solar in Dubbo in October';
  beforeEach(() => {
    s = stage({ converse });
  });

  test('in private: then a trip comes as words, with a button', async () => {
    await ask('/pictures off', { chat: alone });
    await ask(trip, { chat: alone });
    expect(s.answers().at(-1)?.photo).toBeUndefined();
    expect(JSON.stringify(s.answers().at(-1)?.reply_markup)).toContain('"Table"');
    await ask('/pictures', { chat: alone });
    await ask(trip, { chat: alone });
    expect(s.answers().at(-1)?.photo).toBeDefined();
  });
  test('in a group by an admin only', async () => {
    await ask('/pictures off');
    expect(s.answers().at(-1)?.text).toContain('Only an admin');
    s.world.admins.add(`${group.id} ${kim.id}`);
    await ask('/pictures off', { from: kim });
    await ask(`/power ${trip}`);
    expect(s.answers().at(-1)?.photo).toBeUndefined();
  });
});

test('who adds the bot by a link gets the hello and not the help besides', async () => {
  const added = { old_chat_member: { status: 'left' }, new_chat_member: { status: 'member' } };
  await s.give({ my_chat_member: { chat: group, from: sam, date: nowSec, ...added } as never });
  await ask('/start@camp_power_bot x');
  expect(s.answers()).toHaveLength(1);
});

test('a group named in ALLOWED_CHATS stays allowed after its move', async () => {
  s = stage({ settings: { allowedChats: new Set([plainGroup.id]) } });
  await ask('/power a');
  expect(s.answers()).toHaveLength(0);
  await s.give({ message: message(undefined, { migrate_from_chat_id: plainGroup.id }) as never });
  await ask('/power b');
  expect(s.answers()).toHaveLength(1);
});

describe('menus', () => {
  test('one for each scope, within the rules, the same at every start', async () => {
    const scopes = ['all_private_chats', 'all_group_chats', 'all_chat_administrators', 'default'];
    await setMenus(s.bot.api, silent);
    const once = [...s.world.sent('setMyCommands')];
    await setMenus(s.bot.api, silent);
    expect(s.world.sent('setMyCommands')).toEqual([...once, ...once]);
    expect(once.map(({ scope }) => scope?.type ?? 'default')).toEqual(scopes);
    expect(once[0]?.commands[0]).toEqual({
      command: 'power',
      description: 'Ask: /power fridge 1.2A, 100Ah, 3 days?',
    });
    expect(s.world.sent('setMyShortDescription')).toHaveLength(2);
    expect(s.logged).toEqual([]);
  });
  test('a refusal does not keep the bot from starting', async () => {
    s.world.faults.push({ method: 'setMyCommands', fault: new Refusal(400, 'Bad Request: x') });
    await expect(setMenus(s.bot.api, silent)).resolves.toBeUndefined();
  });
  test('what Telegram asks of all bots is there', () => {
    const names = commands.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining(['start', 'help', 'settings', 'privacy', 'forget']));
    for (const menu of ['private', 'group', 'admin'] as const) checkCommands({ commands: menuOf(menu) });
  });
});
