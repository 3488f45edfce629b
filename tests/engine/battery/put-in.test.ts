import fc from 'fast-check';
import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { chargingOf } from '#engine/battery/charging.ts';
import { putInAh } from '#engine/battery/fill.ts';
import { type Charge, chargeAssumptions, chargeOf } from '#engine/charging/charge.ts';
import { type BalanceInput, balance } from '#engine/trip/balance.ts';
import { planOf, type TripDay } from '#engine/trip/plan.ts';
import type { Chemistry } from '#rig/rig.ts';
import { quiet } from '../trip/ideal.ts';

// One battery: what of the Ah put in stays hangs on how full it is, not on what puts them in.

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const kind = fc.constantFrom<Chemistry>('agm', 'gel', 'flooded', 'lfp');
const noon = Array.from({ length: 24 }, (_, h) => (h >= 9 && h < 16 ? 1 / 7 : 0));

interface Way {
  readonly changes: Partial<BalanceInput>;
  readonly days: readonly TripDay[];
}

/** What can put charge in, each with an offer in A for some hours a day. */
const ways: Readonly<Record<string, (amps: number, hours: number) => Way>> = {
  'sun in watts': amps => ({
    changes: { suns: [{ dayWh: 90 * amps, dayAh: 0 }], sunShares: noon },
    days: [],
  }),
  'sun in amps': amps => ({ changes: { suns: [{ dayWh: 0, dayAh: 7 * amps }], sunShares: noon }, days: [] }),
  driving: (amps, hours) => ({
    changes: { drivingA: amps },
    days: [{ drivingH: hours }, { drivingH: hours / 2 }],
  }),
  'a generator': (amps, hours) => ({
    changes: { generatorA: amps },
    days: [{ generatorH: hours }, { generatorH: hours / 3 }],
  }),
  mains: (amps, hours) => ({ changes: { mainsA: amps }, days: [{ mainsH: hours }] }),
};

test.for(Object.entries(ways))('%s: the Ah put in are those of the closed form, to 1 %', ([name, way]) => {
  let allTaken = 0;
  fc.assert(
    fc.property(
      fc.record({
        chemistry: kind,
        ah: number(30, 400),
        ageYears: number(0, 8),
        temperatureC: number(1, 40),
      }),
      fc.record({ missing: number(0.05, 0.95), rateC: number(0.01, 0.4), hours: number(0.5, 8) }),
      ({ chemistry, ah, ageYears, temperatureC }, { missing, rateC, hours }) => {
        const bank = present(bankOf([{ count: 1, capacityAh: ah, chemistry, ageYears }]));
        const battery = chargingOf(bank, { temperatureC });
        const from = missing * battery.capacityAh;
        const { changes, days } = way(rateC * ah, hours);
        const { sums } = balance({
          ...quiet,
          battery,
          nominalV: bank.voltageV,
          startAh: battery.capacityAh - from,
          durationH: 72,
          plan: planOf(3, days, 0, () => 0),
          limitAh: 0,
          ...changes,
        });
        expect(sums.outAh).toBe(0);
        expect(sums.storedAh).toBeGreaterThan(0);
        const same = putInAh(battery, from, Math.max(0, from - sums.storedAh));
        expect(Math.abs(sums.inAh / same - 1)).toBeLessThan(0.01);
        // Where the battery takes all that is offered, that is what went in.
        const isAllTaken =
          rateC * ah <= battery.limitA && from - sums.storedAh > rateC * ah * battery.timeConstantH;
        if (!isAllTaken || changes.suns?.[0]?.dayWh) return;
        allTaken++;
        const offeredAh = sums.sunAh + sums.drivingAh + sums.pluggedAh;
        expect(Math.abs(offeredAh / same - 1)).toBeLessThan(0.01);
      },
    ),
    { seed: 13, numRuns: 10_000 },
  );
  if (name !== 'sun in watts') expect(allTaken).toBeGreaterThan(1000);
});

test('a charger told to a level puts in the same', () => {
  fc.assert(
    fc.property(kind, number(30, 400), number(5, 80), number(1, 15), (chemistry, ah, percent, more) => {
      const to = percent + more;
      const bank = present(bankOf([{ count: 1, capacityAh: ah, chemistry, stateOfChargePercent: percent }]));
      const charge: Charge = { bank, isSizeAssumed: false, isIsolator: false, targetPercent: to };
      const values = Object.fromEntries(chargeAssumptions(charge).map(a => [a.name, a.value]));
      const missing = (level: number): number => ah * (1 - level / 100);
      const same = putInAh(chargingOf(bank, {}, values), missing(percent), missing(to));
      expect(Math.abs(chargeOf(charge, 0.1 * ah, values).neededAh / same - 1)).toBeLessThan(0.01);
    }),
    { seed: 13, numRuns: 10_000 },
  );
});
