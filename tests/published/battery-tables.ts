import { present } from '#basics/present.ts';
import { chargeRateC } from '#engine/battery/limits.ts';
import {
  autonomyDays,
  chemistryTable,
  dailyDepth,
  leadAcidCapacityByTemperature,
  starterReserve,
} from '#engine/battery/tables.ts';
import { bankAssumptions, sizeFactorAt, temperatureFactor } from '#engine/battery/usable.ts';
import { powerBankCellV } from '#rig/cell.ts';
import { cells, type Row, row } from './row.ts';

const { agm, gel, flooded, lfp } = chemistryTable;
const lead = { agm, gel, flooded } as const;
const kinds = Object.entries(chemistryTable);
const age = present(
  bankAssumptions({ chemistry: 'agm', isChemistryAssumed: false }).find(a => a.name === 'age'),
);

/** IEEE 485 table 1: °F and cell size factor. */
const ieee485: readonly (readonly [fahrenheit: number, factor: number])[] = [
  [25, 1.52],
  [30, 1.43],
  [35, 1.35],
  [40, 1.3],
  [45, 1.25],
  [50, 1.19],
  [55, 1.15],
  [60, 1.11],
  [65, 1.08],
  [70, 1.04],
  [77, 1],
  [80, 0.98],
  [85, 0.96],
  [90, 0.94],
  [95, 0.93],
  [100, 0.91],
];

const cold: readonly Row[] = [
  ...ieee485.flatMap(([fahrenheit, factor], i) => [
    row(`C2-05.${fahrenheit}F`, `IEEE 485, table 1, ${fahrenheit} °F`, 'memory', factor, 0.005, () =>
      sizeFactorAt(((fahrenheit - 32) * 5) / 9),
    ),
    row(
      `C2-05.${fahrenheit}F.at`,
      `IEEE 485, table 1, ${fahrenheit} °F in kelvin`,
      'memory',
      (fahrenheit - 32) / 1.8 + 273.15,
      0.1,
      () => present(leadAcidCapacityByTemperature[i])[0] + 273.15,
    ),
  ]),
  ...cells('LFP cells: nine tenths or a little less at 0 °C, two thirds at −20 °C, from memory', 'memory', [
    ['C2-15.15C', 1, 0.01, () => temperatureFactor({ chemistry: 'lfp' }, 15)],
    ['C2-15.30C', 1, 0.01, () => temperatureFactor({ chemistry: 'lfp' }, 30)],
    ['C2-15.0C', 0.87, 0.025, () => temperatureFactor({ chemistry: 'lfp' }, 0)],
    ['C2-15.-20C', 0.65, 0.05, () => temperatureFactor({ chemistry: 'lfp' }, -20)],
  ]),
  ...cells('common practice, LFP cell makers: charge by cell temperature', 'memory', [
    ['C4-08.5C', 0.1, 0.001, () => chargeRateC({ chemistry: 'lfp' }, 4.5)],
    ['C4-08.6C', 0.35, 0.15, () => chargeRateC({ chemistry: 'lfp' }, 5.5)],
    ['C4-08.48C', 0.5, 0.001, () => chargeRateC({ chemistry: 'lfp' }, 48)],
    ['C4-08.52C', 0.1, 0.001, () => chargeRateC({ chemistry: 'lfp' }, 52)],
    ['C4-08.58C', 0.1, 0.001, () => chargeRateC({ chemistry: 'lfp' }, 58)],
    ['C4-08.63C', 1, 0.001, () => 1 + chargeRateC({ chemistry: 'lfp' }, 63)],
  ]),
];

const peukert = cells('battery handbooks, range of the Peukert exponent', 'memory', [
  ['C1-05.agm.low', 1.05, 0.001, () => agm.peukert[1]],
  ['C1-05.agm.high', 1.15, 0.001, () => agm.peukert[2]],
  ['C1-05.gel.low', 1.1, 0.001, () => gel.peukert[1]],
  ['C1-05.gel.high', 1.25, 0.001, () => gel.peukert[2]],
  ['C1-05.flooded.low', 1.2, 0.001, () => flooded.peukert[1]],
  ['C1-05.flooded.deep', 1.25, 0.1, () => flooded.peukert[0]],
  ['C1-05.flooded.high', 1.4, 0.2, () => flooded.peukert[2]],
  ['C1-05.lfp.low', 1.02, 0.001, () => lfp.peukert[1]],
  ['C1-05.lfp.high', 1.05, 0.001, () => lfp.peukert[2]],
]);

