import { describe, expect, test } from 'vitest';
import { isSameName, type MergeMode, mergeFacts, removeFrom } from '#rig/merge.ts';
import type { Facts, Load, Stated } from '#rig/rig.ts';

const fridge: Load = { name: 'fridge', count: 1, currentA: 1.2, supply: 'dc' };
const light: Load = { name: 'light', count: 2, powerW: 6, hoursPerDay: 5, supply: 'dc' };
const rig: Facts = {
  batteries: [{ count: 1, capacityAh: 100, chemistry: 'agm' }],
  loads: [fridge, light],
  solar: [{ count: 1, powerW: 160, controller: 'mppt' }],
  chargers: [{ kind: 'dcdc', currentA: 25 }],
  inverter: { powerW: 1000, wave: 'pure-sine' },
};

const cases: { name: string; mode: MergeMode; said: Stated; becomes: Stated }[] = [
  {
    name: 'lithium, told without a size, colours the battery known',
    mode: 'change',
    said: { batteries: [{ count: 1, chemistry: 'lfp' }] },
    becomes: { batteries: [{ count: 1, capacityAh: 100, chemistry: 'lfp' }] },
  },
  {
    name: '200 Ah stays AGM when it only changes the size',
    mode: 'change',
    said: { batteries: [{ count: 1, capacityAh: 200 }] },
    becomes: { batteries: [{ count: 1, capacityAh: 200, chemistry: 'agm' }] },
  },
  {
    name: 'another battery joins',
    mode: 'add',
    said: { batteries: [{ count: 1, capacityAh: 75 }] },
    becomes: {
      batteries: [
        { count: 1, capacityAh: 100, chemistry: 'agm' },
        { count: 1, capacityAh: 75 },
      ],
    },
  },
  {
    name: 'the same appliance gets its new draw and keeps nothing of the old one',
    mode: 'state',
    said: { loads: [{ name: 'fridges', count: 1, powerW: 45, supply: 'dc' }] },
    becomes: { loads: [{ name: 'fridges', count: 1, powerW: 45, supply: 'dc' }, light] },
  },
  {
    name: 'a daily use told as one number takes the place of the loads',
    mode: 'state',
    said: { dailyUseAh: 40 },
    becomes: { loads: undefined, dailyUseAh: 40 },
  },
  {
    name: 'a cheap PWM changes only the controller',
    mode: 'change',
    said: { solar: [{ count: 1, controller: 'pwm' }] },
    becomes: { solar: [{ count: 1, powerW: 160, controller: 'pwm' }] },
  },
  {
    name: 'the volts on its label are told of the panel known',
    mode: 'change',
    said: { solar: [{ openCircuitV: 24.6 }] },
    becomes: { solar: [{ count: 1, powerW: 160, controller: 'mppt', openCircuitV: 24.6 }] },
  },
  {
    name: 'a limit and an age, told later, join the battery known',
    mode: 'state',
    said: { batteries: [{ maxCurrentA: 100, ageYears: 6 }] },
    becomes: { batteries: [{ count: 1, capacityAh: 100, chemistry: 'agm', maxCurrentA: 100, ageYears: 6 }] },
  },
  {
    name: 'one single use takes the place of hours a day',
    mode: 'state',
    said: { loads: [{ name: 'light', hoursOnce: 2 }] },
    becomes: { loads: [fridge, { name: 'light', count: 2, powerW: 6, hoursOnce: 2, supply: 'dc' }] },
  },
  {
    name: 'a thing named without figures keeps all that is known of it',
    mode: 'state',
    said: { loads: [{ name: 'lights' }] },
    becomes: { loads: [fridge, { ...light, name: 'lights' }] },
  },
  {
    name: 'a bigger inverter is still pure sine',
    mode: 'change',
    said: { inverter: { powerW: 2000 } },
    becomes: { inverter: { powerW: 2000, wave: 'pure-sine' } },
  },
  {
    name: 'an isolator joins the DC-DC charger',
    mode: 'state',
    said: { chargers: [{ kind: 'isolator' }] },
    becomes: { chargers: [{ kind: 'dcdc', currentA: 25 }, { kind: 'isolator' }] },
  },
];

describe('new facts meet old ones', () => {
  test.each(cases)('$name', ({ mode, said, becomes }) => {
    const merged = mergeFacts(rig, said, mode);
    for (const [key, value] of Object.entries(becomes)) expect(merged[key as keyof Facts]).toEqual(value);
  });

  test('“what if only one” of two counts one', () => {
    const two: Stated = { batteries: [{ count: 2, capacityAh: 100, chemistry: 'agm' }] };
    const one = mergeFacts(two, { batteries: [{ count: 1 }] }, 'change');
    expect(one.batteries).toEqual([{ count: 1, capacityAh: 100, chemistry: 'agm' }]);
    expect(mergeFacts(two, { batteries: [{ chemistry: 'lfp' }] }, 'change').batteries?.[0]?.count).toBe(2);
  });

  test('another kind of a thing takes its place where a question is turned, and stands beside it in a rig', () => {
    const heater: Stated = { loads: [{ name: 'heater', powerW: 2000 }] };
    const diesel: Stated = { loads: [{ name: 'diesel heater', currentA: 1.5 }] };
    expect(mergeFacts(heater, diesel, 'change').loads).toEqual([{ name: 'diesel heater', currentA: 1.5 }]);
    expect(mergeFacts(heater, diesel, 'state').loads).toHaveLength(2);
    const fan: Stated = { loads: [{ name: 'fan', currentA: 1 }] };
    expect(mergeFacts(heater, fan, 'change').loads).toHaveLength(2);
  });

  test('the old facts are left as they were', () => {
    const before = structuredClone(rig);
    mergeFacts(rig, { loads: [{ ...fridge, currentA: 9 }], dailyUseAh: 1 }, 'change');
    expect(rig).toEqual(before);
  });
});

describe('one thing told in two ways: the later one counts', () => {
  test.each<[string, Stated, Stated, Stated]>([
    [
      'a plan after hours a day',
      { drivingHoursPerDay: 2 },
      { days: [{ drivingH: 3 }] },
      { days: [{ drivingH: 3 }] },
    ],
    [
      'hours a day after a plan',
      { days: [{ drivingH: 3 }] },
      { drivingHoursPerDay: 2 },
      { drivingHoursPerDay: 2 },
    ],
    ['Ah left after Ah used', { chargeUsedAh: 40 }, { chargeLeftAh: 55 }, { chargeLeftAh: 55 }],
    ['an hour after a span', { durationH: 72 }, { until: '7am' }, { until: '7am' }],
    [
      'other facts stay',
      { fuseA: 30, netCurrentA: -3 },
      { chargeUsedAh: 40 },
      { fuseA: 30, netCurrentA: -3, chargeUsedAh: 40 },
    ],
  ])('%s', (_name, old, said, becomes) => expect(mergeFacts(old, said)).toEqual(becomes));
});

describe('taking out', () => {
  test.each([
    ['lights', (f: Stated) => expect(f.loads).toEqual([fridge])],
    ['solar', (f: Stated) => expect(f.solar).toBeUndefined()],
    ['dcdc', (f: Stated) => expect(f.chargers).toEqual([])],
    ['toaster', (f: Stated) => expect(f).toEqual(rig)],
  ])('%s', (name, check) => check(removeFrom(rig, [name])));
});

test.each([
  ['e-bike', 'e bike'],
  ['lights', 'light'],
])('%s and %s are one thing', (one, other) => {
  expect(isSameName(one, other)).toBe(true);
});
