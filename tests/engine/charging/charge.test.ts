import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import type { Assumption } from '#engine/assumption.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { chargeRow } from '#engine/battery/charge-table.ts';
import { absorptionVoltage } from '#engine/battery/charging.ts';
import { meanChargeV } from '#engine/battery/round-trip.ts';
import { type Charge, chargeAssumptions, chargeOf, dcdcInputA } from '#engine/charging/charge.ts';
import { type Source, sourceAssumptions, sourceCurrentA } from '#engine/charging/source.ts';
import type { Chemistry } from '#rig/rig.ts';
import { Trace } from '#rule/trace.ts';

const likely = (list: readonly Assumption[]) => Object.fromEntries(list.map(a => [a.name, a.value]));

function charging(chemistry: Chemistry, capacityAh: number, percent: number, changes: Partial<Charge> = {}) {
  const bank = present(bankOf([{ count: 1, capacityAh, chemistry, stateOfChargePercent: percent }]));
  const charge: Charge = { bank, isSizeAssumed: false, isIsolator: false, ...changes };
  return { charge, values: likely(chargeAssumptions(charge)) };
}
const run = (chemistry: Chemistry, capacityAh: number, percent: number, sourceA: number, changes = {}) => {
  const { charge, values } = charging(chemistry, capacityAh, percent, changes);
  return chargeOf(charge, sourceA, values);
};

