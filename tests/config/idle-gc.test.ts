import { expect, test, vi } from 'vitest';
import { IdleGc } from '../../src/idle-gc.ts';

const second = 1_000_000;

/** A bot whose CPU time goes up as told, with what was collected when. */
function bot() {
  let used = 0;
  let collected = 0;
  const giveBack = new IdleGc({
    collect: async () => void collected++,
    usedUs: () => used,
    everyMs: 5000,
  });
  const look = async (share: number): Promise<number> => {
    used += share * 5 * second;
    await giveBack.look();
    return collected;
  };
  return { look };
}

test('after the start, and once after each rush, when nothing goes on any more', async () => {
  const { look } = bot();
  expect(await look(0.3)).toBe(0);
  expect(await look(0)).toBe(1);
  expect(await look(0.001)).toBe(1);
  expect(await look(0.8)).toBe(1);
  expect(await look(0.4)).toBe(1);
  expect(await look(0.002)).toBe(2);
  expect(await look(0)).toBe(2);
});

test('what collecting itself costs is no rush', async () => {
  let used = 0;
  let collected = 0;
  const collect = async () => {
    collected++;
    used += 0.2 * second;
  };
  const giveBack = new IdleGc({ collect, usedUs: () => used, everyMs: 5000 });
  for (let i = 0; i < 4; i++) await giveBack.look();
  expect(collected).toBe(1);
});

test('after the start it need not be silent for long, later it does', async () => {
  vi.useFakeTimers();
  try {
    let used = 0;
    let collected = 0;
    const collect = async () => void collected++;
    new IdleGc({ collect, usedUs: () => used, everyMs: 5000, firstEveryMs: 150 }).start();
    used += 0.1 * second;
    await vi.advanceTimersByTimeAsync(160);
    expect(collected).toBe(0);
    await vi.advanceTimersByTimeAsync(160);
    expect(collected).toBe(1);
    used += 1 * second;
    await vi.advanceTimersByTimeAsync(5000);
    expect(collected).toBe(1);
    await vi.advanceTimersByTimeAsync(4000);
    expect(collected).toBe(1);
    await vi.advanceTimersByTimeAsync(2000);
    expect(collected).toBe(2);
  } finally {
    vi.useRealTimers();
  }
});

test('the engine has such a collector', async () => {
  const giveBack = new IdleGc({ usedUs: () => 0 });
  await expect(giveBack.look()).resolves.toBe(true);
});
