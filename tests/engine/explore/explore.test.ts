import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
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
const span = fc
  .tuple(...[1, 1, 1].map(() => fc.double({ min: 0.1, max: 50, noNaN: true })))
  .map(ends => [...ends].sort((a, b) => a - b) as [number, number, number]);

describe('explore', () => {
  test('one assumption: the range is its two ends', () => {
    const { figures } = explore([one('batteryCapacity', 90, 100, 120)], 'x', v => ({
      x: taken(v, 'batteryCapacity') / 2,
    }));
    expect(figures.x.value).toBe(50);
    expect(figures.x.low).toBeCloseTo(45, 9);
    expect(figures.x.high).toBeCloseTo(60, 9);
  });

  test('two independent ones add by root sum of squares, in logarithms', () => {
    const both = [one('age', 8, 10, 12.5), one('fullAt', 8, 10, 12.5)];
    const { figures } = explore(both, 'x', v => ({ x: taken(v, 'age') * taken(v, 'fullAt') }));
    expect(figures.x.high).toBeCloseTo(100 * Math.exp(Math.SQRT2 * Math.log(1.25)), 6);
    expect(figures.x.low).toBeCloseTo(100 * Math.exp(-Math.SQRT2 * Math.log(1.25)), 6);
  });

  test('where a figure may reach zero or below, it adds up plainly', () => {
    const both = [one('age', -3, 1, 5), one('fullAt', -4, 0, 3)];
    const { figures } = explore(both, 'x', v => ({ x: taken(v, 'age') + taken(v, 'fullAt') }));
    expect(figures.x.low).toBeCloseTo(1 - Math.hypot(4, 4), 9);
    expect(figures.x.high).toBeCloseTo(1 + Math.hypot(4, 3), 9);
  });

  test('the most influential comes first, what moves nothing is left out', () => {
    const list = [one('dirtLoss', 9, 10, 11), one('wiringLoss', 1, 2, 3), one('idleShare', 5, 10, 20)];
    const { ranked } = explore(list, 'x', v => ({ x: taken(v, 'dirtLoss') * taken(v, 'idleShare') }));
    expect(ranked.map(a => a.name)).toEqual(['idleShare', 'dirtLoss']);
    expect(present(ranked[0]).influence).toBeCloseTo(1.5, 9);
  });

  test('only the likely run is traced', () => {
    let traced = 0;
    explore([one('age', 1, 2, 3)], 'x', (v, trace) => {
      if (trace) traced++;
      return { x: taken(v, 'age') };
    });
    expect(traced).toBe(1);
  });

  test('an endless figure stays endless', () => {
    const { figures } = explore([one('age', 0, 0, 1)], 'x', () => ({ x: Infinity }));
    expect(figures.x).toEqual({ value: Infinity, low: Infinity, high: Infinity });
  });

  test('an assumption that was not declared is an error that names it', () => {
    expect(() => explore([], 'x', v => ({ x: taken(v, 'depthOfDischarge') }))).toThrow(/depthOfDischarge/);
  });

  test('ranges hold the value, and a positive figure stays positive', () => {
    fc.assert(
      fc.property(span, span, (a, b) => {
        const list = [one('age', ...a), one('fullAt', ...b)];
        const { x, y } = explore<'x' | 'y'>(list, 'x', v => ({
          x: taken(v, 'age') / taken(v, 'fullAt'),
          y: taken(v, 'age') - taken(v, 'fullAt'),
        })).figures;
        return x.low <= x.value && x.value <= x.high && x.low > 0 && y.low <= y.value && y.value <= y.high;
      }),
    );
  });
});

describe('backwards', () => {
  test('which depth makes four days of a fridge on 100 Ah', () => {
    expect(solveFor(96, 0, 1, depth => (100 * depth) / 1)).toBeCloseTo(0.96, 5);
  });

  test('falling calculations too', () => {
    expect(solveFor(20, 1, 100, amps => 100 / amps)).toBeCloseTo(5, 3);
  });

  test('out of reach is said, the ends are in reach', () => {
    expect(solveFor(101, 0, 1, x => 100 * x)).toBeUndefined();
    expect(solveFor(-1, 0, 1, x => 100 * x)).toBeUndefined();
    expect(solveFor(0, 0, 1, x => 100 * x)).toBe(0);
    expect(solveFor(100, 0, 1, x => 100 * x)).toBeCloseTo(1, 5);
  });
});
