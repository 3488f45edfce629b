import { present } from '#basics/present.ts';
import { bankOf, nominalVoltage } from '#engine/battery/bank.ts';
import { chargeRow } from '#engine/battery/charge-table.ts';
import { chargeRateC, limitsOf } from '#engine/battery/limits.ts';
import { chemistryTable, dailyDepth, starterReserve } from '#engine/battery/tables.ts';
import { batteryTemperature, type stands } from '#engine/battery/temperature.ts';
import { ageAssumption, bankAssumptions, temperatureFactor } from '#engine/battery/usable.ts';
import { sourceAssumptions } from '#engine/charging/source.ts';
import { usualChargerA } from '#engine/charging/tables.ts';
import { airTemperature } from '#engine/solar/air.ts';
import { cells, type Row, row } from './row.ts';

const { agm, gel, flooded } = chemistryTable;
const lithium = present(bankOf([{ count: 1, capacityAh: 100, chemistry: 'lfp' }]));
const gives = (temperatureC: number) => limitsOf(lithium, temperatureC).dischargeA;
const faq = 'Deep-cycle battery FAQ (stored copies on two shops’ pages)';
const safeRate = 'electrical-engineering.app, safe discharge rate of a lead-acid battery: 0.2 to 0.3 C';
const cycleSheet = 'sheet of gel deep-cycle batteries, 12 V: 1,800 cycles at 30 %, 750 at 50 %, 500 at 80 %';
/** Cycles of gel at a depth. */
const ofGel = (depth: number): number => present(gel.cycles.find(([d]) => d === depth))[1];
/** A fair week by the sea, so that nothing is kept from freezing. */
const fair = { latitudeDeg: -28.6, longitudeDeg: 153.6, month: 3 };
/** How a battery that stands somewhere differs from the air, + 20 K. */
const off = (stand: keyof typeof stands, end: 'value' | 'low' | 'high'): number =>
  20 + batteryTemperature(fair, stand)[end] - airTemperature(fair)[end];
const output = present(
  sourceAssumptions({ kind: 'mains', currentA: 20, row: chargeRow('agm'), blocks: 1 }).find(
    a => a.name === 'chargerOutput',
  ),
);

const depths = cells(`${faq}: best used between 20 and 60 % on average`, 'seen', [
  ['C2-01.agm.high', 0.6, 0.05, () => agm.depth[2]],
  ['C2-01.gel.high', 0.6, 0.05, () => gel.depth[2]],
  ['C2-01.flooded.high', 0.6, 0.055, () => flooded.depth[2]],
]);

/** What is left of a battery that is called so, by one end. */
const worn = (wear: 'old' | 'tired', end: 'value' | 'low' | 'high'): number =>
  ageAssumption({ chemistry: 'agm', wear })[end];

const aged: readonly Row[] = [
  ...cells(
    'IEEE 450 and 1188: lead-acid is replaced when 80 % of its capacity is left; from memory',
    'memory',
    [
      ['C2-22.old', 0.8, 0.05, () => worn('old', 'value')],
      ['C2-22.tired.high', 0.8, 0.09, () => worn('tired', 'high')],
    ],
  ),
  ...cells(
    'common practice: batteries that are called old or tired, tested, give from nearly all down to less than a half',
    'memory',
    [
      ['C2-23.old.low', 0.6, 0.08, () => worn('old', 'low')],
      ['C2-23.old.high', 0.95, 0.1, () => worn('old', 'high')],
      ['C2-23.tired', 0.66, 0.1, () => worn('tired', 'value')],
      ['C2-23.tired.low', 0.4, 0.06, () => worn('tired', 'low')],
    ],
  ),
];
const sheet = 'sheet of an AGM of 12 V and 100 Ah, read in a stored copy';

const cyclesAt = (kind: 'agm' | 'gel' | 'flooded' | 'lfp', depth: number): number =>
  present(chemistryTable[kind].cycles.find(([d]) => d === depth))[1];
const powerBank = (end: 'value' | 'low' | 'high'): number =>
  present(
    bankAssumptions({ chemistry: 'lfp', isChemistryAssumed: false, isOfCell: true }).find(
      a => a.name === 'depthOfDischarge',
    ),
  )[end];

const more: readonly Row[] = [
  row(
    'C2-24.low',
    'powerprofiler.net, power banks 101: typically some 80 % come out',
    'seen',
    0.8,
    0.05,
    () => powerBank('low'),
  ),
  ...cells('makers of power banks: 80 to 85 % come out, 90 to 93 % of the best', 'memory', [
    ['C2-24', 0.85, 0.05, () => powerBank('value')],
    ['C2-24.high', 0.92, 0.05, () => powerBank('high')],
  ]),
  ...cells('makers’ sheets that agree: cycles by depth', 'memory', [
    ['C2-25.gel.100', 300, 50, () => cyclesAt('gel', 1)],
    ['C2-25.flooded.30', 1300, 200, () => cyclesAt('flooded', 0.3)],
    ['C2-25.flooded.100', 150, 25, () => cyclesAt('flooded', 1)],
    ['C2-25.lfp.50', 8000, 1500, () => cyclesAt('lfp', 0.5)],
  ]),
  ...cells('common practice: who is careful with a flooded battery stops at 60 %', 'memory', [
    ['C2-26.flooded.low', 0.4, 0.05, () => flooded.depth[1]],
  ]),
  ...cells('sheets of AGM batteries: rated at 25 °C', 'memory', [
    [
      'C2-27.agm',
      100,
      1,
      () => limitsOf(present(bankOf([{ count: 1, capacityAh: 100, chemistry: 'agm' }]))).dischargeA,
    ],
  ]),
];

