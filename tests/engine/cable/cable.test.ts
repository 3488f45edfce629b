import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { choosePair, dropOn, type Pair } from '#engine/cable/choose.ts';
import {
  ampacityA,
  autoCableAreaMm2,
  conductorAssumptions,
  conductorOf,
  conductorsSold,
  gaugeFor,
  nearestGauge,
} from '#engine/cable/conductor.ts';
import { fuseFor, fuseRatingsA, largestFuseOn, protect } from '#engine/cable/fuse.ts';
import { areaOfGauge } from '#quantity/gauge.ts';

const values = (dropLimit = 3, as: 'metric' | 'gauge' = 'metric') => ({
  dropLimit,
  ...Object.fromEntries(conductorAssumptions(conductorsSold(as)[0]).map(a => [a.name, a.value])),
});
const circuit = (currentA: number, lengthM: number, voltageV = 12) => ({
  currentA,
  continuousA: currentA,
  lengthM,
  voltageV,
});
const choose = (currentA: number, lengthM: number, limit = 3, as: 'metric' | 'gauge' = 'metric'): Pair =>
  choosePair(circuit(currentA, lengthM), as, values(limit, as));

const wire = (areaMm2: number) => present(conductorOf({ areaMm2 }));
const amps = fc.double({ min: 0.5, max: 150, noNaN: true });
const metres = fc.double({ min: 0.3, max: 12, noNaN: true });
const areas = fc.constantFrom(...conductorsSold('metric').map(c => c.areaMm2));

describe('the drop', () => {
  test('as the trade has it: 25 A over 5 m within 3 % wants 16 mm²', () => {
    expect(choose(25, 5).conductor.areaMm2).toBe(16);
    expect(choose(15, 5, 5).conductor.areaMm2).toBe(6);
    expect(choose(15, 5, 5, 'gauge').conductor.size).toBe(10);
  });

  test('24 V halves the share and asks for less', () => {
    const six = present(conductorOf({ areaMm2: 6 }));
    const at = (V: number) => dropOn(six, circuit(10, 5, V), values()).percent;
    expect(at(24)).toBeCloseTo(at(12) / 2, 9);
    const big = choosePair(circuit(25, 5, 24), 'metric', values());
    expect(big.conductor.areaMm2).toBeLessThan(16);
  });

  test('a short run of many amps is sized by its fuse', () => {
    const short = choose(185, 0.5);
    expect(short.isByCurrent).toBe(true);
    expect(short.conductor.areaMm2).toBe(70);
    expect(choose(25, 5).isByCurrent).toBe(false);
  });

  test('nothing thinner than 1 mm² is laid; beyond the thickest it is said', () => {
    expect(choose(0.2, 1, 10).conductor.areaMm2).toBe(1);
    expect(choose(300, 40)).toMatchObject({ isTooMuch: true, conductor: { areaMm2: 240 } });
  });

  test('longer never drops less, thicker never more', () => {
    fc.assert(
      fc.property(amps, metres, areas, areas, fc.double({ min: 1, max: 3, noNaN: true }), (I, L, a, b, k) => {
        const on = (areaMm2: number, lengthM: number) =>
          dropOn(present(conductorOf({ areaMm2 })), circuit(I, lengthM), values()).dropV;
        expect(on(a, L * k)).toBeGreaterThanOrEqual(on(a, L));
        expect(on(Math.max(a, b), L)).toBeLessThanOrEqual(on(Math.min(a, b), L));
      }),
    );
  });

  test('what is chosen meets limit and fuse, and the next thinner does not', () => {
    fc.assert(
      fc.property(amps, metres, fc.constantFrom(3, 5, 10), (I, L, limit) => {
        const choice = choose(I, L, limit);
        if (choice.isTooMuch) return;
        expect(choice.percent).toBeLessThanOrEqual(limit);
        expect(ampacityA(choice.conductor.areaMm2)).toBeGreaterThanOrEqual(fuseFor(I).ratingA);
        const sold = conductorsSold('metric').filter(c => c.areaMm2 >= 1);
        const thinner = sold[sold.findIndex(c => c.areaMm2 === choice.conductor.areaMm2) - 1];
        if (!thinner) return;
        const isDrop = dropOn(thinner, circuit(I, L), values(limit)).percent <= limit;
        expect(isDrop && ampacityA(thinner.areaMm2) >= fuseFor(I).ratingA).toBe(false);
      }),
    );
  });
});

