import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import type { Assumption } from '#engine/assumption.ts';
import { type BalanceHour, type BalanceInput, balance } from '#engine/trip/balance.ts';
import { simulate, tripAssumptions } from '#engine/trip/model.ts';
import { adverseValues, leastDrivingH, smallestBatteryAh, smallestPanelW } from '#engine/trip/search.ts';
import { likelyOf, tripWith } from './cases.ts';
import { ideal, quiet } from './ideal.ts';

const day = (hours: Readonly<Record<number, number>>) => Array.from({ length: 24 }, (_, h) => hours[h] ?? 0);

const plain: BalanceInput = quiet;

describe('parts of an hour', () => {
  test('half an hour of sun is half of its hour’s', () => {
    const { sums } = balance({
      ...plain,
      startAh: 20,
      startHour: 11.5,
      durationH: 0.5,
      sunShares: day({ 11: 8 }),
    });
    expect(sums.sunAh).toBeCloseTo(4, 9);
    expect(sums.inAh).toBeCloseTo(4, 9);
  });

  test('the last sky begins so many hours before the end, and not before', () => {
    const suns = [
      { dayWh: 0, dayAh: 1 },
      { dayWh: 0, dayAh: 0.5 },
    ];
    const seen: number[] = [];
    balance(
      { ...plain, startHour: 7.5, durationH: 2.25, sunShares: Array(24).fill(4), suns, lastSkyH: 1.75 },
      hour => seen.push(hour.sunAh),
    );
    // Half an hour of the usual sky, then an hour and three quarters of the other.
    expect(seen).toEqual([2, 2, 1.5]);
  });

  test('limit and end of charge are met within the hour', () => {
    // 8 Ah each hour from 60: the limit of 50 after an hour and a quarter, nothing left after seven and a half.
    const { limitAtH, flatAtH, lowest } = balance({
      ...plain,
      startAh: 60,
      useByHour: Array(24).fill(8),
    });
    expect(limitAtH).toBeCloseTo(1.25, 9);
    expect(flatAtH).toBeCloseTo(7.5, 9);
    expect(lowest).toEqual({ chargeAh: 0, atH: expect.closeTo(7.5, 9) });
    const half = balance({
      ...plain,
      startAh: 60,
      startHour: 0.5,
      durationH: 3,
      useByHour: Array(24).fill(8),
    });
    expect(half.limitAtH).toBeCloseTo(1.25, 9);
  });
});

describe('limit and empty', () => {
  test('on the limit is not below it', () => {
    const steady = balance({ ...plain, startAh: 50 });
    expect(steady.limitAtH).toBeUndefined();
    expect(steady.flatAtH).toBeUndefined();
    expect(steady.lowest).toEqual({ chargeAh: 50, atH: 0 });
    expect(steady.toLowest).toEqual({ storedAh: 0, outAh: 0 });
    expect(
      balance({ ...plain, startAh: 50, durationH: 3, useByHour: Array(24).fill(1) }).limitAtH,
    ).toBeCloseTo(0, 9);
    expect(
      balance({ ...plain, startAh: 52, durationH: 2, useByHour: Array(24).fill(1) }).limitAtH,
    ).toBeUndefined();
  });

  test.each([
    [30, 0.7],
    [50, 0.5],
    [80, 0.2],
  ])(
    'a start of %s % with %s to be used is at the limit, and a battery can be searched for',
    (stateOfChargePercent, depthOfDischarge) => {
      const trip = tripWith({ ah: 75 });
      const bank = { ...trip.bank, stateOfChargePercent };
      for (const capacityAh of [2.4, 3, 60, 75, 110, 120]) {
        const started = { ...trip, bank: { ...bank, capacityAh } };
        const values = { ...likelyOf(trip), depthOfDischarge };
        expect(simulate(started, values).balance.limitAtH).toBeGreaterThan(0);
        // No battery is large enough: the first hour passes the limit.
        expect(smallestBatteryAh(started, values)).toBeUndefined();
      }
    },
  );

  test('below it from the start it is met at once, and only the first time counts', () => {
    expect(balance({ ...plain, startAh: 40 }).limitAtH).toBe(0);
    // Down to 45, up to 85, down again.
    const twice = balance({
      ...plain,
      startAh: 55,
      durationH: 48,
      useByHour: day({ 2: 10, 20: 40 }),
      sunShares: day({ 12: 40 }),
    });
    expect(twice.limitAtH).toBeCloseTo(2.5, 9);
    expect(twice.lowest).toEqual({ chargeAh: expect.closeTo(35, 9), atH: 27 });
    expect(twice.toLowest).toEqual({ storedAh: expect.closeTo(40, 9), outAh: expect.closeTo(60, 9) });
  });

  test('the first of two equal lows counts', () => {
    const even = balance({
      ...plain,
      durationH: 48,
      useByHour: day({ 2: 10 }),
      sunShares: day({ 12: 10 }),
    });
    expect(even.lowest).toEqual({ chargeAh: expect.closeTo(90, 9), atH: 3 });
  });

  test('empty only once, also after some sun, and what was not there is unmet', () => {
    const dark = balance({
      ...plain,
      startAh: 10,
      useByHour: day({ 1: 20, 14: 20 }),
      sunShares: day({ 12: 5 }),
    });
    expect(dark.flatAtH).toBeCloseTo(1.5, 9);
    expect(dark.lowest.atH).toBeCloseTo(1.5, 9);
    expect(dark.sums).toMatchObject({ unmetAh: 25, outAh: 15, storedAh: 5, notTakenAh: 0 });
    expect(dark.endAh).toBe(0);
  });

  test('a battery that is never empty has no such hour, though it is low', () => {
    const low = balance({ ...plain, startAh: 21, durationH: 3, useByHour: Array(24).fill(5) });
    expect(low.flatAtH).toBeUndefined();
    expect(low.lowest).toEqual({ chargeAh: expect.closeTo(6, 9), atH: 3 });
  });

  test('hours that nothing happens in do not end it', () => {
    const record: BalanceHour[] = [];
    balance({ ...plain, durationH: 2.5, useByHour: day({ 0: 1 }) }, hour => record.push(hour));
    expect(record.map(h => [h.atH, h.chargeAh, h.useAh])).toEqual([
      [1, 99, 1],
      [2, 99, 0],
      [2.5, 99, 0],
    ]);
  });

  test('a full battery takes nothing, and an empty one at nought is empty when asked', () => {
    const full = balance({ ...plain, durationH: 1, sunShares: day({ 0: 10 }) });
    expect(full.sums).toMatchObject({ inAh: 0, notTakenAh: 10 });
    const empty = balance({ ...plain, startAh: 0, durationH: 2, useByHour: day({ 1: 2 }) });
    expect(empty.flatAtH).toBeCloseTo(1, 9);
    expect(empty.limitAtH).toBe(0);
  });

  test('losses are taken off what goes in', () => {
    const lossy = balance({
      ...plain,
      startAh: 50,
      battery: { ...ideal, efficiency: 0.8 },
      durationH: 1,
      sunShares: day({ 0: 10 }),
    });
    expect(lossy.sums).toMatchObject({ inAh: 10, storedAh: expect.closeTo(8, 9) });
    expect(lossy.endAh).toBeCloseTo(58, 9);
  });
});

