import type { ParsedMessage } from '#language/reading.ts';

/** Years in which a vehicle may have been built. */
const built = { first: 1950, last: 2040 } as const;
/** Alternators that vary their volts came with the emission rules: hardly any before the first, most from the second on. Common practice. */
const smart = { first: 2006, most: 2012 } as const;

/** The year that a message tells ("mine is a 1998"). */
export const yearIn = ({ recognised: { mentions } }: Pick<ParsedMessage, 'recognised'>): number | undefined =>
  mentions.find(
    ({ kind, value, text }) =>
      kind === 'number' && /^\d{4}$/.test(text) && value >= built.first && value <= built.last,
  )?.value;

/** What alternator a vehicle of that year has, where its year tells. */
export function alternatorByYear(year: number): 'smart' | 'fixed' | undefined {
  if (year < smart.first) return 'fixed';
  return year >= smart.most ? 'smart' : undefined;
}
