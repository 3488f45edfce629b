import { present } from '#basics/present.ts';
import { choosePair } from '#engine/cable/choose.ts';
import { ampacityA, autoCableAreaMm2, conductorOf, resistancePerM } from '#engine/cable/conductor.ts';
import { fuseFor, fuseRatingsA } from '#engine/cable/fuse.ts';
import { panelContinuous } from '#engine/cable/pair-rules.ts';
import {
  conductorResistance,
  dropPercent,
  fuseLeast,
  voltageDrop,
  warmResistance,
} from '#engine/cable/rules.ts';
import { bundleShareOf, carriesA } from '#engine/cable/surroundings.ts';
import {
  bladeColours,
  brightSunFactor,
  copperCoefficient,
  copperResistivity,
  dropLimits,
  fuseFactor,
  fuseSeries,
  sizes,
} from '#engine/cable/tables.ts';
import { areaOfGauge } from '#quantity/gauge.ts';
import { run } from '#rule/rule.ts';
import type { Row } from './row.ts';

const iec = 'IEC 60228, conductor resistance tables';
const iso6722 = 'ISO 6722-1 / ISO 19642, from memory';
const abyc = 'ABYC E-11';
const faa = 'FAA Advisory Circular 43.13-1B';
const auto = 'common practice: auto-cable makers’ tables that agree';

/** As the tables have it: at 20 °C. */
const cold = { conductorC: 20, strandFactor: 1 };
const sizeOf = (areaMm2: number) => present(sizes.find(size => size.areaMm2 === areaMm2));
const flexible = (areaMm2: number) => 1000 * resistancePerM(present(conductorOf({ areaMm2 })), cold);
const ideal = (S: number) => 1000 * run(conductorResistance, { rho: copperResistivity, k_l: 1, S });
const warm = (T: number) => run(warmResistance, { r_20: 1, alpha: copperCoefficient, T, T_20: 20 });
const drop = (I: number, L: number, milliohmPerM: number) =>
  run(voltageDrop, { L, I, r: milliohmPerM / 1000 });
const ft = 0.3048;
/** Ω per 1,000 ft as mΩ/m. */
const perFt = (ohmPer1000ft: number) => ohmPer1000ft / ft;
const cmilMm2 = (Math.PI / 4) * 0.0254 ** 2;

const row = (
  id: string,
  from: string,
  how: Row['how'],
  gives: number,
  within: number,
  ours: () => number,
  differs?: string,
): Row => ({ id, from, how, gives, within, run: ours, differs });

/** mm², class 1 and 2, class 5, ideal, ratio. */
const d1: readonly (readonly [string, number, number, number, number, number])[] = [
  ['D1-01', 0.5, 36, 39, 34.483, 1.131],
  ['D1-03', 1, 18.1, 19.5, 17.241, 1.131],
  ['D1-04', 1.5, 12.1, 13.3, 11.494, 1.157],
  ['D1-05', 2.5, 7.41, 7.98, 6.897, 1.157],
  ['D1-07', 6, 3.08, 3.3, 2.874, 1.148],
  ['D1-08', 10, 1.83, 1.91, 1.724, 1.108],
  ['D1-10', 25, 0.727, 0.78, 0.69, 1.131],
  ['D1-11', 35, 0.524, 0.554, 0.493, 1.125],
  ['D1-13', 70, 0.268, 0.272, 0.246, 1.104],
  ['D1-15', 120, 0.153, 0.161, 0.144, 1.121],
];
const d1b: readonly (readonly [string, number, number])[] = [
  ['D1b-01', 0.5, 37.1],
  ['D1b-02', 0.75, 24.7],
  ['D1b-04', 1.5, 12.7],
  ['D1b-05', 2.5, 7.6],
  ['D1b-07', 6, 3.1],
  ['D1b-08', 10, 1.82],
  ['D1b-09', 16, 1.16],
  ['D1b-11', 35, 0.527],
  ['D1b-12', 50, 0.368],
  ['D1b-14', 95, 0.196],
  ['D1b-15', 120, 0.153],
];
const d1c: readonly (readonly [string, number, number, number])[] = [
  ['D1c-01', 18, 20, 17],
  ['D1c-03', 14, 35, 30],
  ['D1c-04', 12, 45, 38],
  ['D1c-06', 8, 80, 68],
  ['D1c-07', 6, 120, 102],
  ['D1c-09', 2, 210, 178],
  ['D1c-10', 1, 245, 208],
  ['D1c-12', -1, 330, 280],
  ['D1c-13', -3, 445, 378],
];
/** Gauge, A, wires in the loom. */
const d4bundled: readonly (readonly [number, number, number])[] = [
  [14, 10, 25],
  [10, 17, 25],
  [8, 38, 4],
  [4, 68, 4],
  [2, 95, 4],
];
/** mm, copper mm², ideal mΩ/m. */
const d3: readonly (readonly [string, number, number, number])[] = [
  ['D3-01', 4, 1.84, 9.38],
  ['D3-02', 6, 4.59, 3.75],
  ['D3-03', 3, 1.13, 15.24],
  ['D3-04', 2, 0.56, 30.63],
];

