import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { VolatileStore } from '#memory/volatile/store.ts';
import { Turns } from '#telegram/delivery/turns.ts';
import { pauseLine } from '#telegram/updates/arriving/limits.ts';
import { stage } from './fake/bot.ts';
import { alone, group, kim, message, nowSec, update } from './fake/people.ts';

describe('turns', () => {
  test('a second between two messages to a chat; of a group twenty a minute; chats apart', () => {
    let now = 0;
    const turns = new Turns(() => now);
    expect(turns.leftMs(5)).toBe(0);
    turns.take(5);
    expect([turns.leftMs(5), turns.leftMs(6)]).toEqual([1000, 0]);
    now = 999;
    expect(turns.leftMs(5)).toBe(1);
    for (let i = 0; i < 20; i++) {
      now = 10_000 + i * 1000;
      expect([turns.leftMs(-5), turns.leftMs(7)]).toEqual([0, 0]);
      turns.take(-5);
      turns.take(7);
    }
    now = 30_000;
    expect([turns.leftMs(-5), turns.leftMs(7)]).toEqual([40_000, 0]);
    now = 70_000;
    expect(turns.leftMs(-5)).toBe(0);
  });
});

describe('one who floods, at Telegram’s pace', () => {
  beforeEach(() => {
    vi.useFakeTimers({ now: nowSec * 1000 });
  });
  afterEach(() => {
    vi.useRealTimers();
  });
  const asking = (text: string, more: object) => update({ message: message(text, more as never) as never });
  const staged = (store = new VolatileStore()) => {
    const clock = {
      get now() {
        return Date.now();
      },
    };
    return stage({ store, settings: { isPaced: true }, clock });
  };
  const numbers = (s: ReturnType<typeof staged>) =>
    s.answers(alone.id).flatMap(({ text }) => /fridge (\d+)/.exec(text ?? '')?.[1] ?? []);

  test('every update is done with at once, and the answers go out one a second, in order', async () => {
    const s = staged();
    const all = Array.from({ length: 12 }, (_, i) => s.give(asking(`fridge ${i}`, { chat: alone })));
    await vi.advanceTimersByTimeAsync(100);
    await Promise.all(all);
    expect(numbers(s)).toEqual(['0']);
    await s.give(asking('/power mine', { from: kim }));
    expect(s.answers(group.id)).toHaveLength(1);
    await vi.advanceTimersByTimeAsync(5000);
    expect(numbers(s)).toEqual(['0', '1', '2', '3', '4', '5']);
    await s.give(asking('fridge 99', { chat: alone }));
    await vi.advanceTimersByTimeAsync(10_000);
    expect(numbers(s)).toEqual([...Array.from({ length: 12 }, (_, i) => String(i)), '99']);
    expect(await s.store.due()).toEqual([]);
  });

  test('stopped meanwhile: the next process says what is left, once, and looks for nothing', async () => {
    const store = new VolatileStore();
    const first = staged(store);
    await Promise.all(
      Array.from({ length: 6 }, (_, i) => first.give(asking(`fridge ${i}`, { chat: alone }))),
    );
    expect(await store.due()).toHaveLength(5);
    // Its timers die with it.
    vi.clearAllTimers();
    const next = stage({ store, world: first.world, settings: { isPaced: true } });
    await vi.advanceTimersByTimeAsync(2000);
    void (next.bot as unknown as { resume(): Promise<void> }).resume();
    next.clock.now += 2000;
    for (let i = 0; i < 12; i++) {
      next.clock.now += 1000;
      await vi.advanceTimersByTimeAsync(1000);
    }
    expect(numbers(first)).toEqual(['0', '1', '2', '3', '4', '5']);
    expect(first.world.sent('editMessageText')).toEqual([]);
    expect(await store.due()).toEqual([]);
  });

  test('past the limit one line asks for a pause', async () => {
    const s = staged();
    for (let i = 0; i < 60; i++) void s.give(asking(`fridge ${i}`, { chat: alone }));
    await vi.advanceTimersByTimeAsync(59_000);
    expect(numbers(s)).toHaveLength(30);
    expect(s.answers(alone.id).filter(({ text }) => text === pauseLine)).toHaveLength(1);
  });
});
