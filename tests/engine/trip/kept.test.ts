import { describe, expect, test } from 'vitest';
import { explore } from '#engine/explore.ts';
import { type BalanceHour, balance } from '#engine/trip/balance.ts';
import { accountByDay } from '#engine/trip/by-day.ts';
import { exploreLevel } from '#engine/trip/level-at.ts';
import { simulate, type Trip, tripAssumptions } from '#engine/trip/model.ts';
import { sharesOf } from '#engine/trip/profile.ts';
import { isPlugged } from '#engine/trip/trip.ts';
import { likelyOf, tripWith } from './cases.ts';
import { planned, quiet } from './ideal.ts';

/** Sun, driving, a generator and mains, each with what nobody told of it. */
const travelled = (): Trip =>
  tripWith({
    useAh: undefined,
    use: {
      loads: [
        { name: 'fridge', count: 1, powerW: 45, supply: 'dc' },
        { name: 'laptop', count: 1, powerW: 60, hoursPerDay: 2, supply: 'ac' },
      ],
      voltageV: 12,
    },
    sun: { powerW: 120, sun: { latitudeDeg: -28.6, longitudeDeg: 153.6, month: 5 } },
    driving: { hoursPerDay: 2 },
    days: [{ drivingH: 2 }, { generatorH: 2 }, { mainsH: 9 }],
    startHour: 16,
  });

describe('what is kept of a trip between its runs', () => {
  const kept = travelled();
  const likely = likelyOf(kept);
  simulate(kept, likely);

  test.for(tripAssumptions(kept).map(one => [one.name, one] as const))(
    'changes nothing when %s moves: a trip laid out anew comes to the same',
    ([name, { low, high }]) => {
      for (const end of [low, high, high, low]) {
        const values = { ...likely, [name]: end };
        const { lowestCharge, endCharge, onOffer, dailyUse } = simulate(kept, values);
        const anew = simulate(travelled(), values);
        expect({ lowestCharge, endCharge, onOffer, dailyUse }).toEqual({
          lowestCharge: anew.lowestCharge,
          endCharge: anew.endCharge,
          onOffer: anew.onOffer,
          dailyUse: anew.dailyUse,
        });
      }
    },
  );

  test('a charger whose amps nobody told widens what is on offer', () => {
    const driven = tripWith({ driving: { hoursPerDay: 2 } });
    const { figures } = explore<'onOffer'>(tripAssumptions(driven), 'onOffer', (values, trace) => ({
      onOffer: simulate(driven, values, trace).onOffer,
    }));
    // 20 A by a usual isolator, 8 to 35 A by what cables and batteries let through.
    expect(figures.onOffer.value).toBeCloseTo(3 * 2 * 20, 6);
    expect(figures.onOffer.low).toBeLessThan(3 * 2 * 12);
    expect(figures.onOffer.high).toBeGreaterThan(3 * 2 * 30);
  });
});

test('half an hour on a generator is half an hour’s amps', () => {
  const { sums } = balance({
    ...quiet,
    startAh: 20,
    startHour: 17.5,
    durationH: 0.5,
    plan: planned(1, [{ generatorH: 3 }]),
    generatorA: 20,
  });
  expect(sums.pluggedAh).toBeCloseTo(10, 9);
  expect(sums.storedAh).toBeCloseTo(10, 9);
});

test('an hour’s sun in the record is its watts at the battery’s volts', () => {
  const seen: number[] = [];
  balance(
    {
      ...quiet,
      startAh: 20,
      startHour: 12,
      durationH: 1,
      suns: [{ dayWh: 240, dayAh: 0 }],
      sunShares: Array<number>(24).fill(1),
    },
    hour => seen.push(hour.sunAh),
  );
  expect(seen).toEqual([20]);
});

test('a generator or mains charges only where some day has hours of it', () => {
  const charges = (...days: NonNullable<Trip['days']>) => isPlugged(tripWith({ days }));
  expect(charges()).toBe(false);
  expect(charges({ drivingH: 2 }, { sky: 'sunny' })).toBe(false);
  expect(charges({ generatorH: 0, mainsH: 0 })).toBe(false);
  expect(charges({}, { generatorH: 1 })).toBe(true);
  expect(charges({}, { mainsH: 9 })).toBe(true);
});

test('air that was told leaves no battery’s temperature to be taken for granted', () => {
  const names = (ambientC?: number) =>
    tripAssumptions(tripWith({ use: { loads: [], dailyUseAh: 20, voltageV: 12, ambientC } })).map(
      a => a.name,
    );
  expect(names()).toContain('batteryTemperature');
  expect(names(30)).not.toContain('batteryTemperature');
});

