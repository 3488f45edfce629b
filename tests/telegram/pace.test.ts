import type { Transformer } from 'grammy';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { pace } from '#telegram/delivery/pace.ts';
import { group, plainGroup, sam } from './fake/people.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const flood = (seconds: number) => ({
  ok: false,
  error_code: 429,
  description: `Too Many Requests: retry after ${seconds}`,
  parameters: { retry_after: seconds },
});

/** Telegram behind the pacing: notes when each call arrives (s), and answers from the list of its chat, else well. */
function paced(answers: Record<number, object[]> = {}) {
  const start = Date.now();
  const arrived: [chat: number, atSec: number][] = [];
  const telegram = async (_method: string, payload: { chat_id: number }) => {
    arrived.push([payload.chat_id, (Date.now() - start) / 1000]);
    return answers[payload.chat_id]?.shift() ?? { ok: true, result: true };
  };
  type Call = (method: string, payload: object, signal?: undefined) => Promise<{ ok: boolean }>;
  const call = pace().reduce<Call>(
    (prev, transform: Transformer) => (method, payload, signal) =>
      transform(prev as never, method as never, payload as never, signal) as Promise<{ ok: boolean }>,
    telegram as never,
  );
  const of = (chat: number) => arrived.filter(([id]) => id === chat).map(([, at]) => at);
  return { send: (chat: number) => call('sendMessage', { chat_id: chat, text: 'x' }), call, of };
}

test('a flood is waited out to the second; its chat waits with it, others do not', async () => {
  const { send, of } = paced({ [group.id]: [flood(7)] });
  const all = [send(group.id), send(group.id), send(plainGroup.id)];
  await vi.advanceTimersByTimeAsync(6_900);
  expect([of(group.id).length, of(plainGroup.id).length]).toEqual([1, 1]);
  await vi.advanceTimersByTimeAsync(5_000);
  expect((await Promise.all(all)).every(({ ok }) => ok)).toBe(true);
  const [first = 0, again = 0, second = 0] = of(group.id);
  expect(again - first).toBeGreaterThanOrEqual(7);
  expect(again - first).toBeLessThan(7.1);
  expect(second).toBeGreaterThanOrEqual(again);
});

test('a flood of more than a minute is not waited for', async () => {
  const { send, of } = paced({ [group.id]: [flood(240)] });
  const sending = send(group.id);
  await vi.advanceTimersByTimeAsync(1000);
  expect(await sending).toMatchObject({ ok: false, parameters: { retry_after: 240 } });
  expect(of(group.id)).toHaveLength(1);
});

test('at most 20 messages a minute reach a group, and one a second a person', async () => {
  const { send, of } = paced();
  for (let i = 0; i < 30; i++) void send(group.id);
  for (let i = 0; i < 5; i++) void send(sam.id);
  await vi.advanceTimersByTimeAsync(59_000);
  expect(of(group.id)).toHaveLength(20);
  const gaps = of(sam.id)
    .slice(1)
    .map((at, index) => at - of(sam.id)[index]!);
  expect(Math.min(...gaps)).toBeGreaterThanOrEqual(0.99);
});

test('answers to presses and looks at who is an admin never wait', async () => {
  const { call, send, of } = paced();
  void send(group.id);
  void send(group.id);
  await call('getChatMember', { chat_id: group.id, user_id: 1 });
  // The look went through at once; the two messages still wait for their turn.
  expect(of(group.id)).toEqual([0]);
});
