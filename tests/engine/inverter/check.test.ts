import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import {
  batteryCurrentA,
  fitsBank,
  fitsRating,
  fitsSurge,
  inverterFor,
  loadedVoltage,
  worst,
} from '#engine/inverter/check.ts';
import { startingW, throughWatts, wattsAssumptions } from '#engine/inverter/watts.ts';
import type { Load } from '#rig/rig.ts';

const ac = (name: string, powerW?: number, rest: Partial<Load> = {}): Load => ({
  name,
  count: 1,
  supply: 'ac',
  powerW,
  ...rest,
});
const outlet = (...loads: Load[]) => ({ loads, mainsV: 230 });
const likely = (loads: ReturnType<typeof outlet>) =>
  Object.fromEntries(wattsAssumptions(loads).map(a => [a.name, a.value]));

describe('the trade’s own check', () => {
  test('1,500 W takes 1,400 W or 2 × 700 W, not 2 × 800 W', () => {
    const judged = (...loads: Load[]) => fitsRating(throughWatts(outlet(...loads), {}), 1500);
    expect(judged(ac('kettle', 1400))).toBe('yes');
    expect(judged(ac('toaster', 700, { count: 2 }))).toBe('yes');
    expect(judged(ac('toaster', 800, { count: 2 }))).toBe('no');
    expect(judged(ac('kettle', 1480))).toBe('tight');
    expect(judged(ac('kettle', 1500))).toBe('tight');
  });

  test('motors count with their start, one at a time; heaters do not', () => {
    const start = (...loads: Load[]) => startingW(outlet(...loads), {});
    expect(start(ac('kettle', 1000))).toBe(1000);
    expect(start(ac('fridge', 60))).toBe(180);
    // A household compressor starts harder than a portable one.
    expect(start(ac('fridge', 100))).toBe(500);
    expect(start(ac('fridge', 100, { count: 2 }))).toBe(600);
    expect(start(ac('fridge', 100), ac('kettle', 1000))).toBe(1500);
    expect(start(ac('fridge', 100), ac('air conditioner', 1000))).toBe(4100);
  });

  test('surge rating: twice the rating where none is told', () => {
    expect(fitsSurge(1400, 1000)).toBe('yes');
    expect(fitsSurge(1900, 1000)).toBe('tight');
    expect(fitsSurge(1900, 1000, 2000)).toBe('yes');
    expect(fitsSurge(2500, 1000)).toBe('tight');
    expect(fitsSurge(3500, 1000)).toBe('no');
    expect(fitsSurge(1900, 1000, 1500)).toBe('tight');
  });

  test('the next usual inverter with something in hand', () => {
    expect(inverterFor(1400, 1400)).toBe(1500);
    expect(inverterFor(1480, 1480)).toBe(2000);
    expect(inverterFor(1000, 4000)).toBe(2000);
    expect(inverterFor(9000, 9000)).toBe(9500);
  });

  test('the worst of several decides', () => {
    expect([worst(), worst('yes', 'tight'), worst('tight', 'no', 'yes')]).toEqual(['yes', 'tight', 'no']);
  });

  test('draws left out are typical ones, amps are at the mains', () => {
    const kettle = outlet(ac('kettle'));
    expect(throughWatts(kettle, likely(kettle))).toBe(2200);
    expect(throughWatts(outlet(ac('heater', undefined, { currentA: 4 })), {})).toBeCloseTo(920, 9);
  });

  test('no microwave cooks with 1,400 W: that is what it takes in', () => {
    expect(throughWatts(outlet(ac('microwave', 1400)), {})).toBe(1400);
    expect(throughWatts(outlet(ac('microwave', 900)), {})).toBeCloseTo(900 * 1.55, 9);
  });
});

describe('from the battery', () => {
  const values = { inverterEfficiency: 0.9, loadedVoltage: 12 };

  test('twice the volts, half the amps; nothing on, nothing drawn', () => {
    const at24 = batteryCurrentA(1000, 2000, { ...values, loadedVoltage: 24 });
    expect(at24).toBeCloseTo(batteryCurrentA(1000, 2000, values) / 2, 9);
    expect(batteryCurrentA(0, 2000, values)).toBe(0);
  });

  test('volts under load, by what is known', () => {
    expect(loadedVoltage(12, undefined).value).toBe(12);
    expect(loadedVoltage(12.8, true).value).toBe(12.8);
    expect(loadedVoltage(24, false).value).toBe(24);
    expect(loadedVoltage(51.2, true).value).toBeCloseTo(51.2, 9);
  });

  test('more load never takes less; energy closes', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 50, max: 3000, noNaN: true }),
        fc.double({ min: 1, max: 2, noNaN: true }),
        (loadW, k) => {
          const I = batteryCurrentA(loadW, 3000, values);
          expect(batteryCurrentA(loadW * k, 3000, values)).toBeGreaterThanOrEqual(I - 1e-9);
          // Never more out than in.
          expect(I * 12).toBeGreaterThan(loadW);
        },
      ),
    );
  });

  test('100 Ah of lithium gives 100 A: 110 A is tight, 130 A is not on', () => {
    const bank = present(bankOf([{ count: 1, capacityAh: 100, chemistry: 'lfp' }]));
    expect(fitsBank(bank, 90).fit).toBe('yes');
    expect(fitsBank(bank, 110).fit).toBe('tight');
    expect(fitsBank(bank, 130).fit).toBe('no');
  });

  test('lead-acid sags: a small flooded battery can’t, a big AGM can', () => {
    const bank = (capacityAh: number, chemistry: 'agm' | 'flooded') =>
      present(bankOf([{ count: 1, capacityAh, chemistry }]));
    expect(fitsBank(bank(100, 'flooded'), 130).fit).toBe('no');
    expect(fitsBank(bank(100, 'agm'), 40).fit).toBe('yes');
    expect(fitsBank(bank(300, 'agm'), 150).fit).toBe('yes');
    expect(fitsBank(bank(100, 'agm'), 95).sagToV).toBeLessThan(fitsBank(bank(200, 'agm'), 95).sagToV);
  });
});
