import { describe, expect, test } from 'vitest';
import { certainty } from '#language/decide/certainty.ts';
import { correctionOf, termOf } from '#language/decide/finish.ts';
import { recognise } from '#language/recognise/recognise.ts';

test.for<[text: string, term: string | undefined]>([
  ['what is an amp hour?', 'amp hour'],
  ["what's a shunt", 'shunt'],
  ['explain depth of discharge please', 'depth of discharge'],
  ['meaning of mppt', 'mppt'],
  ['hello', undefined],
])('%s asks after %s', ([text, term]) => {
  expect(termOf(recognise(text).words)).toBe(term);
});

describe('what was put right', () => {
  const corrected = (text: string) => {
    const recognised = recognise(text);
    return correctionOf(recognised.mentions, recognised);
  };
  test.for<[text: string, correction: object | undefined]>([
    ['120 Ah, not 100', { from: 100, to: 120, unit: 'Ah' }],
    ['sorry, 800 W', { to: 800, unit: 'W' }],
    ['not 3 but 5 days', { from: 3, to: 5, unit: 'days' }],
    ['fridge 2 A, 100 Ah', undefined],
    ['sorry', undefined],
  ])('%s', ([text, correction]) => {
    expect(corrected(text)).toEqual(correction);
  });
});

test('certainty grows with what speaks for it and stays a share', () => {
  const weights = [0, 1, 2];
  expect(certainty(weights, [1, 0, 0])).toBeCloseTo(0.5, 9);
  expect(certainty(weights, [1, 1, 1])).toBeGreaterThan(certainty(weights, [1, 1, 0]));
  expect(certainty(weights, [1, 1000, 1000])).toBeLessThanOrEqual(1);
});
