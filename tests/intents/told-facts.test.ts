import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { computeChargeLevel } from '#intents/charge-level/compute.ts';
import { computeChargeTime } from '#intents/charge-time/compute.ts';
import { factsOf } from '#intents/facts.ts';
import { computeGenerator } from '#intents/generator/compute.ts';
import { computeLater } from '#intents/level-later.ts';
import { computeTrip } from '#intents/trip/compute.ts';
import type { Stated } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const setting = settingWith();
const agm = [{ capacityAh: 100, chemistry: 'agm' as const }];
const half = [{ ...present(agm[0]), stateOfChargePercent: 50 }];
const onMains = [{ kind: 'mains' as const, currentA: 20 }];

describe('a level told by rest volts is where a charge starts', () => {
  const charge = (facts: Stated) =>
    computeChargeTime(factsOf({ chargers: onMains, ...facts }), setting).figures;
  test('the emptier it reads, the longer', () => {
    const at = (volts: number) => charge({ batteries: agm, volts, voltsTaken: 'rest' });
    expect(at(12.2).startCharge.value).toBeCloseTo(43, 0);
    expect(at(11.9).chargeTime.value).toBeGreaterThan(at(12.2).chargeTime.value);
    expect(at(12.2).chargeTime.value).toBeGreaterThan(at(12.6).chargeTime.value);
  });
  test('tables differ, and so it is a range', () => {
    const { startCharge } = charge({ batteries: agm, volts: 12.2, voltsTaken: 'rest' });
    expect(startCharge.low).toBeLessThan(40);
    expect(startCharge.high).toBeGreaterThan(45);
  });
  test('a level told comes first, and a charger’s volts tell none', () => {
    expect(charge({ batteries: half, volts: 11.9 }).startCharge.value).toBe(50);
    expect(charge({ batteries: agm, volts: 14.2 })).toEqual(charge({ batteries: agm }));
  });
});

describe('what runs while it charges takes its part', () => {
  const fan = [{ name: 'fan', currentA: 4 }];
  const time = (facts: Stated, recalled: string[] = []) =>
    computeChargeTime(factsOf({ batteries: half, chargers: onMains, ...facts }), {
      ...setting,
      recalled: new Set(recalled) as never,
    }).figures;
  test('4 A of what 20 A brings', () => {
    expect(time({ loads: fan }).drawA.value).toBeCloseTo(4, 6);
    expect(time({}).current.value - time({ loads: fan }).current.value).toBeCloseTo(4, 6);
    expect(time({ loads: fan }).chargeTime.value).toBeGreaterThan(1.05 * time({}).chargeTime.value);
  });
  test('as much as comes in, and it never fills', () => {
    expect(time({ loads: [{ name: 'fan', currentA: 25 }] }).chargeTime.value).toBe(Infinity);
  });
  test('remembered things are not running for that', () => {
    expect(time({ loads: fan }, ['loads'])).toEqual(time({}));
  });
  test('the sun of a day pays for the night as well', () => {
    const sun = { chargers: undefined, solar: [{ powerW: 300 }], peakSunHours: 6 };
    expect(time(sun).current.value - time({ ...sun, loads: fan }).current.value).toBeCloseTo((4 * 24) / 6, 6);
  });
  test('on a generator’s charger', () => {
    const amps = (facts: Stated) =>
      computeGenerator(
        factsOf({ batteries: half, chargers: [...onMains, { kind: 'generator', powerW: 2000 }], ...facts }),
        setting,
      ).figures.chargeCurrent.value;
    expect(amps({}) - amps({ loads: fan })).toBeCloseTo(4, 6);
  });
});

test('a generator in the mountains wants to be bigger, told by height or place', () => {
  const watts = (facts: Stated) =>
    computeGenerator(factsOf({ chargers: onMains, ...facts }), setting).figures.generatorPower.value;
  expect(watts({ place: 'cusco' })).toBeCloseTo(watts({ altitudeM: 3400 }), 6);
  expect(watts({ place: 'cusco' })).toBeGreaterThan(1.5 * watts({}));
});

describe('at 7 am', () => {
  const then = (told: Stated) => {
    const facts = factsOf({ batteries: half, ...told });
    return computeLater(facts, computeChargeLevel(facts, setting), setting)?.figures.stateOfCharge.value;
  };
  test('loads and hours tell a level then; without a time it is the level now', () => {
    expect(then({ loads: [{ name: 'fan', currentA: 1 }], durationH: 10 })).toBeCloseTo(40, 0);
    expect(then({ loads: [{ name: 'fan', currentA: 1 }] })).toBeUndefined();
    expect(then({ durationH: 10 })).toBeUndefined();
  });
  test('a monitor’s current does as well', () => {
    expect(then({ netCurrentA: -1, durationH: 10 })).toBeCloseTo(40, 0);
    expect(then({ netCurrentA: 2, durationH: 5 })).toBeCloseTo(59.7, 0);
  });
});

describe('a trip told day by day', () => {
  const trip = (facts: Stated) =>
    computeTrip(factsOf({ batteries: agm, dailyUseAh: 20, ...facts }) as never, setting.at);
  test('the amps of a charger told on the generator are the generator’s', () => {
    const days = [{ generatorH: 2 }, {}];
    const on = (currentA: number) => trip({ days, chargers: [{ kind: 'generator', currentA }] }).figures;
    expect(on(20).onOffer.value).toBeGreaterThan(1.8 * on(10).onOffer.value);
  });
  test('a first day whose sky was told begins in the morning', () => {
    const sky = (first?: 'sunny' | 'overcast') =>
      trip({ days: [{ sky: first }, { sky: 'sunny' }], solar: [{ powerW: 100 }], place: 'perth' });
    expect(sky('sunny').startHour).toBe(9);
    expect(sky('sunny').figures.onOffer.value).toBeGreaterThan(sky('overcast').figures.onOffer.value + 10);
    expect(sky().startHour).toBe(16);
  });
});
