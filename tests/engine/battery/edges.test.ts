import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { bankOf, nominalVoltage } from '#engine/battery/bank.ts';
import { nextUsualSize } from '#engine/battery/required.ts';
import { blocksOf, chargeAtRest, isOnCharge, restVoltsAt } from '#engine/battery/rest.ts';
import { restVolts } from '#engine/battery/rest-table.ts';
import { bankAssumptions, sizeFactorAt, usableCapacityAh } from '#engine/battery/usable.ts';
import { type Battery, chemistries } from '#rig/rig.ts';
import { Trace } from '#rule/trace.ts';

describe('resting volts at the rows of the table', () => {
  test.for(chemistries)('%s: the likely volts of a row are its percent, and back', kind => {
    for (const [percent, , likelyV] of restVolts[kind]) {
      expect(chargeAtRest(likelyV, kind).value).toBeCloseTo(percent, 9);
      expect(restVoltsAt(percent, kind)).toBeCloseTo(likelyV, 9);
    }
    expect(restVoltsAt(-5, kind)).toBe(present(restVolts[kind][0])[2]);
    expect(restVoltsAt(120, kind)).toBe(present(restVolts[kind].at(-1))[2]);
  });

  test('blocks by the reading: 6, 12, 24, 36 and 48 V', () => {
    expect([6.3, 7.7, 7.8, 12.4, 17, 17.1, 25, 37.8, 50.4].map(v => blocksOf(v))).toEqual([
      0.5, 0.5, 1, 1, 1, 2, 2, 4, 4,
    ]);
    expect(blocksOf(0)).toBe(1);
    expect(blocksOf(-3)).toBe(1);
  });

  test('a full battery at rest is not on charge', () => {
    expect(isOnCharge(13.15, 'agm')).toBe(false);
    expect(isOnCharge(13.16, 'agm')).toBe(true);
    expect(isOnCharge(26.4, 'agm')).toBe(true);
    expect(isOnCharge(26.4, 'lfp')).toBe(false);
  });

  test('lithium is named so in the working', () => {
    const trace = new Trace();
    chargeAtRest(13.13, 'lfp', trace);
    expect(trace.steps).toMatchObject([
      { says: 'how full at rest, from the table of lithium volts, 13.13 V' },
    ]);
  });
});

describe('usable', () => {
  const bank = present(bankOf([{ count: 1, capacityAh: 100, chemistry: 'agm' }]));
  const values = { depthOfDischarge: 0.5, peukertExponent: 1.1, age: 1 };

  test('IEEE 485 at its rows and beyond its ends', () => {
    expect(sizeFactorAt(-3.9)).toBe(1.52);
    expect(sizeFactorAt(-20)).toBe(1.52);
    expect(sizeFactorAt(10)).toBeCloseTo(1.19, 12);
    expect(sizeFactorAt(37.8)).toBeCloseTo(0.91, 12);
    expect(sizeFactorAt(60)).toBe(0.91);
    expect(sizeFactorAt(11.4)).toBeCloseTo(1.17, 9);
  });

  test('no current needs no rate', () => {
    const steps = (currentA: number) => {
      const trace = new Trace();
      usableCapacityAh({ bank, currentA }, values, trace);
      return trace.steps.length;
    };
    expect(steps(0)).toBe(1);
    expect(steps(2)).toBe(2);
  });

  test('a told depth is taken as told', () => {
    const [told] = bankAssumptions(bank, 70);
    expect(told).toMatchObject({ value: 0.7, low: 0.7, high: 0.7, why: 'as you said' });
    const [usual] = bankAssumptions(bank);
    expect(usual).toMatchObject({ value: 0.5, low: 0.47, high: 0.58, why: 'AGM, common practice' });
    expect(present(bankAssumptions({ ...bank, isChemistryAssumed: true })[0]).why).toMatch(
      /as you didn't say/,
    );
    expect(bankAssumptions(bank)[2]).toMatchObject({ name: 'age', value: 1, low: 0.9, high: 1 });
  });
});

