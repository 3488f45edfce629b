import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import type { Assumption, AssumptionName } from '#engine/assumption.ts';
import { explore, solveFor, taken } from '#engine/explore.ts';

const one = (name: AssumptionName, low: number, value: number, high: number): Assumption => ({
  name,
  low,
  value,
  high,
  unit: '',
  why: 'a test',
});

test('a figure of nought has plain ends', () => {
  const { figures } = explore([one('age', 0, 0, 3)], 'x', v => ({ x: taken(v, 'age') }));
  expect(figures.x).toEqual({ value: 0, low: 0, high: 3 });
});

test('where one end is nought, moves add up plainly, below nought if need be', () => {
  const list = [one('age', 0, 4, 4), one('fullAt', 2, 5, 5)];
  const { figures } = explore(list, 'x', v => ({ x: (taken(v, 'age') * taken(v, 'fullAt')) / 4 }));
  // 5, down by 5 and by 3.
  expect(figures.x.low).toBeCloseTo(5 - Math.hypot(5, 3), 9);
  expect(figures.x.high).toBe(5);
});

test('the same where it is the high end at which the figure is nought', () => {
  // 10 A less what is used: 4 A likely, 0 to 10 A; and a second that lifts it to 8 A.
  const list = [one('age', 0, 6, 10), one('fullAt', 1, 1, 2)];
  const { figures } = explore(list, 'x', v => ({ x: (10 - taken(v, 'age')) * taken(v, 'fullAt') }));
  expect(figures.x.low).toBeCloseTo(0, 9);
  expect(figures.x.high).toBeCloseTo(4 + Math.hypot(6, 4), 9);
});

test('an end that is the likely value is not computed anew', () => {
  let runs = 0;
  explore([one('age', 1, 1, 2), one('fullAt', 3, 3, 3)], 'x', v => {
    runs++;
    return { x: taken(v, 'age') * taken(v, 'fullAt') };
  });
  expect(runs).toBe(2);
});

test('influence is the whole spread over the likely figure', () => {
  const { ranked } = explore([one('age', 8, 10, 15)], 'x', v => ({ x: -taken(v, 'age') }));
  expect(present(ranked[0]).influence).toBeCloseTo(0.7, 9);
});

test('backwards in some twenty runs, to a millionth of the span, falling as well as rising', () => {
  let runs = 0;
  const rising = (x: number) => {
    runs++;
    return x ** 3;
  };
  expect(Math.abs(present(solveFor(27, 0, 100, rising)) - 3)).toBeLessThan(1e-4);
  expect(runs).toBeLessThan(32);
  runs = 0;
  expect(Math.abs(present(solveFor(27, 100, 1000, x => rising(x) / 1e6)) - 300)).toBeLessThan(1e-3);
  expect(runs).toBeLessThan(32);
  expect(Math.abs(present(solveFor(4, 1, 100, x => 100 / x)) - 25)).toBeLessThan(1e-4);
  // Of the span, however far from nought it lies.
  expect(Math.abs(present(solveFor(1000.3, 1000, 1001, x => x)) - 1000.3)).toBeLessThan(1e-6);
});

test('the ends themselves count', () => {
  expect(solveFor(0, 0, 8, x => x)).toBe(0);
  expect(present(solveFor(8, 0, 8, x => x))).toBeCloseTo(8, 4);
  expect(present(solveFor(1, 1, 100, x => 100 / x))).toBeCloseTo(100, 3);
  expect(solveFor(100, 1, 100, x => 100 / x)).toBe(1);
  expect(solveFor(8.001, 0, 8, x => x)).toBeUndefined();
  expect(solveFor(-0.001, 0, 8, x => x)).toBeUndefined();
});
