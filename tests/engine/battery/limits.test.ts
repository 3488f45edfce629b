import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { cyclesAt, lifeAtTemperature, lifeEnergyWh } from '#engine/battery/life.ts';
import { bankResistanceOhm, chargeRateC, limitsOf, loadedVoltageV } from '#engine/battery/limits.ts';
import type { Chemistry } from '#rig/rig.ts';

const bank = (capacityAh: number, chemistry: Chemistry, count = 1) =>
  present(bankOf([{ count, capacityAh, chemistry }]));

describe('what a bank stands', () => {
  test('100 Ah of lithium gives 100 A, takes 50 A, and none below freezing', () => {
    expect(limitsOf(bank(100, 'lfp'))).toEqual({ dischargeA: 100, surgeA: 200, chargeA: 50 });
    expect(limitsOf(bank(100, 'lfp'), -1).chargeA).toBe(0);
    expect(limitsOf(bank(100, 'lfp'), 0).chargeA).toBe(10);
    expect(limitsOf(bank(100, 'lfp'), 4.9).chargeA).toBe(10);
    expect(limitsOf(bank(100, 'lfp'), 5).chargeA).toBe(20);
    expect(limitsOf(bank(100, 'lfp'), 15).chargeA).toBe(50);
    expect(limitsOf(bank(100, 'lfp'), 70).chargeA).toBe(0);
  });

  test('in the cold lithium gives half its amps, and nothing where its cells may not be used', () => {
    expect(limitsOf(bank(100, 'lfp'), -1)).toMatchObject({ dischargeA: 50, surgeA: 100 });
    expect(limitsOf(bank(100, 'lfp'), 0).dischargeA).toBe(100);
    expect(limitsOf(bank(100, 'lfp'), -25).dischargeA).toBe(0);
    expect(limitsOf(bank(100, 'lfp'), 61).dischargeA).toBe(0);
    const told = { ...bank(100, 'lfp'), maxCurrentA: 80 };
    expect(limitsOf(told, -10).dischargeA).toBe(40);
  });

  test('cold lead gives its amps by the share of its Ah: IEEE 485 at 10 °C', () => {
    expect(limitsOf(bank(100, 'agm'), 10).dischargeA).toBeCloseTo(100 / 1.19, 9);
  });

  test('lead-acid may be charged in the cold; flooded takes the least', () => {
    expect(chargeRateC({ chemistry: 'agm' }, -10)).toBe(0.3);
    expect(chargeRateC({ chemistry: 'flooded' })).toBeLessThan(chargeRateC({ chemistry: 'gel' }));
  });

  test('a bank of two stands twice as much', () => {
    const [one, two] = [limitsOf(bank(100, 'agm')), limitsOf(bank(100, 'agm', 2))];
    expect(two.dischargeA).toBe(2 * one.dischargeA);
    expect(two.chargeA).toBeCloseTo(2 * one.chargeA, 9);
  });
});

describe('volts under load', () => {
  test('100 A sag a 100 Ah AGM by its 9 mΩ, and by the cable', () => {
    const input = { bank: bank(100, 'agm'), restV: 12.6, currentA: 100 };
    expect(loadedVoltageV(input)).toBeCloseTo(11.7, 9);
    expect(loadedVoltageV({ ...input, cableOhm: 0.004 })).toBeCloseTo(11.3, 9);
    expect(loadedVoltageV({ ...input, blockMilliohm: 6 })).toBeCloseTo(12, 9);
  });

  test('two in series have twice the resistance of one, in parallel half', () => {
    const two = [{ count: 2, capacityAh: 100, chemistry: 'agm' as const }];
    const one = bankResistanceOhm(bank(100, 'agm'));
    expect(bankResistanceOhm(present(bankOf(two, 'series')))).toBeCloseTo(2 * one, 12);
    expect(bankResistanceOhm(present(bankOf(two, 'parallel')))).toBeCloseTo(one / 2, 12);
  });

  test('a bigger battery sags less', () => {
    fc.assert(
      fc.property(fc.double({ min: 10, max: 500, noNaN: true }), ah => {
        const at = (capacityAh: number) =>
          loadedVoltageV({ bank: bank(capacityAh, 'gel'), restV: 12.5, currentA: 50 });
        return at(ah * 1.1) > at(ah);
      }),
    );
  });
});

describe('life', () => {
  test('the published points are met, and between them it falls', () => {
    expect(cyclesAt('flooded', 0.8)).toBeCloseTo(225, 6);
    expect(cyclesAt('flooded', 0.5)).toBeCloseTo(750, 6);
    expect(cyclesAt('flooded', 0.65)).toBeCloseTo(Math.sqrt(225 * 750), 6);
    expect(cyclesAt('lfp', 0.25)).toBeCloseTo(16000, 6);
  });

  test('deeper is never more cycles', () => {
    for (const kind of ['agm', 'gel', 'flooded', 'lfp'] as const)
      for (let depth = 0.1; depth < 1; depth += 0.05)
        expect(cyclesAt(kind, depth + 0.05)).toBeLessThan(cyclesAt(kind, depth));
  });

  test('100 Ah of AGM at half depth gives 600 × 600 Wh', () => {
    expect(lifeEnergyWh({ chemistry: 'agm', capacityAh: 100, depth: 0.5 })).toBeCloseTo(360_000, 3);
  });

  test('heat halves the life of lead-acid every ten degrees, cold does not lengthen it', () => {
    expect(lifeAtTemperature(45)).toBeCloseTo(0.25, 9);
    expect(lifeAtTemperature(10)).toBe(1);
  });
});
