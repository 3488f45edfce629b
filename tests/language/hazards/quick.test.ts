import { expect, test } from 'vitest';
import { hazardsIn } from '#language/hazards/recognise.ts';
import { guises } from './guises.ts';

const texts = Object.values(guises).flat();
const timed = (run: () => void): number => {
  const start = performance.now();
  run();
  return performance.now() - start;
};

test('a text four times as long takes about four times as long', () => {
  const long = Array.from({ length: 40 }, (_, i) => texts[i % texts.length]!).join(' ');
  const best = (text: string): number =>
    Math.min(...Array.from({ length: 7 }, () => timed(() => hazardsIn(text))));
  hazardsIn(long);
  const [short, four] = [best(long.slice(0, 1000)), best(long.slice(0, 4000))];
  expect(four).toBeLessThan(short * 12 + 2);
});

test('the same text has the same dangers, whatever was read before', () => {
  const once = texts.map(text => hazardsIn(text));
  expect(
    texts
      .toReversed()
      .map(text => hazardsIn(text))
      .toReversed(),
  ).toEqual(once);
});
