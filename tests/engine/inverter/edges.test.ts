import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { restVoltsAt } from '#engine/battery/rest.ts';
import {
  batteryCurrentA,
  fitsBank,
  fitsRating,
  fitsSurge,
  inverterFor,
  loadedVoltage,
} from '#engine/inverter/check.ts';
import { batteryPowerFor, likelyInverterW } from '#engine/inverter/efficiency.ts';
import { partLoadEfficiency } from '#engine/inverter/rules.ts';
import { startingW, throughWatts, wattsAssumptions } from '#engine/inverter/watts.ts';
import type { Chemistry, Load } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import { Trace } from '#rule/trace.ts';

const ac = (name: string, rest: Partial<Load> = {}): Load => ({ name, count: 1, supply: 'ac', ...rest });
const eta = (z: number) => run(partLoadEfficiency, { eta_n: 0.9, z });
const values = { inverterEfficiency: 0.9, loadedVoltage: 12 };

describe('sizes', () => {
  test('the next usual size with a fifth in hand; beyond them, just that', () => {
    expect([50, 125, 126, 250, 500, 1250, 1251].map(likelyInverterW)).toEqual([
      150, 150, 300, 300, 600, 1500, 2000,
    ]);
    expect(likelyInverterW(6001)).toBe(7202);
  });

  test('just at a limit it is not over it', () => {
    expect(fitsRating(950, 1000)).toBe('yes');
    expect(fitsRating(1000, 1000)).toBe('tight');
    expect(fitsRating(1000.1, 1000)).toBe('no');
    expect(fitsSurge(1500, 1000)).toBe('yes');
    expect(fitsSurge(1500.1, 1000)).toBe('tight');
    expect(fitsSurge(2000, 1000, 2000)).toBe('yes');
    expect(fitsSurge(1200, 1000, undefined, false, 1600)).toBe('tight');
    expect(fitsSurge(1200, 1000, 1500, false, 1600)).toBe('yes');
    expect(fitsSurge(3000, 1000)).toBe('tight');
    expect(fitsSurge(3000.1, 1000)).toBe('no');
  });

  test('the smallest that runs and starts', () => {
    expect([100, 140, 143, 290, 950, 951].map(w => inverterFor(w, w))).toEqual([
      150, 150, 300, 600, 1000, 1500,
    ]);
    expect(inverterFor(100, 300)).toBe(150);
    expect(inverterFor(100, 301)).toBe(300);
    expect(inverterFor(200, 12000)).toBe(6000);
  });
});

describe('from the battery', () => {
  test('by the share of the rating; a usual one where none is told', () => {
    expect(batteryCurrentA(500, 1000, values)).toBeCloseTo(500 / eta(0.5) / 12, 9);
    expect(batteryCurrentA(500, undefined, values)).toBeCloseTo(500 / eta(500 / 600) / 12, 9);
    expect(batteryCurrentA(1500, 1000, values)).toBeCloseTo(1500 / eta(1) / 12, 9);
    // Of 1,000 W idle is 7 W, and 20 W of load take 31.02 W: at 5 W a quarter of the way.
    expect(batteryCurrentA(5, 1000, values)).toBeCloseTo((7 + (20 / eta(0.02) - 7) / 4) / 12, 9);
    expect(batteryCurrentA(-5, 1000, values)).toBe(0);
    expect(batteryPowerFor({ loadW: 500, ratingW: 1000, efficiency: 0.9 })).toBeCloseTo(500 / eta(0.5), 9);
    expect(batteryPowerFor({ loadW: 5, ratingW: 1000, efficiency: 0.9 })).toBeCloseTo(
      7 + (20 / eta(0.02) - 7) / 4,
      9,
    );
    expect(batteryPowerFor({ loadW: 0, ratingW: 1000, efficiency: 0.9 })).toBe(0);
    expect(batteryPowerFor({ loadW: 2000, ratingW: 1000, efficiency: 0.9 })).toBeCloseTo(2000 / eta(1), 9);
  });

  test('nothing on has no line of working', () => {
    const trace = new Trace();
    batteryCurrentA(0, 1000, values, trace);
    expect(trace.steps).toEqual([]);
  });

  test('volts under load with their span, by blocks', () => {
    expect(loadedVoltage(12, undefined)).toMatchObject({ value: 12, low: 11.5, high: 12.8 });
    expect(loadedVoltage(12, false)).toMatchObject({ value: 12, low: 11.5, high: 12.4 });
    expect(loadedVoltage(25.6, true)).toMatchObject({ value: 25.6, low: 24.6, high: 26.4 });
    expect(loadedVoltage(25.6, true).why).toMatch(/lithium/);
    expect(loadedVoltage(24, false).why).toBe('a 24 V battery under load');
  });
});

