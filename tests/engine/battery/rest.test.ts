import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blocksOf, chargeAtRest, isOnCharge, restVoltsAt } from '#engine/battery/rest.ts';
import type { Chemistry } from '#rig/rig.ts';
import { Trace } from '#rule/trace.ts';

const kinds: readonly Chemistry[] = ['agm', 'gel', 'flooded', 'lead-acid', 'lfp'];

describe('how full by resting volts', () => {
  test.for<[kind: Chemistry, volts: number, min: number, max: number]>([
    ['flooded', 12.5, 80, 90],
    ['flooded', 12.0, 25, 35],
    ['flooded', 12.2, 50, 60],
    ['agm', 12.8, 90, 98],
    ['agm', 12.2, 38, 50],
    ['lead-acid', 12.2, 45, 55],
    ['gel', 12.3, 45, 55],
    ['lfp', 13.1, 35, 55],
    ['lfp', 12.5, 5, 12],
    ['flooded', 9, 0, 0],
    ['agm', 13.1, 100, 100],
  ])('%s at %s V: %s to %s %%', ([kind, volts, min, max]) => {
    const { value } = chargeAtRest(volts, kind);
    expect(value).toBeGreaterThanOrEqual(min);
    expect(value).toBeLessThanOrEqual(max);
  });

  test.for([
    [6.1, 0.5],
    [12.2, 1],
    [14.4, 1],
    [24.4, 2],
    [26.6, 2],
    [49, 4],
    [53, 4],
  ] as const)('%s V are %s blocks of 12 V', ([volts, blocks]) => {
    expect(blocksOf(volts)).toBe(blocks);
    expect(chargeAtRest(volts, 'agm').value).toBeCloseTo(chargeAtRest(volts / blocks, 'agm').value, 9);
  });

  test('more volts are never less charge, and the span holds the value', () => {
    fc.assert(
      fc.property(fc.constantFrom(...kinds), fc.double({ min: 9, max: 15, noNaN: true }), (kind, volts) => {
        const a = chargeAtRest(volts, kind);
        const b = chargeAtRest(volts + 0.05, kind);
        const holds = 0 <= a.low && a.low <= a.value && a.value <= a.high && a.high <= 100;
        return holds && b.value >= a.value;
      }),
    );
  });

  test('the table reads the same both ways', () => {
    for (const kind of kinds)
      for (const percent of [5, 20, 37, 50, 80, 99])
        expect(chargeAtRest(restVoltsAt(percent, kind), kind).value).toBeCloseTo(percent, 6);
    expect(restVoltsAt(-5, 'agm')).toBe(restVoltsAt(0, 'agm'));
    expect(restVoltsAt(140, 'agm')).toBe(restVoltsAt(100, 'agm'));
  });

  test('between the ends the span is open on both sides', () => {
    for (const kind of kinds) {
      const { low, value, high } = chargeAtRest(restVoltsAt(50, kind), kind);
      expect(low).toBeLessThan(value - 2);
      expect(high).toBeGreaterThan(value + 2);
    }
  });

  test('lithium’s span is wider than lead’s: its volts are a poor gauge', () => {
    const spread = (kind: Chemistry, volts: number) => {
      const { low, high } = chargeAtRest(volts, kind);
      return high - low;
    };
    expect(spread('lfp', 13.15)).toBeGreaterThan(spread('flooded', 12.2));
  });

  test('volts that no battery holds at rest come from a charger', () => {
    expect(isOnCharge(14.2, 'agm')).toBe(true);
    expect(isOnCharge(13.2, 'lead-acid')).toBe(true);
    expect(isOnCharge(12.8, 'agm')).toBe(false);
    expect(isOnCharge(13.3, 'lfp')).toBe(false);
    expect(isOnCharge(14.2, 'lfp')).toBe(true);
    expect(isOnCharge(28.4, 'agm')).toBe(true);
    expect(isOnCharge(25.4, 'agm')).toBe(false);
  });

  test('the reading stands in the working', () => {
    const trace = new Trace();
    chargeAtRest(12.4, 'agm', trace);
    expect(trace.steps).toMatchObject([{ kind: 'lookup', name: 'stateOfCharge', unit: '%' }]);
  });
});
