import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { likelyOf } from '#engine/explore.ts';
import type { BalanceHour } from '#engine/trip/balance.ts';
import { accountByDay, type DayAccount, reportByDay } from '#engine/trip/by-day.ts';
import { simulate, type Trip, tripAssumptions } from '#engine/trip/model.ts';

const bank = present(bankOf([{ count: 1, capacityAh: 100, chemistry: 'agm' }]));
const trip: Trip = {
  bank,
  use: { loads: [{ name: 'fridge', count: 1, currentA: 1.5, isAverage: true, supply: 'dc' }], voltageV: 12 },
  sun: { powerW: 120, sun: { latitudeDeg: -28.6, longitudeDeg: 153.6, month: 5 } },
  driving: { hoursPerDay: 1 },
  days: [{ sky: 'sunny' }, { generatorH: 2 }, { mainsH: 9 }, {}],
  durationH: 76,
  startHour: 16,
};

/** The hours of a trip as they come, and all of it. */
function gone(of: Trip) {
  const hours: BalanceHour[] = [];
  const result = simulate(of, likelyOf(tripAssumptions(of)), undefined, hour => hours.push(hour));
  return { hours, result, days: accountByDay(hours, present(of.startHour), result.capacityAh) };
}

describe('the hours of a trip as days', () => {
  const { hours, result, days } = gone(trip);
  const sum = (of: (day: DayAccount) => number) => days.reduce((total, day) => total + of(day), 0);

  test('from its start to midnight, whole days, and to its end', () => {
    expect(days.map(({ day }) => day)).toEqual([0, 1, 2, 3]);
    const each = (day: number) => hours.filter(({ atH }) => Math.ceil((16 + atH) / 24) - 1 === day).length;
    expect(days.map(({ day }) => each(day))).toEqual([8, 24, 24, 20]);
    // A fridge takes more by day than by night, and as much on each whole day.
    const [first, second, third] = days as [DayAccount, DayAccount, DayAccount];
    expect(second.useAh).toBeCloseTo(24 * 1.5, 6);
    expect(third.useAh).toBeCloseTo(24 * 1.5, 6);
    expect(first.useAh).toBeGreaterThan(8 * 1.5);
  });

  test('what is used, made, driven and plugged in on all days is that of the trip', () => {
    const { sums } = result.balance;
    expect(sum(day => day.useAh)).toBeCloseTo(sums.useAh, 6);
    expect(sum(day => day.sunAh)).toBeCloseTo(sums.sunAh, 6);
    expect(sum(day => day.drivingAh)).toBeCloseTo(sums.drivingAh, 6);
    expect(sum(day => day.pluggedAh)).toBeCloseTo(sums.pluggedAh, 6);
    for (const ah of [sums.sunAh, sums.drivingAh, sums.pluggedAh]) expect(ah).toBeGreaterThan(1);
  });

  test('the lowest of the days is the trip’s, no day ends below its own, the last one as the trip', () => {
    expect(Math.min(...days.map(day => day.lowestPercent))).toBeCloseTo(result.lowestCharge, 6);
    for (const day of days) expect(day.endPercent).toBeGreaterThanOrEqual(day.lowestPercent);
    expect(days.at(-1)?.endPercent).toBeCloseTo(result.endCharge, 6);
  });
});

