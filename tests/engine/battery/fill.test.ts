import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Charging } from '#engine/battery/charging.ts';
import { fillTimeH, missingAfterH, putInAh, putInToFullAh } from '#engine/battery/fill.ts';
import { Trace } from '#rule/trace.ts';
import { ideal } from '../trip/ideal.ts';

/** A battery that keeps all of its charge, with a time constant of an hour. */
const plain: Charging = { ...ideal, timeConstantH: 1 };
/** One that keeps all until 20 Ah are missing, and half at the very end. */
const lossy: Charging = { ...plain, topEfficiency: 0.5, topAh: 20 };

const drawn = fc
  .record({
    capacityAh: fc.double({ min: 20, max: 400, noNaN: true }),
    missing: fc.double({ min: 0.02, max: 1, noNaN: true }),
    currentA: fc.double({ min: 1, max: 120, noNaN: true }),
    timeConstantH: fc.double({ min: 0.1, max: 3, noNaN: true }),
    efficiency: fc.double({ min: 0.8, max: 1, noNaN: true }),
    top: fc.double({ min: 0.3, max: 0.95, noNaN: true }),
    topShare: fc.double({ min: 0.05, max: 0.4, noNaN: true }),
    isFalling: fc.boolean(),
  })
  .map(d => ({
    missingAh: d.missing * d.capacityAh,
    currentA: d.currentA,
    c: {
      ...ideal,
      capacityAh: d.capacityAh,
      timeConstantH: d.timeConstantH,
      efficiency: d.efficiency,
      topEfficiency: d.isFalling ? d.top * d.efficiency : d.efficiency,
      topAh: d.isFalling ? d.topShare * d.capacityAh : 0,
    } satisfies Charging,
  }));

/** Share that stays at a level, by the definition. */
const keeps = (c: Charging, missing: number): number =>
  c.topAh === 0
    ? c.efficiency
    : c.topEfficiency + (c.efficiency - c.topEfficiency) * Math.min(1, missing / c.topAh);

describe('the closed form', () => {
  /** The parts of a charge that its working tells. */
  const parts = (c: Charging, from: number, to: number, amps: number): readonly string[] => {
    const trace = new Trace();
    fillTimeH(c, from, to, amps, trace);
    return trace.steps.flatMap(step =>
      'rule' in step && step.rule.name.endsWith('Time') ? [step.rule.name] : [],
    );
  };
  test.for<[says: string, c: Charging, from: number, to: number, amps: number, told: string[]]>([
    ['steady, then a tail', plain, 50, 2, 25, ['steadyTime', 'tailTime']],
    ['a tail alone: 10 Ah missing is below what 25 A get to in full', plain, 10, 2, 25, ['tailTime']],
    ['steady alone: it ends before the tail', plain, 50, 30, 25, ['steadyTime']],
    ['all three', lossy, 50, 2, 25, ['steadyTime', 'tailTime', 'topTailTime']],
    ['the last alone', lossy, 10, 2, 25, ['topTailTime']],
  ])('its working tells the parts that there are: %s', ([, c, from, to, amps, told]) => {
    expect(parts(c, from, to, amps).filter(name => name !== 'fillTime')).toEqual(told);
  });

  test('25 A into 50 Ah missing: an hour in full, then a tail', () => {
    expect(fillTimeH(plain, 50, 25, 25)).toBeCloseTo(1, 9);
    expect(fillTimeH(plain, 50, 2.5, 25)).toBeCloseTo(1 + Math.log(10), 9);
    expect(missingAfterH(plain, 50, 25, 0.4)).toBeCloseTo(40, 9);
    expect(missingAfterH(plain, 50, 25, 2)).toBeCloseTo(25 / Math.E, 9);
  });

  test('what the battery does not keep takes time too', () => {
    expect(fillTimeH({ ...plain, efficiency: 0.8 }, 50, 25, 25)).toBeCloseTo(1.25, 9);
  });

  test('the last part asks for more: 20 Ah at 1 falling to a half take 20 × 2 × ln 2', () => {
    expect(putInAh(lossy, 20, 0)).toBeCloseTo(40 * Math.LN2, 9);
    expect(putInAh(lossy, 50, 0)).toBeCloseTo(30 + 40 * Math.LN2, 9);
    expect(putInAh(lossy, 50, 25)).toBeCloseTo(25, 9);
    expect(putInAh(lossy, 20, 10)).toBeCloseTo(40 * Math.log(1 / 0.75), 9);
    expect(putInAh(lossy, 5, 5)).toBe(0);
    expect(putInToFullAh(lossy, 50)).toBeCloseTo(putInAh(lossy, 50, 0), 9);
  });

  test('full enough already: no time; no current: no end', () => {
    expect(fillTimeH(plain, 2, 2, 25)).toBe(0);
    expect(fillTimeH(plain, 5, 2, 0)).toBe(Number.POSITIVE_INFINITY);
    expect(fillTimeH(plain, 5, 2, -3)).toBe(Number.POSITIVE_INFINITY);
    expect(fillTimeH({ ...plain, limitA: 0 }, 5, 2, 20)).toBe(Number.POSITIVE_INFINITY);
    expect(missingAfterH(plain, 50, 0, 5)).toBe(50);
    expect(missingAfterH(plain, 50, -3, 5)).toBe(50);
    expect(missingAfterH(plain, 50, 25, 0)).toBe(50);
    expect(missingAfterH(plain, 0, 25, 5)).toBe(0);
    expect(missingAfterH(plain, -4, 25, 2)).toBe(0);
  });

  test('a big charger gains little on a nearly full battery: it is the battery that decides', () => {
    const full = (currentA: number) => fillTimeH(plain, 10, 2, currentA);
    expect(full(100)).toBeCloseTo(full(20), 9);
    expect(full(5)).toBeGreaterThan(full(20));
  });

  test('no faster than its kind stands', () => {
    const limited = { ...plain, limitA: 10 };
    expect(fillTimeH(limited, 50, 20, 80)).toBeCloseTo(3, 9);
    expect(missingAfterH(limited, 50, 80, 3)).toBeCloseTo(20, 9);
  });
});