export const rows: readonly Row[] = [
  ...d1.flatMap(([id, S, solid, class5, pure, ratio]) => [
    row(`${id}.class2`, iec, 'seen', solid, 1e-9, () => present(sizeOf(S).solid)),
    row(`${id}.class5`, iec, 'seen', class5, 1e-9, () => flexible(S)),
    row(`${id}.ideal`, iec, 'seen', pure, 0.001, () => ideal(S)),
    // Trap 9: flexible cable resists 10 to 16 % more than copper of its nominal area.
    row(`${id}.trap-9`, iec, 'seen', ratio, 0.0015, () => flexible(S) / ideal(S)),
  ]),
  row('D1-12', iec, 'seen', 0.386 / 0.387, 1e-9, () => flexible(50) / present(sizeOf(50).solid)),
  ...d1b.map(([id, S, r]) => row(id, iso6722, 'memory', r, r / 100, () => present(sizeOf(S).vehicle))),
  ...d1c.flatMap(([id, gauge, amps, engine]) => [
    row(id, `${abyc}, 105 °C, from memory`, 'memory', amps, 0.5, () => ampacityA(areaOfGauge(gauge), 105)),
    row(
      `${id}.engine`,
      `${abyc}, inside engine space of 50 °C, from memory`,
      'memory',
      engine,
      0.6 + 0.01 * engine,
      () => carriesA(present(conductorOf({ awg: gauge })), { cableAirC: 50 }, undefined, 105),
      'ours goes by the heat that the insulation has left, 0.856 at 50 °C; the book rounds to 0.85',
    ),
  ]),
  ...d3.flatMap(([id, mm, area, pure]) => [
    row(id, auto, 'memory', area, area * 0.03, () => autoCableAreaMm2(mm)),
    row(`${id}.ideal`, auto, 'memory', pure, pure * 0.01, () => ideal(autoCableAreaMm2(mm))),
  ]),
  row(
    'D3-01.trap-10',
    `${auto}: 2.2 times the resistance`,
    'memory',
    2.2,
    0.05,
    () => ideal(autoCableAreaMm2(4)) / ideal(4),
  ),
  ...(
    [
      ['D3-01', 4, 15],
      ['D3-03', 3, 10],
      ['D3-04', 2, 5],
    ] as const
  ).map(([id, mm, amps]) =>
    row(`${id}.amps`, `${auto}: the lower of two`, 'memory', amps, 0.01, () =>
      carriesA(present(conductorOf({ autoCableMm: mm }))),
    ),
  ),
  row(
    'D3-02.amps',
    `${auto}: 48 and 50 A`,
    'memory',
    49,
    15,
    () => carriesA(present(conductorOf({ autoCableMm: 6 }))),
    'ours is for 75 °C insulation, with a margin',
  ),
  row('D4-01', 'IEC 60028, annealed copper', 'seen', 0.017241, 1e-6, () => copperResistivity),
  row('D4-02', 'IEC 60028', 'seen', 0.00393, 0, () => copperCoefficient),
  row('D4-03', 'IEC 60028', 'recomputed', 1.1965, 0.0005, () => warm(70)),
  row(
    'D4-04',
    `${faa}, p. 11-22`,
    'seen',
    0.8642,
    0.0015,
    () => 1 / warm(60),
    'the book counts from 234.5 °C, ours from 20 °C',
  ),
  row('D4-05', iec, 'recomputed', 0.764, 0.002, () => drop(40, 5, flexible(10))),
  row('D4-05.percent', iec, 'recomputed', 6.37, 0.02, () =>
    run(dropPercent, { V_d: drop(40, 5, flexible(10)), V: 12 }),
  ),
  row(
    'D4-06',
    'ISO 10133: 0.0164 I L ÷ S',
    'seen',
    0.547,
    0.115,
    () => drop(20, 5, flexible(6)),
    'the rule of ISO 10133 is 17 % short of IEC 60228',
  ),
  row('D4-07', iec, 'recomputed', 0.66, 0.002, () => drop(20, 5, flexible(6))),
  row(
    'D4-07.trap-9',
    'ISO 10133 against IEC 60228: 14 to 18 % optimistic',
    'recomputed',
    0.17,
    0.02,
    () => 1 - 0.547 / drop(20, 5, flexible(6)),
  ),
  row(
    'D4-08',
    `${abyc}: 10.75 Ω·cmil/ft`,
    'memory',
    (10.75 * cmilMm2) / ft,
    1e-5,
    () => copperResistivity * warm(29.3),
  ),
  row(
    'D4-09',
    `${abyc}: 10 AWG for 15 A, 20 ft there and back, 3 %`,
    'recomputed',
    10,
    0,
    () =>
      choosePair({ lengthM: 10 * ft, currentA: 15, continuousA: 15, voltageV: 12 }, 'gauge', {
        dropLimit: 3,
        conductorC: 29.3,
        strandFactor: 1,
      }).conductor.size,
  ),
  row(
    'D4-10',
    `${abyc}: 16 AWG for 10 A, 21 ft there and back, 10 %`,
    'seen',
    16,
    2,
    () =>
      choosePair({ lengthM: 10.5 * ft, currentA: 10, continuousA: 10, voltageV: 12 }, 'gauge', {
        dropLimit: 10,
        conductorC: 29.3,
        strandFactor: 1,
      }).conductor.size,
    'by the drop alone; ours goes one size up to carry the fuse on 75 °C insulation',
  ),
  row('D4-11', `${faa}, table 11-7: No. 6`, 'seen', 0.942, 0.001, () =>
    drop(20, (107 * ft) / 2, perFt(0.44)),
  ),
  row('D4-12', `${faa}, table 11-7: No. 14`, 'seen', 6.12, 0.01, () => drop(20, (100 * ft) / 2, perFt(3.06))),
  row('D4-13', `${faa}, table 11-8: No. 10`, 'seen', 0.98, 0.01, () => drop(20, (39 * ft) / 2, perFt(1.26))),
  row('D4-14.critical', 'ISO 10133 and ABYC E-11', 'seen', 3, 0, () => dropLimits.critical.value),
  row('D4-14.other', 'ISO 10133 and ABYC E-11', 'seen', 10, 0, () => dropLimits.lamps.value),
  ...(
    [
      [14, 3.06],
      [10, 1.26],
      [6, 0.44],
      [2, 0.18],
    ] as const
  ).map(([awg, ohm]) =>
    row(
      `D4-15.${awg}`,
      `${faa}, table 11-9: tin-plated`,
      'seen',
      perFt(ohm),
      perFt(ohm) * 0.12,
      () => 1000 * resistancePerM(present(conductorOf({ awg })), { conductorC: 20, strandFactor: 1.12 }),
      'thin aircraft strands, tinned, in areas that differ from the gauge: up to 12 % more',
    ),
  ),
  ...d4bundled.map(([gauge, amps, wires]) =>
    row(
      `D4-16.${gauge}`,
      `${faa}, table 11-9: in a bundle, 105 °C wire, 70 °C around it`,
      'seen',
      amps,
      amps * 0.15,
      () =>
        carriesA(
          present(conductorOf({ awg: gauge })),
          { cableAirC: 70, bundleShare: bundleShareOf(wires) },
          undefined,
          105,
        ),
      `the book doesn't count the wires: ours are ABYC's shares for ${wires} of them, thin wires in a large loom`,
    ),
  ),
  row(
    'D4-17',
    'AS/NZS 3000 extra-low voltage, from memory: 10 %, 5 % by vehicle rules',
    'memory',
    5,
    0,
    () => dropLimits.general.value,
  ),
  ...(
    [
      [5, 'tan'],
      [7.5, 'brown'],
      [10, 'red'],
      [15, 'blue'],
      [20, 'yellow'],
    ] as const
  ).map(([amps, colour]) =>
    row(`D5-01.${amps}`, 'common practice: blade fuse colours', 'memory', 1, 0, () =>
      Number(bladeColours[amps] === colour),
    ),
  ),
  ...[1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30].map(amps =>
    row(`D5-02.${amps}`, 'common practice: blade series', 'memory', 1, 0, () =>
      Number(present(fuseSeries[0]).ratingsA.includes(amps)),
    ),
  ),
  row(
    'D5-03',
    'ISO 8820-5, from memory',
    'memory',
    10,
    0,
    () =>
      [30, 40, 50, 60, 70, 80, 100, 125, 150, 200].filter(a => present(fuseSeries[1]).ratingsA.includes(a))
        .length,
  ),
  row(
    'D5-04',
    'ISO 8820-5, from memory',
    'memory',
    8,
    0,
    () =>
      [100, 125, 150, 175, 200, 225, 250, 300].filter(a => present(fuseSeries[2]).ratingsA.includes(a))
        .length,
  ),
  row('D5-05', 'NEC 125 % rule, from memory', 'memory', 25, 1e-9, () =>
    run(fuseLeast, { k_f: fuseFactor, I: 20 }),
  ),
  row(
    'D5-05.panel',
    'NEC 690.8 and 690.9, from memory: 125 % and 125 % again of 9.2 A',
    'memory',
    14.375,
    1e-9,
    () => run(fuseLeast, { k_f: fuseFactor, I: run(panelContinuous, { k_i: brightSunFactor, I_sc: 9.2 }) }),
  ),
  row('D5-05.fuse', 'NEC 125 % rule, from memory', 'memory', 25, 0, () => fuseFor(20).ratingA),
  row(
    'D5-07',
    'common practice of travellers: one and a half times the load',
    'memory',
    15,
    0,
    () => fuseFor(10 * 1.2).ratingA,
    'ours is 125 %; with a fifth more load both come to 15 A',
  ),
  row('D5-08', 'ISO 8820-3, from memory: 110 % must hold 100 h', 'memory', 1.1, 0.2, () => fuseFactor),
  row(
    'D5-08.hold',
    'ISO 8820-3, from memory',
    'memory',
    0,
    0,
    () => fuseRatingsA.filter(a => fuseFor(a / 1.25).ratingA < a).length,
  ),
];
