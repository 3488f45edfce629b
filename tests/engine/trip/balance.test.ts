import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chargeRateC } from '#engine/battery/limits.ts';
import { missingAfterH } from '#engine/charging/fill.ts';
import { chargeRow } from '#engine/charging/tables.ts';
import { acceptance } from '#engine/trip/accept.ts';
import { type BalanceHour, type BalanceInput, balance } from '#engine/trip/balance.ts';

const flat = (dayAh: number) => Array<number>(24).fill(dayAh / 24);
const noon = (dayAh: number) => flat(0).map((_, h) => (h >= 10 && h < 14 ? dayAh / 4 : 0));

const plain: BalanceInput = {
  capacityAh: 100,
  startAh: 100,
  chargeEfficiency: 1,
  accepts: (missingAh, offeredA, hours) => Math.min(missingAh, offeredA * hours),
  startHour: 0,
  durationH: 48,
  useByHour: flat(24),
  sunByHour: () => flat(0),
  driveOn: () => undefined,
  drivingA: 0,
  limitAh: 50,
};

describe('worked by hand', () => {
  test('1 A out of 100 Ah for 30 h leaves 70 Ah', () => {
    expect(balance({ ...plain, durationH: 30 }).endAh).toBeCloseTo(70, 9);
  });
  test('half of it is gone after 50 h, all after 100 h', () => {
    const { limitAtH, flatAtH, lowest, sums } = balance({ ...plain, durationH: 120 });
    expect(limitAtH).toBeCloseTo(50, 9);
    expect(flatAtH).toBeCloseTo(100, 9);
    expect(lowest.atH).toBeCloseTo(100, 9);
    expect(sums.unmetAh).toBeCloseTo(20, 9);
  });
  test('48 Ah between 10 and 14 h against 1 A: lowest at ten in the morning, full at two', () => {
    const { lowest, endAh } = balance({
      ...plain,
      startHour: 14,
      durationH: 24,
      sunByHour: () => noon(48),
    });
    expect(lowest).toEqual({ chargeAh: expect.closeTo(80, 9), atH: 20 });
    expect(endAh).toBeCloseTo(100, 9);
  });
  test('one hour of driving at 25 A while 1 A is used puts 24 Ah in', () => {
    const { sums } = balance({
      ...plain,
      startAh: 40,
      drivingA: 25,
      driveOn: day => (day === 1 ? { fromHour: 8.5, hours: 1 } : undefined),
    });
    // Half past eight to half past nine: two halves of an hour, each with its own use of the whole hour.
    expect(sums.drivingAh).toBeCloseTo(25, 9);
    expect(sums.inAh).toBeCloseTo(23, 9);
  });
  test('a start within an hour counts only what is left of it', () => {
    expect(balance({ ...plain, startHour: 17.5, durationH: 1 }).endAh).toBeCloseTo(99, 9);
  });
  test('lithium below freezing takes nothing', () => {
    const cold = {
      ...plain,
      startAh: 50,
      accepts: acceptance({ chemistry: 'lfp', capacityAh: 100, efficiency: 1, temperatureC: -3 }),
      sunByHour: () => noon(60),
    };
    expect(balance(cold).sums.inAh).toBe(0);
  });
});

// The ampere-hour law in closed form against the same law hour by hour.
test.for([
  ['agm', 20, 8],
  ['agm', 5, 12],
  ['lfp', 25, 6],
  ['flooded', 30, 10],
] as const)(
  'filling %s of 100 Ah from half with %d A for %d h comes to the closed form',
  ([chemistry, amps, hours]) => {
    const efficiency = 0.9;
    const filled = balance({
      ...plain,
      startAh: 50,
      chargeEfficiency: efficiency,
      durationH: hours,
      useByHour: flat(0),
      accepts: acceptance({ chemistry, capacityAh: 100, efficiency }),
      sunByHour: () => flat(amps * 24),
    });
    const currentA = Math.min(amps, chargeRateC({ chemistry }) * 100);
    const [timeConstantH] = chargeRow(chemistry).timeConstantH;
    const missing = missingAfterH({ missingAh: 50, currentA, timeConstantH, efficiency }, hours);
    expect(filled.endAh).toBeCloseTo(100 - missing, 6);
  },
);

