import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { featuresOf, meaningOf } from '#language/hazards/features.ts';
import { guises } from './guises.ts';

const noTalk: ReadonlySet<string> = new Set();
const shown = (text: string): readonly string[] => [...featuresOf(meaningOf(text), noTalk)];
const texts = Object.values(guises).flat();
const timed = (run: () => void): number => {
  const start = performance.now();
  run();
  return performance.now() - start;
};

test('a text four times as long takes about four times as long', () => {
  const long = Array.from({ length: 40 }, (_, i) => present(texts[i % texts.length])).join(' ');
  const best = (text: string): number =>
    Math.min(...Array.from({ length: 7 }, () => timed(() => shown(text))));
  shown(long);
  const [short, four] = [best(long.slice(0, 1000)), best(long.slice(0, 4000))];
  expect(four).toBeLessThan(short * 12 + 2);
});

test('the same text shows the same, whatever was read before', () => {
  const once = texts.map(text => shown(text));
  expect(
    texts
      .toReversed()
      .map(text => shown(text))
      .toReversed(),
  ).toEqual(once);
});
