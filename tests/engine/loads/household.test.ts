import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { buildNamed, buildOf, builtAs } from '#engine/loads/build.ts';
import { householdKinds } from '#engine/loads/household-table.ts';
import { dailyUseAh, type Use, useAssumptions, usePerLoad } from '#engine/loads/model.ts';
import { isPerhapsThreeWay, isThreeWay, readLoads } from '#engine/loads/reading.ts';
import type { Load } from '#rig/rig.ts';

const load = (name: string, more: Partial<Load> = {}): Load => ({ name, count: 1, supply: 'dc', ...more });
const use = (...loads: Load[]): Use => ({ loads, voltageV: 12, ambientC: 25 });
const dayAh = (one: Load, more: Partial<Use> = {}): number => dailyUseAh({ ...use(one), ...more }, {});

describe('how a thing that cools is built', () => {
  test.for<[says: string, one: Load, build: string]>([
    ['nothing told', load('fridge'), 'camping'],
    ['by its name', load('residential fridge'), 'household'],
    ['by a word of its name in large letters', load('Kitchen fridge'), 'household'],
    ['by the words beside it', load('fridge', { build: 'household' }), 'household'],
    ['on mains, nothing else told', load('fridge', { supply: 'ac' }), 'household'],
    ['a portable on its mains plug', load('fridge', { supply: 'ac', powerW: 60 }), 'camping'],
    ['from 75 W on', load('fridge', { supply: 'ac', powerW: 75 }), 'household'],
    ['mains amps', load('fridge', { supply: 'ac', currentA: 0.5 }), 'household'],
    ['few mains amps', load('fridge', { supply: 'ac', currentA: 0.3 }), 'camping'],
    ['amps at the battery', load('fridge', { supply: 'ac', currentA: 25 }), 'camping'],
    ['large on mains', load('fridge', { supply: 'ac', powerW: 60, volumeL: 200 }), 'household'],
    ['large on 12 V', load('fridge', { volumeL: 225 }), 'camping'],
    ['by its name, for gas too', load('three way fridge'), 'three-way'],
    ['absorption', load('absorption fridge', { supply: 'ac' }), 'three-way'],
    ['a thing of no known kind', load('gizmo'), 'camping'],
    ['medicine keeps its own', load('medicine fridge', { supply: 'ac', powerW: 100 }), 'camping'],
  ])('%s: %s', ([, one, build]) => {
    expect(buildOf(one)).toBe(build);
  });

  test('which household one: by its name and its litres', () => {
    const of = (name: string, more: Partial<Load> = {}) =>
      builtAs(load(name, { supply: 'ac', ...more })).kind;
    expect(of('fridge')).toBe(householdKinds.fridge);
    expect(of('bar fridge')).toBe(householdKinds.small);
    expect(of('bar fridge', { powerW: 150 })).toBe(householdKinds.fridge);
    expect(of('fridge', { volumeL: 149 })).toBe(householdKinds.small);
    expect(of('fridge', { volumeL: 150 })).toBe(householdKinds.fridge);
    expect(of('chest freezer')).toBe(householdKinds.freezer);
  });

  test('one without a compressor draws what a cool box of its kind does, all the time, and has no start', () => {
    const plain = builtAs(load('thermoelectric cooler')).row;
    for (const one of [load('fridge', { build: 'thermoelectric' }), load('peltier fridge')]) {
      expect(buildOf(one)).toBe('thermoelectric');
      const { row, kind } = builtAs(one);
      expect(kind).toBeUndefined();
      expect(row?.powerW).toEqual(plain?.powerW);
      expect(row).not.toHaveProperty('setPointC');
      expect(row).not.toHaveProperty('surge');
    }
    expect(dayAh(load('peltier fridge', { powerW: 48 }))).toBeCloseTo(24 * 4, 9);
  });

  test('a three-way one is one on the battery alone: on mains its heater is another', () => {
    expect(isThreeWay(load('three way fridge'))).toBe(true);
    expect(isThreeWay(load('three way fridge', { supply: 'ac' }))).toBe(false);
    expect(isThreeWay(load('fridge', { build: 'three-way' }))).toBe(true);
    expect(isThreeWay(load('fridge'))).toBe(false);
    expect(isThreeWay(load('kettle', { build: 'three-way' }))).toBe(false);
  });

  test('of a house by its name, whatever it runs on; a kettle is none', () => {
    expect(buildOf(load('bar fridge', { supply: 'ac', powerW: 50 }))).toBe('household');
    expect(buildOf(load('bar fridge', { powerW: 50 }))).toBe('camping');
    expect(buildNamed('three way fridge')).toBe('three-way');
    expect(buildNamed('three way kettle')).toBeUndefined();
  });

  test('what is no thing that cools stays as it is', () => {
    expect(builtAs(load('kettle', { supply: 'ac' })).kind).toBeUndefined();
    expect(builtAs(load('gizmo')).row).toBeUndefined();
  });
});

