import { present } from '#basics/present.ts';
import { chargeTable } from '#engine/battery/charge-table.ts';
import { meanChargeV, usualTrip } from '#engine/battery/round-trip.ts';
import { startAssumption } from '#engine/charging/generator.ts';
import { apparentPower } from '#engine/charging/rules.ts';
import {
  alternatorSpareA,
  continuousShare,
  dcdc,
  dcdcSizesA,
  generatorSizesW,
  longRunM,
  mainsCharger,
  motorPowerFactor,
  noiseLimits,
  plateDistanceM,
  usualChargerA,
} from '#engine/charging/tables.ts';
import { run } from '#rule/rule.ts';
import { cells, type Row, row } from './row.ts';

const { agm, gel, flooded, lfp } = chargeTable;
const lead = { agm, gel, flooded } as const;
const ends = ['likely', 'low', 'high'] as const;

/** One row for each end of a span, all held by the same figure from outside. */
const span = (
  id: string,
  from: string,
  how: Row['how'],
  gives: number,
  within: number,
  of: () => readonly number[],
): Row[] =>
  ends.map((end, i) => row(`${id}.${end}`, `${from}: ${end}`, how, gives, within, () => present(of()[i])));

/** Makers' absorption windows, V: flooded, AGM, gel. */
const windows = { flooded: [14.4, 14.8], agm: [14.2, 14.7], gel: [14, 14.4] } as const;

const batteries: readonly Row[] = [
  ...Object.entries(lead).flatMap(([kind, of]) => [
    ...span(
      `C4-10.${kind}`,
      `common practice: lead-acid gives back 85 %, ${kind}`,
      'memory',
      0.86,
      0.08,
      () => of.topEfficiency.map(topEfficiency => usualTrip(of.kind, { topEfficiency }).chargeShare),
    ),
    ...span(
      `C4-12.${kind}`,
      'Stevens & Corey (Sandia): above 95 % while low',
      'seen',
      0.97,
      0.08,
      () => of.efficiency,
    ),
    ...span(
      `C4-20.${kind}`,
      `common practice: chargers call it full in the last few per cent, ${kind}`,
      'memory',
      0.97,
      0.03,
      () => of.fullAt,
    ),
    // From an empty block's first volts to absorption: 2.2 to 2.4 V a cell.
    ...span(
      `C4-21.${kind}`,
      `handbooks: lead-acid charges at 2.2 to 2.4 V a cell, ${kind}`,
      'memory',
      6 * 2.3,
      0.65,
      () => meanChargeV(of.kind),
    ),
    row(
      `C4-04.${kind}.low`,
      'lead-acid makers’ absorption windows, from memory',
      'memory',
      windows[kind as 'agm'][0],
      0.05,
      () => of.absorptionV[1],
    ),
    row(
      `C4-04.${kind}.high`,
      'lead-acid makers’ absorption windows, from memory',
      'memory',
      windows[kind as 'agm'][1],
      0.05,
      () => of.absorptionV[2],
    ),
    row(
      `C4-22.${kind}`,
      'common practice: lead-acid is taken to half',
      'memory',
      50,
      5,
      () => of.usualStart[0],
    ),
  ]),
  ...span(
    'C4-10.lfp',
    'LFP cell makers: 99 % of the charge comes back, from memory',
    'memory',
    0.985,
    0.02,
    () => lfp.efficiency,
  ),
  ...span(
    'C4-12.lfp',
    'LFP cell makers: 99 % at any charge, from memory',
    'memory',
    0.985,
    0.02,
    () => lfp.topEfficiency,
  ),
  ...span(
    'C4-20.lfp',
    'common practice: an LFP battery is full when the current falls',
    'memory',
    0.995,
    0.01,
    () => lfp.fullAt,
  ),
  ...span('C4-21.lfp', 'LFP cells charge at 3.3 to 3.5 V, from memory', 'memory', 4 * 3.4, 0.4, () =>
    meanChargeV('lfp'),
  ),
  row('C4-06.float', 'common practice: LFP float of 13.4 to 13.6 V', 'memory', 13.5, 0.1, () => lfp.floatV),
  row('C4-22.lfp', 'common practice: lithium is taken to a fifth', 'memory', 20, 2, () => lfp.usualStart[0]),
];