test('a current that was read off leaves nothing of the loads to be taken for granted', () => {
  const ahead = {
    bank: tripWith({}).bank,
    use: { loads: [{ name: 'fridge', count: 1, supply: 'dc' as const }], voltageV: 12 },
    level: { name: 'stateOfCharge', value: 80, low: 80, high: 80, unit: '%', why: 'told' } as const,
    durationH: 5,
    clockH: 20,
  };
  const moved = (netA?: number) => exploreLevel({ ...ahead, netA }).ranked.map(({ name }) => name);
  expect(moved()).toContain('ambientC');
  expect(moved(-3)).not.toContain('ambientC');
});

test('days told as neither sunny nor overcast are as days of which nothing was told', () => {
  for (const sun of [{ powerW: 120 }, { ahPerDay: 30 }]) {
    const trip = (days?: Trip['days']) =>
      tripWith({
        days,
        startHour: 16,
        sun: { ...sun, sun: { latitudeDeg: -28.6, longitudeDeg: 153.6, month: 5 } },
      });
    const [told, untold] = [trip([{ sky: 'mixed' }, { sky: 'mixed' }, {}]), trip()];
    expect(tripAssumptions(told).map(a => a.name)).toEqual(tripAssumptions(untold).map(a => a.name));
    expect(simulate(told, likelyOf(told)).lowestCharge).toBe(simulate(untold, likelyOf(untold)).lowestCharge);
  }
});

test('from full in the sun, then out, then in again: what went in is counted from each beginning', () => {
  const hours = (at: Readonly<Record<number, number>>) => Array.from({ length: 24 }, (_, h) => at[h] ?? 0);
  const { sums, endAh } = balance({
    ...quiet,
    useByHour: hours({ 2: 10 }),
    sunShares: hours({ 1: 5, 3: 5, 5: 5 }),
  });
  expect(endAh).toBeCloseTo(100, 9);
  // Five come in while it is full: none of them goes in.
  expect(sums).toMatchObject({ inAh: expect.closeTo(10, 9), notTakenAh: expect.closeTo(5, 9) });
});

test('gone no further than the limit, where only that is asked', () => {
  const seen: number[] = [];
  const input = { ...quiet, useByHour: Array<number>(24).fill(20) };
  balance({ ...input, isOverAtLimit: true }, ({ atH }) => seen.push(atH));
  expect(seen).toEqual([1, 2, 3]);
  seen.length = 0;
  balance(input, ({ atH }) => seen.push(atH));
  expect(seen).toHaveLength(24);
});

test('the last day’s sky is the sky of its 24 hours and of no other', () => {
  const seen: number[] = [];
  balance(
    {
      ...quiet,
      startAh: 10,
      durationH: 48,
      sunShares: Array<number>(24).fill(1),
      suns: [
        { dayWh: 0, dayAh: 0.5 },
        { dayWh: 0, dayAh: 0.1 },
      ],
      lastSkyH: 24,
    },
    ({ sunAh }) => seen.push(sunAh),
  );
  expect(seen).toEqual([...Array<number>(24).fill(0.5), ...Array<number>(24).fill(0.1)]);
});

test('what is on all day, or said to be on for longer, is on evenly', () => {
  for (const hours of [24, 30]) expect(new Set(sharesOf([8], hours))).toEqual(new Set([1 / 24]));
  expect(sharesOf([8], 2)[8]).toBeCloseTo(0.5, 9);
});

describe('a day’s hours added up', () => {
  const hour = (atH: number, chargeAh: number, pluggedAh: number): BalanceHour =>
    ({ atH, chargeAh, useAh: 1, sunAh: 2, drivingAh: 3, pluggedAh }) as BalanceHour;

  test('what came by plug is the sum of its hours', () => {
    const [day] = accountByDay([hour(1, 90, 10), hour(2, 95, 12), hour(3, 94, 0)], 8, 100);
    expect(day).toMatchObject({ useAh: 3, sunAh: 6, drivingAh: 9, pluggedAh: 22, endPercent: 94 });
  });

  test('the lowest is told by the clock of its own day', () => {
    const hours = [hour(16, 80, 0), hour(17, 79, 0), hour(20, 60, 0), hour(23, 70, 0)];
    const [first, second] = accountByDay(hours, 8, 100);
    expect(first).toMatchObject({ day: 0, lowestPercent: 80, lowestHour: 24 });
    // Four in the morning, 20 hours on from eight.
    expect(second).toMatchObject({ day: 1, lowestPercent: 60, lowestHour: 4 });
  });
});
