import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { conductorAssumptions } from '#engine/cable/conductor.ts';
import { fuseFor } from '#engine/cable/fuse.ts';
import { surroundingAssumptions } from '#engine/cable/surroundings.ts';
import { dcdcSizeFor } from '#engine/charging/path.ts';
import { explore } from '#engine/explore.ts';
import { eachHour } from '#engine/hours.ts';
import { fitsBank } from '#engine/inverter/check.ts';
import { hourAt } from '#engine/learn/predict.ts';
import { powerShareFor } from '#engine/loads/cooler.ts';
import { coolerKinds, insulations } from '#engine/loads/cooler-table.ts';
import { dailyUseAh, dayOf } from '#engine/loads/model.ts';
import { chargeOver } from '#engine/loads/over.ts';
import type { Battery, Chemistry, Load } from '#rig/rig.ts';
import { cells, type Row } from './row.ts';

const exact = 1e-9;

const use = (name: string, more: Partial<Load>) => ({
  loads: [{ name, count: 1, supply: 'dc' as const, ...more }],
  voltageV: 12,
});
const used = (hours: number, name: string, more: Partial<Load>): number =>
  chargeOver(dayOf(use(name, more), {}), hours);
const lamp = { currentA: 5, hoursPerDay: 5 } as const;

const bank = (chemistry: Chemistry, capacityAh: number, more: Partial<Battery> = {}) =>
  present(bankOf([{ count: 1, capacityAh, chemistry, ...more }]));
const pair = present(bankOf([{ count: 2, capacityAh: 100, chemistry: 'agm' }], 'series'));

const fourCells = present(bankOf([{ count: 4, capacityAh: 100, voltageV: 3.2, chemistry: 'lfp' }]));
const whOf = ({ capacityAh, voltageV }: { readonly capacityAh: number; readonly voltageV: number }): number =>
  capacityAh * voltageV;

/** The hours of a clock that are gone through, added up. */
function hoursFrom(clockH: number, hours: number): number {
  let sum = 0;
  eachHour(clockH, hours, (hour, span) => {
    sum += hour * span;
  });
  return sum;
}

/** The half width of a figure's range where two things that nobody told move it by so much each way. */
function together(one: number, other: number, at: number): number {
  const about = { value: 0, unit: '', why: '' };
  const { figures } = explore<'x'>(
    [
      { ...about, name: 'ambientC', low: -one, high: one },
      { ...about, name: 'age', low: -other, high: other },
    ],
    'x',
    values => {
      const sum = present(values.ambientC) + present(values.age);
      return { x: at === 0 ? sum : at * Math.exp(sum) };
    },
  );
  return at === 0 ? figures.x.high : Math.log(figures.x.high / at);
}

/** How much more wall a box of so many litres has than one of 40 L: cubes, to the middle of their foam. */
function wallShare(litres: number): number {
  const foamM = insulations[coolerKinds.fridge.insulation].thicknessM;
  const edgeM = (l: number): number => Math.cbrt(l / 1000) + foamM / 2;
  return (edgeM(litres) / edgeM(40)) ** 2;
}

const strands = (size: number): number =>
  present(
    conductorAssumptions({ as: 'metric', size, areaMm2: size }).find(({ name }) => name === 'strandFactor'),
  ).low;

