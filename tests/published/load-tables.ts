import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { cutOutV, inverterFor, loadedVoltage, surgeFactor } from '#engine/inverter/check.ts';
import {
  idleShare,
  inverterEfficiency,
  inverterSizesW,
  likelyInverterW,
} from '#engine/inverter/efficiency.ts';
import { runningCurrentA, useAssumptions } from '#engine/loads/model.ts';
import { cells, type Row, row } from './row.ts';

const [unknown, lithium, lead] = [undefined, true, false].map(kind => loadedVoltage(12, kind));
const air = present(
  useAssumptions({
    loads: [{ name: 'fridge', count: 1, powerW: 45, supply: 'dc' }],
    voltageV: 12,
  }).find(a => a.name === 'ambientC'),
);

const inverters: readonly Row[] = [
  ...[150, 300, 600, 1000, 1500, 2000, 2500, 3000, 4000, 5000].map(size =>
    row(`E3-11.${size}`, `common practice: inverters of ${size} W are sold`, 'memory', 1, 0, () =>
      Number(inverterSizesW.some(s => s === size)),
    ),
  ),
  ...cells('common practice: inverters lose 6 to 15 % at their rating', 'memory', [
    ['E3-06.value', 0.9, 0.05, () => inverterEfficiency.value],
    ['E3-06.low', 0.85, 0.05, () => inverterEfficiency.low],
    ['E3-06.high', 0.94, 0.05, () => inverterEfficiency.high],
  ]),
  ...cells('common practice: twice the rating for a moment; cut-out at 1.75 V a cell', 'memory', [
    ['E3-12', 2, 0.3, () => surgeFactor],
    ['E3-13', 6 * 1.75, 0.2, () => cutOutV],
    ['E3-12.size', 1500, 0, () => inverterFor(1000, 2900)],
    ['E3-12.next', 1500, 0, () => likelyInverterW(1200)],
  ]),
  ...cells(
    'common practice: a 12 V lead-acid battery has 11.5 to 12.5 V under load, lithium 12.3 to 13.2 V',
    'memory',
    [
      ['E3-14', 12, 0.5, () => present(lead).value],
      ['E3-14.low', 11.5, 0.5, () => present(lead).low],
      ['E3-14.high', 12.5, 0.5, () => present(lead).high],
      ['E3-15', 12.8, 0.5, () => present(lithium).value],
      ['E3-15.low', 12.3, 0.5, () => present(lithium).low],
      ['E3-15.high', 13.2, 0.5, () => present(lithium).high],
      ['E3-16', 12, 0.5, () => present(unknown).value],
      ['E3-16.low', 11.5, 0.5, () => present(unknown).low],
      ['E3-16.high', 13, 0.7, () => present(unknown).high],
    ],
  ),
  row('E3-17', 'IEC 60038: mains of 230 V; 2 A of it through 90 % at 12 V', 'recomputed', 42.6, 1.5, () =>
    runningCurrentA(
      { name: 'heater', count: 1, currentA: 2, supply: 'ac' },
      { loads: [], voltageV: 12, inverterW: 500 },
      {},
    ),
  ),
  row(
    'E3-18',
    'definition: two 6 V batteries that stand together are 12 V',
    'recomputed',
    12,
    1e-9,
    () => present(bankOf([{ count: 2, capacityAh: 200, voltageV: 6, chemistry: 'agm' }])).voltageV,
  ),
];

const heat: readonly Row[] = [
  ...cells('common practice: an inverter of 1,500 W idles at 10 W', 'memory', [
    ['E3-04.share', 10, 1.7, () => 1500 * idleShare.value],
  ]),
  ...cells(
    'common practice: declared fridge energy is for about 25 °C; mild air is 20 °C, hot is 32 °C',
    'memory',
    [
      ['E2-16', 25, 3, () => air.value],
      ['E2-16.low', 20, 3, () => air.low],
      ['E2-16.high', 32, 3, () => air.high],
    ],
  ),
];

export const rows: readonly Row[] = [...inverters, ...heat];
