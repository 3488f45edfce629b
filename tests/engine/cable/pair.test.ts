import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { choosePair, dropOn, type Run } from '#engine/cable/choose.ts';
import {
  type Conductor,
  conductorAssumptions,
  conductorOf,
  conductorsSold,
} from '#engine/cable/conductor.ts';
import { fuseFor, fuseRatingsA, largestFuseOn, protect } from '#engine/cable/fuse.ts';
import { bundleShareOf, carriesA, surroundingAssumptions } from '#engine/cable/surroundings.ts';
import { Trace } from '#rule/trace.ts';
import { draws } from '../../house/share.ts';

/** Each property is held by so many draws, the same ones each time. */
const seeded = { seed: 13, numRuns: draws(1000, 10_000) } as const;

const cold = (as: 'metric' | 'gauge' = 'metric') =>
  Object.fromEntries(conductorAssumptions(conductorsSold(as)[0]).map(a => [a.name, a.value]));
const lies = (cableAirC: number, wires = 1) => ({ cableAirC, bundleShare: bundleShareOf(wires) });
const square = (areaMm2: number): Conductor => present(conductorOf({ areaMm2 }));

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const amps = number(0.3, 260);
const metres = number(0.2, 15);
const air = number(-20, 74);
const wires = fc.integer({ min: 1, max: 40 });
/** Cable of every kind: by its square, by gauge, and of the auto shop. */
const cables = fc.oneof(
  number(0.3, 240).map(square),
  fc.constantFrom(18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3).map(awg => present(conductorOf({ awg }))),
  number(2, 8).map(autoCableMm => present(conductorOf({ autoCableMm }))),
);
const runs: fc.Arbitrary<Run> = fc.record({
  lengthM: metres,
  currentA: amps,
  continuousA: amps,
  voltageV: fc.constantFrom(12, 13.5, 24, 48),
});

describe('properties', () => {
  test('a longer cable never drops less', () => {
    fc.assert(
      fc.property(cables, runs, number(1, 4), air, (cable, about, k, airC) => {
        const values = Object.fromEntries(conductorAssumptions(cable, airC).map(a => [a.name, a.value]));
        const at = (lengthM: number) => dropOn(cable, { ...about, lengthM }, values).dropV;
        expect(at(about.lengthM * k)).toBeGreaterThanOrEqual(at(about.lengthM));
      }),
      seeded,
    );
  });

  test('a hotter cable never carries more and never drops less; a bundled one never carries more', () => {
    fc.assert(
      fc.property(cables, runs, air, air, wires, wires, (cable, about, a, b, m, n) => {
        const [cool, hot] = [Math.min(a, b), Math.max(a, b)];
        const [few, many] = [Math.min(m, n), Math.max(m, n)];
        expect(carriesA(cable, lies(hot, few))).toBeLessThanOrEqual(carriesA(cable, lies(cool, few)));
        expect(carriesA(cable, lies(cool, many))).toBeLessThanOrEqual(carriesA(cable, lies(cool, few)));
        const drop = (airC: number) =>
          dropOn(
            cable,
            about,
            Object.fromEntries(conductorAssumptions(cable, airC).map(one => [one.name, one.value])),
          ).dropV;
        expect(drop(hot)).toBeGreaterThanOrEqual(drop(cool));
      }),
      seeded,
    );
  });

  test('a fuse is never above its cable, nor below its load where it fits', () => {
    fc.assert(
      fc.property(cables, amps, air, wires, (cable, continuousA, airC, n) => {
        const values = lies(airC, n);
        const { fuse, fits, wanted } = protect(continuousA, cable, values);
        const most = carriesA(cable, values);
        // Below the smallest fuse there is none to be had.
        if (most >= present(fuseRatingsA[0])) expect(fuse.ratingA).toBeLessThanOrEqual(most);
        if (fits) {
          expect(fuse).toEqual(wanted);
          expect(fuse.ratingA).toBeGreaterThanOrEqual(continuousA * 1.2499);
        } else expect(most).toBeLessThan(wanted.ratingA);
        const alone = largestFuseOn(cable, values);
        if (alone) expect(alone.ratingA).toBeLessThanOrEqual(most);
      }),
      seeded,
    );
  });

  test('a pair: drop within the limit, fuse between load and cable, and no thinner size does', () => {
    const asked = fc.constantFrom('metric' as const, 'gauge' as const);
    fc.assert(
      fc.property(runs, asked, number(1, 10), number(10, 60), wires, (about, as, dropLimit, airC, n) => {
        const values = { ...cold(as), ...lies(airC, n), dropLimit };
        const pair = choosePair(about, as, values);
        expect(pair.carriesA).toBe(carriesA(pair.conductor, values));
        expect(pair.fuse.ratingA).toBeLessThanOrEqual(pair.carriesA);
        if (pair.isTooMuch) return;
        expect(pair.percent).toBeLessThanOrEqual(dropLimit);
        expect(pair.fuse.ratingA).toBeGreaterThanOrEqual(about.continuousA * 1.2499);
        const sold = conductorsSold(as).filter(c => c.areaMm2 >= 1);
        const thinner = sold[sold.findIndex(c => c.size === pair.conductor.size) - 1];
        if (!thinner) return;
        const isDrop = dropOn(thinner, about, values).percent <= dropLimit;
        expect(isDrop && carriesA(thinner, values) >= fuseFor(about.continuousA).ratingA).toBe(false);
      }),
      seeded,
    );
  });

  test('worse surroundings never choose a thinner cable', () => {
    fc.assert(
      fc.property(runs, air, air, wires, wires, (about, a, b, m, n) => {
        const area = (airC: number, count: number) =>
          choosePair(about, 'metric', { ...cold(), ...lies(airC, count), dropLimit: 5 }).conductor.areaMm2;
        expect(area(Math.max(a, b), Math.max(m, n))).toBeGreaterThanOrEqual(
          area(Math.min(a, b), Math.min(m, n)),
        );
      }),
      seeded,
    );
  });

  test('auto cable carries no more than copper of its strands; a larger size no less, but for the seam between two sizes', () => {
    fc.assert(
      fc.property(number(2, 9), number(0, 3), (mm, more) => {
        const auto = (size: number) => present(conductorOf({ autoCableMm: size }));
        expect(carriesA(auto(mm))).toBeLessThanOrEqual(carriesA(square(auto(mm).areaMm2)));
        expect(carriesA(auto(mm + more))).toBeGreaterThanOrEqual(carriesA(auto(mm)) * 0.85);
      }),
      seeded,
    );
  });
});

