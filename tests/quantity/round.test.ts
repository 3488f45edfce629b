import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decimals } from '#quantity/round.ts';

const formatters = [0, 1, 2, 3, 4].map(
  digits => new Intl.NumberFormat('en-AU', { maximumFractionDigits: digits, useGrouping: 'min2' }),
);

test('the short way to write a number writes what the formatter does, halves of the last digit among them', () => {
  const halves = fc
    .tuple(fc.integer({ min: 0, max: 200_000 }), fc.integer({ min: 0, max: 4 }))
    .map(([n, digits]) => (n + 0.5) / 10 ** digits);
  const values = fc.oneof(fc.double({ min: -20_000, max: 20_000, noNaN: true }), halves);
  fc.assert(
    fc.property(values, fc.integer({ min: 0, max: 4 }), (value, digits) => {
      expect(decimals(value, digits)).toBe(formatters[digits]?.format(value === 0 ? 0 : value));
    }),
    { numRuns: 2000 },
  );
});