describe('sizes', () => {
  test('what is told: auto cable before mm² before gauge', () => {
    expect(conductorOf({ autoCableMm: 6, areaMm2: 6 })).toMatchObject({ as: 'auto', size: 6 });
    expect(conductorOf({ areaMm2: 6, awg: 10 })).toMatchObject({ as: 'metric', areaMm2: 6 });
    expect(present(conductorOf({ awg: -1 })).areaMm2).toBeCloseTo(67.43, 2);
    expect(conductorOf({ lengthM: 3 })).toBeUndefined();
    expect(conductorOf(undefined)).toBeUndefined();
  });

  test('trap 10: auto cable holds less copper than its number, also between its sizes', () => {
    expect(autoCableAreaMm2(6)).toBeCloseTo(4.59, 2);
    expect(autoCableAreaMm2(8)).toBeGreaterThan(autoCableAreaMm2(6));
    fc.assert(
      fc.property(fc.double({ min: 2, max: 8, noNaN: true }), mm => {
        expect(autoCableAreaMm2(mm)).toBeLessThan(0.22 * mm * mm);
      }),
    );
  });

  test('gauges for areas: B&S is AWG', () => {
    expect([4, 6, 10, 16, 25, 70].map(gaugeFor)).toEqual([10, 8, 6, 4, 2, -2]);
    expect(nearestGauge(8.37)).toBe(8);
    expect(nearestGauge(5.3)).toBe(10);
  });

  test('thicker carries more, and more with better insulation', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 240, noNaN: true }),
        fc.double({ min: 1, max: 2, noNaN: true }),
        (S, k) => {
          expect(ampacityA(S * k)).toBeGreaterThanOrEqual(ampacityA(S) - 1e-9);
          expect(ampacityA(S, 105)).toBeGreaterThan(ampacityA(S));
        },
      ),
    );
    expect(ampacityA(areaOfGauge(10))).toBeCloseTo(40, 9);
  });
});

describe('the fuse', () => {
  test('125 % and the next standard rating', () => {
    const next = [4, 8, 12, 16, 20, 24.1, 47.4, 185].map(a => fuseFor(a).ratingA);
    expect(next).toEqual([5, 10, 15, 20, 25, 35, 60, 250]);
    expect(fuseFor(450).ratingA).toBe(600);
    expect(fuseFor(12)).toMatchObject({ series: 'blade', colour: 'blue' });
    expect(fuseFor(47.4).series).toBe('small bolt-down');
  });

  test('a cable too thin has to grow: the fuse is not made to fit the load', () => {
    const thin = protect(30, wire(1.5));
    expect(thin).toMatchObject({ fits: false, wanted: { ratingA: 40 }, fuse: { ratingA: 15 } });
    expect(ampacityA(thin.leastAreaMm2)).toBeGreaterThanOrEqual(40);
    expect(protect(12, wire(4))).toMatchObject({ fits: true, fuse: { ratingA: 15 } });
    expect(protect(12)).toMatchObject({ fits: true, fuse: { ratingA: 15 } });
  });

  test('hair-thin wire has no fuse', () => {
    expect(largestFuseOn(wire(0.01))).toBeUndefined();
    expect(protect(1, wire(0.01))).toMatchObject({ fits: false, fuse: { ratingA: 1 } });
  });

  test('never exceeds its cable; never below the load where it fits', () => {
    fc.assert(
      fc.property(amps, fc.double({ min: 0.5, max: 120, noNaN: true }), (I, S) => {
        const { fuse, fits, wanted } = protect(I, wire(S));
        expect(fuse.ratingA).toBeLessThanOrEqual(ampacityA(S));
        if (fits) expect(fuse.ratingA).toBeGreaterThanOrEqual(I * 1.2499);
        expect(wanted.ratingA).toBeGreaterThanOrEqual(I * 1.2499);
        expect(fuseRatingsA).toContain(wanted.ratingA);
      }),
    );
  });
});
