import { expect, test } from 'vitest';
import { isIntoNextDay, mainsNightH, planOf, type TripDay } from '#engine/trip/plan.ts';

const hoursOf = (shares: Float64Array): readonly (readonly [hour: number, share: number])[] =>
  [...shares].flatMap((share, hour) => (share > 0 ? [[hour, Math.round(share * 1e6) / 1e6] as const] : []));
const plan = (told: readonly TripDay[], days = 3) => planOf(days, told, 0, day => day % 2);

test('driving from nine, a generator from four, mains from six into the next day', () => {
  const { driving, generator, mains } = plan([{ drivingH: 1.5, generatorH: 2 }, { mainsH: 8 }]);
  expect(hoursOf(driving)).toEqual([
    [9, 1],
    [10, 0.5],
  ]);
  expect(hoursOf(generator)).toEqual([
    [16, 1],
    [17, 1],
  ]);
  expect(hoursOf(mains)).toEqual([42, 43, 44, 45, 46, 47, 48, 49].map(hour => [hour, 1]));
});

test('long runs start early enough for their day; what is beyond the trip is cut off', () => {
  expect(hoursOf(plan([{ generatorH: 20 }]).generator)[0]).toEqual([4, 1]);
  expect(hoursOf(plan([{ generatorH: 20 }]).generator)).toHaveLength(20);
  expect(hoursOf(plan([{ mainsH: 14 }], 1).mains)).toHaveLength(6);
});

test('a night on mains is over when the drive of the next morning starts; a longer one begins earlier', () => {
  expect(mainsNightH).toBe(15);
  const hours = hoursOf(plan([{ mainsH: mainsNightH }]).mains).map(([hour]) => hour);
  expect([hours[0], hours.at(-1)]).toEqual([18, 32]);
  expect(hoursOf(plan([{ mainsH: 24 }]).mains).map(([hour]) => hour)[0]).toBe(9);
  expect([5, 6, 7, 24].map(isIntoNextDay)).toEqual([false, false, true, true]);
});

test('two nights on mains that meet are no more than one', () => {
  expect(Math.max(...plan([{ mainsH: 30 }, { mainsH: 3 }]).mains)).toBe(1);
});

test('each day has its sky', () => {
  expect([...plan([], 4).skies]).toEqual([0, 1, 0, 1]);
});
