import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { bankAssumptions } from '#engine/battery/usable.ts';

test('a power bank’s 20 Ah are at the 3.7 V of its cells: 74 Wh, 5.8 Ah at 12.8 V', () => {
  const bank = bankOf([{ count: 1, capacityAh: 20, isOfCell: true }]);
  expect(bank?.isOfCell).toBe(true);
  expect(bank?.chemistry).toBe('lfp');
  expect(bank?.capacityAh).toBeCloseTo((20 * 3.7) / 12.8, 9);
});

test('beside a battery of 12 V the whole is none', () => {
  const both = bankOf([
    { count: 1, capacityAh: 20, isOfCell: true },
    { count: 1, capacityAh: 100, chemistry: 'lfp' },
  ]);
  expect(both).not.toHaveProperty('isOfCell');
  expect(both?.capacityAh).toBeCloseTo(100 + (20 * 3.7) / 12.8, 9);
});

test('what is taken of it is taken of a power bank: 85 % of its label, between 80 and 90', () => {
  const bank = present(bankOf([{ count: 1, capacityAh: 20, isOfCell: true }]));
  expect(bankAssumptions(bank)[0]).toMatchObject({
    name: 'depthOfDischarge',
    value: 0.85,
    low: 0.8,
    high: 0.9,
    why: 'a power bank, common practice',
  });
});
