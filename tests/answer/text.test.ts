import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { duration, list, quarters, span } from '#answer/say.ts';
import { amount, cut, print, textLimit } from '#answer/text.ts';

describe('numbers as a person says them', () => {
  test.each([
    [0.1, '6 minutes'],
    [0.75, '45 minutes'],
    [2.3, 'about 2¼ hours'],
    [17, 'about 17 hours'],
    [41.7, 'about 1¾ days'],
    [50, 'about 2 days'],
    [300, 'about 13 days'],
    [Number.POSITIVE_INFINITY, 'for ever'],
  ])('%f h is %s', (hours, said) => expect(duration(hours)).toBe(said));

  test.each([
    [0.5, '½'],
    [1.74, '1¾'],
    [2.95, '3'],
    [0.1, '0'],
  ])('%f is %s', (value, said) => expect(quarters(value)).toBe(said));

  test('a span with one number is said once', () => {
    expect(span(36.2, 48.4, 'h')).toBe('36–48 h');
    expect(span(36.1, 36.3, 'h')).toBe('36 h');
  });

  test('a list', () => expect(list(['a fan', 'lights', 'the pump'])).toBe('a fan, lights and the pump'));

  test.each([
    [0.5, '', '50 %'],
    [1.1, '', '1.1'],
    [12.8, 'V', '12.8 V'],
    [80, '%', '80 %'],
  ])('%f %s reads %s', (value, unit, said) => expect(amount(value, unit)).toBe(said));
});

describe('the reply on a screen', () => {
  const reply = {
    headline: 'It lasts about 2 days.',
    assumed: ['a', 'b', 'c'].map(name => ({ name, value: 0.5, unit: '', why: 'common practice' })),
    working: () => [
      { name: 'x', formula: 'I = P ÷ V = 60 W ÷ 12 V', value: 5, unit: 'A', source: 'definition' },
    ],
    cautions: ['medical', 'medical'] as const,
  };

  test('answer first, two assumptions, each caution once, no working unasked', () => {
    const text = print(reply);
    expect(text.split('\n')[0]).toBe('It lasts about 2 days.');
    expect(text).toContain('a 50 %');
    expect(text).not.toContain('c 50 %');
    expect(text.match(/Careful/g)).toHaveLength(1);
    expect(text).not.toContain('÷');
  });

  test('working on request', () =>
    expect(print(reply, { isWorkingShown: true })).toContain('60 W ÷ 12 V = 5 A'));

  test('never over the limit, never half a character', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 9000 }), text => {
        const shown = cut(text.repeat(3));
        expect(shown.length).toBeLessThanOrEqual(textLimit);
        expect(shown.isWellFormed()).toBe(true);
      }),
      { numRuns: 50 },
    );
  });
});