describe('days by hand', () => {
  // Two amps out an hour from 20 o'clock on, two hours of sun and an hour of each plug in the next morning.
  const hour = (atH: number, chargeAh: number, more: Partial<BalanceHour> = {}): BalanceHour => ({
    atH,
    chargeAh,
    useAh: 2,
    sunAh: 0,
    drivingAh: 0,
    pluggedAh: 0,
    ...more,
  });
  const night = Array.from({ length: 11 }, (_, i) => hour(i + 1, 50 - 2 * (i + 1)));
  const morning = [hour(12, 30, { sunAh: 4, drivingAh: 1 }), hour(13, 34, { sunAh: 6, pluggedAh: 3 })];
  const days = accountByDay([...night, ...morning], 20, 50);

  test('sums, lowest with its hour, end, and the level at seven', () => {
    expect(days).toEqual([
      {
        day: 0,
        useAh: 8,
        sunAh: 0,
        drivingAh: 0,
        pluggedAh: 0,
        lowestPercent: 84,
        lowestHour: 24,
        endPercent: 84,
        morningPercent: undefined,
        eveningPercent: undefined,
      },
      {
        day: 1,
        useAh: 18,
        sunAh: 10,
        drivingAh: 1,
        pluggedAh: 3,
        lowestPercent: 56,
        lowestHour: 7,
        endPercent: 68,
        morningPercent: 56,
        eveningPercent: undefined,
      },
    ]);
  });

  test('the level at seven in the evening; of equal lows the first is named', () => {
    const flat = Array.from({ length: 24 }, (_, i) => hour(i + 1, i === 18 ? 41 : 40));
    expect(accountByDay(flat, 0, 50)).toMatchObject([
      { day: 0, lowestPercent: 80, lowestHour: 1, morningPercent: 80, eveningPercent: 82 },
    ]);
  });
});

describe('each day with what was told of it', () => {
  const account = (day: number, more: Partial<DayAccount> = {}): DayAccount => ({
    day,
    useAh: 10,
    sunAh: 0,
    drivingAh: 0,
    pluggedAh: 0,
    lowestPercent: 50,
    lowestHour: 7,
    endPercent: 60,
    ...more,
  });
  const plugged = { pluggedAh: 9 };
  const of = (more: Partial<Trip>, ...accounts: DayAccount[]) => reportByDay({ ...trip, ...more }, accounts);

  test('what it was plugged into, mains of the evening before too', () => {
    const days = [{ generatorH: 2 }, { mainsH: 9 }, {}, { generatorH: 1, mainsH: 3 }, {}];
    const all = days.map((_, day) => account(day, plugged));
    expect(of({ days }, ...all).map(({ plug }) => plug)).toEqual([
      'generator',
      'mains',
      'mains',
      'generator and mains',
      // Three hours from six in the evening are over by nine: what it is plugged into can only be mains all the same.
      'mains',
    ]);
    expect(of({ days: [{ mainsH: 9 }, { generatorH: 2 }] }, account(1, plugged))[0]?.plug).toBe(
      'generator and mains',
    );
    expect(of({ days: [{ mainsH: 3 }, { generatorH: 2 }] }, account(1, plugged))[0]?.plug).toBe('generator');
    expect(of({ days }, account(0))[0]).not.toHaveProperty('plug');
  });

  test('when it arrives: nine o’clock and the hours of its drive, where that brought anything', () => {
    const driven = { drivingAh: 20 };
    const arrives = (days: Trip['days'], drivingHoursPerDay?: number) =>
      of(
        { days, driving: drivingHoursPerDay === undefined ? undefined : { hoursPerDay: drivingHoursPerDay } },
        account(0, driven),
        account(1, driven),
      ).map(({ arrivesHour }) => arrivesHour);
    expect(arrives([{ drivingH: 3 }, {}])).toEqual([12, undefined]);
    expect(arrives([], 2)).toEqual([11, 11]);
    // A plan that tells driving of one day tells it of all.
    expect(arrives([{ drivingH: 3 }], 2)).toEqual([12, undefined]);
    expect(arrives([])).toEqual([undefined, undefined]);
    expect(of({ days: [{ drivingH: 3 }] }, account(0))[0]).not.toHaveProperty('arrivesHour');
  });

  test('its own sky, and all of its account', () => {
    const [first, second] = of({ days: [{ sky: 'overcast' }] }, account(0), account(1));
    expect(first).toEqual({ ...account(0), sky: 'overcast' });
    expect(second).toEqual(account(1));
  });
});