const chargers: readonly Row[] = [
  ...cells('common practice: DC-DC chargers 85 to 90 %, better ones to 95 %', 'memory', [
    ['F1-09.likely', 0.9, 0.05, () => dcdc.efficiency[0]],
    ['F1-09.high', 0.95, 0.02, () => dcdc.efficiency[2]],
    ['F1-10.out', 14.4, 0.3, () => dcdc.outV],
  ]),
  ...cells(
    'common practice: an alternator holds 13.2 to 14.3 V when hot, less what its cables take',
    'memory',
    [
      ['F1-05.low', 13.2, 0.5, () => dcdc.inV[1]],
      ['F1-05.high', 14.3, 0.2, () => dcdc.inV[2]],
    ],
  ),
  ...cells('common practice: DC-DC chargers of campers, 20 to 40 A, mostly 25', 'memory', [
    ['F1-11', 25, 4, () => usualChargerA.dcdc.range[0]],
    ['F1-11.low', 20, 3, () => usualChargerA.dcdc.range[1]],
    ['F1-11.high', 40, 7, () => usualChargerA.dcdc.range[2]],
  ]),
  ...(['mains', 'generator'] as const).flatMap(kind =>
    cells(`common practice: portable mains chargers for camping, 10 to 30 A, ${kind}`, 'memory', [
      [`F1-12.${kind}`, 20, 3.5, () => usualChargerA[kind].range[0]],
      [`F1-12.${kind}.low`, 10, 1.5, () => usualChargerA[kind].range[1]],
      [`F1-12.${kind}.high`, 30, 5, () => usualChargerA[kind].range[2]],
    ]),
  ),
  ...cells(
    'textbooks: a rectifier into a capacitor has a power factor of 0.6 to 0.7, a corrected one 0.95 to 0.99',
    'memory',
    [
      ['F1-13', 0.81, 0.08, () => mainsCharger.powerFactor[0]],
      ['F1-13.low', 0.65, 0.05, () => mainsCharger.powerFactor[1]],
      ['F1-13.high', 0.97, 0.02, () => mainsCharger.powerFactor[2]],
    ],
  ),
  ...cells('common practice: mains chargers lose 8 to 20 %', 'memory', [
    ['F1-14', 0.86, 0.06, () => mainsCharger.efficiency[0]],
    ['F1-14.low', 0.8, 0.05, () => mainsCharger.efficiency[1]],
    ['F1-14.high', 0.92, 0.05, () => mainsCharger.efficiency[2]],
    ['F1-14.out', 14.4, 0.3, () => mainsCharger.outV],
  ]),
];

/** One way (m) at which copper of 16 mm² (ISO 6722-1: 1.16 mΩ/m) loses 3 % of 14 V at half of a usual alternator's amps. */
const longest = (0.03 * 14) / (2 * 1.16e-3 * 50);
const touring = 'a touring magazine’s series on caravan electricity, part 3: generators';

const engines: readonly Row[] = [
  ...cells(`${touring}: without a break 15 to 25 % less than the peak it is sold by`, 'seen', [
    ['F2-13', 0.8, 0.055, () => continuousShare[0]],
    ['F2-13.low', 0.75, 0.04, () => continuousShare[1]],
  ]),
  ...cells(
    'common practice: for a moment inverter types give half as much again, others up to 2½ times',
    'memory',
    [
      ['F2-11.low', 1.5, 0.25, () => startAssumption.low],
      ['F2-11.high', 2.5, 0.3, () => startAssumption.high],
    ],
  ),
  row(
    'F1-18',
    'common practice: half of an alternator of 80 to 120 A',
    'memory',
    50,
    8,
    () => alternatorSpareA,
  ),
  row(
    'F1-17',
    'ISO 6722-1 (16 mm²: 1.16 mΩ/m) and a drop of 3 %: the longest run at 50 A and 14 V',
    'recomputed',
    longest,
    0.4,
    () => longRunM,
  ),
  row(
    'F2-13.high',
    'common practice: some go by their continuous watts',
    'memory',
    1,
    0.1,
    () => continuousShare[2],
  ),
  row('F2-14', `${touring}: a 3.5 kVA one of a power factor of 0.8 is 2,800 W`, 'seen', 3500, 1, () =>
    run(apparentPower, { P: 2800, pf: mainsCharger.powerFactor[0] }),
  ),
  ...cells('Queensland parks: 65 dB at 7 m', 'seen', [
    ['F2-08.m', 7, 0, () => noiseLimits.queensland.atM],
    ['F2-08.plate', 7, 0, () => plateDistanceM],
  ]),
  ...cells('textbooks: single-phase motors run at a power factor of 0.8 to 0.9', 'memory', [
    ['F2-10', 0.85, 0.05, () => motorPowerFactor],
  ]),
  ...cells(
    'common practice: a generator gives twice its rating for a moment, inverter types less',
    'memory',
    [['F2-11', 2, 0.3, () => startAssumption.value]],
  ),
  ...[800, 1000, 1600, 2000, 2400, 3000, 3500, 5000, 7000].map(size =>
    row(`F2-12.${size}`, `common practice: portable generators of ${size} W are sold`, 'memory', 1, 0, () =>
      Number(generatorSizesW.some(s => s === size)),
    ),
  ),
  ...[10, 15, 20, 25, 30, 40, 50, 60].map(size =>
    row(`F1-15.${size}`, `common practice: DC-DC chargers of ${size} A are sold`, 'memory', 1, 0, () =>
      Number(dcdcSizesA.some(s => s === size)),
    ),
  ),
];

export const rows: readonly Row[] = [...batteries, ...chargers, ...engines];
