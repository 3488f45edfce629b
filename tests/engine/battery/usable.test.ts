import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { type Bank, bankOf } from '#engine/battery/bank.ts';
import { nextUsualSize, requiredCapacityAh } from '#engine/battery/required.ts';
import { bankAssumptions, temperatureFactor, usableCapacityAh } from '#engine/battery/usable.ts';
import type { Chemistry } from '#rig/rig.ts';

const bank = (capacityAh: number, chemistry: Chemistry): Bank =>
  present(bankOf([{ count: 1, capacityAh, chemistry }]));
const likely = (of: Bank) => Object.fromEntries(bankAssumptions(of).map(a => [a.name, a.value]));
const usable = (of: Bank, currentA: number, temperatureC?: number) =>
  usableCapacityAh({ bank: of, currentA, temperatureC }, likely(of));

const kinds = fc.constantFrom<Chemistry>('agm', 'gel', 'flooded', 'lfp', 'lead-acid');
const size = fc.double({ min: 5, max: 800, noNaN: true });
const amps = fc.double({ min: 0, max: 300, noNaN: true });
const air = fc.double({ min: -20, max: 50, noNaN: true });

describe('usable capacity', () => {
  test.for<[kind: Chemistry, want: number]>([
    ['agm', 50],
    ['gel', 50],
    ['flooded', 50],
    ['lead-acid', 50],
    ['lfp', 80],
  ])('100 Ah %s at its rating gives %s Ah (common practice)', ([kind, want]) => {
    expect(usable(bank(100, kind), 5)).toBeCloseTo(want, 9);
  });

  test('a depth that the person names is taken as said, both ends', () => {
    const depth = present(bankAssumptions(bank(100, 'lfp'), 100).find(a => a.name === 'depthOfDischarge'));
    expect(depth).toMatchObject({ value: 1, low: 1, high: 1, why: 'as you said' });
  });

  test('the rate counts from the rated current up: 20 A from a 100 Ah AGM leaves (5 ÷ 20)^0.1', () => {
    expect(usable(bank(100, 'agm'), 20)).toBeCloseTo(50 * 0.25 ** 0.1, 9);
    expect(usable(bank(100, 'agm'), 4.9)).toBeCloseTo(50, 9);
  });

  test('never more than the label, and less the faster, the colder, the smaller', () => {
    fc.assert(
      fc.property(kinds, size, amps, air, (kind, ah, a, t) => {
        const one = usable(bank(ah, kind), a, t);
        return (
          one > 0 &&
          one <= ah &&
          usable(bank(ah, kind), a * 1.5 + 1, t) <= one &&
          usable(bank(ah, kind), a, t - 5) <= one &&
          usable(bank(ah * 1.2, kind), a, t) > one
        );
      }),
    );
  });

  test('each chemistry states a range that holds its likely value', () => {
    for (const kind of ['agm', 'gel', 'flooded', 'lfp'] as const)
      for (const { low, value, high, why } of bankAssumptions(bank(100, kind))) {
        expect(low).toBeLessThanOrEqual(value);
        expect(high).toBeGreaterThanOrEqual(value);
        expect(why).not.toBe('');
      }
  });
});

describe('cold', () => {
  test.for<[kind: Chemistry, at: number, share: number]>([
    ['agm', 25, 1],
    ['agm', 40, 1],
    ['agm', 10, 1 / 1.19],
    ['flooded', -3.9, 1 / 1.52],
    ['flooded', -20, 1 / 1.52],
    ['agm', 7.2, 1 / 1.25],
    ['lfp', 25, 1],
    ['lfp', 15, 1],
    ['lfp', 0, 0.85],
    ['lfp', -60, 0.5],
  ])('%s at %s °C keeps %s of its label', ([kind, at, share]) => {
    expect(temperatureFactor({ chemistry: kind }, at)).toBeCloseTo(share, 9);
  });

  test('between two rows of the table it runs straight', () => {
    const half = 1 / temperatureFactor({ chemistry: 'agm' }, (10 + 12.8) / 2);
    expect(half).toBeCloseTo((1.19 + 1.15) / 2, 9);
  });
});

describe('the capacity that a need asks for', () => {
  test.for<[need: number, kind: Chemistry, want: number]>([
    [50, 'agm', 100],
    [96, 'agm', 192],
    [80, 'lfp', 100],
  ])('%s Ah to use of %s takes %s Ah', ([needAh, chemistry, want]) => {
    const values = likely(bank(100, chemistry));
    expect(requiredCapacityAh({ needAh, chemistry, currentA: 2 }, values)).toBeCloseTo(want, 9);
  });

  test('put back in, it gives the need again, at any current and temperature', () => {
    fc.assert(
      fc.property(kinds, size, amps, air, (chemistry, needAh, currentA, temperatureC) => {
        const values = likely(bank(100, chemistry));
        const labelAh = requiredCapacityAh({ needAh, chemistry, currentA, temperatureC }, values);
        const back = usable(bank(labelAh, chemistry), currentA, temperatureC);
        return Math.abs(back - needAh) < 1e-6 * needAh;
      }),
    );
  });

  test.for<[need: number, kind: Chemistry, count: number, size: number]>([
    [31, 'lfp', 1, 50],
    [100, 'agm', 1, 100],
    [108, 'lfp', 1, 120],
    [261, 'agm', 2, 150],
    [310, 'lfp', 2, 200],
    [1000, 'agm', 4, 260],
  ])('%s Ah of %s: buy %s × %s Ah', ([need, kind, count, sizeAh]) => {
    expect(nextUsualSize(need, kind)).toEqual({ count, sizeAh });
  });
});
