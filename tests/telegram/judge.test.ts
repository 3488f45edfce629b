import { expect, test } from 'vitest';
import { Judge } from '#telegram/updates/judge.ts';
import { Limits, pauseLine } from '#telegram/updates/limits.ts';
import { stage } from './fake/bot.ts';
import { alone, group, kim, message, nowSec, sam, update } from './fake/people.ts';

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
