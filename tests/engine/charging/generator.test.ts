import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import {
  continuousAssumption,
  continuousW,
  generatorAssumptions,
  generatorRatingW,
  generatorSizeFor,
  startAssumption,
} from '#engine/charging/generator.ts';
import { dcdcSizeFor, recommendPath } from '#engine/charging/path.ts';

const values = (site = {}) =>
  Object.fromEntries([...generatorAssumptions(site), startAssumption].map(a => [a.name, a.value]));
const none = { chargerA: 0, chargeV: 14.4, loadW: 0, startW: 0 };

describe('what a generator must give', () => {
  test('a 40 A charger asks for about 830 VA, more with a poor power factor', () => {
    const duty = { ...none, chargerA: 40 };
    expect(generatorRatingW(duty, {}, values())).toBeCloseTo((40 * 14.4) / 0.87 / 0.8, 6);
    expect(generatorRatingW(duty, {}, { ...values(), powerFactor: 0.65 })).toBeGreaterThan(1000);
  });

  test('a heater asks for its watts, a motor for half of its start', () => {
    expect(generatorRatingW({ ...none, loadW: 1500, startW: 1500 }, {}, values())).toBeCloseTo(1500, 9);
    expect(generatorRatingW({ ...none, loadW: 1000, startW: 4000 }, {}, values())).toBeCloseTo(2000, 9);
    expect(generatorRatingW({ ...none, loadW: 1000, startW: 1500 }, {}, values())).toBeCloseTo(
      1000 / 0.85,
      6,
    );
  });

  test('height and heat ask for more, and multiply (trap 13)', () => {
    const duty = { ...none, loadW: 1000, startW: 1000 };
    const high = { altitudeM: 1500 };
    const both = { altitudeM: 1500, ambientC: 45 };
    expect(generatorRatingW(duty, high, values(high))).toBeCloseTo(1000 / (1 - 0.175), 6);
    expect(generatorRatingW(duty, both, values(both))).toBeCloseTo(1000 / (1 - 0.175) / 0.97, 6);
    expect(generatorAssumptions({ altitudeM: 100 }).map(a => a.name)).not.toContain('altitudeShare');
  });

  test('usual sizes', () => {
    // What is needed without a break is 85 % of what it is sold by.
    expect([500, 850, 860, 1700, 2000, 9100].map(w => generatorSizeFor(w))).toEqual([
      800, 1000, 1600, 2000, 2400, 11_000,
    ]);
    expect([500, 1700, 5000].map(w => generatorSizeFor(w, 7000))).toEqual([8000, 8000, 8000]);
    expect(generatorSizeFor(500, 800)).toBe(1000);
  });

  test('of the watts it is sold by it gives 85 % without a break, from 75 % to all', () => {
    expect(continuousW(600, { continuousShare: continuousAssumption.value })).toBeCloseTo(510, 9);
    expect(continuousW(600, { continuousShare: continuousAssumption.low })).toBeCloseTo(450, 9);
    expect(continuousW(600, { continuousShare: continuousAssumption.high })).toBeCloseTo(600, 9);
  });
});

describe('isolator or DC-DC', () => {
  test.for([
    ['lithium behind lead', { house: 'lfp' }, 'dcdc', 'lithium'],
    ['lithium on an old alternator', { house: 'lfp', alternator: 'fixed' }, 'dcdc', 'lithium'],
    ['a smart alternator', { house: 'agm', alternator: 'smart' }, 'dcdc', 'smart-alternator'],
    ['a long run', { house: 'agm', alternator: 'fixed', lengthM: 8 }, 'dcdc', 'long-run'],
    ['gel', { house: 'gel', alternator: 'fixed' }, 'dcdc', 'unlike-lead'],
    ['same kind, old alternator', { house: 'flooded', alternator: 'fixed' }, 'isolator', 'fixed-alternator'],
    ['the same, short', { house: 'agm', alternator: 'fixed', lengthM: 2 }, 'isolator', 'fixed-alternator'],
    ['nothing known', {}, 'dcdc', 'alternator-unknown'],
    [
      'lithium on lithium',
      { house: 'lfp', starter: 'lfp', alternator: 'fixed' },
      'isolator',
      'fixed-alternator',
    ],
  ] as const)('%s', ([, about, recommendation, first]) => {
    const path = recommendPath(about);
    expect(path.recommendation).toBe(recommendation);
    expect(path.reasons[0]).toBe(first);
  });

  test('a panel speaks for the box that takes it too, and never for an isolator', () => {
    expect(recommendPath({ house: 'lfp', hasSolar: true }).reasons).toContain('solar-input');
    expect(recommendPath({ house: 'agm', alternator: 'fixed', hasSolar: true }).recommendation).toBe(
      'isolator',
    );
  });

  test('usual sizes for a bank', () => {
    const size = (capacityAh: number, chemistry: 'agm' | 'lfp' | 'flooded') =>
      dcdcSizeFor(present(bankOf([{ count: 1, capacityAh, chemistry }])));
    expect([size(100, 'agm'), size(200, 'lfp'), size(100, 'flooded'), size(30, 'agm')]).toEqual([
      25, 50, 10, 10,
    ]);
  });
});