describe('a day of it', () => {
  test('a household fridge takes two to three times what a camping one takes', () => {
    const ratio = dayAh(load('residential fridge', { supply: 'ac' })) / dayAh(load('fridge'));
    expect(ratio).toBeGreaterThan(2);
    expect(ratio).toBeLessThan(3.2);
  });

  test('its plate changes how long it runs, and much less what it takes; none is larger than 600 L', () => {
    const at = (powerW: number) => dayAh(load('fridge', { supply: 'ac', powerW }), { inverterW: 1000 });
    expect(at(300) / at(250)).toBeCloseTo(1, 1);
    const [reading] = readLoads(use(load('fridge', { supply: 'ac', powerW: 1000 })));
    const volume = useAssumptions({ ...use(present(reading).load) }).find(a => a.name === 'fridge volume');
    expect(present(volume).value).toBe(600);
  });

  test('more litres take more, and the litres are no assumption then', () => {
    const at = (volumeL: number) => dayAh(load('fridge', { volumeL }));
    expect(at(20)).toBeLessThan(at(40));
    expect(at(40)).toBeCloseTo(dayAh(load('fridge')), 9);
    expect(at(80)).toBeGreaterThan(at(40));
    const names = useAssumptions(use(load('fridge', { volumeL: 80 }))).map(a => a.name);
    expect(names).toContain('fridge walls');
    expect(names).not.toContain('fridge volume');
  });

  test('a small box has a small compressor', () => {
    const W = (volumeL?: number) => present(builtAs(load('fridge', { volumeL })).row).powerW;
    // ((0.02^⅓ + 0.0175) ÷ (0.04^⅓ + 0.0175))²
    expect(W(20)[1] / W()[1]).toBeCloseTo(0.646, 3);
    expect(W(40)[1]).toBeCloseTo(W()[1], 9);
  });

  test('hotter never uses less, larger never less: on any build', () => {
    const any = fc.record({
      name: fc.constantFrom('fridge', 'residential fridge', 'chest freezer', 'bar fridge'),
      supply: fc.constantFrom('dc' as const, 'ac' as const),
      volumeL: fc.integer({ min: 10, max: 500 }),
      airC: fc.double({ min: -10, max: 45, noNaN: true }),
    });
    fc.assert(
      fc.property(any, ({ name, supply, volumeL, airC }) => {
        const at = (litres: number, ambientC: number) =>
          dayAh(load(name, { supply, volumeL: litres, powerW: 150 }), { ambientC, inverterW: 1500 });
        const Q = at(volumeL, airC);
        expect(at(volumeL, airC + 3)).toBeGreaterThanOrEqual(Q - 1e-9);
        // Bar fridges and household ones are built apart: larger within each.
        const isStep = supply === 'ac' && volumeL < 200 && volumeL * 1.2 >= 150;
        if (!isStep) expect(at(volumeL * 1.2, airC)).toBeGreaterThanOrEqual(Q - 1e-9);
      }),
      { numRuns: 2000, seed: 4 },
    );
  });
});

