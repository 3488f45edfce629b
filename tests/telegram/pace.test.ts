import type { Transformer } from 'grammy';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { present } from '#basics/present.ts';
import { pace } from '#telegram/delivery/pace.ts';
import { group, sam } from './fake/people.ts';

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

test('a flood is not waited for in the call: its chat is held by whoever sends', async () => {
  const { send, of } = paced({ [group.id]: [flood(7)] });
  const sending = send(group.id);
  await vi.advanceTimersByTimeAsync(1000);
  expect(await sending).toMatchObject({ ok: false, parameters: { retry_after: 7 } });
  expect(of(group.id)).toHaveLength(1);
});

test('what is set at the start waits out a flood of two minutes, and is not sent again blind', async () => {
  const { call, of } = paced({ 0: [flood(110), { ok: false, error_code: 502, description: 'Bad Gateway' }] });
  const setting = call('setMyCommands', { chat_id: 0 }).catch(error => error);
  await vi.advanceTimersByTimeAsync(111_000);
  expect(await setting).toMatchObject({ error_code: 502 });
  expect(of(0)).toEqual([0, 110]);
});

test('at most 20 messages a minute reach a group, and one a second a person', async () => {
  const { send, of } = paced();
  for (let i = 0; i < 30; i++) void send(group.id);
  for (let i = 0; i < 5; i++) void send(sam.id);
  await vi.advanceTimersByTimeAsync(59_000);
  expect(of(group.id)).toHaveLength(20);
  const gaps = of(sam.id)
    .slice(1)
    .map((at, index) => at - present(of(sam.id)[index]));
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