describe('properties', () => {
  const share = fc.double({ min: 0.01, max: 0.9, noNaN: true });

  test('time and charge are the same law read two ways', () => {
    fc.assert(
      fc.property(drawn, share, ({ c, missingAh, currentA }, part) => {
        const end = part * missingAh;
        const time = fillTimeH(c, missingAh, end, currentA);
        expect(missingAfterH(c, missingAh, currentA, time)).toBeCloseTo(end, 5);
      }),
    );
  });

  test('two charges after each other are one: hours may be cut anywhere', () => {
    fc.assert(
      fc.property(drawn, share, fc.double({ min: 0.1, max: 12, noNaN: true }), (d, part, hours) => {
        const { c, missingAh, currentA } = d;
        const middle = missingAfterH(c, missingAh, currentA, part * hours);
        const end = missingAfterH(c, middle, currentA, (1 - part) * hours);
        expect(end).toBeCloseTo(missingAfterH(c, missingAh, currentA, hours), 5);
      }),
    );
  });

  test('what goes in is the sum of what each bit of it asks for, whatever the current', () => {
    fc.assert(
      fc.property(drawn, share, ({ c, missingAh }, part) => {
        const end = part * missingAh;
        const steps = 2000;
        const bit = (missingAh - end) / steps;
        let sum = 0;
        for (let i = 0; i < steps; i++) sum += bit / keeps(c, end + (i + 0.5) * bit);
        const inAh = putInAh(c, missingAh, end);
        expect(Math.abs(inAh - sum)).toBeLessThan(1e-4 * inAh);
      }),
      { numRuns: 40 },
    );
  });

  test('never faster than the charger gives, nor than the battery accepts', () => {
    fc.assert(
      fc.property(drawn, fc.double({ min: 0, max: 20, noNaN: true }), (d, hours) => {
        const { c, missingAh, currentA } = d;
        const stored = missingAh - missingAfterH(c, missingAh, currentA, hours);
        expect(stored).toBeLessThanOrEqual(c.efficiency * currentA * hours + 1e-9);
        const accepted = missingAh * (1 - Math.exp((-c.efficiency * hours) / c.timeConstantH));
        expect(stored).toBeLessThanOrEqual(accepted + 1e-9);
        expect(stored).toBeGreaterThanOrEqual(-1e-9);
      }),
    );
  });

  test('more current never takes longer, more missing never less', () => {
    fc.assert(
      fc.property(drawn, fc.double({ min: 1, max: 3, noNaN: true }), ({ c, missingAh, currentA }, k) => {
        const time = fillTimeH(c, missingAh, 0.3, currentA);
        expect(fillTimeH(c, missingAh, 0.3, currentA * k)).toBeLessThanOrEqual(time + 1e-9);
        expect(fillTimeH(c, missingAh * k, 0.3, currentA)).toBeGreaterThanOrEqual(time - 1e-9);
      }),
    );
  });

  test('equals a simulation in small steps', () => {
    fc.assert(
      fc.property(drawn, fc.double({ min: 0.2, max: 8, noNaN: true }), (d, hours) => {
        const { c, missingAh, currentA } = d;
        const steps = 4000;
        let missing = missingAh;
        for (let i = 0; i < steps; i++)
          missing -= (keeps(c, missing) * Math.min(currentA, missing / c.timeConstantH) * hours) / steps;
        expect(Math.abs(missing - missingAfterH(c, missingAh, currentA, hours))).toBeLessThan(
          0.003 * missingAh,
        );
      }),
      { numRuns: 40 },
    );
  });
});
