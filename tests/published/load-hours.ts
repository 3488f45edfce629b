import { present } from '#basics/present.ts';
import { kindOf } from '#engine/loads/cooler.ts';
import { coolerKinds } from '#engine/loads/cooler-table.ts';
import { householdKinds } from '#engine/loads/household-table.ts';
import { runningCurrentA } from '#engine/loads/model.ts';
import { meanwhileA } from '#engine/loads/over.ts';
import { currentOverHours } from '#engine/loads/rules.ts';
import type { Load } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import { cells, type Row } from './row.ts';

const thing = (name: string, more: Partial<Load>): Load => ({ name, count: 1, supply: 'dc', ...more });
const isFreezer = (setPointC: number): number => Number(kindOf(setPointC) === coolerKinds.freezer);
/** Of an appliance for mains that was told in amps, A at 12 V. */
const atBattery = (currentA: number): number =>
  runningCurrentA(
    thing('thing', { supply: 'ac', currentA }),
    { loads: [], voltageV: 12, mainsV: 230 } as never,
    {
      inverterEfficiency: 0.9,
    },
  );

export const rows: readonly Row[] = [
  ...cells('definition, on paper: all that runs at once, and what is drawn in some hours', 'recomputed', [
    [
      'E-20.meanwhile, 1 A and a lamp of 2 A',
      3,
      1e-6,
      () =>
        meanwhileA(
          {
            loads: [thing('pump', { currentA: 1, isAverage: true }), thing('light', { currentA: 2 })],
            voltageV: 12,
          },
          {},
        ),
    ],
    ['E-20.hours, 20 Ah in 8 h', 2.5, 1e-9, () => run(currentOverHours, { Q: 20, t: 8 })],
  ]),
  ...cells('articles on NEMA MG 1: motors across the line start with 5 to 8 times their current', 'seen', [
    ['E3-07.hard.fridge', 8, 1, () => present(householdKinds.fridge.hardSurge)],
    ['E3-07.hard.bar', 8, 1, () => present(householdKinds.small.hardSurge)],
    ['E3-07.hard.chest', 8, 1, () => present(householdKinds.freezer.hardSurge)],
  ]),
  ...cells('sockets give 10 to 16 A, of 120 V up to 20 A: more was measured at the battery', 'memory', [
    ['trade-socket.18', 1, 0.1, () => Number(atBattery(18) > 100)],
    ['trade-socket.22', 22, 0.1, () => atBattery(22)],
  ]),
  ...cells('IEC 62552: a compartment of no star is above −6 °C, one star is −6 °C', 'memory', [
    ['E2-30.none', 0, 0.1, () => isFreezer(-4.5)],
    ['E2-30.star', 1, 0.1, () => isFreezer(-6)],
  ]),
];
