import { type Unit, units } from '#quantity/units.ts';
import { Lexicon } from '../lexicon.ts';

/** The spellings of `units.ts` as a lexicon. */
export const unitLexicon = new Lexicon<Unit>();
const bySymbol = new Map<string, Unit>();
for (const unit of units) {
  for (const spelling of unit.spellings) unitLexicon.add(spelling, unit);
  if (!bySymbol.has(unit.symbol)) bySymbol.set(unit.symbol, unit);
}

/** A unit by its symbol; the table has all that the passes name. */
export const unit = (symbol: string): Unit => bySymbol.get(symbol)!;

export const ampere = unit('A');
export const ampHour = unit('Ah');
export const watt = unit('W');
export const wattHour = unit('Wh');
export const hour = unit('h');
export const day = unit('days');
/** "twice a day": not a unit of the table, but a number that multiplies. */
export const timesPerDay: Unit = { symbol: 'times', dimension: 'other', factor: 1, spellings: [] };
