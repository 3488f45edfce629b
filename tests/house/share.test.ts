import { expect, test } from 'vitest';
import { seedOf, shareOf } from './share.ts';

const texts = Array.from({ length: 20_000 }, (_, i) => `fridge ${i} W, 100 Ah, how long?`);

test.skipIf(process.env.WHOLE === 'yes')('a share is as large as it says, and the same each time', () => {
  const share = shareOf(texts, 20);
  expect(share.length).toBeGreaterThan(850);
  expect(share.length).toBeLessThan(1150);
  expect(shareOf(texts, 20)).toEqual(share);
});

test.skipIf(process.env.WHOLE === 'yes')('one more text turns it to others', () => {
  const before = new Set(shareOf(texts, 20));
  const after = shareOf([...texts, 'one more'], 20);
  const kept = after.filter(text => before.has(text));
  expect(kept.length).toBeLessThan(0.15 * after.length);
});

test('a seed hangs on each text and where it ends', () => {
  expect(seedOf(['ab', 'c'])).not.toBe(seedOf(['a', 'bc']));
  expect(seedOf(['ab'])).toBe(seedOf(['ab']));
});
