import { describe, expect, test } from 'vitest';
import { meanAirC } from '#engine/loads/by-clock.ts';
import { dailyUseAh, dayOf } from '#engine/loads/model.ts';
import { chargeOver } from '#engine/loads/over.ts';
import { isPerhapsThreeWay, runningHours } from '#engine/loads/reading.ts';
import type { Load } from '#rig/rig.ts';

const thing = (name: string, more: Partial<Load>): Load => ({ name, count: 1, supply: 'dc', ...more });
const use = (load: Load) => ({ loads: [load], voltageV: 12 });

test('the air told goes before the air assumed, and that before mild weather', () => {
  const none = { loads: [], voltageV: 12 };
  expect(meanAirC({ ...none, ambientC: 38 }, { ambientC: 20 })).toBe(38);
  expect(meanAirC(none, { ambientC: 35 })).toBe(35);
  expect(meanAirC(none, {})).toBe(25);
});

describe('what may be a three-way fridge', () => {
  test.for([
    ['fridge', 120, true],
    ['fridge', 45, false],
    ['freezer', 120, false],
    // Nothing that doesn't cool is one, however much it draws.
    ['kettle', 150, false],
    ['heater', 150, false],
  ] as const)('%s of %d W on 12 V: %s', ([name, powerW, isPerhaps]) => {
    expect(isPerhapsThreeWay(thing(name, { powerW }), 12)).toBe(isPerhaps);
  });
});

test('a fridge for mains is no three-way one on the battery, whatever it draws', () => {
  expect(isPerhapsThreeWay(thing('camping fridge', { powerW: 120 }), 12)).toBe(true);
  expect(isPerhapsThreeWay(thing('camping fridge', { powerW: 120, supply: 'ac' }), 12)).toBe(false);
});

test('hours told beside a share of the time are not those of its compressor', () => {
  const told = { powerW: 45, hoursPerDay: 8 };
  expect(runningHours(thing('fridge', told))).toBe(8);
  expect(runningHours(thing('fridge', { ...told, dutyPercent: 40 }))).toBeUndefined();
  expect(runningHours(thing('fridge', { ...told, isAverage: true }))).toBeUndefined();
});

test('only what runs on mains makes an inverter that is left on a large one', () => {
  const light = thing('light', { powerW: 500, hoursPerDay: 1 });
  const kettle = thing('kettle', { powerW: 300, hoursPerDay: 0.1, supply: 'ac' });
  const left = { voltageV: 12, isInverterLeftOn: true } as const;
  const idle = (...loads: Load[]) =>
    dailyUseAh({ ...left, loads }, {}) - dailyUseAh({ ...left, isInverterLeftOn: false, loads }, {});
  expect(idle(kettle)).toBeGreaterThan(1);
  expect(idle(kettle, thing('heater', { powerW: 2500, hoursPerDay: 0.1 }))).toBeCloseTo(idle(kettle), 6);
  expect(idle(light)).toBeGreaterThan(1);
});

test('amps told while it runs are no average: the compressor rests in between', () => {
  const asAverage = dailyUseAh(use(thing('fridge', { currentA: 2 })), {});
  const whileRunning = dailyUseAh(use(thing('fridge', { currentA: 2, isAverage: false })), {});
  expect(asAverage).toBeCloseTo(48, 6);
  expect(whileRunning).toBeLessThan(0.75 * asAverage);
  expect(whileRunning).toBeGreaterThan(0.15 * asAverage);
});

test('amps told of a fridge for mains, more than a socket gives, are those at the battery', () => {
  const told = { currentA: 25, isAverage: false } as const;
  const onMains = dailyUseAh(use(thing('fridge', { ...told, supply: 'ac' })), {});
  const on12V = dailyUseAh(use(thing('fridge', told)), {});
  expect(Math.abs(onMains / on12V - 1)).toBeLessThan(0.1);
});

test('a draw learnt of a rig counts for each of its things', () => {
  const lamp = use(thing('light', { currentA: 5, hoursPerDay: 5 }));
  const within = (hours: number, learnedDraw?: number) =>
    chargeOver(dayOf(lamp, learnedDraw === undefined ? {} : { learnedDraw }), hours);
  for (const hours of [2, 12, 48]) expect(within(hours, 130)).toBeCloseTo(1.3 * within(hours), 9);
});
