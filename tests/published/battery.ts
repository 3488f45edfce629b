import { present } from '#basics/present.ts';
import { cyclesAt, lifeAtTemperature } from '#engine/battery/life.ts';
import { chargeRateC } from '#engine/battery/limits.ts';
import { requiredCapacityAh } from '#engine/battery/required.ts';
import { chargeAtRest, restVoltsAt } from '#engine/battery/rest.ts';
import {
  capacityForRate,
  capacityNeeded,
  capacityOfDepths,
  rateFactor,
  runTime,
} from '#engine/battery/rules.ts';
import { autonomyDays, chemistryTable } from '#engine/battery/tables.ts';
import { sizeFactorAt, temperatureFactor } from '#engine/battery/usable.ts';
import type { Chemistry } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Row } from './row.ts';

const peukert = "Peukert's law, textbook statement";
const ieee = 'IEEE 485, table 1';
const common = 'common practice, battery makers’ tables that agree';

/** Capacity (Ah) delivered at a constant current (A). */
const delivered = (C: number, I: number, k: number, H = 20): number => C * run(rateFactor, { C, I, H, k });
/** Hours (h) of a constant current (A) to empty. */
const hours = (C: number, I: number, k: number): number => run(runTime, { Q_usable: delivered(C, I, k), I });
const size = (needAh: number, depthOfDischarge: number, k_temp = 1, k_age = 1): number =>
  run(capacityNeeded, { Q: needAh, DoD: depthOfDischarge, k_temp, k_age });
const celsius = (f: number): number => ((f - 32) * 5) / 9;
const middle = ([likely]: readonly number[]): number => present(likely);

const rate: readonly Row[] = [
  {
    id: 'C1-01',
    from: `${peukert}, 120 Ah at 120 A, k 1.4: 18 minutes`,
    how: 'seen',
    gives: 0.302,
    within: 0.005,
    run: () => hours(120, 120, 1.4),
  },
  {
    id: 'C1-02',
    from: `${peukert}, 100 Ah at 10 A, k 1.2`,
    how: 'memory',
    gives: 8.706,
    within: 0.01,
    run: () => hours(100, 10, 1.2),
  },
  {
    id: 'C1-02q',
    from: `${peukert}, 100 Ah at 10 A, k 1.2: what it gives`,
    how: 'memory',
    gives: 87.1,
    within: 0.1,
    run: () => delivered(100, 10, 1.2),
  },
  {
    id: 'C1-03',
    from: `${peukert}, 100 Ah at its rated 5 A, k 1.4`,
    how: 'recomputed',
    gives: 20,
    within: 0.001,
    run: () => hours(100, 5, 1.4),
  },
  {
    id: 'C1-04',
    from: `${peukert}, 200 Ah at 40 A, k 1.15`,
    how: 'recomputed',
    gives: 162.5,
    within: 0.2,
    run: () => delivered(200, 40, 1.15),
  },
  {
    id: 'C1-04c',
    from: `${peukert}, 162.5 Ah wanted at 40 A, k 1.15, asked backwards`,
    how: 'recomputed',
    gives: 200,
    within: 0.2,
    run: () => run(capacityForRate, { C: 162.5, I: 40, H: 20, k: 1.15 }),
  },
  {
    id: 'trap-5',
    from: `${peukert}: a C20 rating gives 20 h, where C ÷ I^k would give 14.5 h`,
    how: 'recomputed',
    gives: 20,
    within: 0.001,
    run: () => hours(100, 5, 1.2),
  },
  ...(
    [
      ['flooded', 1.4, 0.2],
      ['agm', 1.1, 0.05],
      ['gel', 1.175, 0.075],
      ['lfp', 1.035, 0.015],
    ] as const
  ).map(
    ([kind, gives, within]): Row => ({
      id: `C1-05.${kind}`,
      from: `battery handbooks, Peukert exponent of ${kind}`,
      how: 'memory',
      gives,
      within,
      run: () => middle(chemistryTable[kind].peukert),
    }),
  ),
];

