import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { chargingOf } from '#engine/battery/charging.ts';
import { fillTimeH } from '#engine/battery/fill.ts';
import { runTime } from '#engine/battery/rules.ts';
import { exploreRunTime } from '#engine/loads/lasting.ts';
import { simulate, type Trip, tripAssumptions } from '#engine/trip/model.ts';
import type { Chemistry, Load } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import { draws } from '../house/share.ts';

// What must hold whatever the numbers, across rooms. What holds within one is in that room's tests.

const kind = fc.constantFrom<Chemistry>('agm', 'gel', 'flooded', 'lfp', 'lead-acid');
const amount = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const level = amount(0, 100);
const bankWith = (chemistry: Chemistry, capacityAh: number, stateOfChargePercent = 100) =>
  present(bankOf([{ count: 1, capacityAh, chemistry, stateOfChargePercent }]));
const likely = (trip: Trip) => Object.fromEntries(tripAssumptions(trip).map(a => [a.name, a.value]));
const steady = (currentA: number): Load => ({
  name: 'thing',
  count: 1,
  supply: 'dc',
  currentA,
  isAverage: true,
});

/** A bank with a steady draw and nothing coming in, until far after it is flat. */
const drain = (chemistry: Chemistry, capacityAh: number, amps: number, percent: number): Trip => {
  const bank = bankWith(chemistry, capacityAh, percent);
  return {
    bank,
    use: { loads: [steady(amps)], voltageV: bank.voltageV },
    durationH: (3 * capacityAh) / amps + 3,
    startHour: 16,
  };
};
const lastsH = (trip: Trip): number => present(simulate(trip, likely(trip)).balance.limitAtH);

describe('by the hour as by the formula', () => {
  test('closed form equals simulation: the hour at which a steady draw reaches its limit', () => {
    fc.assert(
      fc.property(kind, amount(20, 600), amount(0.3, 40), level, (chemistry, ah, amps, percent) => {
        const trip = drain(chemistry, ah, amps, percent);
        const { bank, use } = trip;
        const closed = exploreRunTime({ bank, use }).figures.runTime.value;
        const values = likely(trip);
        const { balance, capacityAh } = simulate(trip, values);
        // From a level below the limit there is nothing left by either.
        if (percent / 100 <= 1 - present(values.depthOfDischarge)) {
          expect(closed).toBe(0);
          expect(balance.limitAtH).toBeLessThanOrEqual(1e-9);
          return;
        }
        expect(balance.limitAtH).toBeCloseTo(closed, 6);
        const Q_usable = capacityAh * (present(values.depthOfDischarge) - (1 - percent / 100));
        expect(closed).toBeCloseTo(run(runTime, { Q_usable, I: amps }), 6);
      }),
      { numRuns: 60 },
    );
  });

  test('closed form equals simulation: a charge by the formula and by a trip that takes it hour by hour', () => {
    fc.assert(
      fc.property(kind, amount(30, 400), amount(1, 60), amount(10, 70), (chemistry, ah, amps, percent) => {
        const bank = bankWith(chemistry, ah, percent);
        const values = { depthOfDischarge: 1, peukertExponent: 1, age: 1, chargerCurrent: amps };
        const trip: Trip = {
          bank,
          use: { loads: [], dailyUseAh: 0, voltageV: bank.voltageV },
          driving: { charger: { kind: 'dcdc' } },
          days: [{ drivingH: 5 }],
          durationH: 6,
          startHour: 9,
        };
        const left = ah * (1 - simulate(trip, values).endCharge / 100);
        const missing = ah * (1 - percent / 100);
        if (left < 0.01 * ah || left > missing - 1) return;
        expect(fillTimeH(chargingOf(bank, {}, values), missing, left, amps)).toBeCloseTo(5, 4);
      }),
      { numRuns: 60 },
    );
  });

  test('more battery never lasts less, more load never longer', () => {
    fc.assert(
      fc.property(kind, amount(20, 400), amount(0.3, 30), amount(1, 3), (chemistry, ah, amps, k) => {
        const one = lastsH(drain(chemistry, ah, amps, 100));
        expect(lastsH(drain(chemistry, ah * k, amps, 100))).toBeGreaterThanOrEqual(one - 1e-9);
        expect(lastsH(drain(chemistry, ah, amps * k, 100))).toBeLessThanOrEqual(one + 1e-9);
      }),
      { numRuns: 60 },
    );
  });
});

