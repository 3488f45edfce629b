import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { fromBase, symbolOf, toBase, unitOf } from '#quantity/quantity.ts';
import { baseSymbol, units } from '#quantity/units.ts';

describe('units', () => {
  test.for([
    [1, 'ft', 0.3048], // international foot, by definition
    [1, 'in', 0.0254], // international inch, by definition
    [1, 'yd', 0.9144], // three feet
    [1, 'mi', 1.609344], // 5,280 feet, in km
    [32, '°F', 0], // ice
    [212, '°F', 100], // steam
    [-40, '°F', -40], // where both scales meet
    [2, 'kW', 2000],
    [1.5, 'kWh', 1500],
    [20000, 'mAh', 20],
    [500, 'mA', 0.5],
    [90, 'min', 1.5],
    [2, 'days', 48],
    [1, 'hp', 745.7], // 550 foot-pounds a second
  ] as const)('%d %s is %d in the base unit', ([value, symbol, want]) => {
    const unit = present(unitOf(symbol));
    expect(toBase(value, unit)).toBeCloseTo(want, 6);
    expect(fromBase(toBase(value, unit), unit)).toBeCloseTo(value, 6);
  });

  test.for([
    ['amp hours', 'Ah'],
    ['AH', 'Ah'],
    ['watts', 'W'],
    ['sq mm', 'mm²'],
    ['b&s', 'AWG'],
    ['peak sun hours', 'h'],
  ] as const)('"%s" is %s', ([spelling, symbol]) => {
    expect(unitOf(spelling)?.symbol).toBe(symbol);
  });

  test('no spelling means two units', () => {
    const all = units.flatMap(unit => unit.spellings);
    expect(all.filter((spelling, i) => all.indexOf(spelling) !== i)).toEqual([]);
  });

  test('every dimension has its base unit in the table, with factor 1', () => {
    for (const [dimension, symbol] of Object.entries(baseSymbol)) {
      if (dimension === 'other') continue;
      const base = units.find(unit => unit.symbol === symbol && unit.dimension === dimension);
      expect(base?.factor, dimension).toBe(1);
      expect(symbolOf(present(base).dimension)).toBe(symbol);
    }
  });

  test('a word that is no unit', () => {
    expect(unitOf('zorp')).toBeUndefined();
  });
});