const values = { depthOfDischarge: 0.5, age: 1, peukertExponent: 1.1 };
const sizing: readonly Row[] = [
  {
    id: 'trap-7.end',
    from: 'IEEE 1013: at the end of its life it must still carry the whole time',
    how: 'memory',
    gives: 375,
    within: 0.001,
    run: () => run(capacityOfDepths, { Q: 300, Q_day: 50, d_max: 1, d_day: 0.2, d_end: 0.8 }),
  },
  {
    id: 'trap-7',
    from: 'IEEE 1013: the largest of three depths of discharge counts, they are not multiplied',
    how: 'memory',
    gives: 500,
    within: 0.001,
    run: () => run(capacityOfDepths, { Q: 300, Q_day: 100, d_max: 0.8, d_day: 0.2, d_end: 0.8 }),
  },
  {
    id: 'C2-01',
    from: 'common practice: 500 Ah to use at half depth',
    how: 'memory',
    gives: 1000,
    within: 0.01,
    run: () => requiredCapacityAh({ needAh: 500, chemistry: 'agm', currentA: 5 }, values),
  },
  {
    id: 'C2-02',
    from: 'common practice: the same at −10 °C, multiplier 1.65',
    how: 'memory',
    gives: 1650,
    within: 0.01,
    run: () => size(500, 0.5, 1 / 1.65),
  },
  {
    id: 'C2-03',
    from: 'common practice, flooded: 10 % less for each 8.3 K below 25 °C',
    how: 'memory',
    gives: 90,
    within: 4,
    differs: 'IEEE 485 falls a little slower near 25 °C',
    run: () => 100 * temperatureFactor({ chemistry: 'flooded' }, 25 - 8.3),
  },
  {
    id: 'C2-04',
    from: 'common practice, the linear rule at 10 °C',
    how: 'recomputed',
    gives: 1.22,
    within: 0.04,
    differs: 'IEEE 485 has 1.19',
    run: () => 1 / temperatureFactor({ chemistry: 'agm' }, 10),
  },
  ...(
    [
      ['C2-05', 77, 1],
      ['C2-06', 60, 1.11],
      ['C2-07', 40, 1.3],
      ['C2-08', 25, 1.52],
      ['C2-09', 90, 0.94],
      ['trap-6', 50, 1.19],
    ] as const
  ).map(
    ([id, fahrenheit, gives]): Row => ({
      id,
      from: `${ieee}, ${fahrenheit} °F`,
      how: 'memory',
      gives,
      within: 0.005,
      run: () => sizeFactorAt(celsius(fahrenheit)),
    }),
  ),
  {
    id: 'C2-09l',
    from: `${ieee}, 90 °F: never more than the label is promised`,
    how: 'memory',
    gives: 1,
    within: 0.0001,
    differs: 'the 6 % that warmth adds are left as a reserve',
    run: () => temperatureFactor({ chemistry: 'agm' }, celsius(90)),
  },
  {
    id: 'C2-10',
    from: 'IEEE 485: an old battery has 80 %, so 1.25 times is bought',
    how: 'memory',
    gives: 1.25,
    within: 0.001,
    run: () => size(1, 1, 1, 0.8),
  },
  {
    id: 'C2-11',
    from: 'IEEE 485 style: 100 Ah a day, 3 days, 80 %, 10 °C, ageing 1.25, margin 1.10',
    how: 'recomputed',
    gives: 613.6,
    within: 0.5,
    run: () => size(300, 0.8, 1 / sizeFactorAt(10), 1 / 1.25) * 1.1,
  },
  {
    id: 'C2-12',
    from: 'common practice: lead-acid lives half as long at 35 °C',
    how: 'memory',
    gives: 0.5,
    within: 0.001,
    run: () => lifeAtTemperature(35),
  },
  {
    id: 'C2-13',
    from: 'AS/NZS 4509.2: 2 to 3 days of autonomy with a generator',
    how: 'memory',
    gives: 2.5,
    within: 0.5,
    run: () => autonomyDays,
  },
  {
    id: 'C4-07',
    from: 'common practice, LFP cell makers: no charge below 0 °C (1 + the rate)',
    how: 'memory',
    gives: 1,
    within: 0.0001,
    run: () => 1 + chargeRateC({ chemistry: 'lfp' }, -1),
  },
  {
    id: 'C4-08.cold',
    from: 'common practice, LFP cell makers: 0.1 C from 0 to 5 °C',
    how: 'memory',
    gives: 0.1,
    within: 0.0001,
    run: () => chargeRateC({ chemistry: 'lfp' }, 3),
  },
  {
    id: 'C4-08.warm',
    from: 'common practice, LFP cell makers: 0.5 C from 25 to 50 °C',
    how: 'memory',
    gives: 0.5,
    within: 0.0001,
    run: () => chargeRateC({ chemistry: 'lfp' }, 30),
  },
  {
    id: 'C4-08.hot',
    from: 'common practice, LFP cell makers: 0.1 C from 50 to 60 °C',
    how: 'memory',
    gives: 0.1,
    within: 0.0001,
    run: () => chargeRateC({ chemistry: 'lfp' }, 55),
  },
  {
    id: 'C4-13.80',
    from: 'common practice, flooded golf-cart battery, cycles at 80 %',
    how: 'memory',
    gives: 225,
    within: 56,
    run: () => cyclesAt('flooded', 0.8),
  },
  {
    id: 'C4-13.50',
    from: 'common practice, flooded golf-cart battery, cycles at 50 %',
    how: 'memory',
    gives: 750,
    within: 187,
    run: () => cyclesAt('flooded', 0.5),
  },
  {
    id: 'C4-14.100',
    from: 'common practice, LFP cell at 25 °C, cycles at 100 %',
    how: 'memory',
    gives: 3750,
    within: 250,
    run: () => cyclesAt('lfp', 1),
  },
  {
    id: 'C4-14.80',
    from: 'common practice, LFP cell at 25 °C, cycles at 80 %',
    how: 'memory',
    gives: 5500,
    within: 500,
    run: () => cyclesAt('lfp', 0.8),
  },
  {
    id: 'C4-17.flooded',
    from: 'makers’ practice, flooded takes 10 to 13 % of C20 in bulk',
    how: 'memory',
    gives: 0.115,
    within: 0.016,
    run: () => chargeRateC({ chemistry: 'flooded' }),
  },
  {
    id: 'C4-17.gel',
    from: 'makers’ practice, gel takes 20 % of C20 in bulk',
    how: 'memory',
    gives: 0.2,
    within: 0.02,
    run: () => chargeRateC({ chemistry: 'gel' }),
  },
  {
    id: 'C4-17.agm',
    from: 'makers’ practice, AGM takes 25 to 40 % of C20 in bulk',
    how: 'memory',
    gives: 0.325,
    within: 0.075,
    run: () => chargeRateC({ chemistry: 'agm' }),
  },
];

