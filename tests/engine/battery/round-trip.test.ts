import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { offeredCurrentA, restVoltsOf, voltsOnCharge } from '#engine/battery/charge-volts.ts';
import { chargingOf, storageAssumptions } from '#engine/battery/charging.ts';
import { fillTimeH, putInAh } from '#engine/battery/fill.ts';
import { limitsOf } from '#engine/battery/limits.ts';
import { meanChargeV, roundTrip, usualTrip } from '#engine/battery/round-trip.ts';
import { bankAssumptions, usableCapacityAh } from '#engine/battery/usable.ts';
import type { Chemistry } from '#rig/rig.ts';
import { draws } from '../../house/share.ts';

const kinds = ['agm', 'gel', 'flooded', 'lfp'] as const;
const bank = (chemistry: Chemistry, capacityAh = 100, ageYears?: number) =>
  present(bankOf([{ count: 1, capacityAh, chemistry, ageYears }]));
const seeded = { seed: 13, numRuns: draws(1000, 10_000) } as const;
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const kind = fc.constantFrom(...kinds);

describe('what comes back', () => {
  test('more of lithium than of any lead, in charge and in energy', () => {
    const lfp = usualTrip('lfp');
    for (const lead of ['agm', 'gel', 'flooded'] as const) {
      expect(usualTrip(lead).chargeShare).toBeLessThan(lfp.chargeShare - 0.05);
      expect(usualTrip(lead).energyShare).toBeLessThan(lfp.energyShare - 0.1);
    }
  });

  test('sixteen steps are enough', () => {
    const c = chargingOf(bank('agm'));
    const { chargeShare } = roundTrip(c, { from: 0.5, to: 0.95, rateC: 0.1 });
    expect(chargeShare).toBeCloseTo(45 / putInAh(c, 50, 5), 9);
  });

  test('faster costs more energy, and the charge the same', () => {
    const c = chargingOf(bank('lfp'));
    const at = (rateC: number, backC: number) => roundTrip(c, { from: 0.2, to: 0.9, rateC, backC });
    expect(at(0.5, 0.5).energyShare).toBeLessThan(at(0.1, 0.1).energyShare - 0.02);
    expect(at(0.5, 0.5).chargeShare).toBeCloseTo(at(0.1, 0.1).chargeShare, 9);
  });

  test('a small current charges at fewer volts than a big one, all between rest and absorption', () => {
    for (const chemistry of kinds) {
      const [likely, small, big] = meanChargeV(chemistry);
      expect(small).toBeLessThan(likely);
      expect(likely).toBeLessThan(big);
      expect(big).toBeLessThan(chargingOf(bank(chemistry)).absorptionV);
      expect(meanChargeV(chemistry, 'sun')[0]).toBeLessThan(likely);
    }
  });

  test('nobody said that it is lead: what it keeps at the end reaches up to lithium', () => {
    const [, top] = storageAssumptions('agm', true);
    expect(top).toMatchObject({ name: 'topEfficiency', high: 0.97 });
    expect(present(storageAssumptions('agm')[1]).high).toBeLessThan(0.8);
    expect(storageAssumptions('lfp').map(a => a.name)).toEqual(['chargeEfficiency']);
  });

  test('a share that is moved above what is kept before is no gain', () => {
    const c = chargingOf(bank('agm'), {}, { chargeEfficiency: 0.9, topEfficiency: 0.99 });
    expect(c.topAh).toBe(0);
    expect(putInAh(c, 50, 0)).toBeCloseTo(50 / 0.9, 9);
  });
});