const plates: readonly Row[] = [
  ...kinds.flatMap(([kind, { nominalV, ratedHours }]) => [
    row(
      `C3-21.nominal.${kind}`,
      'definition: six cells of 2 V, or four of 3.2 V',
      'recomputed',
      kind === 'lfp' ? 4 * 3.2 : 6 * 2,
      1e-9,
      () => nominalV,
    ),
    row(
      `C1-03.rated.${kind}`,
      'IEC 61056: rated at 20 hours, from memory',
      'memory',
      20,
      0,
      () => ratedHours,
    ),
  ]),
  ...Object.entries(lead).map(([kind, { depth }]) =>
    row(`C2-01.half.${kind}`, 'common practice: half of lead-acid', 'memory', 0.5, 0.05, () => depth[0]),
  ),
  ...cells('common practice: four fifths of lithium, all of it at most', 'memory', [
    ['C4-14.depth', 0.8, 0.05, () => lfp.depth[0]],
    ['C4-14.depth.high', 1, 0, () => lfp.depth[2]],
  ]),
  ...cells('common practice: a 100 Ah LFP battery gives 100 A, and 200 A for seconds', 'memory', [
    ['C4-18.lfp', 100, 10, () => 100 * lfp.dischargeC],
    ['C4-18.lfp.surge', 200, 30, () => 100 * lfp.surgeC],
  ]),
  ...cells('LFP cell makers: half its capacity an hour is the standard charge, from memory', 'memory', [
    ['C4-08.rate', 0.5, 0.05, () => lfp.chargeC],
  ]),
];

/** What 100 Ah weigh at 12 V, kg. */
const weights = { agm: 30, gel: 31, flooded: 26, lfp: 12 } as const;

/** Cycles by depth, common practice from memory: sealed lead; flooded and lithium are in battery.ts. */
const cycles: readonly (readonly [kind: 'agm' | 'flooded' | 'lfp', depth: number, gives: number])[] = [
  ['agm', 0.3, 1200],
  ['agm', 0.5, 600],
  ['agm', 0.8, 350],
  ['agm', 1, 220],
  ['flooded', 0.5, 750],
  ['flooded', 0.8, 225],
  ['lfp', 0.8, 5500],
  ['lfp', 1, 3750],
];

const ages: readonly Row[] = [
  ...Object.entries(weights).map(([kind, kg]) =>
    row(
      `C4-19.${kind}.likely`,
      `common practice: weight of 100 Ah of ${kind}, 12 V`,
      'memory',
      kg,
      0.1 * kg,
      () => 100 * chemistryTable[kind as 'agm'].weightKgPerAh,
    ),
  ),
  ...cycles.map(([kind, depth, gives]) =>
    row(
      `C4-13.${kind}.${100 * depth}`,
      `common practice, makers’ cycle life of ${kind} at ${100 * depth} %`,
      'memory',
      gives,
      0.15 * gives,
      () => present(chemistryTable[kind].cycles.find(([d]) => d === depth))[1],
    ),
  ),
  ...cells('IEEE 1013 and 485: at the end of its life a battery has 80 %, a new one all', 'memory', [
    ['C2-10.end', 0.8, 0, () => dailyDepth.endOfLife],
    ['C2-10.new', 1, 0, () => age.value],
    ['C2-10.new.high', 1, 0, () => age.high],
    ['C2-10.used', 0.9, 0.1, () => age.low],
  ]),
  ...cells('AS/NZS 4509.2: 2 to 3 days with a generator, from memory', 'memory', [
    ['C2-13.low', 2, 0.3, () => autonomyDays],
  ]),
  ...cells(
    'common practice: starter batteries of cars hold 50 to 90 Ah; lithium-ion cells have 3.6 to 3.7 V',
    'memory',
    [
      ['C5-01', 70, 10, () => starterReserve.capacityAh[0]],
      ['C5-01.low', 50, 8, () => starterReserve.capacityAh[1]],
      ['C5-01.high', 90, 14, () => starterReserve.capacityAh[2]],
      ['C5-02', 3.65, 0.1, () => powerBankCellV],
    ],
  ),
];

/** Sizes that every shop has, Ah. */
const sold: readonly Row[] = [
  ...[7, 12, 18, 26, 40, 55, 75, 100, 120, 150, 200, 260].map(size =>
    row(`C5-03.${size}`, `common practice: sealed lead-acid of ${size} Ah is stocked`, 'memory', 1, 0, () =>
      Number(agm.usualSizesAh.includes(size)),
    ),
  ),
  ...[10, 20, 30, 50, 75, 100, 120, 150, 200, 300].map(size =>
    row(`C5-04.${size}`, `common practice: LFP of ${size} Ah is stocked`, 'memory', 1, 0, () =>
      Number(lfp.usualSizesAh.includes(size)),
    ),
  ),
];

export const rows: readonly Row[] = [...cold, ...peukert, ...plates, ...ages, ...sold];
