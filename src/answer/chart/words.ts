import { present } from '#basics/present.ts';
import { monthNames } from '#quantity/month-names.ts';
import { english } from '../speech.ts';
import type { BarsChart, ChargePoint, WiringLead } from './chart.ts';

/** The numbers of a picture as its marks and the words below it both write them. */
const { plain, significant } = english;

/** "28.8 Ah", "1 day". */
export const amount = (value: number, unit: string): string =>
  `${significant(value)} ${value === 1 && unit === 'days' ? 'day' : unit}`;
export const percent = (value: number): string => `${Math.round(value)} %`;
/** "48 % (41–55 %)", without the brackets where nothing is open. */
export function withRange(point: ChargePoint): string {
  const [low, high] = [Math.round(point.lowPercent), Math.round(point.highPercent)];
  return low === high ? percent(point.percent) : `${percent(point.percent)} (${low}–${high} %)`;
}
/** "2–2.8 days". */
export const span = (low: number, high: number, unit: string): string =>
  plain(low) === plain(high) ? `${plain(low)} ${unit}` : `${plain(low)}–${plain(high)} ${unit}`;
export const whole = (value: number): string => plain(value);

/** "Jan" of 0. */
export const monthOf = (index: number): string => present(monthNames[index]).slice(0, 3);

/** "16 mm², 1.5 m". */
export const cableOf = ({ areaMm2, lengthM }: WiringLead): string =>
  `${significant(areaMm2)} mm², ${significant(lengthM)} m`;
/** "fuse 40 A". */
export const fuseOf = ({ fuseA }: WiringLead): string | undefined =>
  fuseA === undefined ? undefined : `fuse ${plain(fuseA)} A`;

/** Bars that fit into a picture. */
const mostBars = 10;

export const biggestFirst = ({ bars }: Pick<BarsChart, 'bars'>): BarsChart['bars'] =>
  [...bars].sort((a, b) => b.value - a.value);

/** The bars of a picture, biggest first; those that don't fit as one, told by how many they are. */
export function shownBars(bars: BarsChart['bars']): BarsChart['bars'] {
  const sorted = biggestFirst({ bars });
  if (sorted.length <= mostBars) return sorted;
  const rest = sorted.slice(mostBars - 1);
  const value = rest.reduce((sum, bar) => sum + bar.value, 0);
  return [...sorted.slice(0, mostBars - 1), { name: `${rest.length} others`, value }];
}
