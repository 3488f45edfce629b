import type { Mention } from '#language/recognise/mention.ts';

/** How an amount may be told in another unit: from one symbol to another, where a person would. */
interface OtherUnit {
  readonly from: string;
  readonly to: string;
  readonly times: number;
  readonly plus?: number;
  readonly low: number;
  readonly high: number;
}

/** Common practice: only what people do write, "600 mA" but no "12000 mV". */
const others: readonly OtherUnit[] = [
  { from: 'A', to: 'mA', times: 1000, low: 0.05, high: 3 },
  { from: 'mA', to: 'A', times: 0.001, low: 100, high: 5000 },
  { from: 'W', to: 'kW', times: 0.001, low: 500, high: 5000 },
  { from: 'kW', to: 'W', times: 1000, low: 0.5, high: 5 },
  { from: 'Wh', to: 'kWh', times: 0.001, low: 500, high: 20000 },
  { from: 'kWh', to: 'Wh', times: 1000, low: 0.1, high: 10 },
  { from: 'days', to: 'hours', times: 24, low: 1, high: 4 },
  { from: 'h', to: 'minutes', times: 60, low: 0.25, high: 3 },
  { from: 'min', to: 'hours', times: 1 / 60, low: 30, high: 180 },
  { from: 'm', to: 'cm', times: 100, low: 0.2, high: 8 },
  { from: '°C', to: '°F', times: 1.8, plus: 32, low: 1, high: 50 },
];

const round = (value: number): number => Math.round(value * 1000) / 1000;

/** A plain amount as another unit tells it, or undefined. */
export function inAnotherUnit(m: Mention): string | undefined {
  const isPlain =
    m.kind === 'amount' &&
    m.variants.length === 0 &&
    !m.isNegative &&
    m.otherDimension === undefined &&
    m.cls === m.unit;
  if (!isPlain) return undefined;
  const row = others.find(o => o.from === m.unit && m.told >= o.low && m.told <= o.high);
  // "Two weekends" are days in the table of units, but no two days.
  if (!row || (row.from === 'days' && m.value !== m.told * 24)) return undefined;
  const value = m.told * row.times + (row.plus ?? 0);
  return Math.abs(round(value) - value) < 1e-9 ? `${round(value)} ${row.to}` : undefined;
}
