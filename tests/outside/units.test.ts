import fc from 'fast-check';
import Qty from 'js-quantities';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { convertKind } from '#engine/loads/convert.ts';
import { fromBase, toBase, unitOf } from '#quantity/quantity.ts';
import { baseSymbol, units } from '#quantity/units.ts';

// Beside js-quantities (npm), a library that was written without ours and without mathjs, which judges the rules.

/** Our spelling, and what js-quantities calls it. */
const names: readonly (readonly [ours: string, theirs: string])[] = [
  ['ma', 'mA'],
  ['a', 'A'],
  ['mah', 'mA*h'],
  ['ah', 'A*h'],
  ['w', 'W'],
  ['kw', 'kW'],
  ['hp', 'hp'],
  ['wh', 'W*h'],
  ['kwh', 'kW*h'],
  ['mv', 'mV'],
  ['v', 'V'],
  ['s', 's'],
  ['min', 'min'],
  ['h', 'h'],
  ['days', 'day'],
  ['weeks', 'week'],
  ['fortnight', 'fortnight'],
  ['m', 'm'],
  ['cm', 'cm'],
  ['mm', 'mm'],
  ['ft', 'ft'],
  ['inch', 'in'],
  ['yd', 'yd'],
  ['km', 'km'],
  ['miles', 'mi'],
  ['mm2', 'mm^2'],
  ['°c', 'tempC'],
  ['°f', 'tempF'],
  ['ohm', 'ohm'],
  ['w / m2', 'W/m^2'],
];
const theirs = new Map(names);
const theirBase: Readonly<Record<string, string>> = {
  Ah: 'A*h',
  Wh: 'W*h',
  'mm²': 'mm^2',
  '°C': 'tempC',
  Ω: 'ohm',
  'W/m²': 'W/m^2',
};
const byLibrary = (value: number, from: string, to: string): number => Qty(value, from).to(to).scalar;

describe.for(names)('%s beside js-quantities', ([ours, their]) => {
  const unit = present(unitOf(ours));
  const base = baseSymbol[unit.dimension];
  test.for([0.5, 1, 12, 37, 250])('%s of it', value => {
    const want = byLibrary(value, their, theirBase[base] ?? base);
    // Ours is rounded to nine decimals, to hide the tails of binary fractions; a horsepower is 745.7 W in round numbers.
    const share = ours === 'hp' ? 2e-5 : 1e-9;
    expect(Math.abs(toBase(value, unit) - want)).toBeLessThan(share * Math.max(1, Math.abs(want)));
    expect(Math.abs(fromBase(want, unit) - value)).toBeLessThan(share * Math.max(1, Math.abs(value)) + 1e-6);
  });
});

test('every unit of a physical kind is compared, but for those that are no unit of a library', () => {
  const isOurs = new Set(['sun', 'gauge', 'percent', 'other']);
  const left = units.filter(
    unit => !isOurs.has(unit.dimension) && !unit.spellings.some(spelling => theirs.has(spelling)),
  );
  // A weekend is 48 h and a long one 72 h in this trade, and in no table.
  expect(left.map(unit => unit.spellings[0])).toEqual(['weekend', 'long weekend']);
});

test('watts, amps, watt hours and amp hours through volts and hours as a library multiplies them out', () => {
  const symbol = { current: 'A', charge: 'A*h', power: 'W', energy: 'W*h' } as const;
  const kind = fc.constantFrom('current' as const, 'charge' as const, 'power' as const, 'energy' as const);
  const number = fc.double({ min: 0.1, max: 1000, noNaN: true });
  fc.assert(
    fc.property(kind, kind, number, number, number, (from, to, value, voltageV, hours) => {
      let want = Qty(value, symbol[from]);
      const isWatts = (k: string): boolean => k === 'power' || k === 'energy';
      const isAmount = (k: string): boolean => k === 'charge' || k === 'energy';
      if (isWatts(from) && !isWatts(to)) want = want.div(Qty(voltageV, 'V'));
      if (!isWatts(from) && isWatts(to)) want = want.mul(Qty(voltageV, 'V'));
      if (isAmount(from) && !isAmount(to)) want = want.div(Qty(hours, 'h'));
      if (!isAmount(from) && isAmount(to)) want = want.mul(Qty(hours, 'h'));
      const ours = convertKind({ value, from, to, voltageV, hours });
      expect(ours / want.to(symbol[to]).scalar).toBeCloseTo(1, 9);
    }),
    { numRuns: 60 },
  );
});

test('every unit there and back is where it was', () => {
  fc.assert(
    fc.property(fc.constantFrom(...units), fc.double({ min: -50, max: 5000, noNaN: true }), (unit, value) => {
      // toBase keeps nine decimals of the base unit, which a thousandth of it spreads out again.
      expect(Math.abs(fromBase(toBase(value, unit), unit) - value)).toBeLessThan(1e-9 / unit.factor + 1e-9);
    }),
  );
});
