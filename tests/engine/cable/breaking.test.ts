import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { type Bank, bankOf } from '#engine/battery/bank.ts';
import { fuseSource, fuseTypeFor, shortCircuitA, sourceOf } from '#engine/cable/breaking.ts';
import { fuseRatingsA } from '#engine/cable/fuse.ts';
import { batteryFuses } from '#engine/cable/fuse-kinds.ts';
import type { Battery, Chemistry } from '#rig/rig.ts';
import { draws } from '../../house/share.ts';

const seeded = { seed: 17, numRuns: draws(1000, 10_000) } as const;
const bank = (chemistry: Chemistry, capacityAh: number, voltageV = 12, count = 1): Bank =>
  present(bankOf([{ count, capacityAh, chemistry, voltageV }]));
const on = (ratingA: number, about: Bank | undefined, voltageV = 12) =>
  fuseTypeFor(ratingA, fuseSource(voltageV, about));

describe('what a bank drives into a short', () => {
  test.for<[says: string, about: Bank, amps: number]>([
    // 12.8 V ÷ 2 mΩ of 100 Ah.
    ['100 Ah lithium', bank('lfp', 100), 6400],
    ['two in parallel twice that', bank('lfp', 100, 12, 2), 12_800],
    ['24 V: twice the volts, twice the resistance', bank('lfp', 100, 24), 6400],
    ['100 Ah AGM: 12 V ÷ 5 mΩ', bank('agm', 100), 2400],
    ['100 Ah gel: 12 V ÷ 6 mΩ', bank('gel', 100), 2000],
    ['70 Ah flooded: 12 V ÷ 10 mΩ', bank('flooded', 70), 1200],
  ])('%s', ([, about, expected]) => expect(shortCircuitA(about)).toBeCloseTo(expected, 6));
});

describe('which kind', () => {
  test.for<[ratingA: number, about: Bank | undefined, voltageV: number, kind: string, behind?: string]>([
    [20, undefined, 12, 'blade'],
    [100, undefined, 12, 'small bolt-down'],
    [250, undefined, 24, 'large bolt-down'],
    [20, undefined, 48, 'blade marked 80 V'],
    [100, undefined, 48, 'bolt-down strip marked 80 V'],
    [250, bank('lfp', 200), 12, 'high-breaking, class T style'],
    [60, bank('lfp', 100, 48), 48, 'high-breaking, class T style'],
    [20, bank('lfp', 200), 12, 'blade', 'high-breaking, class T style'],
    [250, bank('agm', 200), 12, 'bolt-down strip'],
    [250, bank('flooded', 100), 12, 'large bolt-down'],
    [20, bank('flooded', 50), 12, 'blade'],
    [20, bank('agm', 100), 12, 'blade', 'bolt-down strip'],
    [600, undefined, 12, 'bolt-down strip'],
    [900, undefined, 12, 'high-breaking, class T style'],
  ])('%i A on %j at %i V: %s', ([ratingA, about, voltageV, kind, behind]) => {
    const type = on(ratingA, about, voltageV);
    expect(type.kind.name).toBe(kind);
    expect(type.behind?.name).toBe(behind);
  });

  test('more than even the best breaks is said', () => {
    expect(on(250, bank('lfp', 312)).isTooStrong).toBe(false);
    expect(on(250, bank('lfp', 313)).isTooStrong).toBe(true);
    expect(on(20, bank('lfp', 600))).toMatchObject({ isTooStrong: true, kind: { name: 'blade' } });
  });

  test('volts are those of a full bank on charge: the larger of what is told and what the batteries make', () => {
    expect(fuseSource(12).fullV).toBeCloseTo(14.8, 9);
    expect(fuseSource(48).fullV).toBeCloseTo(59.2, 9);
    expect(fuseSource(12, bank('lfp', 100, 24)).fullV).toBeCloseTo(29.6, 9);
    expect(fuseSource(24, bank('agm', 100)).fullV).toBeCloseTo(29.6, 9);
    const four: Battery[] = [{ count: 4, capacityAh: 100, chemistry: 'lfp' }];
    expect(sourceOf({ batteries: four, systemVoltageV: 48 }, 48)).toEqual({
      fullV: expect.closeTo(59.2, 9),
      shortA: expect.closeTo(6400, 6),
    });
    expect(sourceOf({}, 12)).toEqual({ fullV: expect.closeTo(14.8, 9), shortA: undefined });
  });

  test('what sits on a bank stands its volts, and breaks its short unless it is said to be too strong', () => {
    const chemistry = fc.constantFrom<Chemistry>('agm', 'gel', 'flooded', 'lfp', 'lead-acid');
    fc.assert(
      fc.property(
        fc.constantFrom(...fuseRatingsA),
        chemistry,
        fc.double({ min: 5, max: 900, noNaN: true }),
        fc.constantFrom(12, 24, 48),
        (ratingA, kind, ah, voltageV) => {
          const source = fuseSource(voltageV, bank(kind, ah, voltageV));
          const { kind: fuse, behind, isTooStrong } = fuseTypeFor(ratingA, source);
          const first = behind ?? fuse;
          expect(fuse.mostV).toBeGreaterThanOrEqual(source.fullV);
          expect(first.mostV).toBeGreaterThanOrEqual(source.fullV);
          expect(first.breaksA >= present(source.shortA)).toBe(!isTooStrong);
          expect(fuse.fromA <= ratingA && ratingA <= fuse.toA).toBe(true);
          expect(batteryFuses).toContain(first);
        },
      ),
      seeded,
    );
  });
});