const inputs = fc.record({
  capacityAh: fc.double({ min: 20, max: 400, noNaN: true }),
  full: fc.double({ min: 0, max: 1, noNaN: true }),
  chargeEfficiency: fc.double({ min: 0.7, max: 1, noNaN: true }),
  chemistry: fc.constantFrom('agm' as const, 'gel' as const, 'flooded' as const, 'lfp' as const),
  startHour: fc.double({ min: 0, max: 23.9, noNaN: true }),
  durationH: fc.double({ min: 1, max: 200, noNaN: true }),
  useAh: fc.double({ min: 0, max: 120, noNaN: true }),
  sunAh: fc.double({ min: 0, max: 150, noNaN: true }),
  driveFrom: fc.integer({ min: 0, max: 20 }),
  driveH: fc.double({ min: 0, max: 4, noNaN: true }),
  drivingA: fc.double({ min: 0, max: 60, noNaN: true }),
});
type Drawn = typeof inputs extends fc.Arbitrary<infer T> ? T : never;

const inputOf = (d: Drawn): BalanceInput => ({
  ...plain,
  ...d,
  startAh: d.full * d.capacityAh,
  accepts: acceptance({ ...d, efficiency: d.chargeEfficiency }),
  useByHour: flat(d.useAh),
  sunByHour: () => noon(d.sunAh),
  driveOn: () => ({ fromHour: d.driveFrom, hours: d.driveH }),
  limitAh: d.capacityAh / 2,
});

describe('whatever the trip', () => {
  test('offered = to the loads + into the battery + not taken; asked for = met + unmet; the account closes', () => {
    fc.assert(
      fc.property(inputs, d => {
        const input = inputOf(d);
        const { sums, endAh } = balance(input);
        const offered = sums.sunAh + sums.drivingAh;
        const direct = sums.useAh - sums.outAh - sums.unmetAh;
        expect(direct + sums.inAh + sums.notTakenAh).toBeCloseTo(offered, 6);
        expect(input.startAh + sums.storedAh - sums.outAh).toBeCloseTo(endAh, 6);
        expect(sums.storedAh).toBeCloseTo(sums.inAh * input.chargeEfficiency, 6);
      }),
    );
  });

  test('the charge stays between nothing and full, and the lowest is the least of all hours', () => {
    fc.assert(
      fc.property(inputs, d => {
        const input = inputOf(d);
        const hours: BalanceHour[] = [];
        const { lowest } = balance(input, hour => hours.push(hour));
        for (const hour of hours) {
          expect(hour.chargeAh).toBeGreaterThanOrEqual(-1e-9);
          expect(hour.chargeAh).toBeLessThanOrEqual(input.capacityAh + 1e-9);
        }
        const least = Math.min(input.startAh, ...hours.map(h => h.chargeAh));
        expect(lowest.chargeAh).toBeCloseTo(least, 6);
        expect(hours.at(-1)!.atH).toBeCloseTo(input.durationH, 6);
      }),
    );
  });

  test('never more goes in than is offered or accepted', () => {
    fc.assert(
      fc.property(inputs, d => {
        const { sums } = balance(inputOf(d));
        expect(sums.inAh).toBeLessThanOrEqual(sums.sunAh + sums.drivingAh + 1e-6);
        expect(sums.notTakenAh).toBeGreaterThanOrEqual(-1e-9);
        expect(sums.unmetAh).toBeGreaterThanOrEqual(-1e-9);
      }),
    );
  });

  test('more sun never leaves less at the lowest point', () => {
    fc.assert(
      fc.property(inputs, d => {
        const less = balance(inputOf(d)).lowest.chargeAh;
        const more = balance(inputOf({ ...d, sunAh: d.sunAh + 10 })).lowest.chargeAh;
        expect(more).toBeGreaterThanOrEqual(less - 1e-6);
      }),
    );
  });
});
