import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { chargeTable, isolatorSlowness, usualRateC } from '#engine/battery/charge-table.ts';
import { voltsOnCharge } from '#engine/battery/charge-volts.ts';
import { chargingOf } from '#engine/battery/charging.ts';
import { fillTimeH, putInAh } from '#engine/battery/fill.ts';
import { chargeRateC, limitsOf } from '#engine/battery/limits.ts';
import { type Cycle, roundTrip } from '#engine/battery/round-trip.ts';
import { batteryTemperature } from '#engine/battery/temperature.ts';
import { bankAssumptions } from '#engine/battery/usable.ts';
import type { Chemistry } from '#rig/rig.ts';
import { cells, type Row, row } from './row.ts';

const sandia = 'Stevens & Corey (Sandia), lead-acid near top-of-charge, from memory';
const design =
  'Battery Design, page “Efficiency”: lead-acid 85 % of the charge and 70 % of the energy, lithium above 99 %';
const bench = 'bench test of a 105 Ah AGM (a boat owner’s, pbase.com), charged from half at 0.2 C and 14.4 V';
const sheet = 'operation manual of an LFP battery, cell temperatures, makers’ tables 4.3 and 4.4';
const chart = 'handbooks: charging volts of flooded batteries at 25 °C by rate and charge, from memory';

const bank = (chemistry: Chemistry, ageYears?: number) =>
  present(bankOf([{ count: 1, capacityAh: 100, chemistry, ageYears }]));
const of = (chemistry: Chemistry) => chargingOf(bank(chemistry));
const trip = (chemistry: Chemistry, cycle: Cycle) => roundTrip(of(chemistry), cycle);
const whole = { from: 0, to: 1, rateC: 0.1, backC: 0.05 } as const;
/** Share that stays between two levels, %. */
const keeps = (chemistry: Chemistry, from: number, to: number) =>
  (100 * (to - from)) / putInAh(of(chemistry), 100 - from, 100 - to);
const age = (chemistry: Chemistry, years: number) =>
  present(bankAssumptions(bank(chemistry, years)).find(a => a.name === 'age')).value;

export const rows: readonly Row[] = [
  row('C4-30', `${sandia}: 91 % from empty to 84 %`, 'memory', 91, 5, () => keeps('flooded', 0, 84)),
  row('C4-30.top', `${sandia}: half and less above 90 %`, 'memory', 50, 5, () => keeps('flooded', 92, 100)),
  ...(['agm', 'gel', 'flooded'] as const).map(kind =>
    row(`C4-31.${kind}`, `${design}, ${kind}`, 'seen', 85, 7, () => 100 * trip(kind, whole).chargeShare),
  ),
  row('C4-31.energy', `${design}, flooded`, 'seen', 70, 8, () => 100 * trip('flooded', whole).energyShare),
  row('C4-31.lfp', design, 'seen', 99, 0.6, () => 100 * trip('lfp', whole).chargeShare),
  ...cells('common practice: charge factors, Ah in for Ah out of a whole cycle', 'memory', [
    ['C4-32.agm', 1.1, 0.05, () => 1 / trip('agm', whole).chargeShare],
    ['C4-32.gel', 1.1, 0.05, () => 1 / trip('gel', whole).chargeShare],
    ['C4-32.flooded', 1.17, 0.06, () => 1 / trip('flooded', whole).chargeShare],
  ]),
  ...cells('common practice: energy of a round trip, deep-cycle lead 78–85 %, LFP 92–98 %', 'memory', [
    ['C4-33.agm', 81.5, 3.5, () => 100 * trip('agm', whole).energyShare],
    ['C4-33.gel', 81.5, 3.5, () => 100 * trip('gel', whole).energyShare],
    ['C4-33.lfp', 95, 3, () => 100 * trip('lfp', whole).energyShare],
    ['C4-33.lfp.fast', 92, 1.5, () => 100 * trip('lfp', { ...whole, rateC: 0.5, backC: 0.5 }).energyShare],
  ]),
  row(
    'C4-34.knee',
    `${bench}: at absorption volts from 77.4 %`,
    'seen',
    77.4,
    2,
    () => 100 - 20 * of('agm').timeConstantH,
  ),
  row(
    'C4-34.time',
    `${bench}: 5.5 h to full`,
    'seen',
    5.5,
    0.9,
    () => fillTimeH(of('agm'), 50, 100 * (1 - chargeTable.agm.fullAt[0]), 20),
    'ours ends where chargers stop, at 97 %; theirs at a current of 0.5 %',
  ),
  ...cells(chart, 'memory', [
    ['C4-35.C20', 12.9, 0.2, () => voltsOnCharge(of('flooded'), 50, 5)],
    ['C4-35.C10', 13.2, 0.25, () => voltsOnCharge(of('flooded'), 50, 10)],
  ]),
  ...cells('LFP cells at half charge: 3.35 V at 0.2 C, 3.43 V at half C, from memory', 'memory', [
    ['C4-36.fifth', 13.4, 0.1, () => voltsOnCharge(of('lfp'), 50, 20)],
    ['C4-36.half', 13.72, 0.1, () => voltsOnCharge(of('lfp'), 50, 50)],
  ]),
  ...cells(sheet, 'memory', [
    ['C4-37.7C', 0.2, 0.001, () => chargeRateC({ chemistry: 'lfp' }, 7)],
    ['C4-37.12C', 0.2, 0.001, () => chargeRateC({ chemistry: 'lfp' }, 12)],
    ['C4-37.30C', 0.5, 0.001, () => chargeRateC({ chemistry: 'lfp' }, 30)],
    ['C4-37.-10C', 50, 0.1, () => limitsOf(bank('lfp'), -10).dischargeA],
    ['C4-37.10C', 100, 0.1, () => limitsOf(bank('lfp'), 10).dischargeA],
    ['C4-37.65C', 100, 0.1, () => 100 + limitsOf(bank('lfp'), 65).dischargeA],
    ['C4-37.-30C', 100, 0.1, () => 100 + limitsOf(bank('lfp'), -30).dischargeA],
  ]),
  ...cells('common practice: lead-acid is spent (80 %) after some five years, LFP after ten', 'memory', [
    ['C4-38.lead', 0.8, 0.03, () => age('agm', 5)],
    ['C4-38.lfp', 0.8, 0.03, () => age('lfp', 10)],
  ]),
  ...cells(
    'common practice: panels of campers charge at 0.05 to 0.1 C, chargers at 0.1 to 0.15 C',
    'memory',
    [
      ['C4-39.sun', 0.075, 0.012, () => usualRateC.sun[0]],
      ['C4-39.charger', 0.125, 0.02, () => usualRateC.charger[0]],
      ['C4-39.isolator', 1.5, 0.2, () => isolatorSlowness],
    ],
  ),
  ...cells('handbooks: charge acceptance halves from 25 to some 5 °C, from memory', 'memory', [
    [
      'C4-40',
      2,
      0.3,
      () => chargingOf(bank('agm'), { temperatureC: 5 }).timeConstantH / of('agm').timeConstantH,
    ],
  ]),
  ...cells(
    'common practice: sheets are for 25 °C; a battery with people is kept at 10 °C and more',
    'memory',
    [
      ['C2-20', 25, 3, () => batteryTemperature({}).value],
      ['C2-20.low', 15, 2, () => batteryTemperature({}).low],
      ['C2-20.high', 35, 4, () => batteryTemperature({}).high],
      [
        'C2-20.frost',
        10,
        1.5,
        () => batteryTemperature({ latitudeDeg: 62, longitudeDeg: 25, month: 1 }).value,
      ],
    ],
  ),
];
