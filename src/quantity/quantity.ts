import { baseSymbol, type Dimension, type Unit, units } from './units.ts';

/** A number with its unit, in the base unit of its dimension. */
export interface Quantity {
  readonly value: number;
  readonly dimension: Dimension;
  readonly unit: Unit;
}

const bySpelling = new Map<string, Unit>();
const bySymbol = new Map<string, Unit>();
for (const unit of units) {
  for (const spelling of unit.spellings) bySpelling.set(spelling, unit);
  if (unit.symbol && !bySymbol.has(unit.symbol)) bySymbol.set(unit.symbol, unit);
}

/** The unit with this symbol, or written so (any case, words apart by one space), or undefined: "amp hours" → Ah. */
export function unitOf(spelling: string): Unit | undefined {
  return bySymbol.get(spelling) ?? bySpelling.get(spelling) ?? bySpelling.get(spelling.toLowerCase());
}

/** A value in `unit` as a value in the base unit of its dimension: 2 kW → 2000, 95 °F → 35. */
export function toBase(value: number, unit: Unit): number {
  const base = value * unit.factor + (unit.offset ?? 0);
  // Hides the tails of binary fractions (0.3048 × 18) from whoever compares or prints.
  return Math.round(base * 1e9) / 1e9;
}

/** A value in the base unit of a dimension as a value in `unit`: 35 → 95 °F. */
export function fromBase(value: number, unit: Unit): number {
  return (value - (unit.offset ?? 0)) / unit.factor;
}

/** Symbol of the base unit of a dimension: "current" → "A". */
export const symbolOf = (dimension: Dimension): string => baseSymbol[dimension];