describe('charging, common practice', () => {
  test('lithium takes all it is offered nearly to the brim: 80 Ah at 20 A is a bit over 4 h', () => {
    const done = run('lfp', 100, 20, 20);
    expect(done.timeH).toBeGreaterThan(80 / 20);
    expect(done.timeH).toBeLessThan(80 / 20 + 0.6);
    expect(done.neededAh).toBeCloseTo(80 / 0.99, 9);
  });

  test('AGM is quick to 80 % and slow to full', () => {
    const done = run('agm', 100, 50, 20);
    expect(done.timeTo80H).toBeLessThan(done.timeH / 2);
    expect(done.timeH).toBeGreaterThan(4);
    expect(done.timeH).toBeLessThan(6.5);
  });

  test('flooded takes longer than AGM, an isolator longer than a charger', () => {
    expect(run('flooded', 100, 50, 20).timeH).toBeGreaterThan(run('agm', 100, 50, 20).timeH);
    expect(run('agm', 100, 50, 20, { isIsolator: true }).timeH).toBeGreaterThan(
      run('agm', 100, 50, 20).timeH,
    );
  });

  test('a charger beyond what the kind stands brings nothing more', () => {
    expect(run('lfp', 100, 20, 50).timeH).toBeCloseTo(run('lfp', 100, 20, 200).timeH, 9);
    expect(run('agm', 100, 50, 30).currentA).toBeCloseTo(30, 9);
    expect(run('agm', 100, 50, 90).currentA).toBeCloseTo(30, 9);
  });

  test('trap 8: lithium refuses below freezing and takes a tenth of C up to 5 °C', () => {
    expect(run('lfp', 100, 20, 20, { temperatureC: -1 }).timeH).toBe(Number.POSITIVE_INFINITY);
    expect(run('lfp', 100, 20, 20, { temperatureC: 2 }).currentA).toBeCloseTo(10, 9);
    expect(run('lfp', 100, 20, 20, { temperatureC: 12 }).currentA).toBeCloseTo(20, 9);
    // At −5 °C AGM takes its last part nearly three times as slowly.
    const cold = run('agm', 100, 50, 20, { temperatureC: -5 });
    expect(cold.timeH).toBeGreaterThan(2 * run('agm', 100, 50, 20).timeH);
    expect(cold.timeH).toBeLessThan(15);
  });

  test.for<[Chemistry, number]>([
    ['lfp', 20],
    ['agm', 20],
    ['lfp', 100],
    ['agm', 100],
  ])(
    '%s at %d %%: a level that is taken fills as one that was told, and what is full takes nothing',
    ([chemistry, percent]) => {
      const { charge, values } = charging(chemistry, 100, percent);
      const untold: Charge = { ...charge, bank: { ...charge.bank, stateOfChargePercent: undefined } };
      const taken = { ...likely(chargeAssumptions(untold)), stateOfCharge: percent };
      const { neededAh, timeH } = chargeOf(untold, 20, taken);
      expect(neededAh).toBeCloseTo(chargeOf(charge, 20, values).neededAh, 9);
      expect(timeH).toBeCloseTo(chargeOf(charge, 20, values).timeH, 9);
      expect(neededAh === 0).toBe(percent === 100);
    },
  );

  test('amp hours put back to a level that was told go to the brim, where lead wastes the most', () => {
    const half = run('agm', 100, 50, 20, { missingAh: 50 });
    const { charge, values } = charging('agm', 100, 50, { missingAh: 50 });
    const somewhere = chargeOf(
      { ...charge, bank: { ...charge.bank, stateOfChargePercent: undefined } },
      20,
      values,
    );
    // The half per cent below the brim, at half of the losses or more.
    expect(half.neededAh).toBeGreaterThan(somewhere.neededAh);
    expect(half.neededAh).toBeGreaterThan(run('agm', 100, 50, 20).neededAh);
  });

  test('to a target, and past it', () => {
    const target = run('lfp', 150, 40, 25, { targetPercent: 75 });
    expect(target.timeH).toBeCloseTo(52.5 / (0.99 * 25), 6);
    expect(target.timeTo80H).toBeCloseTo(target.timeH, 9);
    expect(run('lfp', 150, 80, 25, { targetPercent: 75 })).toMatchObject({ timeH: 0, neededAh: 0 });
  });

  test('Ah to put back, told or from a level', () => {
    // 20 Ah at 97 %, then 17 Ah, to where chargers call it full, at 97 % falling towards 50 % at the very end.
    const topAh = (20 / 0.47) * Math.log(0.97 / (0.5 + (0.47 * 3) / 20));
    expect(run('agm', 100, 60, 20).neededAh).toBeCloseTo(20 / 0.97 + topAh, 9);
    const told = charging('agm', 100, 60, { missingAh: 25 });
    const bank = { ...told.charge.bank, stateOfChargePercent: undefined };
    const done = chargeOf({ ...told.charge, bank }, 20, told.values);
    // With no level told it ends where chargers stop, at 97 %: 8 Ah at 97 %, then 17 Ah at less and less.
    expect(done.neededAh).toBeCloseTo(8 / 0.97 + (20 / 0.47) * Math.log(0.97 / (0.5 + (0.47 * 3) / 20)), 9);
    expect(done.startPercent).toBeCloseTo(75, 9);
  });

  test('30 Ah back to 80 %, with no level told, is what it is from 50 % to 80 %', () => {
    for (const chemistry of ['agm', 'flooded', 'lfp'] as const) {
      const level = run(chemistry, 100, 50, 20, { targetPercent: 80 });
      const bank = present(bankOf([{ count: 1, capacityAh: 100, chemistry }]));
      const { charge, values } = charging(chemistry, 100, 50, { missingAh: 30, targetPercent: 80 });
      const told = chargeOf({ ...charge, bank }, 20, values);
      expect(told.neededAh).toBeCloseTo(level.neededAh, 9);
      expect(told.timeH).toBeCloseTo(level.timeH, 9);
      expect(told.startPercent).toBeCloseTo(50, 9);
    }
  });

  test('where no current flows, an amount is never put back, and the working divides by nothing', () => {
    const bank = present(bankOf([{ count: 1, capacityAh: 100, chemistry: 'lfp' }]));
    const charge: Charge = { bank, isSizeAssumed: true, isIsolator: false, missingAh: 30, temperatureC: -5 };
    const trace = new Trace();
    const done = chargeOf(charge, 20, likely(chargeAssumptions(charge)), trace);
    expect(done).toMatchObject({ timeH: Number.POSITIVE_INFINITY, currentA: 0 });
    expect(trace.steps.filter(step => 'inputs' in step && step.inputs.I === 0)).toEqual([]);
  });

  test('nothing told of the level: lead from 50 %, lithium from 20 %', () => {
    const start = (chemistry: Chemistry) => {
      const bank = present(bankOf([{ count: 1, capacityAh: 100, chemistry }]));
      return chargeAssumptions({ bank, isSizeAssumed: false, isIsolator: false }).find(
        a => a.name === 'stateOfCharge',
      )?.value;
    };
    expect(start('agm')).toBe(50);
    expect(start('flooded')).toBe(50);
    expect(start('lfp')).toBe(20);
  });

  test('the level reached is between where it was and full', () => {
    const { percentAfter } = run('agm', 100, 40, 25);
    expect(percentAfter(0)).toBeCloseTo(40, 9);
    expect(percentAfter(1)).toBeCloseTo(40 + 25 * 0.97, 6);
    expect(percentAfter(100)).toBeLessThanOrEqual(100);
  });
});

