import { type Unit, units } from '#quantity/units.ts';
import { Lexicon } from './lexicon.ts';

/** Spellings that reading takes beside those of the table of units. */
const more: readonly (readonly [symbol: string, spellings: readonly string[]])[] = [
  ['A', ['amp s', 'ampere s', 'aamps']],
  [
    'Ah',
    [
      'a / h',
      'a / hr',
      'a / hrs',
      'amp / hour',
      'amps / hour',
      'amp / hours',
      'amp hour s',
      'ampere hour',
      'ampere hours',
      'amperehour',
      'amps an hour',
      'amper hours',
      'amper hour',
      'aamp hours',
    ],
  ],
  ['W', ['watts peak', 'watter']],
  ['h', ['hour s', 'hrz', 'ours', 'hourse']],
  ['mm²', ['mm2', 'square', 'squares', 'sq', 'mm 2']],
  ['°C', ['degree celsius', 'below', 'degrees below', 'below zero', 'degrees celcius']],
];

const lexicon = new Lexicon<Unit>();
for (const unit of units) for (const spelling of unit.spellings) lexicon.add(spelling, unit);
for (const [symbol, spellings] of more) {
  const unit = units.find(u => u.symbol === symbol)!;
  for (const spelling of spellings) lexicon.add(spelling, unit);
}
const year: Unit = {
  symbol: 'years',
  dimension: 'other',
  factor: 1,
  spellings: [
    'year',
    'years',
    'yr',
    'yrs',
    'yo',
    'y',
    'summers',
    'seasons',
    'winters',
    'year old',
    'years old',
    'yr old',
    'yrs old',
    'y o',
    'ans',
    'jahre',
  ],
};
for (const spelling of year.spellings) lexicon.add(spelling, year);
const month: Unit = {
  symbol: 'months',
  dimension: 'other',
  factor: 1 / 12,
  spellings: ['months', 'mths', 'month', 'months old', 'month old'],
};
for (const spelling of month.spellings) lexicon.add(spelling, month);

/** Units by their spellings. */
export const unitLexicon = lexicon;
export const yearSymbol = year.symbol;
/** Spellings that are everyday words, or one letter: units only where glued to their number or where nothing speaks against it. */
export const doubtfulUnits: ReadonlySet<string> = new Set([
  'a',
  'm',
  'in',
  'square',
  'squares',
  'sq',
  'below',
  'c',
  'f',
  'l',
  'g',
  'd',
  's',
  'y',
  'below zero',
  'mt',
  'mil',
  'ours',
  'seasons',
  'summers',
  'winters',
  'month',
  'ga',
  'bs',
  'pounds',
]);
