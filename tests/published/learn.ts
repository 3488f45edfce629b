import { dayToDay, rough, surprising } from '#engine/learn/tables.ts';
import { cells, type Row, row } from './row.ts';

const stations =
  'daily sun at 1,042 stations (doi 10.15482/USDA.ADC/1518706): SD ÷ mean 0.38 at a clearness of 0.45, 0.32 at 0.50';

export const rows: readonly Row[] = [
  row('L-01', stations, 'seen', 0.35, 0.05, () => dayToDay.sun),
  row(
    'L-02',
    'binomial law: what is on for three tenths of the time scatters by √(0.7 ÷ 0.3) of its mean',
    'recomputed',
    Math.sqrt(0.7 / 0.3),
    0.1,
    () => rough.cyclingAmps,
  ),
  ...cells('statistics: three standard deviations are odd; Huber takes from 1.5 to 2 as large', 'memory', [
    ['L-03', 3, 0.35, () => surprising.odd],
    ['L-04', 1.75, 0.25, () => surprising.less],
  ]),
  ...cells('common practice: amp-hour counters are off by 1 to 2 %', 'memory', [
    ['L-05.level', 0.015, 0.0025, () => rough.percent],
    ['L-05.used', 0.015, 0.0025, () => rough.usedShare],
  ]),
];