export const rows: readonly Row[] = [
  ...cells('definition of an ampere-hour, on paper', 'recomputed', [
    ['S-01.5 A for 5 h, within 20 h', 25, exact, () => used(20, 'light', lamp)],
    ['S-01.5 A for 5 h a day, in 26 h', 27.0833333333, 1e-6, () => used(26, 'light', lamp)],
    ['S-01.5 A for 5 h, in the first 2 h', 10, exact, () => used(2, 'light', lamp)],
    ['S-02.30 Ah a day, in 6 h', 7.5, exact, () => used(6, 'fridge', { chargeAhPerDay: 30 })],
    ['S-02.30 Ah a day, in 2 days', 60, exact, () => used(48, 'fridge', { chargeAhPerDay: 30 })],
  ]),
  ...cells('US Department of Energy: a fridge plugged in all day runs 8 h of it', 'seen', [
    ['E2-02.4 A', 32, exact, () => dailyUseAh(use('fridge', { currentA: 4, hoursPerDay: 24 / 3 }), {})],
  ]),
  ...cells('definition of the day', 'recomputed', [
    ['S-03.half past ten at night, 4 h on', 22 * 0.5 + 23 + 0 + 1 + 2 * 0.5, exact, () => hoursFrom(22.5, 4)],
    ['S-03.two days on', 2 * 276, exact, () => hoursFrom(7, 48)],
    // 15° of longitude an hour.
    ['S-04.150° E', 10, exact, () => hourAt(Date.UTC(2026, 0, 1), 150)],
    ['S-04.75° W', 19, exact, () => hourAt(Date.UTC(2026, 0, 1), -75)],
  ]),
  ...cells('IATA guidance on batteries: Wh = V × Ah, 20,000 mAh at 3.7 V are 74 Wh', 'memory', [
    ['S-05.3.7 V', 74, 0.01, () => whOf(bank('lfp', 20, { voltageV: 3.7 }))],
    ['S-05.3.6 V', 72, 2.5, () => whOf(bank('lfp', 20, { voltageV: 3.6 }))],
    ['S-05.four cells of 3.2 V are no power bank', 1280, 0.01, () => whOf(fourCells)],
  ]),
  ...cells('NEC 240.6(A), standard ratings of fuses: 600, 700, 800 A', 'memory', [
    ['S-11.562 A', 600, 0, () => fuseFor(450).ratingA],
    ['S-11.650 A', 700, 0, () => fuseFor(520).ratingA],
    ['S-11.775 A', 800, 0, () => fuseFor(620).ratingA],
  ]),
  ...cells('ISO 6722 beside IEC 60228 class 5: 0.527 and 0.554 mΩ/m of 35 mm²', 'memory', [
    ['D1b-11.share', 0.527 / 0.554, 0.001, () => strands(35)],
  ]),
  ...cells('ABYC E-11, conductors bundled: three 70 %', 'memory', [
    [
      'S-09.unknown',
      0.7,
      exact,
      () => present(surroundingAssumptions().find(({ name }) => name === 'bundleShare')).low,
    ],
  ]),
  ...cells('common practice: lead-acid is charged by a quarter of its Ah at most', 'memory', [
    ['S-06.100 Ah', 25, 0, () => dcdcSizeFor(bank('agm', 100))],
    ['S-06.200 Ah', 50, 0, () => dcdcSizeFor(bank('agm', 200))],
  ]),
  ...cells('JCGM 100 (GUM), 5.1.2: what is independent adds up by squares; 3 and 4 are 5', 'recomputed', [
    ['S-07.sum', 5, 1e-9, () => together(3, 4, 0)],
    ['S-07.5 and 12', 13, 1e-9, () => together(5, 12, 0)],
    ['S-07.factors', 0.5, 1e-9, () => together(0.3, 0.4, 80)],
  ]),
  ...cells(
    'rest voltages of the trade: a lead-acid battery half full has 12.2 V, two in series twice that',
    'memory',
    [
      ['C3-22.50.bank', 12.2, 0.15, () => fitsBank(bank('agm', 100), 0).sagToV],
      ['C3-22.50.two', 24.4, 0.3, () => fitsBank(pair, 0).sagToV],
    ],
  ),
  ...cells('common practice: inverters cut out at 10.5 V, on 24 V at 21 V', 'memory', [
    ['S-10.12 V', 10.5, 0, () => fitsBank(bank('agm', 100), 0).cutOutV],
    ['S-10.24 V', 21, 0, () => fitsBank(pair, 0).cutOutV],
  ]),
  ...cells('geometry of a cube, on paper: its walls to the middle of the foam', 'recomputed', [
    ['S-08.80 L', wallShare(80), 1e-6, () => powerShareFor(80, coolerKinds.fridge)],
    ['S-08.15 L', wallShare(15), 1e-6, () => powerShareFor(15, coolerKinds.fridge)],
  ]),
];
