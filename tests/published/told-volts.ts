import { present } from '#basics/present.ts';
import { bankOf, nominalVoltage } from '#engine/battery/bank.ts';
import { nextUsualSize } from '#engine/battery/required.ts';
import { chargeAtRest, isOnCharge } from '#engine/battery/rest.ts';
import { fuseSource } from '#engine/cable/breaking.ts';
import { gaugeFor } from '#engine/cable/conductor.ts';
import { cells, type Row } from './row.ts';

const atRest = (volts: number): number => chargeAtRest(volts, 'flooded').value;
const onCharge = (volts: number): number => Number(isOnCharge(volts, 'flooded'));
const of48V = present(bankOf([{ count: 1, capacityAh: 100, voltageV: 51.2, chemistry: 'lfp' }]));

export const rows: readonly Row[] = [
  ...cells('golf-cart makers’ sheets that agree, 6 V at rest: full 6.37 V, half 6.10 V', 'memory', [
    ['V-01.6 V full', 100, 5, () => atRest(6.37)],
    ['V-01.6 V half', 50, 12, () => atRest(6.1)],
    ['V-01.24 V full', 100, 5, () => atRest(4 * 6.37)],
    ['V-01.24 V half', 50, 12, () => atRest(4 * 6.1)],
    ['V-01.48 V full', 100, 5, () => atRest(8 * 6.37)],
    ['V-01.48 V half', 50, 12, () => atRest(8 * 6.1)],
  ]),
  ...cells('common practice: below 1.75 V a cell nothing is left', 'memory', [
    ['V-02.12 V at 9 V', 0, 0, () => atRest(9)],
    ['V-02.24 V at 20 V', 0, 0, () => atRest(20)],
    ['V-02.48 V at 41 V', 0, 0, () => atRest(41)],
  ]),
  ...cells('makers’ sheets that agree: absorption at 2.4 V a cell, equalising at 2.6 V', 'memory', [
    ['V-03.6 V', 1, 0, () => onCharge(3 * 2.4)],
    ['V-03.12 V', 1, 0, () => onCharge(6 * 2.4)],
    ['V-03.12 V equalising', 1, 0, () => onCharge(6 * 2.6)],
    ['V-03.24 V', 1, 0, () => onCharge(12 * 2.4)],
    ['V-03.48 V', 1, 0, () => onCharge(24 * 2.4)],
    ['V-03.48 V equalising', 1, 0, () => onCharge(24 * 2.6)],
    ['V-03.24 V at rest', 0, 0, () => onCharge(12 * 2.12)],
  ]),
  ...cells('definition: 2 V to a lead cell, 3.2 V to one of lithium iron phosphate', 'recomputed', [
    ['V-04.one cell', 2, 0, () => nominalVoltage(2, 'flooded')],
    ['V-04.three cells', 6, 0, () => nominalVoltage(6, 'agm')],
    ['V-04.four lead cells', 8, 0, () => nominalVoltage(8, 'flooded')],
    ['V-04.36 V', 36, 0, () => nominalVoltage(36, 'agm')],
    ['V-04.lithium of 24 V', 25.6, 1e-9, () => nominalVoltage(24, 'lfp')],
    ['V-04.lithium of 48 V', 51.2, 1e-9, () => nominalVoltage(48, 'lfp')],
    ['V-04.two lithium cells', 6.4, 1e-9, () => nominalVoltage(6.4, 'lfp')],
  ]),
  ...cells(
    'makers’ sheets that agree: lithium iron phosphate is full at 3.65 V a cell, 16 cells at 58.4 V',
    'memory',
    [
      ['V-05.16 cells', 58.4, 2, () => fuseSource(48, of48V).fullV],
      ['V-05.4 cells', 14.6, 0.5, () => fuseSource(12).fullV],
      ['V-05.8 cells', 29.2, 1, () => fuseSource(24).fullV],
    ],
  ),
  ...cells('ASTM B258: the gauge with as much copper', 'recomputed', [
    ['V-06.4 AWG', 4, 0, () => gaugeFor(21.15)],
    ['V-06.more than 4 AWG, 3 not being sold', 2, 0, () => gaugeFor(26)],
    ['V-06.10 AWG', 10, 0, () => gaugeFor(5.26)],
  ]),
  ...cells(
    'common practice: batteries of 100 and 200 Ah are sold, larger banks are several alike',
    'memory',
    [
      ['V-07.95 Ah', 100, 0, () => nextUsualSize(95, 'lfp').sizeAh],
      ['V-07.95 Ah, how many', 1, 0, () => nextUsualSize(95, 'lfp').count],
      ['V-07.100 Ah is enough for 100', 100, 0, () => nextUsualSize(100, 'lfp').sizeAh],
    ],
  ),
];