describe('volts on charge', () => {
  test('rest without a current, absorption at all that it accepts', () => {
    const c = chargingOf(bank('agm'));
    expect(voltsOnCharge(c, 50, 0)).toBeCloseTo(restVoltsOf(c, 50), 9);
    expect(voltsOnCharge(c, 50, 50 / c.timeConstantH)).toBeCloseTo(14.4, 9);
    expect(restVoltsOf(c, 50)).toBeCloseTo(12.27, 9);
    expect(restVoltsOf(c, 0)).toBeCloseTo(12.9, 9);
    expect(restVoltsOf(c, 100)).toBeCloseTo(11.6, 9);
  });

  test('the current of watts times the volts that it makes is the watts', () => {
    fc.assert(
      fc.property(kind, number(30, 400), number(0.05, 1), number(5, 800), (chemistry, ah, part, watts) => {
        const c = chargingOf(bank(chemistry, ah));
        const currentA = offeredCurrentA(c, part * ah, 0, watts);
        expect(currentA * voltsOnCharge(c, part * ah, currentA)).toBeCloseTo(watts, 6);
      }),
    );
  });

  test('amps stay amps; loads on the way take theirs at the same volts; nothing left is nothing', () => {
    const c = chargingOf(bank('lfp'));
    expect(offeredCurrentA(c, 50, 20, 0)).toBeCloseTo(20, 9);
    const left = offeredCurrentA(c, 50, 20, -130);
    expect(left).toBeCloseTo(20 - 130 / voltsOnCharge(c, 50, left), 6);
    expect(offeredCurrentA(c, 50, 5, -100)).toBe(0);
  });

  test('two in series: twice the volts', () => {
    const two = present(bankOf([{ count: 2, capacityAh: 100, chemistry: 'agm' }], 'series'));
    const [one, both] = [chargingOf(bank('agm')), chargingOf(two)];
    expect(voltsOnCharge(both, 40, 15)).toBeCloseTo(2 * voltsOnCharge(one, 40, 15), 9);
  });
});

describe('whatever the battery', () => {
  test('colder never charges faster, up to what is too hot', () => {
    fc.assert(
      fc.property(
        kind,
        number(20, 400),
        number(1, 100),
        number(0.1, 1),
        number(-20, 45),
        number(0, 30),
        (chemistry, ah, amps, part, warmC, byK) => {
          const time = (temperatureC: number) =>
            fillTimeH(chargingOf(bank(chemistry, ah), { temperatureC }), part * ah, 0.05 * ah, amps);
          expect(time(warmC - byK)).toBeGreaterThanOrEqual(time(warmC) - 1e-9);
        },
      ),
      seeded,
    );
  });

  test('colder never gives more, neither Ah nor A, up to what is too hot', () => {
    fc.assert(
      fc.property(kind, number(20, 400), number(-30, 45), number(0, 30), (chemistry, ah, warmC, byK) => {
        const one = bank(chemistry, ah);
        const values = Object.fromEntries(bankAssumptions(one).map(a => [a.name, a.value]));
        const holds = (temperatureC: number) =>
          usableCapacityAh({ bank: one, currentA: 5, temperatureC }, values);
        expect(holds(warmC - byK)).toBeLessThanOrEqual(holds(warmC) + 1e-9);
        expect(limitsOf(one, warmC - byK).dischargeA).toBeLessThanOrEqual(
          limitsOf(one, warmC).dischargeA + 1e-9,
        );
      }),
      seeded,
    );
  });

  test('older never holds more, nor takes its last part faster', () => {
    fc.assert(
      fc.property(kind, number(20, 400), number(0, 12), number(0, 12), (chemistry, ah, young, by) => {
        const at = (years: number) => {
          const one = bank(chemistry, ah, years);
          const values = Object.fromEntries(bankAssumptions(one).map(a => [a.name, a.value]));
          const c = chargingOf(one, {}, values);
          return {
            holds: usableCapacityAh({ bank: one, currentA: 3, temperatureC: 25 }, values),
            tau: c.timeConstantH,
            ohm: c.resistanceOhm,
            limitA: c.limitA,
          };
        };
        const [a, b] = [at(young), at(young + by)];
        expect(b.holds).toBeLessThanOrEqual(a.holds + 1e-9);
        expect(b.tau).toBeGreaterThanOrEqual(a.tau - 1e-9);
        expect(b.ohm).toBeGreaterThanOrEqual(a.ohm - 1e-9);
        expect(b.limitA).toBeLessThanOrEqual(a.limitA + 1e-9);
      }),
      seeded,
    );
  });
});