/** Percent, and the volts that published tables accept for it: inside the band, not on one number. */
const floodedBands: readonly (readonly [id: string, percent: number, lowV: number, highV: number])[] = [
  ['C3-01', 100, 12.6, 12.7],
  ['C3-02', 90, 12.45, 12.6],
  ['C3-04', 75, 12.35, 12.45],
  ['C3-06', 60, 12.15, 12.28],
  ['C3-07', 50, 12, 12.2],
  ['C3-09', 30, 11.75, 12.05],
  ['C3-10', 25, 11.65, 12.02],
  ['C3-12', 10, 11.3, 11.8],
  ['C3-13', 0, 10.5, 11.6],
];

/** What single tables say; ours has to hold each within its span of charge (percent at volts). */
const tables: readonly (readonly [
  id: string,
  of: string,
  kind: Chemistry,
  volts: number,
  percent: number,
])[] = [
  ['C3-02.t1', 'first lead-acid table', 'flooded', 12.5, 90],
  ['C3-04.t2', 'second flooded table', 'flooded', 12.4, 75],
  ['C3-06.t1', 'first lead-acid table', 'flooded', 12.2, 60],
  ['C3-07.t1', 'first lead-acid table', 'flooded', 12.06, 50],
  ['C3-10.t2', 'second flooded table', 'flooded', 12, 25],
  ['C3-04.agm', 'AGM list', 'agm', 12.6, 75],
  ['C3-07.agm', 'AGM list', 'agm', 12.35, 50],
  ['C3-10.agm', 'AGM list', 'agm', 12.1, 25],
];

const gravity = (sg: number): number => 6 * (sg + 0.845);

const rest: readonly Row[] = [
  ...floodedBands.map(
    ([id, percent, lowV, highV]): Row => ({
      id,
      from: `${common}: flooded at rest, ${percent} %`,
      how: 'memory',
      gives: (lowV + highV) / 2,
      within: (highV - lowV) / 2,
      run: () => restVoltsAt(percent, 'flooded'),
    }),
  ),
  ...tables.map(
    ([id, of, kind, volts, percent]): Row => ({
      id,
      from: `${common}: ${of}, ${volts} V`,
      how: 'memory',
      gives: percent,
      within: 15,
      differs: 'tables differ by up to 30 points at one voltage; ours runs between them',
      run: () => chargeAtRest(volts, kind).value,
    }),
  ),
  {
    id: 'C3-21',
    from: 'textbook relation of gravity 1.265 to flooded open-circuit volts',
    how: 'memory',
    gives: gravity(1.265),
    within: 0.03,
    run: () => restVoltsAt(100, 'flooded'),
  },
  {
    id: 'C3-22.50',
    from: 'common practice: gravity 1.180 to 1.200 is half, as volts',
    how: 'memory',
    gives: gravity(1.19),
    within: 0.07,
    run: () => restVoltsAt(50, 'flooded'),
  },
  ...[100, 75, 50, 25].map(
    (percent): Row => ({
      id: `C3-23.${percent}`,
      from: `common practice: AGM reads 0.1 to 0.5 V above flooded, ${percent} %`,
      how: 'memory',
      gives: 0.3,
      within: percent === 25 ? 0.25 : 0.2,
      run: () => restVoltsAt(percent, 'agm') - restVoltsAt(percent, 'flooded'),
    }),
  ),
  {
    id: 'C3-24.100',
    from: 'common practice: LFP of four cells at rest, full',
    how: 'memory',
    gives: 13.6,
    within: 0.15,
    run: () => restVoltsAt(100, 'lfp'),
  },
  {
    id: 'C3-24.50',
    from: 'common practice: LFP of four cells at rest, half',
    how: 'memory',
    gives: 13.2,
    within: 0.15,
    run: () => restVoltsAt(50, 'lfp'),
  },
  {
    id: 'C3-24.20',
    from: 'common practice: LFP of four cells at rest, 20 %',
    how: 'memory',
    gives: 12.8,
    within: 0.15,
    run: () => restVoltsAt(20, 'lfp'),
  },
  {
    id: 'C3-25',
    from: 'common practice: LFP moves less than 0.35 V from 20 to 80 %',
    how: 'memory',
    gives: 0.175,
    within: 0.1749,
    run: () => restVoltsAt(80, 'lfp') - restVoltsAt(20, 'lfp'),
  },
];

export const rows: readonly Row[] = [...rate, ...sizing, ...rest];
