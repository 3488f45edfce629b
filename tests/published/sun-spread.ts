import { present } from '#basics/present.ts';
import { latitudeMonth } from '#climate/latitude.ts';
import { clearnessOf } from '#engine/solar/climate.ts';
import { coldestMorning } from '#engine/solar/cold.ts';
import { sunHoursAnywhere } from '#engine/solar/sky.ts';
import { daySpread, monthSpread, nineInTen, yearSpread } from '#engine/solar/spread.ts';
import { stations as ownPoints } from '#engine/solar/stations.ts';
import { cells, type Row, row } from './row.ts';

const satellite =
  'NASA Surface meteorology and Solar Energy 6.0, monthly means 1983–2005, at the 55,975 towns of the table of places';

/** Sun on flat ground that nineteen towns in twenty have more than, and less than, kWh/m² a day, January first. */
const towns: readonly (readonly [least: number, most: number])[] = [
  [0.59, 6.42],
  [1.23, 6.15],
  [2.29, 6.35],
  [3.53, 6.62],
  [3.04, 6.91],
  [2.55, 7.4],
  [2.76, 7.33],
  [3.54, 6.6],
  [2.66, 5.89],
  [1.43, 5.98],
  [0.7, 6.37],
  [0.44, 6.51],
];
/** What the ends of a clear and a dull sky are made of: a fifth more than the month has, and 45 % of it. */
const least = (month: number): number => sunHoursAnywhere(month, 'sunny').low / 1.2;
const most = (month: number): number => sunHoursAnywhere(month, 'overcast').high / 0.45;

const anywhere: readonly Row[] = towns.flatMap(([low, high], m) =>
  cells(`${satellite}: month ${m + 1}`, 'recomputed', [
    [`A6-towns.${m + 1}.low`, low, Math.max(0.05, 0.05 * low), () => least(m + 1)],
    [`A6-towns.${m + 1}.high`, high, 0.05 * high, () => most(m + 1)],
  ]),
);

const unplaced: readonly Row[] = [
  ...cells(`${satellite}: the dullest month and the sunniest`, 'recomputed', [
    ['A6-towns.least', 0.44, 0.05, () => sunHoursAnywhere(12, 'mixed').low],
    ['A6-towns.most', 7.4, 0.3, () => sunHoursAnywhere(6, 'mixed').high],
  ]),
  ...cells('FAO-56: 75 % of the outside sun on a clear day, against 62 % in a sunny month', 'recomputed', [
    ['A6-towns.clear', (7.4 * 0.75) / 0.62, 0.5, () => sunHoursAnywhere(6, 'sunny').high],
  ]),
  ...cells(
    'a tenth of a clear day (FAO-56), which in a dull month is half as much again as its mean',
    'recomputed',
    [['A6-towns.dull', 0.44 * 1.5 * 0.1, 0.01, () => sunHoursAnywhere(12, 'overcast').low]],
  ),
];

/** Deviation of daily and of monthly sun as shares of the month's mean, by its clearness. */
const measured: readonly (readonly [clearness: number, days: number, years: number])[] = [
  [0.2, 0.76, 0.22],
  [0.25, 0.69, 0.21],
  [0.3, 0.61, 0.18],
  [0.35, 0.52, 0.15],
  [0.4, 0.44, 0.14],
  [0.45, 0.38, 0.12],
  [0.5, 0.32, 0.09],
  [0.55, 0.28, 0.07],
  [0.6, 0.23, 0.06],
  [0.65, 0.19, 0.05],
];
const stations = 'daily sun at 1,042 stations in one country since 1984: deviation by the month’s clearness';

const spreads: readonly Row[] = [
  ...measured.flatMap(([clearness, days, years]) =>
    cells(stations, 'seen', [
      [`A6-spread.${clearness}.day`, days, 0.005, () => daySpread(clearness)],
      [`A6-spread.${clearness}.year`, years, 0.005, () => yearSpread(clearness)],
    ]),
  ),
  // Held apart: what the law of daily clearness by Liu and Jordan gives at the same mean.
  ...cells(
    'Bendt, Collares-Pereira & Rabl (1981) with the highest clearness of Hollands & Huget (1983), from memory: deviation of daily clearness',
    'recomputed',
    [
      ['A6-law.0.3', 0.59, 0.06, () => daySpread(0.3)],
      ['A6-law.0.35', 0.545, 0.06, () => daySpread(0.35)],
    ],
  ),
  row(
    'A6-runs',
    'statistics: a day that tells a third of the next makes days vary as if there were (1 − r) ÷ (1 + r) of them; r about 0.3 for daily clearness, from memory',
    'recomputed',
    1.3 / 0.7,
    0.25,
    () => {
      const over = (days?: number) => (monthSpread(0.5, 30, 0, days) / nineInTen) ** 2;
      return (10 * (over(10) - over())) / daySpread(0.5) ** 2;
    },
  ),
];

/** The satellite table against radiometers, whose monthly means are themselves off: what is left is the table's. */
const radiometers = 0.07;
const tableAlone = Math.sqrt(0.106 ** 2 - radiometers ** 2);

const errors: readonly Row[] = [
  row(
    'A6-error',
    'the satellite table’s own check: 10.6 % a month against radiometers (seen), themselves good to some 7 % (from memory)',
    'recomputed',
    tableAlone,
    0.012,
    () => Math.sqrt((monthSpread(0.5, 30, 0) / nineInTen) ** 2 - yearSpread(0.5) ** 2),
  ),
  row(
    'A5d-12',
    'NASA POWER and FAO-56: cloudless ground gets 0.71 to 0.77 of the outside sun',
    'seen',
    0.77,
    0.03,
    () => {
      const months = Array<number>(12).fill(14);
      return clearnessOf(
        [{ ...present(ownPoints[0]), name: 'too bright', latitudeDeg: 0, longitudeDeg: 0, months }],
        0,
        0,
      )(3).value;
    },
  ),
  row(
    'A7-24.off',
    'handbooks of building services: a place’s yearly coldest has a standard deviation of 3 to 4 K, from memory; 1.645 of them',
    'memory',
    1.645 * 3.5,
    0.9,
    () => {
      const { value, low } = coldestMorning({ latitudeDeg: -35.3, longitudeDeg: 149.1 });
      return value - low;
    },
  ),
];

const inYear = (latitude: number): number =>
  (latitudeMonth(latitude, 7).clearness + latitudeMonth(latitude, 1).clearness) / 2;
const inSummer = (latitude: number): number =>
  (latitudeMonth(latitude, 7).clearness - latitudeMonth(latitude, 1).clearness) / 2;

const byLatitude: readonly Row[] = cells(`${satellite}: mean clearness about a latitude`, 'recomputed', [
  ['A6-clear.0', 0.496, 0.05, () => inYear(0)],
  ['A6-clear.10', 0.541, 0.05, () => inYear(10)],
  ['A6-clear.20', 0.568, 0.05, () => inYear(20)],
  ['A6-clear.30', 0.558, 0.05, () => inYear(30)],
  ['A6-clear.40', 0.511, 0.05, () => inYear(40)],
  ['A6-clear.50', 0.418, 0.05, () => inYear(50)],
  ['A6-clear.60', 0.443, 0.04, () => inYear(60)],
  ['A6-clear.40.summer', 0.058, 0.009, () => inSummer(40)],
]);

export const rows: readonly Row[] = [...errors, ...anywhere, ...unplaced, ...spreads, ...byLatitude];
