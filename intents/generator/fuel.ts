import type { Range } from '#quantity/range.ts';

/** Petrol that small inverter generators take, from a light load to a full one. Makers' sheets agree within a fifth. */
const least = { low: 0.3, high: 0.6 } as const;
const perKw = { low: 0.25, high: 0.5 } as const;

/** Litres an hour that a generator of a rating (W) drinks: half load to full. */
export function fuelLh(ratedW: number): Pick<Range, 'low' | 'high'> {
  const kw = ratedW / 1000;
  return { low: Math.max(least.low, perKw.low * kw), high: Math.max(least.high, perKw.high * kw) };
}

const fractions: Readonly<Record<number, string>> = { 0.25: '¼', 0.5: '½', 0.75: '¾' };

/** "½", "0.3", "4". */
const inWords = (value: number): string => fractions[value] ?? String(Number(value.toPrecision(2)));

/** "0.3 to 0.6 litres", "½ to 1 litre". */
export const litres = ({ low, high }: Pick<Range, 'low' | 'high'>): string =>
  `${inWords(low)} to ${inWords(high)} ${high > 1 || high < 0.99 ? 'litres' : 'litre'}`;
