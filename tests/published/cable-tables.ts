import { present } from '#basics/present.ts';
import {
  ampacityA,
  autoCableAreaMm2,
  conductorAssumptions,
  conductorsSold,
} from '#engine/cable/conductor.ts';
import { ampacityBetween } from '#engine/cable/rules.ts';
import {
  autoCable,
  bladeColours,
  dropLimits,
  fuseSeries,
  layFactor,
  leastAreaMm2,
  sizes,
} from '#engine/cable/tables.ts';
import { run } from '#rule/rule.ts';
import { cells, type Row, row } from './row.ts';

const sizeOf = (areaMm2: number) => present(sizes.find(size => size.areaMm2 === areaMm2));

/** IEC 60228 tables 1 to 3, largest resistance at 20 °C, mΩ/m: mm², class 1 and 2, class 5. */
const iec: readonly (readonly [number, number, number])[] = [
  [0.75, 24.5, 26],
  [4, 4.61, 4.95],
  [16, 1.15, 1.21],
  [50, 0.387, 0.386],
  [95, 0.193, 0.206],
  [150, 0.124, 0.129],
  [185, 0.0991, 0.106],
  [240, 0.0754, 0.0801],
];
/** ISO 6722-1 / ISO 19642, the same for road vehicles. */
const vehicle: readonly (readonly [number, number])[] = [
  [1, 18.5],
  [4, 4.71],
  [25, 0.743],
  [70, 0.259],
];
/** Trade size, strands and their diameter, mm; all but 5 and 6 as published. */
const strands: readonly (readonly [number, number, number])[] = [
  [2, 7, 0.32],
  [3, 16, 0.3],
  [4, 26, 0.3],
  [6, 65, 0.3],
];

const [warmth, lay] = conductorAssumptions(undefined);

export const rows: readonly Row[] = [
  ...iec.flatMap(([area, solid, flexible]) => [
    row(`D1-20.${area}.class2`, `IEC 60228, ${area} mm², from memory`, 'memory', solid, 1e-9, () =>
      present(sizeOf(area).solid),
    ),
    row(
      `D1-20.${area}.class5`,
      `IEC 60228, ${area} mm², from memory`,
      'memory',
      flexible,
      1e-9,
      () => sizeOf(area).flexible,
    ),
  ]),
  ...vehicle.map(([area, r]) =>
    row(`D1b-20.${area}`, `ISO 6722-1 / ISO 19642, ${area} mm², from memory`, 'memory', r, r / 100, () =>
      present(sizeOf(area).vehicle),
    ),
  ),
  ...[18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3].map(gauge =>
    row(`D2-20.${gauge}`, 'ASTM B258, gauges that cable is sold in', 'memory', 1, 0, () =>
      Number(conductorsSold('gauge').some(({ size }) => size === gauge)),
    ),
  ),
  ...strands.flatMap(([trade, count, mm]) => [
    row(
      `D3-05.${trade}.strands`,
      'common practice: auto-cable makers’ tables that agree',
      'memory',
      count,
      0,
      () => present(autoCable.find(({ tradeMm }) => tradeMm === trade)).strands,
    ),
    row(
      `D3-05.${trade}.mm`,
      'common practice: auto-cable makers’ tables that agree',
      'memory',
      mm,
      0,
      () => present(autoCable.find(({ tradeMm }) => tradeMm === trade)).strandMm,
    ),
  ]),
  row('D3-06', 'common practice: 5 mm auto cable holds 2.9 mm²', 'memory', 2.9, 0.09, () =>
    autoCableAreaMm2(5),
  ),
  row('D3-06.size', 'common practice: 5 mm auto cable is a trade size', 'memory', 1, 0, () =>
    Number(autoCable.some(({ tradeMm }) => tradeMm === 5)),
  ),
  ...cells('ISO 10133, ABYC E-11 and AS/NZS 3000: 3, 5 and 10 %', 'memory', [
    ['D4-14.critical.low', 3, 0, () => dropLimits.critical.low],
    ['D4-17.critical.high', 5, 0, () => dropLimits.critical.high],
    ['D4-14.general.low', 3, 0, () => dropLimits.general.low],
    ['D4-17.general.high', 5, 0, () => dropLimits.general.high],
    ['D4-17.lamps.low', 5, 0, () => dropLimits.lamps.low],
    ['D4-14.lamps.high', 10, 0, () => dropLimits.lamps.high],
    ['D4-18', 1, 0, () => leastAreaMm2],
  ]),
  ...cells(
    'IEC 60228: class 5 against copper of its nominal area, 1.10 to 1.16, 1.13 in the middle',
    'recomputed',
    [
      ['D1-21', 1.13, 0.02, () => layFactor.value],
      ['D1-21.low', 1.104, 0.1, () => layFactor.low],
      ['D1-21.high', 1.157, 0.1, () => layFactor.high],
    ],
  ),
  ...cells(
    'IEC 60228 and ISO 6722-1: tinned 2.5 mm² has 8.21 for 7.98, vehicle 6 mm² has 3.1 for 3.3',
    'recomputed',
    [
      ['D1-22', 1, 0.01, () => present(lay).value],
      ['D1-22.tinned', 8.21 / 7.98, 0.01, () => present(lay).high],
      ['D1-22.vehicle', 3.1 / 3.3, 0.01, () => present(lay).low],
      ['D1-22.cold', 20, 0, () => present(warmth).low],
    ],
  ),
  // AS/NZS and ABYC tables between two gauges: straight in logarithms through their own ends.
  row(
    'D1c-20',
    'ABYC E-11: 6 AWG of 105 °C carries 120 A, as an end of what lies between',
    'memory',
    120,
    0.001,
    () => run(ampacityBetween, { I_1: 80, S: 13.3, S_1: 8.37, I_2: 120, S_2: 13.3 }),
  ),
  row(
    'D1c-21',
    'ABYC E-11: never less on 75 °C insulation than half of 105 °C',
    'memory',
    0.75,
    0.2,
    () => ampacityA(10) / ampacityA(10, 105),
  ),
  ...[35, 40].map(amps =>
    row(`D5-02.${amps}`, 'common practice: blade series, these exist', 'memory', 1, 0, () =>
      Number(present(fuseSeries[0]).ratingsA.includes(amps)),
    ),
  ),
  ...[350, 400, 500].map(amps =>
    row(`D5-04.${amps}`, 'ISO 8820-5, large bolt-down: these exist, from memory', 'memory', 1, 0, () =>
      Number(present(fuseSeries[2]).ratingsA.includes(amps)),
    ),
  ),
  ...(
    [
      [25, 'clear'],
      [30, 'green'],
    ] as const
  ).map(([amps, colour]) =>
    row(`D5-01.${amps}`, 'ISO 8820-3, colours of blade fuses, from memory', 'memory', 1, 0, () =>
      Number(bladeColours[amps] === colour),
    ),
  ),
];
