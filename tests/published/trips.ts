import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { missingInTop } from '#engine/battery/charge-rules.ts';
import { chargeTable, flatPercent, usualRateC } from '#engine/battery/charge-table.ts';
import { chargingOf } from '#engine/battery/charging.ts';
import { batteryTemperature, type stands } from '#engine/battery/temperature.ts';
import { bankAssumptions } from '#engine/battery/usable.ts';
import { airTemperature } from '#engine/solar/air.ts';
import { simulate, type Trip, tripAssumptions } from '#engine/trip/model.ts';
import {
  arrivalHour,
  dailySwing,
  drivingFromHour,
  eveningHour,
  generatorFromHour,
  mainsFromHour,
} from '#engine/trip/tables.ts';
import type { Chemistry } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import { type Cell, cells, type Row } from './row.ts';

const { agm, gel, flooded, lfp } = chargeTable;
const lithium = present(bankOf([{ count: 1, capacityAh: 100, chemistry: 'lfp', stateOfChargePercent: 50 }]));

/** 100 Ah of lithium at half, 24 Ah a day, changed. */
const trip = (changes: Partial<Trip>): Trip => ({
  bank: lithium,
  use: { loads: [], dailyUseAh: 24, voltageV: lithium.voltageV },
  durationH: 24,
  startHour: 0,
  ...changes,
});
const end = (changes: Partial<Trip>): number => {
  const t = trip(changes);
  return simulate(t, Object.fromEntries(tripAssumptions(t).map(a => [a.name, a.value]))).endCharge;
};
/** State of charge (%) at which a current of so much C reaches absorption, by the time constant at one of its ends. */
const knee = (hours: number, rateC: number): number => 100 * (1 - hours * rateC);
const age = (chemistry: Chemistry, ageYears: number, side: 'low' | 'high'): number =>
  present(bankAssumptions({ chemistry, isChemistryAssumed: false, ageYears }).find(a => a.name === 'age'))[
    side
  ];
const alps = { latitudeDeg: 46.5, longitudeDeg: 9.84, month: 1 };
const off = (stand: keyof typeof stands, side: 'value' | 'low' | 'high'): number =>
  20 + batteryTemperature(alps, stand)[side] - airTemperature(alps)[side];

const starts: readonly Cell[] = Object.entries({ agm, gel, flooded }).flatMap(([kind, row]): Cell[] => [
  [`C4-22.${kind}.low`, 40, 5, () => row.usualStart[1]],
  [`C4-22.${kind}.high`, 60, 8, () => row.usualStart[2]],
]);