describe('a three-way fridge on 12 V', () => {
  test('heats all the time: nothing told, 135 W day and night', () => {
    expect(dayAh(load('three way fridge'))).toBeCloseTo((135 * 24) / 12, 6);
    expect(useAssumptions(use(load('three way fridge'))).map(a => a.name)).toEqual([
      'three way fridge power',
    ]);
  });

  test('what was told of its draw counts, in amps and in watts, for as long as was told', () => {
    expect(dayAh(load('fridge', { build: 'three-way', currentA: 12 }))).toBeCloseTo(12 * 24, 6);
    expect(dayAh(load('fridge', { build: 'three-way', powerW: 120, hoursPerDay: 3 }))).toBeCloseTo(30, 6);
  });

  test('only where none told how it is built may a big draw be one', () => {
    expect(isPerhapsThreeWay(load('fridge', { currentA: 10 }), 12)).toBe(true);
    expect(isPerhapsThreeWay(load('fridge', { currentA: 10, build: 'three-way' }), 12)).toBe(false);
    expect(isPerhapsThreeWay(load('residential fridge', { currentA: 10 }), 12)).toBe(false);
  });
});

describe('an inverter that is left on', () => {
  const on = (more: Partial<Use>, ...loads: Load[]): number =>
    dailyUseAh({ ...use(...loads), isInverterLeftOn: true, ...more }, { idleShare: 0.01 });

  test('idles through the hours in which nothing runs on it', () => {
    // 1 % of 1,500 W for 22 h at 12 V, beside 2 h of a lamp at 12 V.
    const lamp = load('light', { powerW: 12, hoursPerDay: 2 });
    expect(on({ inverterW: 1500 }, lamp) - 2).toBeCloseTo((15 * 24) / 12, 6);
    const tv = load('tv', { supply: 'ac', powerW: 60, hoursPerDay: 2 });
    const running = dailyUseAh({ ...use(tv), inverterW: 1500 }, { idleShare: 0.01 });
    expect(on({ inverterW: 1500 }, tv) - running).toBeCloseTo((15 * 22) / 12, 6);
  });

  test('by itself, and where its rating is not known: 1,000 W', () => {
    expect(on({ inverterW: 2000 })).toBeCloseTo((20 * 24) / 12, 6);
    expect(on({})).toBeCloseTo((10 * 24) / 12, 6);
  });

  test('never twice: what runs all day leaves it no idle hour, and one inverter waits for all compressors', () => {
    const tv = load('tv', { supply: 'ac', powerW: 60, hoursPerDay: 24 });
    expect(on({ inverterW: 1500 }, tv)).toBeCloseTo(
      dailyUseAh({ ...use(tv), inverterW: 1500 }, { idleShare: 0.01 }),
      9,
    );
    const fridge = load('fridge', { supply: 'ac', powerW: 120 });
    const parts = usePerLoad(
      { ...use(fridge, { ...fridge, name: 'freezer' }), inverterW: 1500, isInverterLeftOn: true },
      { idleShare: 0.01 },
    );
    const none = usePerLoad(
      { ...use(fridge, { ...fridge, name: 'freezer' }), inverterW: 1500 },
      { idleShare: 0 },
    );
    const idle = parts.reduce((sum, part, i) => sum + part.chargeAh - present(none[i]).chargeAh, 0);
    expect(parts).toHaveLength(2);
    expect(idle).toBeCloseTo((15 * 24 * (1 - present(parts[0]).duty)) / 12, 9);
  });

  test('small loads: never less than idle, more load never less, no step where the curve begins', () => {
    const at = (powerW: number) =>
      dailyUseAh(
        { ...use(load('lamp', { supply: 'ac', powerW, hoursPerDay: 1 })), inverterW: 2000 },
        { idleShare: 0.007 },
      ) * 12;
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), powerW => {
        expect(at(powerW)).toBeGreaterThan(Math.max(14, powerW));
        expect(at(powerW * 1.01)).toBeGreaterThan(at(powerW));
      }),
      { numRuns: 500, seed: 4 },
    );
    expect(at(40.001) / at(39.999)).toBeCloseTo(1, 3);
  });
});
