import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { buildOf, builtAs } from '#engine/loads/build.ts';
import { householdKinds } from '#engine/loads/household-table.ts';
import { dayOf, type Use } from '#engine/loads/model.ts';
import {
  coolingReading,
  hasHours,
  inputFactorOf,
  isPerhapsThreeWay,
  readLoads,
  runningHours,
  toldHours,
} from '#engine/loads/reading.ts';
import type { Load } from '#rig/rig.ts';

// How what was told of a load is taken, at the figure where it is taken otherwise and next to it.

const dc = (name: string, rest: Partial<Load> = {}): Load => ({ name, count: 1, supply: 'dc', ...rest });
const ac = (name: string, rest: Partial<Load> = {}): Load => ({ ...dc(name, rest), supply: 'ac' });
const use = (...loads: Load[]): Use => ({ loads, voltageV: 12 });
const hoursOf = (of: Use): number => present(dayOf(of, {}).parts[0]).hours;

describe('a fridge’s draw', () => {
  test.for<[says: string, one: Load, taken: ReturnType<typeof coolingReading>]>([
    ['2.5 A is an average', dc('fridge', { currentA: 2.5 }), 'average'],
    ['2.6 A is that of the compressor', dc('fridge', { currentA: 2.6 }), 'running'],
    ['watts are of the compressor, however few', dc('fridge', { powerW: 20 }), 'running'],
    ['amps on mains are of the compressor', ac('fridge', { currentA: 0.5 }), 'running'],
    [
      'amps said to be of the compressor leave no doubt',
      dc('fridge', { currentA: 1, isAverage: false }),
      undefined,
    ],
    ['nor do amps said to be an average', dc('fridge', { currentA: 4, isAverage: true }), undefined],
    ['nor does a share of the time', dc('fridge', { currentA: 4, dutyPercent: 30 }), undefined],
    ['nor a day’s amp-hours', dc('fridge', { chargeAhPerDay: 30 }), undefined],
    ['its hours are those of the compressor', dc('fridge', { currentA: 4, hoursPerDay: 8 }), 'hours'],
    ['19.9 h still are', dc('fridge', { currentA: 4, hoursPerDay: 19.9 }), 'hours'],
    ['20 h are those that it is plugged in', dc('fridge', { currentA: 4, hoursPerDay: 20 }), 'running'],
    ['minutes are hours', dc('fridge', { currentA: 4, minutesPerDay: 480 }), 'hours'],
    [
      'hours of an average are none of a compressor',
      dc('fridge', { currentA: 2, hoursPerDay: 8 }),
      'average',
    ],
    ['without a draw there is no doubt', dc('fridge', { hoursPerDay: 8 }), undefined],
    ['a fan is none', dc('fan', { currentA: 4 }), undefined],
  ])('%s', ([, one, taken]) => {
    expect(coolingReading(one)).toBe(taken);
  });

  test('of its compressor’s hours, told in hours or in minutes, never of a thing that does not cool', () => {
    expect(runningHours(dc('fridge', { powerW: 45, hoursPerDay: 8 }))).toBe(8);
    expect(runningHours(dc('fridge', { powerW: 45, minutesPerDay: 90 }))).toBe(1.5);
    expect(runningHours(dc('fridge', { powerW: 45 }))).toBeUndefined();
    expect(runningHours(dc('fridge', { powerW: 45, hoursPerDay: 8, isAverage: true }))).toBeUndefined();
    expect(runningHours(dc('fridge', { powerW: 45, hoursPerDay: 8, dutyPercent: 40 }))).toBeUndefined();
    expect(runningHours(dc('fridge', { powerW: 45, hoursPerDay: 8, energyWhPerDay: 500 }))).toBeUndefined();
    expect(runningHours(dc('fan', { powerW: 45, hoursPerDay: 8 }))).toBeUndefined();
  });

  test.for<[says: string, one: Load, volts: number, isOne: boolean]>([
    ['96 W may be a three-way one', dc('fridge', { powerW: 96 }), 12, true],
    ['95 W are a compressor', dc('fridge', { powerW: 95 }), 12, false],
    ['8 A at 12 V are 96 W', dc('fridge', { currentA: 8 }), 12, true],
    ['7.9 A are less', dc('fridge', { currentA: 7.9 }), 12, false],
    ['4 A at 24 V are 96 W', dc('fridge', { currentA: 4 }), 24, true],
    ['on mains it is none', ac('fridge', { powerW: 96, volumeL: 40 }), 12, false],
    ['a freezer is none', dc('freezer', { powerW: 120 }), 12, false],
    ['a household one is none', dc('kitchen fridge', { powerW: 120 }), 12, false],
    ['with nothing told it is none', dc('fridge'), 12, false],
  ])('%s', ([, one, volts, isOne]) => {
    expect(isPerhapsThreeWay(one, volts)).toBe(isOne);
  });
});