describe('sources', () => {
  const source = (changes: Partial<Source>): Source => ({
    kind: 'mains',
    row: chargeRow('agm'),
    blocks: 1,
    ...changes,
  });
  const amps = (changes: Partial<Source>, moved = {}) => {
    const s = source(changes);
    return sourceCurrentA(s, { ...likely(sourceAssumptions(s)), ...moved });
  };

  test('amps as rated, a little less warm; watts over the charging volts', () => {
    expect(amps({ currentA: 20 })).toBeCloseTo(19.4, 9);
    const [meanV] = meanChargeV('agm');
    expect(Math.abs(meanV - 13.8)).toBeLessThan(0.2);
    expect(amps({ powerW: 276 })).toBeCloseTo((276 / meanV) * 0.97, 6);
    expect(amps({ powerW: 276, blocks: 2 })).toBeCloseTo((276 / (2 * meanV)) * 0.97, 6);
  });

  test('the rating of an isolator is what its contacts stand, not what it brings', () => {
    expect(amps({ kind: 'isolator', currentA: 140, alternator: 'fixed' })).toBe(20);
    expect(amps({ kind: 'isolator', currentA: 10, alternator: 'fixed' })).toBe(10);
    expect(amps({ kind: 'isolator', alternator: 'smart' })).toBeCloseTo(10, 9);
  });

  test('no rating: a usual one is taken and said', () => {
    expect(amps({ kind: 'dcdc' })).toBe(25);
    expect(sourceAssumptions(source({ kind: 'dcdc' })).map(a => a.name)).toEqual(['chargerCurrent']);
  });

  test('a small generator limits its charger, height and heat more so', () => {
    expect(amps({ currentA: 50, generatorW: 2000 })).toBeCloseTo(48.5, 9);
    const small = amps({ currentA: 50, generatorW: 600 });
    expect(small).toBeCloseTo((600 * 0.85 * 0.87 * 0.8) / 14.4, 6);
    expect(amps({ currentA: 50, generatorW: 600, altitudeM: 2000 })).toBeLessThan(0.85 * small);
    expect(amps({ currentA: 50, generatorW: 600, ambientC: 45 })).toBeCloseTo(0.97 * small, 6);
  });

  test('charge never exceeds what was offered', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 100, noNaN: true }),
        fc.option(fc.double({ min: 300, max: 3000, noNaN: true }), { nil: undefined }),
        fc.constantFrom('mains', 'dcdc', 'isolator') as fc.Arbitrary<'mains' | 'dcdc' | 'isolator'>,
        (currentA, generatorW, kind) => {
          expect(amps({ kind, currentA, generatorW })).toBeLessThanOrEqual(currentA + 1e-9);
        },
      ),
    );
  });
});

describe('volts and amps round the charger', () => {
  test('a DC-DC charger takes in more than it gives; energy closes', () => {
    const inA = dcdcInputA(40);
    expect(inA).toBeGreaterThan(40);
    expect(inA * 13.5 * 0.9).toBeCloseTo(40 * 14.4, 6);
  });

  test('cold lead-acid wants more volts, lithium the same', () => {
    const bank = (chemistry: Chemistry) => present(bankOf([{ count: 1, capacityAh: 100, chemistry }]));
    expect(absorptionVoltage(bank('agm'), 5)).toBeCloseTo(14.4 + 0.36, 9);
    expect(absorptionVoltage(bank('lfp'), 5)).toBe(14.4);
    expect(absorptionVoltage(bank('agm'))).toBeCloseTo(14.4, 9);
  });
});