export const rows: readonly Row[] = [
  ...cells('common practice: lead-acid is charged again at 40 to 60 %', 'memory', starts),
  ...cells('common practice: lithium is charged again at 10 to 30 %; “flat” is a tenth and less', 'memory', [
    ['C4-22.lfp.low', 10, 1.5, () => lfp.usualStart[1]],
    ['C4-22.lfp.high', 30, 5, () => lfp.usualStart[2]],
    ['C4-23.flat', 10, 1.5, () => flatPercent[0]],
    ['C4-23.flat.high', 20, 3, () => flatPercent[2]],
  ]),
  ...cells('makers’ acceptance curves, from memory: charge at which absorption begins, %', 'memory', [
    ['C4-24.agm.new', 82, 3, () => knee(agm.timeConstantH[1], 0.2)],
    ['C4-24.agm.tired', 64, 5, () => knee(agm.timeConstantH[2], 0.2)],
    ['C4-24.gel', 80, 3.5, () => knee(gel.timeConstantH[0], 0.1)],
    ['C4-24.gel.new', 85, 2.5, () => knee(gel.timeConstantH[1], 0.1)],
    ['C4-24.gel.tired', 72, 5, () => knee(gel.timeConstantH[2], 0.1)],
    ['C4-24.flooded', 78, 4, () => knee(flooded.timeConstantH[0], 0.1)],
    ['C4-24.flooded.new', 84, 3, () => knee(flooded.timeConstantH[1], 0.1)],
    ['C4-24.flooded.tired', 70, 5, () => knee(flooded.timeConstantH[2], 0.1)],
    ['C4-24.lfp', 90, 1.8, () => knee(lfp.timeConstantH[0], 0.5)],
    ['C4-24.lfp.new', 95, 0.9, () => knee(lfp.timeConstantH[1], 0.5)],
    ['C4-24.lfp.tired', 82.5, 3, () => knee(lfp.timeConstantH[2], 0.5)],
  ]),
  ...cells('Stevens & Corey (Sandia), from memory: half and less of the last per cent stays', 'memory', [
    ['C4-25.agm', 0.5, 0.08, () => agm.topEfficiency[0]],
    ['C4-25.agm.low', 0.35, 0.06, () => agm.topEfficiency[1]],
    ['C4-25.gel', 0.47, 0.08, () => gel.topEfficiency[0]],
    ['C4-25.gel.low', 0.33, 0.06, () => gel.topEfficiency[1]],
    ['C4-25.flooded.low', 0.33, 0.06, () => flooded.topEfficiency[1]],
    ['C4-25.flooded.high', 0.6, 0.1, () => flooded.topEfficiency[2]],
    [
      'C4-25.half',
      10,
      0.001,
      // 1 falling to a half over 20 Ah: of 20 missing, 10 are after 40 × ln (1 ÷ 0.75) Ah.
      () => run(missingInTop, { m_t: 20, eta_c: 1, eta_f: 0.5, m_0: 20, Q_in: 40 * Math.log(4 / 3) }),
    ],
  ]),
  ...cells('common practice: chargers of 0.06 to 0.2 C, panels of 0.03 to 0.15 C', 'memory', [
    ['C4-39.charger.low', 0.06, 0.01, () => usualRateC.charger[1]],
    ['C4-39.charger.high', 0.2, 0.03, () => usualRateC.charger[2]],
    ['C4-39.sun.low', 0.03, 0.005, () => usualRateC.sun[1]],
    ['C4-39.sun.high', 0.15, 0.025, () => usualRateC.sun[2]],
  ]),
  ...cells('common practice: leisure batteries after five years, the worst and the best kept', 'memory', [
    ['C4-38.lead.worst', 0.6, 0.07, () => age('agm', 5, 'low')],
    ['C4-38.lead.best', 0.95, 0.008, () => age('agm', 5, 'high')],
    ['C4-38.lfp.worst', 0.85, 0.025, () => age('lfp', 5, 'low')],
    ['C4-38.lfp.best', 0.95, 0.008, () => age('lfp', 5, 'high')],
  ]),
  ...cells('common practice: how much warmer than the air a battery is, + 20 K', 'memory', [
    ['C2-21.engine', 35, 2.5, () => off('engine', 'value')],
    ['C2-21.engine.low', 25, 0.9, () => off('engine', 'low')],
    ['C2-21.engine.high', 50, 5, () => off('engine', 'high')],
    ['C2-21.vehicle.low', 16, 0.7, () => off('vehicle', 'low')],
    ['C2-21.vehicle.high', 28, 1.5, () => off('vehicle', 'high')],
    ['C2-21.inside', 10, 1.5, () => batteryTemperature(alps, 'inside').value],
    ['C2-21.outside.high', 24, 0.7, () => off('outside', 'high')],
  ]),
  // On paper: half of 100 Ah, 1 A all day; what lithium keeps of the rest is 99 %. On a charger's higher volts the load
  // takes a little less than its amp: a quarter of an Ah is room for that.
  ...cells('a day of a trip, on paper', 'recomputed', [
    ['T-01 nothing comes in: 50 − 24', 26, 1e-6, () => end({})],
    [
      'T-02 a steady 20 A for two hours of driving, less 1 A: 50 − 22 + 2 × 19 × 0.99, at 97 % of 20 A',
      50 - 22 + 2 * (19.4 - 1) * 0.99,
      0.25,
      () => end({ driving: { charger: { kind: 'dcdc', currentA: 20 } }, days: [{ drivingH: 2 }] }),
    ],
    [
      'T-03 told 24 Ah of sun: what of it meets the loads goes straight, the rest at 99 %',
      50 - 0.01 * (24 - 11),
      0.3,
      () => end({ sun: { ahPerDay: 24, sun: { latitudeDeg: 0, month: 3 } } }),
    ],
    [
      'T-04 three hours of a generator with 20 A, at 97 %',
      50 - 21 + 3 * (19.4 - 1) * 0.99,
      0.25,
      () => end({ days: [{ generatorH: 3 }], plug: { charger: { kind: 'mains', currentA: 20 } } }),
    ],
    [
      'T-05 a night on mains from six: five hours of it at 10 A, at 97 %',
      50 - 19 + 5 * (9.7 - 1) * 0.99,
      0.25,
      () => end({ days: [{ mainsH: 5 }], plug: { charger: { kind: 'mains', currentA: 10 } } }),
    ],
  ]),
  ...cells('common practice: campers leave at nine, are there by four, lights go on at six', 'memory', [
    ['T-10.start', 9, 1, () => drivingFromHour],
    ['T-10.arrival', 16, 1.5, () => arrivalHour],
    ['T-10.evening', 18, 2, () => eveningHour],
    ['T-10.generator', 16, 2, () => generatorFromHour],
    ['T-10.mains', 18, 2, () => mainsFromHour],
  ]),
  ...cells(
    'handbooks: air is warmest about three in the afternoon; in a vehicle’s shade by some 3 K',
    'memory',
    [
      ['T-11.peak', 15, 1, () => dailySwing.peakHour],
      ['T-11.swing', 3, 0.5, () => dailySwing.kelvin],
    ],
  ),
  ...cells('definition: a battery of four fifths of its label charges as one of that size', 'recomputed', [
    ['D-age', 80, 1e-9, () => chargingOf(lithium, {}, { age: 0.8 }).capacityAh],
  ]),
];