describe('what is made for a house', () => {
  test.for<[says: string, one: Load, build: string]>([
    ['74 W on mains is a portable', ac('fridge', { powerW: 74 }), 'camping'],
    ['75 W is none', ac('fridge', { powerW: 75 }), 'household'],
    ['199 L on mains is a portable', ac('fridge', { powerW: 60, volumeL: 199 }), 'camping'],
    ['200 L is none', ac('fridge', { powerW: 60, volumeL: 200 }), 'household'],
    ['20 A on mains come from a socket', ac('fridge', { currentA: 20 }), 'household'],
    ['more were read at the battery', ac('fridge', { currentA: 20.1 }), 'camping'],
  ])('%s', ([, one, build]) => {
    expect(buildOf(one)).toBe(build);
  });

  test('a bar fridge’s plate of 120 W and more is a whole fridge’s', () => {
    const kind = (powerW: number) => builtAs(ac('bar fridge', { powerW })).kind;
    expect(kind(119)).toBe(householdKinds.small);
    expect(kind(120)).toBe(householdKinds.fridge);
  });
});

describe('hours that a thing runs', () => {
  test.for<[says: string, one: Load, hours: number | undefined]>([
    ['hours', dc('fan', { hoursPerDay: 5 }), 5],
    ['minutes', dc('fan', { minutesPerDay: 45 }), 0.75],
    ['once for 3 h', dc('fan', { hoursOnce: 3 }), 3],
    ['once for 30 h, of the first day', dc('fan', { hoursOnce: 30 }), 24],
    ['minutes before once', dc('fan', { minutesPerDay: 30, hoursOnce: 3 }), 0.5],
    ['none', dc('fan'), undefined],
  ])('as told: %s', ([, one, hours]) => {
    expect(toldHours(one)).toBe(hours);
    expect(hasHours(one)).toBe(hours !== undefined);
  });

  test.for<[says: string, of: Use, isAllDay: boolean]>([
    ['alone with a draw on 12 V it runs on', use(dc('fan', { powerW: 20 })), true],
    ['alone without one it has its usual hours', use(dc('fan')), false],
    ['beside another it has them too', use(dc('fan', { powerW: 20 }), dc('tv', { powerW: 30 })), false],
    ['alone on mains too', use(ac('toaster', { powerW: 800 })), false],
    [
      'unless it is asked how long that runs',
      { ...use(ac('toaster', { powerW: 800 })), doesMainsRunOn: true },
      true,
    ],
    ['of a day that is asked for it has them', { ...use(dc('tv', { powerW: 30 })), isOfDay: true }, false],
    [
      'what some leave on round the clock, alone, is on all of it',
      { ...use(dc('dashcam', { powerW: 5 })), isOfDay: true },
      true,
    ],
    ['off everything at once it runs on', { ...use(dc('tv'), dc('fan')), doAllRunOn: true }, true],
    ['an average is of all day', use(dc('fan', { isAverage: true, currentA: 1 }), dc('tv')), true],
    ['a thing of no known kind runs on', use(dc('gizmo', { powerW: 4 }), dc('tv')), true],
    ['what cools is on all day', use(dc('fridge', { currentA: 1 }), dc('tv')), true],
  ])('as nobody told: %s', ([, of, isAllDay]) => {
    expect(hoursOf(of) === 24).toBe(isAllDay);
  });
});

test('up to 1250 W a microwave’s plate is what comes out, above that what it takes', () => {
  expect(inputFactorOf(ac('microwave', { powerW: 1250 }))).toBeDefined();
  expect(inputFactorOf(ac('microwave', { powerW: 1251 }))).toBeUndefined();
  expect(inputFactorOf(ac('microwave', { powerW: 800, isInput: true }))).toBeUndefined();
  expect(inputFactorOf(ac('kettle', { powerW: 800 }))).toBeUndefined();
});

test('things of one name are told apart by their place among them', () => {
  const keys = readLoads({ loads: [dc('fan'), dc('light'), dc('fan'), dc('fan')] }).map(({ key }) => key);
  expect(keys).toEqual(['fan', 'light', 'fan2', 'fan3']);
});

test('a day is rated at the current that most of its charge is drawn at', () => {
  // 24 Ah at 1 A and 8 Ah at 4 A: (24 × 1 + 8 × 4) ÷ 32; the largest is 4 A; nothing at all is rated at nothing.
  const day = dayOf(
    use(dc('fan', { currentA: 1, hoursPerDay: 24 }), dc('pump', { currentA: 4, hoursPerDay: 2 })),
    {},
  );
  expect(day).toMatchObject({ dailyUse: 32, currentA: 1.75, peakA: 4 });
  expect(dayOf(use(dc('fan', { currentA: 0 })), {})).toMatchObject({ dailyUse: 0, currentA: 0, peakA: 0 });
});
