import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { Judge } from '#telegram/updates/arriving/judge.ts';
import { Limits, pauseLine } from '#telegram/updates/arriving/limits.ts';
import { stage } from './fake/bot.ts';
import { alone, group, kim, message, nowSec, press, sam, update } from './fake/people.ts';

const asking = (text: string, more: object = {}) =>
  update({ message: message(text, more as never) as never });

test('of all in a group who need a pause, one is told', () => {
  const limits = new Limits(() => 0, { person: 2, group: 3, alone: 2 });
  const notes = (...who: number[]) => who.map(person => limits.note(-5, person, false));
  expect(notes(1, 1, 1, 1)).toEqual(['answer', 'answer', 'ask for a pause', 'silence']);
  // The group has one left; whoever comes after is passed over, since the chat has its line.
  expect(notes(2, 2, 3)).toEqual(['answer', 'silence', 'silence']);
});

test('an update that comes again is not counted again', () => {
  const judge = new Judge(() => 0);
  const [one, other] = [asking('/power 1'), asking('/power 2')];
  const job = (given: typeof one) => ({ kind: 'question', message: given.message }) as never;
  for (let i = 0; i < 50; i++) expect(judge.of(one, job(one))).toBe('answer');
  expect(judge.of(other, job(other))).toBe('answer');
});

test('what is passed over is done with at once, while the chat’s first answer is still on its way', async () => {
  const s = stage();
  const gate = Promise.withResolvers<void>();
  s.bot.api.config.use(async (prev, method, payload, signal) => {
    const { chat_id } = payload as { chat_id?: number };
    if (method === 'sendMessage' && chat_id === alone.id) await gate.promise;
    return prev(method, payload, signal);
  });
  const flood = Array.from({ length: 200 }, (_, i) => s.give(asking(`fridge ${i}`, { chat: alone })));
  let done = 0;
  for (const one of flood) void one.then(() => done++);
  await s.give(asking('/power mine', { from: kim }));
  expect(s.answers(group.id).at(-1)?.text).toContain('mine');
  // Thirty are answered and one says so; all the others are done.
  expect(done).toBe(200 - 31);
  gate.resolve();
  await Promise.all(flood);
  expect(s.answers(alone.id)).toHaveLength(31);
  expect(s.answers(alone.id).at(-1)?.text).toBe(pauseLine);
});

test('a group that floods hears one line, whoever asks', async () => {
  const s = stage();
  for (let i = 0; i < 60; i++)
    await s.give(
      asking(`/power ${i}`, { from: { ...sam, id: 100 + (i % 5), first_name: `P${i % 5}` }, date: nowSec }),
    );
  expect(s.answers(group.id).filter(({ text }) => text === pauseLine)).toHaveLength(1);
  expect(s.answers(group.id)).toHaveLength(21);
});

test('taps and edits take nothing from the questions, and have room of their own', async () => {
  const s = stage();
  const question = message('/power fridge');
  await s.give(update({ message: question as never }));
  for (let i = 0; i < 15; i++) {
    const [answer] = s.answers(group.id);
    await s.give({ callback_query: press(present(answer), /5 days|cloudy/) });
    await s.give({
      edited_message: { ...question, text: `/power fridge ${i % 3}`, edit_date: nowSec } as never,
    });
  }
  for (let i = 0; i < 9; i++) await s.give(asking(`/power ${i}`));
  expect(s.answers(group.id)).toHaveLength(10);
  expect(s.answers(group.id).filter(({ text }) => text === pauseLine)).toEqual([]);
  for (let i = 0; i < 10; i++)
    await s.give({ callback_query: press(present(s.answers(group.id)[0]), /5 days|cloudy/) });
  expect(s.world.sent('answerCallbackQuery').filter(({ text }) => text === pauseLine)).toHaveLength(1);
  // Their turns are used up, their questions are not.
  s.clock.now += 60_000;
  await s.give(asking('/power still there', { date: nowSec + 60 }));
  expect(s.answers(group.id).at(-1)?.text).toContain('still there');
});

describe('several processes on the same data', () => {
  const two = () => {
    const a = stage();
    const b = stage({ store: a.store, world: a.world, clock: a.clock });
    const each = async (texts: readonly string[], more: object = {}) => {
      for (const [i, text] of texts.entries()) await (i % 2 === 0 ? a : b).give(asking(text, more));
    };
    const numbers = (count: number) => Array.from({ length: count }, (_, i) => `/power ${i}`);
    const pauses = (chat: number) => a.answers(chat).filter(({ text }) => text === pauseLine);
    return { a, b, each, numbers, pauses };
  };

  test('let one person ask as much as one process does, and one of them says the line', async () => {
    const { a, each, numbers, pauses } = two();
    await each(numbers(14));
    expect(a.answers(group.id)).toHaveLength(11);
    expect(pauses(group.id)).toHaveLength(1);
    await each(['/power mine', '/power too'], { from: kim });
    expect(a.answers(group.id)).toHaveLength(13);
    a.clock.now += 60_000;
    await each(['/power again'], { date: nowSec + 60 });
    expect(a.answers(group.id).at(-1)?.text).toContain('again');
  });

  test('and so for all of a group, and for a private chat', async () => {
    const { a, each, numbers, pauses } = two();
    for (let who = 0; who < 8; who++) await each(numbers(4), { from: { ...sam, id: 200 + who } });
    expect(a.answers(group.id)).toHaveLength(21);
    await each(numbers(40), { chat: alone });
    expect(a.answers(alone.id)).toHaveLength(31);
    expect([pauses(group.id), pauses(alone.id)].map(lines => lines.length)).toEqual([1, 1]);
  });

  test('an update that comes again is not counted again', async () => {
    const { a, b } = two();
    const same = asking('/power same');
    for (let i = 0; i < 12; i++) for (const s of [a, b]) await s.give(same);
    for (let i = 0; i < 9; i++) await b.give(asking(`/power ${i}`));
    expect(a.answers(group.id)).toHaveLength(10);
  });
});
