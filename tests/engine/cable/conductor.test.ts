import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { choosePair } from '#engine/cable/choose.ts';
import {
  ampacityA,
  autoCableAreaMm2,
  conductorAssumptions,
  conductorOf,
  gaugeFor,
  resistancePerM,
} from '#engine/cable/conductor.ts';
import { fuseFor, largestFuseOn, protect } from '#engine/cable/fuse.ts';
import { areaOfGauge } from '#quantity/gauge.ts';
import { Trace } from '#rule/trace.ts';

const wire = (areaMm2: number) => present(conductorOf({ areaMm2 }));
const strands = (conductor: ReturnType<typeof conductorOf>) =>
  present(conductorAssumptions(conductor).find(a => a.name === 'strandFactor'));

describe('how strands are taken', () => {
  test('a standard size is as its table says, down to what vehicle cable may have', () => {
    expect(strands(conductorOf({ areaMm2: 10 }))).toMatchObject({ value: 1, high: 1.03 });
    expect(strands(conductorOf({ areaMm2: 10 })).low).toBeCloseTo(1.82 / 1.91, 9);
    expect(strands(conductorOf({ areaMm2: 50 })).low).toBeCloseTo(0.368 / 0.386, 9);
    // ISO 6722 stops at 120 mm²; nothing told is a standard size.
    expect(strands(conductorOf({ areaMm2: 150 })).low).toBe(0.94);
    expect(strands(undefined)).toMatchObject({ value: 1, low: 0.94 });
  });

  test('a gauge, auto cable or an odd size is reckoned from its copper, with the lay of strands', () => {
    for (const cable of [{ awg: 8 }, { autoCableMm: 6 }, { areaMm2: 7 }])
      expect(strands(conductorOf(cable))).toMatchObject({ value: 1.12, low: 1.02, high: 1.2 });
  });

  test('resistance: from the table, or from the copper', () => {
    const values = { conductorC: 20, strandFactor: 1.1 };
    expect(resistancePerM(present(conductorOf({ areaMm2: 6 })), values)).toBeCloseTo(0.00363, 9);
    expect(resistancePerM(present(conductorOf({ areaMm2: 7 })), values)).toBeCloseTo(1.1 / 58 / 7, 9);
    // A gauge that happens to have the copper of a metric size is still not that cable.
    expect(resistancePerM({ areaMm2: 6, as: 'gauge', size: 9 }, values)).toBeCloseTo(1.1 / 58 / 6, 9);
    // 40 K warmer: 0.393 % a kelvin.
    const warm = resistancePerM(present(conductorOf({ areaMm2: 6 })), { ...values, conductorC: 60 });
    expect(warm).toBeCloseTo(0.00363 * (1 + 40 * 0.00393), 9);
  });

  test('the working names the table where it was read, and the copper where it was reckoned', () => {
    const steps = (cable: object) => {
      const trace = new Trace();
      resistancePerM(present(conductorOf(cable)), { conductorC: 20, strandFactor: 1 }, trace);
      return trace.steps.map(s => (s.kind === 'lookup' ? s : s.rule.name));
    };
    expect(steps({ areaMm2: 6 })).toEqual([
      {
        kind: 'lookup',
        name: 'conductorResistance',
        says: 'resistance of a metre of 6 mm² flexible copper at 20 °C',
        value: expect.closeTo(3.3, 9),
        unit: 'mΩ/m',
        source: 'IEC 60228 class 5',
      },
      'warmResistance',
    ]);
    expect(steps({ awg: 8 })).toEqual(['conductorResistance', 'warmResistance']);
  });
});