describe('ends of the searches', () => {
  const short = tripWith({ useAh: 40, durationH: 96 });
  const values = likelyOf(short);

  test('nothing is needed where the battery is enough', () => {
    const easy = tripWith({ useAh: 5, durationH: 48 });
    expect(smallestPanelW(easy, likelyOf(easy))).toBe(0);
    expect(leastDrivingH(easy, likelyOf(easy))).toBe(0);
    const small = present(smallestBatteryAh(easy, likelyOf(easy)));
    expect(small).toBeGreaterThanOrEqual(20);
    expect(small).toBeLessThan(20.2);
  });

  test('nothing is enough where too much is asked for', () => {
    const greedy = tripWith({ useAh: 4000, durationH: 240 });
    expect(smallestBatteryAh(greedy, likelyOf(greedy))).toBeUndefined();
    expect(leastDrivingH(greedy, likelyOf(greedy))).toBeUndefined();
  });

  test('within half a per cent of what just lasts', () => {
    const W = present(smallestPanelW(short, values));
    const at = (powerW: number) => simulate({ ...short, sun: { powerW, sun: {} } }, values).margin;
    expect(at(W)).toBeGreaterThanOrEqual(0);
    expect(at(W / 1.006)).toBeLessThan(0);
  });

  test('a told yield gives way to the panel that is searched for, a plan to hours every day', () => {
    expect(smallestPanelW({ ...short, sun: { ahPerDay: 1, sun: {} } }, values)).toBeCloseTo(
      present(smallestPanelW(short, values)),
      6,
    );
    const driving = { charger: { kind: 'dcdc', currentA: 25 } as const };
    const days = [0, 0, 0, 0].map(drivingH => ({ drivingH }));
    const hours = present(leastDrivingH({ ...short, driving, days, startHour: 16 }, values));
    const every = { hoursPerDay: hours, charger: driving.charger };
    expect(simulate({ ...short, driving: every, startHour: 16 }, values).margin).toBeGreaterThanOrEqual(0);
  });

  test('the bad side of one assumption is its bad end; of none, the likely', () => {
    const gentle = tripWith({ useAh: 10, durationH: 48 });
    const age: Assumption = { name: 'age', value: 1, low: 0.9, high: 1, unit: '', why: 'a test' };
    const rest = { depthOfDischarge: 0.5, peukertExponent: 1.1 };
    const sure = (name: keyof typeof rest): Assumption => {
      const value = rest[name];
      return { ...age, name, value, low: value, high: value };
    };
    const all = [age, sure('depthOfDischarge'), sure('peukertExponent')];
    const bad = adverseValues(gentle, all);
    expect(bad).toMatchObject({ ...rest, age: expect.closeTo(0.9, 9) });
    expect(
      adverseValues(
        gentle,
        all.map(a => ({ ...a, low: a.value, high: a.value })),
      ),
    ).toEqual({ ...rest, age: 1 });
  });

  test('each assumption is moved to the end that costs, by its share of the whole', () => {
    // Neither runs flat, so that losses may add.
    const trip = tripWith({ useAh: 10, durationH: 48 });
    const list = tripAssumptions(trip);
    const bad = adverseValues(trip, list) as Record<string, number>;
    const likely = likelyOf(trip);
    const margin = (values: Record<string, number>) => simulate(trip, values).margin;
    const lossOf = (name: string, end: number) => margin(likely) - margin({ ...likely, [name]: end });
    const depth = present(list.find(a => a.name === 'depthOfDischarge'));
    const [a, b] = [lossOf('depthOfDischarge', depth.low), lossOf('age', 0.9)];
    const c = lossOf('batteryTemperature', present(list.find(l => l.name === 'batteryTemperature')).low);
    expect(bad.depthOfDischarge).toBeCloseTo(
      depth.value + ((depth.low - depth.value) * a) / Math.hypot(a, b, c),
      6,
    );
    expect(bad.age).toBeCloseTo(1 - (0.1 * b) / Math.hypot(a, b, c), 6);
    // The exponent moves nothing at this current, and stays.
    expect(bad.peukertExponent).toBe(likely.peukertExponent);
  });
});
