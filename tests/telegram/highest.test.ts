import { expect, test } from 'vitest';
import { Highest } from '#telegram/delivery/again/highest.ts';
import { alone, group, message, update } from './fake/people.ts';

const from = (chat: object, message_id: number) =>
  update({ message: { ...message('x', { chat } as never), message_id } as never });

test('private chats and small groups share one run of numbers, a supergroup has its own', () => {
  const highest = new Highest();
  expect(highest.of(alone.id)).toBeUndefined();
  highest.hear(from(group, 900));
  expect(highest.of(alone.id)).toBeUndefined();
  highest.hear(from(alone, 70));
  highest.hear(from({ ...alone, id: 4321 }, 65));
  expect(highest.of(alone.id)).toBe(70);
  expect(highest.of(-555)).toBe(70);
  expect(highest.of(group.id)).toBeUndefined();
});

test('what is sent counts as well, and what is refused does not', async () => {
  const highest = new Highest();
  const call = (result: object) => highest.watch((async () => result) as never, 'sendMessage', {} as never);
  await call({ ok: true, result: { message_id: 81, chat: { id: alone.id } } });
  await call({ ok: false, error_code: 400, description: 'Bad Request' });
  await call({ ok: true, result: true });
  expect(highest.of(alone.id)).toBe(81);
});
