import { expect, test } from 'vitest';
import { dangerFeatures, dangersBy } from '#language/decide/dangers.ts';
import { frameOf } from '#language/decide/frame.ts';
import { meaningFeatures } from '#language/decide/message.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { net, smallModel } from './small-model.ts';

const signsOf = (text: string, asMessage: readonly number[]) => ({
  frame: frameOf(recognise(text).mentions),
  stated: {},
  text,
  meanings: meaningFeatures(text),
  asMessage: Float64Array.from(asMessage),
});
const featuresIn = (text: string): Set<number> => {
  const { frame, stated, meanings } = signsOf(text, []);
  const out: number[] = [];
  dangerFeatures(frame, stated, text, meanings, out);
  return new Set(out);
};
/** A net of two dangers and none. */
const dangers = net(3, { 0: 2, 1: 0, 2: 0 });

test('without a net of its own a danger is as likely as to the message’s', () => {
  const signs = signsOf('fridge 2A', [0.7, 0.1, 0.2]);
  expect(dangersBy(smallModel({}), signs)).toBe(signs.asMessage);
});

test('is as likely as both nets hold it', () => {
  const model = { ...smallModel({}), dangers };
  const likeliest = Math.exp(2) / (Math.exp(2) + 2);
  const own = [likeliest, (1 - likeliest) / 2, (1 - likeliest) / 2];
  const alike = dangersBy(model, signsOf('fridge 2A', own));
  for (const [k, p] of own.entries()) expect(alike[k]).toBeCloseTo(p, 6);
  const torn = dangersBy(model, signsOf('fridge 2A', [0.05, 0.05, 0.9]));
  expect(torn[0]).toBeGreaterThan(0.05);
  expect(torn[0]).toBeLessThan(likeliest);
  expect([...torn].reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
});

test('two meanings together say more than each by itself', () => {
  const both = featuresIn('generator in the tent');
  const apart = new Set([...featuresIn('generator in the'), ...featuresIn('the tent')]);
  const more = [...both].filter(feature => !apart.has(feature));
  expect(more.length).toBeGreaterThan(0);
  // In whatever order they come.
  const turned = featuresIn('in the tent generator');
  expect(more.some(feature => turned.has(feature))).toBe(true);
});