describe('banks', () => {
  const of = (batteries: Partial<Battery>[], how?: 'series' | 'parallel', systemV?: number) =>
    bankOf(
      batteries.map(b => ({ count: 1, ...b })),
      how,
      systemV,
    );

  test.for<[told: number, kind: 'agm' | 'lfp', nominal: number]>([
    [12, 'agm', 12],
    [12, 'lfp', 12.8],
    [11, 'agm', 12],
    [11.2, 'lfp', 12.8],
    [12.8, 'lfp', 12.8],
    [25.6, 'lfp', 25.6],
    [24, 'agm', 24],
    [6, 'agm', 6],
    [8, 'agm', 8],
    [2, 'agm', 2],
    [3.2, 'lfp', 3.2],
    [14.4, 'agm', 14],
    [16, 'lfp', 16],
    [0.4, 'agm', 2],
  ])('%d V of %s are nominally %d V', ([told, kind, nominal]) => {
    expect(nominalVoltage(told, kind)).toBeCloseTo(nominal, 9);
  });

  test('a power bank’s Ah are at 3.7 V, its Wh are Wh', () => {
    expect(of([{ capacityAh: 20, voltageV: 3.7 }])).toMatchObject({
      capacityAh: expect.closeTo((20 * 3.7) / 12.8, 9),
      chemistry: 'lfp',
    });
    expect(present(of([{ energyWh: 74, voltageV: 3.7 }])).capacityAh).toBeCloseTo(74 / 12.8, 9);
    // 3.2 V is a lithium cell, 3.4 V and 3.9 V are none of a power bank.
    expect(present(of([{ capacityAh: 20, voltageV: 3.4 }])).capacityAh).toBe(20);
    expect(present(of([{ capacityAh: 20, voltageV: 3.9 }])).capacityAh).toBe(20);
  });

  test('the chemistry of one is taken for the other', () => {
    const mixed = present(of([{ capacityAh: 100, chemistry: 'lfp' }, { capacityAh: 100 }]));
    expect(mixed).toMatchObject({ capacityAh: 200, chemistry: 'lfp', isMixed: false });
    expect(present(of([{ capacityAh: 100 }, { energyWh: 1280 }])).chemistry).toBe('lfp');
    expect(of([{ capacityAh: 100 }])).toMatchObject({ chemistry: 'agm', isChemistryAssumed: true });
  });

  test('unlike in kind, size or volts', () => {
    expect(
      present(
        of([
          { capacityAh: 100, chemistry: 'agm' },
          { capacityAh: 100, chemistry: 'gel' },
        ]),
      ).isMixed,
    ).toBe(true);
    expect(present(of([{ capacityAh: 100 }, { capacityAh: 90 }])).isMixed).toBe(true);
    expect(present(of([{ capacityAh: 100 }, { capacityAh: 100, voltageV: 24 }])).isMixed).toBe(true);
    expect(present(of([{ capacityAh: 100 }, { capacityAh: 100 }])).isMixed).toBe(false);
  });

  test('in series volts add, also of unlike ones; in strings the smallest counts', () => {
    const six = { capacityAh: 200, voltageV: 6 };
    expect(of([{ ...six, count: 2 }])).toMatchObject({ capacityAh: 200, voltageV: 12, inSeries: 2 });
    expect(of([{ ...six, count: 4 }])).toMatchObject({ capacityAh: 400, voltageV: 12, inSeries: 2 });
    expect(of([{ ...six, count: 3 }])).toMatchObject({ voltageV: 6, inSeries: 1, capacityAh: 600 });
    expect(of([six])).toMatchObject({ voltageV: 6, inSeries: 1 });
    expect(of([{ capacityAh: 100 }, six], 'series')).toMatchObject({ voltageV: 18, capacityAh: 100 });
    expect(of([{ ...six, count: 2 }], 'parallel')).toMatchObject({ voltageV: 6, capacityAh: 400 });
    expect(of([{ capacityAh: 100, count: 4 }], undefined, 24)).toMatchObject({
      voltageV: 24,
      capacityAh: 200,
    });
    expect(of([{ capacityAh: 100, count: 2 }], undefined, 12)).toMatchObject({
      voltageV: 12,
      capacityAh: 200,
    });
    expect(of([{ capacityAh: 100, count: 3 }], 'series', 24)).toMatchObject({ voltageV: 36, inSeries: 3 });
    expect(of([{ capacityAh: 100, count: 3 }], undefined, 24)).toMatchObject({ voltageV: 12, inSeries: 1 });
    expect(of([{ capacityAh: 100, voltageV: 12, count: 2 }])).toMatchObject({ voltageV: 12, inSeries: 1 });
  });

  test('the level of whichever has one', () => {
    expect(
      present(of([{ capacityAh: 100 }, { capacityAh: 100, stateOfChargePercent: 40 }])).stateOfChargePercent,
    ).toBe(40);
    expect(present(of([{ capacityAh: 100 }])).stateOfChargePercent).toBeUndefined();
  });

  test('sizes from the shop: just enough is enough', () => {
    expect(nextUsualSize(100, 'agm')).toEqual({ count: 1, sizeAh: 100 });
    expect(nextUsualSize(100.1, 'agm')).toEqual({ count: 1, sizeAh: 120 });
    expect(nextUsualSize(260, 'agm')).toEqual({ count: 1, sizeAh: 260 });
    expect(nextUsualSize(261, 'agm')).toEqual({ count: 2, sizeAh: 150 });
    expect(nextUsualSize(520, 'agm')).toEqual({ count: 2, sizeAh: 260 });
  });
});