describe('sizes of copper', () => {
  test('auto cable: the strands of a size that is sold, the square of what is near beyond', () => {
    const trace = new Trace();
    expect(autoCableAreaMm2(4, trace)).toBeCloseTo((26 * Math.PI * 0.3 ** 2) / 4, 9);
    expect(trace.steps).toHaveLength(1);
    expect(autoCableAreaMm2(4.2)).toBe(autoCableAreaMm2(4));
    const beyond = new Trace();
    expect(autoCableAreaMm2(8, beyond)).toBeCloseTo(autoCableAreaMm2(6) * (8 / 6) ** 2, 9);
    expect(autoCableAreaMm2(2.4)).toBeCloseTo(autoCableAreaMm2(2) * 1.2 ** 2, 9);
    expect(beyond.steps).toHaveLength(0);
  });

  test('gauge for copper: what has at least 97 % of it, beyond 4/0 by the law of gauges', () => {
    expect(gaugeFor(areaOfGauge(6))).toBe(6);
    expect(gaugeFor(areaOfGauge(6) / 0.975)).toBe(6);
    expect(gaugeFor(areaOfGauge(6) / 0.96)).toBe(4);
    expect(gaugeFor(0.1)).toBe(18);
    expect(gaugeFor(120)).toBe(-4);
  });

  test('ABYC’s table at its gauges, and its power law between and beyond them', () => {
    expect(ampacityA(areaOfGauge(18))).toBeCloseTo(10, 6);
    expect(ampacityA(areaOfGauge(14))).toBeCloseTo(20, 6);
    expect(ampacityA(areaOfGauge(-3))).toBeCloseTo(360, 6);
    expect(ampacityA(areaOfGauge(8), 105)).toBeCloseTo(80, 6);
    const half = Math.sqrt(areaOfGauge(14) * areaOfGauge(12));
    expect(ampacityA(half)).toBeCloseTo(Math.sqrt(20 * 25), 6);
    expect(ampacityA(0.5)).toBeLessThan(10);
    expect(ampacityA(150)).toBeGreaterThan(360);
  });
});

describe('edges of a choice', () => {
  const values = { conductorC: 20, strandFactor: 1 };
  /** The drop of a cable of 6 mm² over 5 m, % of 12 V. */
  const percent = (amps: number) => (100 * 2 * 5 * amps * 0.0033) / 12;
  const choose = (amps: number, dropLimit: number, continuousA = amps) =>
    choosePair({ lengthM: 5, currentA: amps, continuousA, voltageV: 12 }, 'metric', {
      ...values,
      dropLimit,
    });

  test('a drop of just the limit will do', () => {
    const dropLimit = choose(12, 50).percent;
    expect(choose(12, dropLimit).conductor).toEqual(choose(12, 50).conductor);
    expect(choose(12, percent(12) + 1e-9).conductor.areaMm2).toBe(6);
    expect(choose(12, percent(12) - 1e-6).conductor.areaMm2).toBe(10);
  });

  test('whether current or drop asked for the size, and whether the thickest does', () => {
    expect(choose(12, percent(12) + 1e-9)).toMatchObject({ isByCurrent: false, isTooMuch: false });
    expect(choose(12, 20, 60)).toMatchObject({ isByCurrent: true, isTooMuch: false });
    expect(choose(12, 0.01)).toMatchObject({ isByCurrent: false, isTooMuch: true });
    // The thinnest one laid has nothing thinner beside it.
    expect(choose(1, 20)).toMatchObject({ conductor: { areaMm2: 1 }, isTooMuch: false });
  });
});

describe('edges of a fuse', () => {
  test('a rating that a current just asks for is taken, and one that the copper just carries', () => {
    expect(fuseFor(80).ratingA).toBe(100);
    expect(fuseFor(400).ratingA).toBe(500);
    expect(fuseFor(401).ratingA).toBe(600);
    expect(fuseFor(32).colour).toBeUndefined();
    expect(fuseFor(24)).toEqual({ ratingA: 30, series: 'blade', colour: 'green' });
    expect(fuseFor(48)).toEqual({ ratingA: 60, series: 'small bolt-down', colour: undefined });
    expect(fuseFor(500).series).toBe('bolt-down');
    const area = areaOfGauge(14) * (1 + 1e-9);
    expect(present(largestFuseOn(wire(area))).ratingA).toBe(20);
    expect(protect(16, wire(area))).toMatchObject({ fits: true, fuse: { ratingA: 20 } });
  });

  test('the least copper for a fuse is the thinnest size that carries it', () => {
    const { leastAreaMm2, wanted } = protect(30, wire(1.5));
    expect(wanted.ratingA).toBe(40);
    expect(leastAreaMm2).toBe(6);
    expect(ampacityA(4)).toBeLessThan(40);
    expect(protect(900, wire(1.5)).leastAreaMm2).toBe(240);
  });

  test('the working says from what it was taken', () => {
    const trace = new Trace();
    fuseFor(19, trace);
    expect(trace.steps.at(-1)).toMatchObject({
      name: 'fuseRating',
      says: 'next standard rating from 23.8 A',
      value: 25,
      unit: 'A',
      source: 'ISO 8820-3 blades, bolt-down series',
    });
  });
});