describe('age', () => {
  test('older never lasts longer, by the hour and by the formula', () => {
    const years = amount(0, 15);
    fc.assert(
      fc.property(kind, amount(20, 400), amount(0.5, 30), years, years, (chemistry, ah, amps, young, by) => {
        const at = (ageYears: number): number => {
          const trip = drain(chemistry, ah, amps, 100);
          return lastsH({ ...trip, bank: { ...trip.bank, ageYears } });
        };
        expect(at(young + by)).toBeLessThanOrEqual(at(young) + 1e-9);
      }),
      { seed: 13, numRuns: draws(500, 10_000) },
    );
  });
});

describe('whole trips', () => {
  const trips = fc
    .record({
      chemistry: kind,
      ah: amount(20, 400),
      percent: level,
      amps: amount(0.1, 15),
      panelW: amount(0, 600),
      drivingH: amount(0, 8),
      latitudeDeg: amount(-60, 60),
      month: fc.integer({ min: 1, max: 12 }),
      durationH: amount(3, 200),
      startHour: amount(0, 23.9),
    })
    .map(t => {
      const bank = bankWith(t.chemistry, t.ah, t.percent);
      const trip: Trip = {
        bank,
        use: { loads: [steady(t.amps)], voltageV: bank.voltageV },
        sun: { powerW: t.panelW, sun: { latitudeDeg: t.latitudeDeg, month: t.month } },
        driving: { hoursPerDay: t.drivingH, charger: { kind: 'dcdc', currentA: 25 } },
        durationH: t.durationH,
        startHour: t.startHour,
      };
      return { trip, drawnA: t.amps };
    });

  test('energy balance closes to rounding', () => {
    fc.assert(
      fc.property(trips, ({ trip, drawnA }) => {
        const { balance, capacityAh } = simulate(trip, likely(trip));
        const { useAh, sunAh, drivingAh, inAh, storedAh, outAh, notTakenAh, unmetAh } = balance.sums;
        const startAh = (capacityAh * present(trip.bank.stateOfChargePercent)) / 100;
        expect(useAh).toBeCloseTo(drawnA * trip.durationH, 6);
        expect(balance.endAh).toBeCloseTo(startAh + storedAh - outAh, 6);
        // The loads get what the battery doesn't give and isn't missing; the rest is charged or not taken. The volts
        // of a battery on charge are its nominal ones within a fifth.
        const toLoadsAh = useAh - unmetAh - outAh;
        expect(toLoadsAh).toBeGreaterThanOrEqual(-1e-9);
        expect(sunAh + drivingAh).toBeGreaterThanOrEqual((toLoadsAh + inAh + notTakenAh) / 1.2 - 1e-6);
        expect(sunAh + drivingAh).toBeLessThanOrEqual(1.25 * (toLoadsAh + inAh + notTakenAh) + 1e-6);
        expect(storedAh).toBeLessThanOrEqual(inAh + 1e-9);
        expect(balance.endAh).toBeLessThanOrEqual(capacityAh + 1e-9);
        expect(balance.endAh).toBeGreaterThanOrEqual(-1e-9);
      }),
      { numRuns: 80 },
    );
  });

  test('more of any source never leaves less', () => {
    fc.assert(
      fc.property(trips, amount(1, 3), ({ trip }, k) => {
        const values = likely(trip);
        const low = (t: Trip): number => simulate(t, values).lowestCharge;
        const one = low(trip);
        const sun = { ...present(trip.sun), powerW: present(present(trip.sun).powerW) * k };
        const hoursPerDay = Math.min(24, present(present(trip.driving).hoursPerDay) * k);
        expect(low({ ...trip, sun })).toBeGreaterThanOrEqual(one - 1e-6);
        // Longer driving starts at nine or ends at midnight; below 15 h it only adds hours.
        if (hoursPerDay < 15)
          expect(low({ ...trip, driving: { ...trip.driving, hoursPerDay } })).toBeGreaterThanOrEqual(
            one - 1e-6,
          );
      }),
      { numRuns: 60 },
    );
  });
});
