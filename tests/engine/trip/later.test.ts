import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bankOf } from '#engine/battery/bank.ts';
import { exploreLater, type Later } from '#engine/trip/later.ts';

const agm = bankOf([{ count: 1, capacityAh: 100, chemistry: 'agm' }])!;
const told = (value: number) => ({
  name: 'stateOfCharge',
  value,
  low: value,
  high: value,
  unit: '%',
  why: '',
});
const later = (rest: Partial<Later>): Later => ({
  bank: agm,
  level: told(80),
  hours: 10,
  use: { loads: [{ name: 'gizmo', count: 1, currentA: 2, supply: 'dc' }], voltageV: 12 },
  temperatureC: 25,
  ...rest,
});
const levelThen = (rest: Partial<Later>) => exploreLater(later(rest)).figures.levelThen;

describe('how full it will be at a time', () => {
  // By hand: 2 A is below the 20-hour rate, so that 100 Ah hold; 2 A for 10 h is 20 Ah.
  test('2 A for 10 hours from 80 % of 100 Ah is 60 %', () => {
    expect(levelThen({ bank: { ...agm, capacityAh: 100 } }).value).toBeCloseTo(60, 0);
  });
  test('a lamp that burns 4 h a day costs no more over a night', () => {
    const lamp = { name: 'light', count: 1, currentA: 2, hoursPerDay: 4, supply: 'dc' } as const;
    expect(levelThen({ use: { loads: [lamp], voltageV: 12 } }).value).toBeCloseTo(72, 0);
  });
  test('what a monitor shows going in fills it, less what does not stay, and no further than full', () => {
    const filled = levelThen({ level: told(28), hours: 4, intoA: 3 }).value;
    expect(filled).toBeLessThan(40);
    expect(filled).toBeGreaterThan(38.5);
    expect(levelThen({ hours: 100, intoA: 20 }).value).toBeLessThanOrEqual(100);
  });
  test('a level by volts widens the range by its own', () => {
    const wide = levelThen({ level: { ...told(60), low: 50, high: 70 } });
    expect(wide.low).toBeLessThan(32);
    expect(wide.high).toBeGreaterThan(48);
    expect(levelThen({ level: told(60) }).high).toBeLessThan(wide.high);
  });
  test('later is never fuller, more never leaves more, and it stays between empty and full', () => {
    const hours = fc.double({ min: 0.5, max: 72, noNaN: true });
    const amps = fc.double({ min: 0.1, max: 20, noNaN: true });
    fc.assert(
      fc.property(hours, hours, amps, amps, (h1, h2, a1, a2) => {
        const at = (h: number, currentA: number) =>
          levelThen({
            hours: h,
            use: { loads: [{ name: 'gizmo', count: 1, currentA, supply: 'dc' }], voltageV: 12 },
          }).value;
        const [less, more] = [at(Math.min(h1, h2), Math.min(a1, a2)), at(Math.max(h1, h2), Math.max(a1, a2))];
        expect(more).toBeLessThanOrEqual(less + 1e-9);
        expect(more).toBeGreaterThanOrEqual(0);
        expect(less).toBeLessThanOrEqual(100);
      }),
      { numRuns: 300 },
    );
  });
});
