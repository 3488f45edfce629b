import { findings } from '#engine/learn/findings.ts';
import { hourAt } from '#engine/learn/predict.ts';
import { learnedUse, learnedYield, levelAfter, readingWeight, surprise } from '#engine/learn/rules.ts';
import { unlearned } from '#engine/learn/state.ts';
import { before, dayToDay, rough, surprising } from '#engine/learn/tables.ts';
import { run } from '#rule/rule.ts';
import { cells, type Row, row } from './row.ts';

const stations =
  'daily sun at 1,042 stations (doi 10.15482/USDA.ADC/1518706): SD ÷ mean 0.38 at a clearness of 0.45, 0.32 at 0.50';

const kalman = 'Welch & Bishop, An Introduction to the Kalman Filter: a constant, P = 1 and R = 0.01';
const hourMs = 60 * 60 * 1000;
/** A rig that draws the same by day and by night. */
const even = {
  labelAh: 100,
  capacityAh: 100,
  useAh: Array<number>(24).fill(1),
  sunAh: Array<number>(24).fill(0),
};

/** The filter's steps, on paper. */
const steps: readonly Row[] = [
  row('L-06', kalman, 'recomputed', 1 / 1.01, 1e-9, () => run(readingWeight, { P: 1, R: 0.01 })),
  ...cells('definition, on paper', 'recomputed', [
    ['L-07 3 off, variances 4 and 5', 1, 1e-9, () => run(surprise, { z: 5, h: 2, P: 4, R: 5 })],
    [
      'L-08 a fifth missing, 30 Ah at 1.2 less 20 Ah at 0.8, of 100 Ah at 0.8',
      0.45,
      1e-9,
      () => run(levelAfter, { q: 0.2, k_u: 1.2, U: 30, k_s: 0.8, S: 20, k_c: 0.8, C: 100 }),
    ],
    ['L-09 40 Ah at 1.5', 60, 1e-9, () => run(learnedUse, { k_u: 1.5, Q: 40 })],
    ['L-10 500 Wh at 0.8', 400, 1e-9, () => run(learnedYield, { k_s: 0.8, E: 500 })],
    ['L-11 six in the morning at 0° is noon at 90° east', 12, 1e-9, () => hourAt(6 * hourMs, 90)],
    ['L-12 30 hours on it is six again', 6, 1e-9, () => hourAt(30 * hourMs)],
  ]),
  row('L-13', 'tables of the normal distribution: nine in ten within 1.645', 'memory', 1.645, 0.01, () => {
    const { value, high } = findings(unlearned(0), even).missing;
    return (high - value) / before.missing.sd;
  }),
];

export const rows: readonly Row[] = [
  ...steps,
  row('L-01', stations, 'seen', 0.35, 0.05, () => dayToDay.sun),
  row(
    'L-02',
    'binomial law: what is on for 35 % of the time scatters by √(0.65 ÷ 0.35) of its mean',
    'recomputed',
    Math.sqrt(0.65 / 0.35),
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
