import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Filling, fillTimeH, missingAfterH } from '#engine/charging/fill.ts';

const filling = (changes: Partial<Filling> = {}): Filling => ({
  missingAh: 50,
  currentA: 25,
  timeConstantH: 1,
  efficiency: 1,
  ...changes,
});

const fillings: fc.Arbitrary<Filling> = fc.record({
  missingAh: fc.double({ min: 1, max: 400, noNaN: true }),
  currentA: fc.double({ min: 1, max: 120, noNaN: true }),
  timeConstantH: fc.double({ min: 0.1, max: 3, noNaN: true }),
  efficiency: fc.double({ min: 0.8, max: 1, noNaN: true }),
});

describe('the closed form', () => {
  test('25 A into 50 Ah missing: an hour in full, then a tail', () => {
    expect(fillTimeH(filling(), 25)).toBeCloseTo(1, 9);
    expect(fillTimeH(filling(), 2.5)).toBeCloseTo(1 + Math.log(10), 9);
    expect(missingAfterH(filling(), 0.4)).toBeCloseTo(40, 9);
    expect(missingAfterH(filling(), 2)).toBeCloseTo(25 / Math.E, 9);
  });

  test('what the battery does not keep takes time too', () => {
    expect(fillTimeH(filling({ efficiency: 0.8 }), 25)).toBeCloseTo(1.25, 9);
  });

  test('full enough already: no time; no current: no end', () => {
    expect(fillTimeH(filling({ missingAh: 2 }), 2)).toBe(0);
    expect(fillTimeH(filling({ currentA: 0 }), 2)).toBe(Number.POSITIVE_INFINITY);
    expect(missingAfterH(filling({ currentA: 0 }), 5)).toBe(50);
    expect(missingAfterH(filling(), 0)).toBe(50);
    expect(missingAfterH(filling({ missingAh: 0 }), 5)).toBe(0);
  });

  test('a big charger gains little on a nearly full battery: it is the battery that decides', () => {
    const full = (currentA: number) => fillTimeH(filling({ missingAh: 10, currentA }), 2);
    expect(full(100)).toBeCloseTo(full(20), 9);
    expect(full(5)).toBeGreaterThan(full(20));
  });
});

describe('properties', () => {
  test('time and charge are the same law read two ways', () => {
    fc.assert(
      fc.property(fillings, fc.double({ min: 0.01, max: 0.9, noNaN: true }), (f, share) => {
        const end = share * f.missingAh;
        expect(missingAfterH(f, fillTimeH(f, end))).toBeCloseTo(end, 6);
      }),
    );
  });

  test('never faster than the charger gives, nor than the battery accepts', () => {
    fc.assert(
      fc.property(fillings, fc.double({ min: 0, max: 20, noNaN: true }), (f, hours) => {
        const stored = f.missingAh - missingAfterH(f, hours);
        expect(stored).toBeLessThanOrEqual(f.efficiency * f.currentA * hours + 1e-9);
        const accepted = f.missingAh * (1 - Math.exp((-f.efficiency * hours) / f.timeConstantH));
        expect(stored).toBeLessThanOrEqual(accepted + 1e-9);
        expect(stored).toBeGreaterThanOrEqual(-1e-9);
      }),
    );
  });

  test('more current never takes longer, more missing never less', () => {
    fc.assert(
      fc.property(fillings, fc.double({ min: 1, max: 3, noNaN: true }), (f, k) => {
        const time = fillTimeH(f, 0.5);
        expect(fillTimeH({ ...f, currentA: f.currentA * k }, 0.5)).toBeLessThanOrEqual(time + 1e-9);
        expect(fillTimeH({ ...f, missingAh: f.missingAh * k }, 0.5)).toBeGreaterThanOrEqual(time - 1e-9);
      }),
    );
  });

  test('equals a simulation in small steps', () => {
    fc.assert(
      fc.property(fillings, fc.double({ min: 0.2, max: 8, noNaN: true }), (f, hours) => {
        const steps = 4000;
        let missing = f.missingAh;
        for (let i = 0; i < steps; i++)
          missing -= (f.efficiency * Math.min(f.currentA, missing / f.timeConstantH) * hours) / steps;
        expect(Math.abs(missing - missingAfterH(f, hours))).toBeLessThan(0.003 * f.missingAh);
      }),
      { numRuns: 40 },
    );
  });
});