export const rows: readonly Row[] = [
  ...more,
  ...aged,
  row('C4-17.agm.most', `${sheet}: at most 30 A to begin with`, 'seen', 30, 4, () => 100 * agm.chargeC),
  row(
    'C4-17.flooded.most',
    'makers’ practice: flooded takes 10 to 13 % of its Ah',
    'memory',
    13,
    2,
    () => 100 * flooded.chargeC,
  ),
  row(
    'C2-01.lfp.low',
    'common practice: the careful take 70 to 80 % of lithium',
    'memory',
    0.75,
    0.06,
    () => chemistryTable.lfp.depth[1],
  ),
  ...depths,
  ...cells('a dealer’s page on deep-cycle batteries: 45 % a cycle is the best life for the money', 'memory', [
    ['C2-01.agm.low', 0.45, 0.05, () => agm.depth[1]],
    ['C2-01.gel.low', 0.45, 0.05, () => gel.depth[1]],
  ]),
  row('C4-18.flooded', safeRate, 'seen', 0.3, 0.034, () => flooded.dischargeC),
  ...cells('common practice: 100 Ah of AGM give 100 A while it lasts, gel half of it', 'memory', [
    ['C4-18.agm', 100, 12, () => 100 * agm.dischargeC],
    ['C4-18.gel', 50, 6, () => 100 * gel.dischargeC],
  ]),
  ...cells(cycleSheet, 'memory', [
    ['C4-13.gel.30', 1800, 250, () => ofGel(0.3)],
    ['C4-13.gel.50', 750, 100, () => ofGel(0.5)],
    ['C4-13.gel.80', 500, 70, () => ofGel(0.8)],
  ]),
  ...cells(
    'LFP cells: from −20 to 60 °C; 95 % at 10 °C, some half at −40 °C and below, from memory',
    'memory',
    [
      ['C4-09.-22C', 100, 0.1, () => 100 + gives(-22)],
      ['C4-09.-18C', 50, 0.1, () => gives(-18)],
      ['C4-09.55C', 100, 0.1, () => gives(55)],
      ['C2-15.10C', 0.95, 0.02, () => temperatureFactor({ chemistry: 'lfp' }, 10)],
      ['C2-15.-50C', 0.5, 0.07, () => temperatureFactor({ chemistry: 'lfp' }, -50)],
      ['C4-08.25C', 0.5, 0.001, () => chargeRateC({ chemistry: 'lfp' }, 25)],
    ],
  ),
  ...cells(
    'common practice: an engine starts down to 12.4 V at rest, 75 % of its battery; kept at 12.5 V, 80 %, by the careful, and seen to start at 12.2 V, 60 %, when warm',
    'memory',
    [
      ['C5-05', 0.25, 0.03, () => starterReserve.share[0]],
      ['C5-05.low', 0.2, 0.03, () => starterReserve.share[1]],
      ['C5-05.high', 0.4, 0.05, () => starterReserve.share[2]],
    ],
  ),
  ...cells('common practice: no more than some 30 % a day of lead-acid that shall last for years', 'memory', [
    ['C2-10.day', 0.3, 0.05, () => dailyDepth.leadAcid],
  ]),
  ...cells('definition: cells of 3.2 V in series', 'recomputed', [
    [
      'C3-21.four',
      12.8,
      1e-9,
      () => present(bankOf([{ count: 4, capacityAh: 100, chemistry: 'lfp', voltageV: 3.2 }])).voltageV,
    ],
    ['C3-21.twelve', 38.4, 1e-9, () => nominalVoltage(36, 'lfp')],
  ]),
  ...cells(
    'common practice: isolators pass some 20 A after the first minutes, 8 to 35 A by cable and charge',
    'memory',
    [
      ['F1-16', 20, 3.5, () => usualChargerA.isolator.range[0]],
      ['F1-16.low', 8, 1.4, () => usualChargerA.isolator.range[1]],
      ['F1-16.high', 35, 6, () => usualChargerA.isolator.range[2]],
    ],
  ),
  ...cells('common practice: warm chargers give nine tenths of their rating and more', 'memory', [
    ['F1-17.low', 0.9, 0.05, () => output.low],
    ['F1-17.high', 1, 0.05, () => output.high],
  ]),
  ...cells(
    'common practice: a cabin is some 3 K warmer than the air, 8 K in the sun; shade and the night cool by 4 K',
    'memory',
    [
      ['C2-21.inside.mild', 23, 0.5, () => off('inside', 'value')],
      ['C2-21.inside.high', 28, 1.5, () => off('inside', 'high')],
      ['C2-21.vehicle.sun', 28, 1.5, () => off('vehicle', 'high')],
      ['C2-21.outside.low', 16, 0.7, () => off('outside', 'low')],
    ],
  ),
];