describe('what a bank makes of a current', () => {
  const bank = (chemistry: Chemistry, count = 1, how?: 'series') =>
    present(bankOf([{ count, capacityAh: 100, chemistry }], how));

  test('at its limit it is not over it', () => {
    expect(fitsBank(bank('lfp'), 100)).toMatchObject({ fit: 'yes', limitA: 100, cutOutV: 10.5 });
    expect(fitsBank(bank('lfp'), 100.1).fit).toBe('tight');
    // A quarter over the usual limit of its kind no sheet allows, whatever it may give for seconds.
    expect(fitsBank(bank('lfp'), 125).fit).toBe('tight');
    expect(fitsBank(bank('lfp'), 125.1).fit).toBe('no');
    expect(fitsBank(bank('gel'), 62.5).fit).toBe('tight');
    expect(fitsBank(bank('gel'), 63).fit).toBe('no');
    // A limit told is a limit.
    expect(fitsBank({ ...bank('lfp'), maxCurrentA: 100 }, 100.1).fit).toBe('no');
  });

  test('from half full, less the drop inside; two in series have twice the volts and the cut-out', () => {
    expect(fitsBank(bank('agm'), 50).sagToV).toBeCloseTo(restVoltsAt(50, 'agm') - 50 * 0.009, 9);
    const two = fitsBank(bank('agm', 2, 'series'), 50);
    expect(two.cutOutV).toBe(21);
    expect(two.sagToV).toBeCloseTo(2 * (restVoltsAt(50, 'agm') - 50 * 0.009), 9);
  });

  test('a sag below the cut-out is no help to a current that is too much', () => {
    // Half full and 9 mΩ: 10.5 V at (12.27 − 10.5) / 0.009 = 197 A, beyond the 100 A of AGM.
    const atSag = (restVoltsAt(50, 'agm') - 10.5) / 0.009;
    expect(atSag).toBeGreaterThan(125);
    expect(fitsBank(bank('agm'), 125).fit).toBe('tight');
    expect(fitsBank(bank('agm'), atSag - 1).fit).toBe('no');
  });
});

describe('watts at once', () => {
  const outlet = (...loads: Load[]) => ({ loads, mainsV: 230 });

  test('only what bears on the watts is taken for granted', () => {
    const names = (...loads: Load[]) => wattsAssumptions(outlet(...loads)).map(a => a.name);
    expect(names(ac('fridge'), ac('microwave'))).toEqual([
      'fridge power',
      'microwave power',
      'microwave input factor',
    ]);
    expect(names(ac('kettle', { powerW: 2000 }))).toEqual([]);
  });

  test('of two that start alike hard one starts, and a thing of no kind starts as it runs', () => {
    const start = (...loads: Load[]) => startingW(outlet(...loads), {});
    expect(start(ac('gizmo', { powerW: 300 }))).toBe(300);
    expect(start(ac('fridge', { powerW: 100 }), ac('freezer', { powerW: 100 }))).toBe(600);
    // The harder start counts, not the bigger thing: 1.5 times 1,240 W in against five times 500 W.
    expect(start(ac('microwave', { powerW: 800 }), ac('fridge', { powerW: 500 }))).toBeCloseTo(
      1740 + 2000,
      6,
    );
    expect(start()).toBe(0);
  });

  test('at its hardest a compressor takes eight times its running watts; what has none starts as ever', () => {
    const start = (isHard: boolean, ...loads: Load[]) => startingW(outlet(...loads), {}, undefined, isHard);
    const fridge = ac('fridge', { powerW: 100 });
    expect([start(false, fridge), start(true, fridge)]).toEqual([500, 800]);
    expect(start(true, fridge, ac('kettle', { powerW: 1000 }))).toBe(1800);
    expect(start(true, ac('pump', { powerW: 100 }))).toBe(start(false, ac('pump', { powerW: 100 })));
    // Watts of its plate that were told are no guess.
    expect(start(true, { ...fridge, startsPowerW: 600 })).toBe(600);
  });

  test('a start has a line where there is one', () => {
    const lines = (...loads: Load[]) => {
      const trace = new Trace();
      startingW(outlet(...loads), {}, trace);
      return trace.steps.length;
    };
    expect(lines(ac('kettle', { powerW: 1000 }))).toBe(0);
    expect(lines(ac('fridge', { powerW: 100 }))).toBe(1);
  });

  test('a sum has a line, also of one', () => {
    const trace = new Trace();
    throughWatts(outlet(ac('kettle', { powerW: 1000 })), {}, trace);
    expect(trace.steps).toMatchObject([{ says: 'P = 1000 W' }]);
  });
});
