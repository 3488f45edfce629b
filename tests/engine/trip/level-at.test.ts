import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Assumption } from '#engine/assumption.ts';
import { type Bank, bankOfOne } from '#engine/battery/bank.ts';
import { type Ahead, exploreLevel } from '#engine/trip/level-at.ts';
import { draws } from '../../house/share.ts';

const level = (value: number): Assumption => ({
  name: 'stateOfCharge',
  value,
  low: value,
  high: value,
  unit: '%',
  why: 'told',
});
const bank: Bank = bankOfOne({ capacityAh: 100, chemistry: 'agm', ageYears: 0 });
const lamp = { name: 'lamp', count: 1, currentA: 2, hoursPerDay: 24, supply: 'dc' } as const;
const use = { loads: [lamp], voltageV: 12 };
const sun = { latitudeDeg: -28.6, longitudeDeg: 153.6, month: 3, powerW: 120 };
const ahead = (more: Partial<Ahead> = {}): Ahead => ({
  bank,
  use,
  level: level(80),
  durationH: 10,
  clockH: 20,
  ...more,
});
const later = (more: Partial<Ahead> = {}) => exploreLevel(ahead(more)).figures;

describe('how full it will be', () => {
  test('2 A for 10 h out of 100 Ah at 80 %: 20 Ah used, 60 % left, none of it from the sun', () => {
    const { stateOfCharge, used, sunIn } = later();
    expect(used.value).toBeCloseTo(20, 6);
    expect(sunIn.value).toBe(0);
    expect(stateOfCharge.value).toBeCloseTo(60, 6);
  });

  test('what a monitor shows goes before the loads: 3 A out, 4 A in', () => {
    expect(later({ netA: -3 })).toMatchObject({ used: { value: 30 }, sunIn: { value: 0 } });
    expect(later({ netA: -3 }).stateOfCharge.value).toBeCloseTo(50, 6);
    expect(later({ netA: 4, level: level(30) })).toMatchObject({ used: { value: 0 }, sunIn: { value: 40 } });
    expect(later({ netA: 4, level: level(30) }).stateOfCharge.value).toBeCloseTo(70, 6);
    // The sun is in it already.
    expect(later({ netA: -3, sun, clockH: 6 }).stateOfCharge.value).toBeCloseTo(50, 6);
  });

  test('never above full nor below empty, and full is left from full', () => {
    expect(later({ netA: 9 }).stateOfCharge).toMatchObject({ value: 100, high: 100 });
    expect(later({ netA: -9 }).stateOfCharge).toMatchObject({ value: 0, low: 0 });
    // Sun on a full battery is lost: by dawn it is as if there had been none.
    const full = { level: level(100), clockH: 9, durationH: 22, sun: { ...sun, powerW: 400 } };
    const { stateOfCharge, used } = later(full);
    expect(stateOfCharge.value).toBeGreaterThan(70);
    expect(stateOfCharge.value).toBeLessThanOrEqual(100);
    expect(used.value).toBeCloseTo(44, 6);
  });

  test('the sun comes by day alone', () => {
    expect(later({ sun, clockH: 20, durationH: 8 }).sunIn.value).toBe(0);
    const [day, round] = [
      later({ sun, clockH: 4, durationH: 18 }),
      later({ sun, clockH: 4, durationH: 24 }),
    ] as const;
    expect(day.sunIn.value).toBeGreaterThan(15);
    expect(round.sunIn.value).toBeCloseTo(day.sunIn.value, 9);
  });

  test('what is taken for granted of sun and battery widens it', () => {
    const by = { sun, clockH: 4, durationH: 18, level: level(30) };
    const names = exploreLevel(ahead(by)).ranked.map(a => a.name);
    for (const name of ['clearness', 'dayTemperature', 'chargeEfficiency'] as const)
      expect(names).toContain(name);
    const { sunIn, stateOfCharge } = later(by);
    expect(sunIn.high).toBeGreaterThan(1.1 * sunIn.value);
    expect(stateOfCharge.high).toBeGreaterThan(stateOfCharge.value + 3);
    expect(stateOfCharge.low).toBeLessThan(stateOfCharge.value - 3);
    // A lithium battery of the same size keeps more of the same sun.
    const lithium = later({ ...by, bank: bankOfOne({ capacityAh: 100, chemistry: 'lfp', ageYears: 0 }) });
    expect(lithium.sunIn.value).toBeGreaterThan(sunIn.value * (12 / 12.8));
  });

  test('an older battery falls faster, a larger one slower', () => {
    const of = (bankThen: Bank) => later({ bank: bankThen }).stateOfCharge.value;
    expect(of(bankOfOne({ capacityAh: 100, chemistry: 'agm', ageYears: 8 }))).toBeLessThan(59);
    expect(of(bankOfOne({ capacityAh: 200, chemistry: 'agm', ageYears: 0 }))).toBeCloseTo(70, 6);
  });

  test('is what the rule says where neither end is reached, whatever the level, current and hours', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 95, noNaN: true }),
        fc.double({ min: -20, max: 20, noNaN: true }),
        fc.double({ min: 0.2, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 23.9, noNaN: true }),
        (from, netA, durationH, clockH) => {
          const expected = Math.min(100, Math.max(0, from + netA * durationH));
          const { stateOfCharge } = later({ level: level(from), netA, durationH, clockH });
          return Math.abs(stateOfCharge.value - expected) < 1e-6;
        },
      ),
      { seed: 23, numRuns: draws(300, 10_000) },
    );
  });

  test('what is taken for granted of loads counts, but not where a monitor tells what flows', () => {
    const fridges = { loads: [{ name: 'fridge', count: 2, supply: 'dc' as const }], voltageV: 12 };
    const names = (more: Partial<Ahead>) => exploreLevel(ahead(more)).ranked.map(a => a.name);
    expect(names({ use: fridges })).toContain('ambientC');
    expect(names({ use: fridges, netA: -3 })).not.toContain('ambientC');
    const { used } = later({ use: fridges });
    expect(used.high).toBeGreaterThan(1.1 * used.value);
    const { low, high } = later({ use: fridges, netA: -3 }).used;
    expect([low, high].map(ah => Number(ah.toFixed(9)))).toEqual([30, 30]);
  });

  test('the working tells the rule with its sums', () => {
    const { trace } = exploreLevel(ahead());
    const step = trace.steps.find(one => 'rule' in one && one.rule.name === 'levelLater');
    expect(step).toMatchObject({ inputs: { s: 0.8, Q_in: 0, Q_out: 20, C: 100 } });
  });
});
