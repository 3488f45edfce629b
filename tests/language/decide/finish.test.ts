import { describe, expect, test } from 'vitest';
import { askedTerm, termOf } from '#language/decide/asked-term.ts';
import { certainty } from '#language/decide/certainty.ts';
import { correctionOf } from '#language/decide/correction.ts';
import * as slot from '#language/propose/slots.ts';
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

test.for<[text: string, term: string | undefined]>([
  ['what does float mean on my charger', 'float'],
  ['wat does dod mean on a battery', 'dod'],
  ['mppt vs pwm whats the diff', 'mppt vs pwm'],
  ['On the back of the panel it says Voc. What is that?', 'voc'],
  ['The bloke at the shop went on about duty cycle. What is it?', 'duty cycle'],
  ['What on earth is an isolator?', 'isolator'],
  ['whats a busbar', 'busbar'],
  ['are the beers cold?', undefined],
])('of known words %s asks after %s', ([text, term]) => {
  expect(askedTerm(recognise(text).words)).toBe(term);
});

describe('what was put right', () => {
  const corrected = (text: string) => {
    return correctionOf(recognise(text).mentions);
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

test('a figure without a unit is put right in the unit of the role that it has', () => {
  const { mentions } = recognise('not 45: 38');
  const slots = mentions.map(() => slot.none);
  slots[mentions.findIndex(m => m.told === 38)] = slot.loadPower;
  expect(correctionOf(mentions, { slots })).toEqual({
    from: 45,
    to: 38,
    unit: 'W',
  });
});

test('certainty grows with what speaks for it and stays a share', () => {
  const weights = [0, 1, 2];
  expect(certainty(weights, [1, 0, 0])).toBeCloseTo(0.5, 9);
  expect(certainty(weights, [1, 1, 1])).toBeGreaterThan(certainty(weights, [1, 1, 0]));
  expect(certainty(weights, [1, 1000, 1000])).toBeLessThanOrEqual(1);
});
