import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { expectedOf } from '#engine/learn/expect.ts';
import { currentOver } from '#engine/loads/by-clock.ts';
import type { Day } from '#engine/loads/model.ts';
import { Trace } from '#rule/trace.ts';

/** 24 Ah a day in one number: 1 A at each hour. */
const even: Day = { dailyUse: 24, currentA: 1, peakA: 1, parts: [] };
const noon = { startsAtH: 12, byDay: 0, meanC: 25 };

describe('the draw over the hours that it lasts', () => {
  test('without a clock the whole day counts', () => expect(currentOver(even, 6, undefined)).toBe(1));

  test('what draws evenly draws so from any hour on', () => {
    for (const usableAh of [0.25, 6, 12, 24, 48, 50])
      for (const startsAtH of [0, 5.5, 12, 23.9])
        expect(currentOver(even, usableAh, { ...noon, startsAtH })).toBeCloseTo(1, 9);
  });

  test('four times as much by day as by night: 1.6 A from 6 to 18, 0.4 A from then on', () => {
    const byDay = Math.log(2);
    const at = (startsAtH: number, usableAh: number) =>
      currentOver(even, usableAh, { ...noon, byDay, startsAtH });
    expect(at(6, 8)).toBeCloseTo(1.6, 9);
    expect(at(18, 4)).toBeCloseTo(0.4, 9);
    // 6 h at 1.6 A, then 12 h at 0.4 A: 14.4 Ah in 18 h.
    expect(at(12, 14.4)).toBeCloseTo(0.8, 9);
    // A whole day is a day whenever it starts.
    expect(at(15, 48)).toBeCloseTo(1, 9);
  });

  test('where nothing is drawn, or there is nothing to draw, it is the day’s', () => {
    const trace = new Trace();
    expect(currentOver({ ...even, dailyUse: 0, currentA: 0 }, 20, noon, trace)).toBe(0);
    expect(currentOver(even, 0, noon, trace)).toBe(1);
    expect(trace.steps).toMatchObject([{ inputs: { Q: 0, t_day: 24 } }, { inputs: { Q: 24, t_day: 24 } }]);
  });

  test('the working divides what was drawn by the hours', () => {
    const trace = new Trace();
    currentOver(even, 8, { ...noon, startsAtH: 6, byDay: Math.log(2) }, trace);
    expect(trace.steps).toMatchObject([{ inputs: { Q: 8, t: 5 }, value: 1.6 }]);
  });
});

test('what a battery is expected to hold goes by its cold: 105 Ah of AGM at 10 °C by IEEE 485 about 88', () => {
  const bank = {
    capacityAh: 105,
    voltageV: 12,
    chemistry: 'agm',
    isChemistryAssumed: false,
    isMixed: false,
    count: 1,
  } as const;
  const use = { loads: [], dailyUseAh: 24, voltageV: 12 };
  const [warm, cold] = [25, 10].map(batteryC => expectedOf({ bank, use, batteryC }));
  expect(warm).toMatchObject({ labelAh: 105, capacityAh: 105 });
  expect(present(cold).labelAh).toBe(105);
  expect(present(cold).capacityAh).toBeGreaterThan(86);
  expect(present(cold).capacityAh).toBeLessThan(90);
});
