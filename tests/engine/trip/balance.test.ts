import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { chargingOf } from '#engine/battery/charging.ts';
import { missingAfterH, putInAh } from '#engine/battery/fill.ts';
import { type BalanceHour, type BalanceInput, balance } from '#engine/trip/balance.ts';
import { planOf } from '#engine/trip/plan.ts';
import { ideal, planned, quiet } from './ideal.ts';

const flat = (dayAh: number) => Array<number>(24).fill(dayAh / 24);
const noon = (dayAh: number) => flat(0).map((_, h) => (h >= 10 && h < 14 ? dayAh / 4 : 0));

const plain: BalanceInput = { ...quiet, durationH: 48, useByHour: flat(24) };

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
      sunShares: noon(48),
    });
    expect(lowest).toEqual({ chargeAh: expect.closeTo(80, 9), atH: 20 });
    expect(endAh).toBeCloseTo(100, 9);
  });
  test('one hour of driving at 25 A while 1 A is used puts 24 Ah in', () => {
    const { sums } = balance({
      ...plain,
      startAh: 40,
      drivingA: 25,
      plan: planned(2, [{}, { drivingH: 1 }]),
    });
    expect(sums.drivingAh).toBeCloseTo(25, 9);
    // The hour of driving brings what is left of it after that hour's use.
    expect(sums.inAh).toBeCloseTo(24, 6);
  });
  test('a start within an hour counts only what is left of it', () => {
    expect(balance({ ...plain, startHour: 17.5, durationH: 1 }).endAh).toBeCloseTo(99, 9);
  });
  test('lithium below freezing takes nothing', () => {
    const bank = present(bankOf([{ count: 1, capacityAh: 100, chemistry: 'lfp' }]));
    const battery = chargingOf(bank, { temperatureC: -3 });
    const cold = { ...plain, nominalV: 12.8, startAh: 50, battery, sunShares: noon(60) };
    expect(balance(cold).sums.inAh).toBe(0);
    expect(balance({ ...cold, battery: chargingOf(bank) }).sums.inAh).toBeGreaterThan(30);
  });
  test('two hours of a generator from four, a night on mains from six into the next day', () => {
    const hours: BalanceHour[] = [];
    const told = [{ generatorH: 2 }, { mainsH: 14 }];
    const input = { ...plain, startAh: 10, useByHour: flat(0), plan: planned(3, told), durationH: 72 };
    const { sums } = balance({ ...input, generatorA: 10, mainsA: 5 }, hour => hours.push(hour));
    const at = hours.flatMap((hour, i) => (hour.pluggedAh > 0 ? [i] : []));
    expect(at).toEqual([16, 17, ...Array.from({ length: 14 }, (_, i) => 24 + 18 + i)]);
    expect(sums.pluggedAh).toBeCloseTo(20 + 70, 9);
    expect(sums.storedAh).toBeCloseTo(90, 6);
  });
  test('sun as watts comes in at the volts that the battery stands at', () => {
    const battery = { ...ideal, restV: new Float64Array(101).fill(13) };
    const input = { ...plain, battery, startAh: 20, useByHour: flat(0), durationH: 24 };
    const { sums } = balance({ ...input, sunShares: noon(1), suns: [{ dayWh: 520, dayAh: 0 }] });
    expect(sums.inAh).toBeCloseTo(40, 6);
    expect(sums.sunAh).toBeCloseTo(520 / 12, 9);
  });
});

// The ampere-hour law in closed form against the same law hour by hour, losses that grow towards full with it.
test.for([
  ['agm', 20, 8],
  ['agm', 5, 12],
  ['lfp', 25, 6],
  ['flooded', 30, 10],
] as const)(
  'filling %s of 100 Ah from half with %d A for %d h comes to the closed form',
  ([chemistry, amps, hours]) => {
    const bank = present(bankOf([{ count: 1, capacityAh: 100, chemistry }]));
    const battery = chargingOf(bank);
    const filled = balance({
      ...plain,
      nominalV: bank.voltageV,
      startAh: 50,
      battery,
      durationH: hours,
      useByHour: flat(0),
      sunShares: flat(amps * 24),
    });
    const missing = missingAfterH(battery, 50, amps, hours);
    expect(filled.endAh).toBeCloseTo(100 - missing, 6);
    expect(filled.sums.inAh).toBeCloseTo(putInAh(battery, 50, missing), 6);
  },
);

const inputs = fc.record({
  capacityAh: fc.double({ min: 20, max: 400, noNaN: true }),
  full: fc.double({ min: 0, max: 1, noNaN: true }),
  chemistry: fc.constantFrom('agm' as const, 'gel' as const, 'flooded' as const, 'lfp' as const),
  startHour: fc.double({ min: 0, max: 23.9, noNaN: true }),
  durationH: fc.double({ min: 1, max: 200, noNaN: true }),
  useAh: fc.double({ min: 0, max: 120, noNaN: true }),
  sunAh: fc.double({ min: 0, max: 150, noNaN: true }),
  driveH: fc.double({ min: 0, max: 4, noNaN: true }),
  drivingA: fc.double({ min: 0, max: 60, noNaN: true }),
});
type Drawn = typeof inputs extends fc.Arbitrary<infer T> ? T : never;

const inputOf = (d: Drawn): BalanceInput => {
  const bank = present(bankOf([{ count: 1, capacityAh: d.capacityAh, chemistry: d.chemistry }]));
  const days = Math.ceil((d.startHour + d.durationH) / 24);
  return {
    ...plain,
    startHour: d.startHour,
    durationH: d.durationH,
    drivingA: d.drivingA,
    battery: chargingOf(bank),
    nominalV: bank.voltageV,
    startAh: d.full * d.capacityAh,
    useByHour: flat(d.useAh),
    sunShares: noon(1),
    suns: [{ dayWh: d.sunAh * bank.voltageV, dayAh: 0 }],
    plan: planOf(days, [], d.driveH, () => 0),
    limitAh: d.capacityAh / 2,
  };
};

describe('whatever the trip', () => {
  test('asked for = met + unmet; what stays is less than what goes in; the account closes', () => {
    fc.assert(
      fc.property(inputs, d => {
        const input = inputOf(d);
        const { sums, endAh } = balance(input);
        expect(input.startAh + sums.storedAh - sums.outAh).toBeCloseTo(endAh, 6);
        expect(sums.useAh).toBeCloseTo((d.useAh / 24) * d.durationH, 6);
        expect(sums.storedAh).toBeLessThanOrEqual(sums.inAh * input.battery.efficiency + 1e-6);
        expect(sums.storedAh).toBeGreaterThanOrEqual(sums.inAh * input.battery.topEfficiency - 1e-6);
        expect(sums.outAh + sums.unmetAh).toBeLessThanOrEqual(sums.useAh + 1e-6);
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
          expect(hour.chargeAh).toBeLessThanOrEqual(d.capacityAh + 1e-9);
        }
        const least = Math.min(input.startAh, ...hours.map(h => h.chargeAh));
        expect(lowest.chargeAh).toBeCloseTo(least, 6);
        expect(present(hours.at(-1)).atH).toBeCloseTo(input.durationH, 6);
      }),
    );
  });

  test('never more goes in than is offered or accepted', () => {
    fc.assert(
      fc.property(inputs, d => {
        const { sums } = balance(inputOf(d));
        // Watts come in at the volts the battery stands at: a flat lithium one at 10.8 V of its 12.8.
        expect(sums.inAh).toBeLessThanOrEqual((12.8 / 10.8) * sums.sunAh + sums.drivingAh + 1e-6);
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
