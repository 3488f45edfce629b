import type { Message } from 'grammy/types';
import { beforeEach, describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { type Stage, stage } from './fake/bot.ts';
import { alone, group, message, press, sam } from './fake/people.ts';

let s: Stage;
beforeEach(() => {
  s = stage({ converse });
});
const dubbo = { latitude: -32.2431, longitude: 148.6017 };
const ask = async (text: string | undefined, more: Partial<Message> = {}): Promise<Message> => {
  await s.give({ message: message(text, { chat: alone, ...more }) as never });
  return present(s.answers().at(-1));
};
const wordsOf = (m: Message): string => m.text ?? m.caption ?? '';
const labels = (m: Message): string[] => (m.reply_markup?.inline_keyboard?.flat() ?? []).map(b => b.text);

describe('a shared location', () => {
  test('sets where the sun is, coarsely, and says so', async () => {
    const answer = await ask(undefined, { location: dubbo });
    expect(answer.text).toContain('32.2° S, 148.6° E, nearest town Dubbo');
    const { memory } = await s.store.load(String(alone.id));
    expect(memory.rigs['']).toEqual({ place: 'Dubbo', latitudeDeg: -32.2, longitudeDeg: 148.6 });
    expect(wordsOf(await ask('what will 160W of solar make in october?'))).toContain('in Dubbo in October');
  });
  test('answers the question before once more, from there', async () => {
    await ask('what will 160W of solar make in october?');
    const answer = await ask(undefined, { location: dubbo });
    expect(answer.text).toMatch(/^160 W makes about \d+ Ah a day .* in Dubbo in October/);
    expect(answer.text).toContain('nearest town Dubbo');
  });
  test('a place named later is that place, not the one shared', async () => {
    await ask(undefined, { location: { latitude: 55.95, longitude: -3.19 } });
    const shared = await ask('what will 160W of solar make in june?');
    expect(shared.text).toContain('in Edinburgh in June');
    const darwin = await ask('what will 160W of solar make in Darwin in june?');
    const bare = stage({ converse });
    await bare.give({
      message: message('what will 160W of solar make in Darwin in june?', { chat: alone }) as never,
    });
    expect(darwin.text?.split('\n')[0]).toBe(bare.answers()[0]?.text?.split('\n')[0]);
  });
  test('far from any town of its name has no name in the answer', async () => {
    await ask('what will 160W of solar make in Darwin in june?');
    const answer = await ask(undefined, { location: { latitude: -24.9, longitude: 129.2 } });
    expect(answer.text?.split('\n')[0]).not.toContain('Darwin');
  });
  test('in a group as a reply to an answer: it is for the rig of the chat', async () => {
    await ask('/power what will 160W of solar make in october?', { chat: group });
    const [first] = s.answers();
    const answer = await ask(undefined, { chat: group, location: dubbo, reply_to_message: first as never });
    expect(answer.text).toContain('in Dubbo in October');
    expect(Object.keys((await s.store.load(String(group.id))).memory.rigs)).toEqual(['']);
  });
  test('of somebody who has a rig there it is theirs', async () => {
    await ask('/rig 100Ah AGM', { chat: group });
    const [first] = s.answers();
    await ask(undefined, { chat: group, location: dubbo, reply_to_message: first as never });
    const { rigs } = (await s.store.load(String(group.id))).memory;
    expect(rigs.sam).toMatchObject({ place: 'Dubbo' });
    expect(rigs['']).toBeUndefined();
  });
  test('nobody asked for, in a group, is passed over', async () => {
    await s.give({ message: message(undefined, { location: dubbo }) as never });
    expect(s.world.calls).toEqual([]);
  });
  test('one that moves (live) is noted once', async () => {
    const live = message(undefined, { chat: alone, location: { ...dubbo, live_period: 900 } });
    await s.give({ message: live as never });
    await s.give({
      edited_message: { ...live, location: { ...dubbo, latitude: -32.3 }, edit_date: live.date } as never,
    });
    expect(s.world.calls).toHaveLength(1);
  });
  test.each([
    ['the north pole', { latitude: 90, longitude: 0 }],
    ['the date line', { latitude: -17, longitude: 180 }],
    ['the middle of an ocean', { latitude: 0, longitude: -30 }],
  ])('%s breaks nothing', async (_what, location) => {
    await ask('what will 160W of solar make in october?');
    expect((await ask(undefined, { location })).text).toContain('Noted: the sun at');
    expect(s.logged.filter(entry => entry.level === 'error')).toEqual([]);
  });
});

describe('the button for it', () => {
  test('stands under a solar answer without a place in private, and brings a key that shares it', async () => {
    const answer = await ask('what will 160W of solar make in october?');
    expect(labels(answer)).toContain('Use my location');
    await s.give({ callback_query: press(answer, 'Use my location', sam) });
    expect(s.world.sent().at(-1)).toMatchObject({
      reply_markup: {
        keyboard: [[{ text: 'Share my location', request_location: true }]],
        one_time_keyboard: true,
      },
    });
  });
  test('stays when the working was shown', async () => {
    const answer = await ask('what will 160W of solar make in october?');
    await s.give({ callback_query: press(answer, 'Show working', sam) });
    expect(labels(present(s.answers().at(-1)))).toContain('Use my location');
  });
  test.each([
    ['with a place', 'what will 160W of solar make in Dubbo in october?', {}],
    ['not of the sun', '60W in amps at 12V', {}],
    ['in a group', '/power what will 160W of solar make in october?', { chat: group }],
  ])('is not there %s', async (_what, text, more) => {
    expect(labels(await ask(text, more))).not.toContain('Use my location');
  });
});
