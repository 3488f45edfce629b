import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { limitsOf } from '#engine/battery/limits.ts';
import { bankAssumptions, knownAge } from '#engine/battery/usable.ts';
import { fitsBank } from '#engine/inverter/check.ts';
import { startingW } from '#engine/inverter/watts.ts';
import { dailyUseAh } from '#engine/loads/model.ts';

const lfp = (rest: object) => present(bankOf([{ count: 1, capacityAh: 100, chemistry: 'lfp', ...rest }]));

describe('a limit told', () => {
  test('is the limit, and adds up in parallel', () => {
    expect(limitsOf(lfp({ maxCurrentA: 50 })).dischargeA).toBe(50);
    expect(limitsOf(lfp({ maxCurrentA: 50, count: 2 })).dischargeA).toBe(100);
    const series = present(
      bankOf([{ count: 2, capacityAh: 100, chemistry: 'lfp', maxCurrentA: 50 }], 'series'),
    );
    expect(limitsOf(series).dischargeA).toBe(50);
  });

  test('of unlike ones in parallel the smallest limit counts for each', () => {
    const two = [
      { count: 1, capacityAh: 100, chemistry: 'lfp', maxCurrentA: 50 } as const,
      { count: 1, capacityAh: 100, chemistry: 'lfp', maxCurrentA: 80 } as const,
    ];
    expect(bankOf(two)?.maxCurrentA).toBe(100);
    // One whose limit isn't told adds nothing.
    expect(bankOf([...two, { count: 1, capacityAh: 100, chemistry: 'lfp' }])?.maxCurrentA).toBe(100);
    expect(bankOf([{ count: 1, capacityAh: 100 }])).not.toHaveProperty('maxCurrentA');
  });

  test('is never passed, however short', () => {
    expect(fitsBank(lfp({ maxCurrentA: 50 }), 51).fit).toBe('no');
    expect(fitsBank(lfp({ maxCurrentA: 50 }), 45).fit).toBe('yes');
    expect(fitsBank(lfp({}), 101).fit).not.toBe('no');
  });

  test('above the usual one it counts as well', () => {
    expect(fitsBank(lfp({ maxCurrentA: 200 }), 150).fit).toBe('yes');
  });
});

describe('an age told', () => {
  const ageOf = (rest: object) =>
    present(bankAssumptions(present(bankOf([{ count: 1, capacityAh: 100, ...rest }]))).at(-1));

  test('takes off what is commonly lost a year', () => {
    expect(ageOf({ ageYears: 5, chemistry: 'agm' })).toMatchObject({ value: 0.8, low: 0.6, high: 0.95 });
    expect(ageOf({ ageYears: 5, chemistry: 'lfp' })).toMatchObject({ value: 0.9, low: 0.85, high: 0.95 });
    expect(ageOf({ chemistry: 'agm' })).toMatchObject({ value: 1 });
  });

  test('called old or tired it has less, tired the least, and years go before', () => {
    expect(ageOf({ wear: 'old', chemistry: 'agm' })).toMatchObject({ value: 0.8, low: 0.6, high: 0.95 });
    expect(ageOf({ wear: 'tired', chemistry: 'agm' })).toMatchObject({ value: 0.65, low: 0.4, high: 0.85 });
    expect(ageOf({ wear: 'tired', ageYears: 1, chemistry: 'agm' })).toMatchObject({ value: 0.96 });
    const two = [
      { count: 1, capacityAh: 100, wear: 'old' } as const,
      { count: 1, capacityAh: 100, wear: 'tired' } as const,
    ];
    expect(bankOf(two)?.wear).toBe('tired');
    expect(knownAge(present(bankOf([{ count: 1, capacityAh: 100 }])))).toEqual([]);
    expect(knownAge(present(bankOf(two)))[0]?.value).toBe(0.65);
    expect(knownAge(present(bankOf([{ count: 1, capacityAh: 100, ageYears: 5 }])))[0]?.value).toBe(0.8);
  });

  test('of several the oldest counts; without a word it is neither old nor of an age', () => {
    const of = (...ages: (number | undefined)[]) =>
      bankOf(ages.map(ageYears => ({ count: 1, capacityAh: 100, chemistry: 'agm' as const, ageYears })));
    expect(of(2, 7, undefined)?.ageYears).toBe(7);
    expect(of(undefined)).not.toHaveProperty('ageYears');
    expect(of(undefined)).not.toHaveProperty('wear');
    expect(bankOf([{ count: 2, capacityAh: 100, wear: 'old' }])?.wear).toBe('old');
  });

  test('leaves something of the oldest', () => {
    const { low, value, high } = ageOf({ ageYears: 40, chemistry: 'agm' });
    expect([low, value]).toEqual([0.3, 0.3]);
    expect(high).toBeGreaterThanOrEqual(value);
  });
});

test('watts told at the start come before a typical surge', () => {
  const fridge = { name: 'fridge', count: 1, supply: 'ac', powerW: 180 } as const;
  expect(startingW({ loads: [{ ...fridge, startsPowerW: 1400 }], mainsV: 230 }, {})).toBeCloseTo(1400, 6);
  expect(startingW({ loads: [fridge], mainsV: 230 }, {})).toBeCloseTo(900, 6);
});

test('one single use counts for the day that it is in', () => {
  const loads = [{ name: 'pump', count: 1, supply: 'dc', currentA: 5, hoursOnce: 0.5 } as const];
  expect(dailyUseAh({ loads, voltageV: 12 }, {})).toBeCloseTo(2.5, 9);
});