describe('by hand', () => {
  test.for<[wires: number, share: number]>([
    [1, 1],
    [2, 1],
    [3, 0.7],
    [4, 0.6],
    [6, 0.6],
    [7, 0.5],
    [24, 0.5],
    [25, 0.4],
    [90, 0.4],
  ])('%i wires in a bundle keep %d', ([n, share]) => expect(bundleShareOf(n)).toBe(share));

  test('75 °C insulation in air of 50 °C: √(25 ÷ 45) of it; cool air gives nothing more; at 75 °C nothing is left', () => {
    const ten = present(conductorOf({ awg: 10 }));
    expect(carriesA(ten)).toBeCloseTo(40, 6);
    expect(carriesA(ten, { cableAirC: 50 })).toBeCloseTo(40 * Math.sqrt(25 / 45), 6);
    expect(carriesA(ten, { cableAirC: 50, bundleShare: 0.7 })).toBeCloseTo(28 * Math.sqrt(25 / 45), 6);
    expect(carriesA(ten, { cableAirC: 50 }, undefined, 105)).toBeCloseTo(60 * Math.sqrt(55 / 75), 6);
    expect(carriesA(ten, { cableAirC: -10 })).toBeCloseTo(40, 6);
    expect(carriesA(ten, { cableAirC: 75 })).toBe(0);
    expect(carriesA(ten, { cableAirC: 90 })).toBe(0);
  });

  test.for<[mm: number, amps: number]>([
    [2, 5],
    [3, 10],
    [4, 15],
  ])('%i mm auto cable carries the %i A that it is sold for', ([autoCableMm, sold]) => {
    expect(carriesA(present(conductorOf({ autoCableMm })))).toBeCloseTo(sold, 9);
  });

  test('6 mm auto cable, sold for 48 A, carries what its 4.6 mm² of copper do', () => {
    const six = present(conductorOf({ autoCableMm: 6 }));
    expect(carriesA(six)).toBe(carriesA(square(six.areaMm2)));
    expect(carriesA(six)).toBeLessThan(40);
  });

  test('30 A over half a metre: its 40 A fuse wants 6 mm²; at 60 °C 10 mm²; in a bundle of four there 25 mm²', () => {
    const about = { lengthM: 0.5, currentA: 30, continuousA: 30, voltageV: 12 };
    const at = (values: object) => choosePair(about, 'metric', { ...cold(), dropLimit: 5, ...values });
    expect([at({}), at(lies(60)), at(lies(60, 4))].map(p => p.conductor.areaMm2)).toEqual([6, 10, 25]);
    expect(at({})).toMatchObject({ fuse: { ratingA: 40 }, isByCurrent: true, isTooMuch: false });
  });

  test('what is told of the air is taken; what is not stands in its range', () => {
    expect(surroundingAssumptions()).toMatchObject([
      { name: 'cableAirC', value: 30, low: 20, high: 45 },
      { name: 'bundleShare', value: 1, low: 0.7, high: 1 },
    ]);
    expect(surroundingAssumptions(40)[0]).toMatchObject({ value: 40, low: 40, high: 45 });
    expect(surroundingAssumptions(55)[0]).toMatchObject({ value: 55, low: 55, high: 55 });
    expect(conductorAssumptions(undefined)[0]).toMatchObject({ value: 35, low: 20, high: 60 });
    expect(conductorAssumptions(undefined, 50)[0]).toMatchObject({ value: 60, low: 50, high: 75 });
    expect(conductorAssumptions(undefined, -20)[0]).toMatchObject({ value: 35, low: 20, high: 60 });
  });

  test('the working tells of heat and bundle where they take something off', () => {
    const steps = (values?: object) => {
      const trace = new Trace();
      carriesA(square(6), values as never, trace);
      return trace.steps.map(s => (s.kind === 'lookup' ? s.name : s.rule.name));
    };
    expect(steps()).toEqual(['ampacityBetween']);
    expect(steps(lies(30))).toEqual(['ampacityBetween']);
    expect(steps(lies(45))).toEqual(['ampacityBetween', 'heatShare', 'carriedCurrent']);
    expect(steps(lies(20, 3))).toEqual(['ampacityBetween', 'heatShare', 'carriedCurrent']);
  });
});
