import { present } from '#basics/present.ts';
import { buildOf, builtAs } from '#engine/loads/build.ts';
import { averageA, type Cooler, dutyAt, usualCooler } from '#engine/loads/cooler.ts';
import { leakSpread } from '#engine/loads/cooler-table.ts';
import { coolerOf } from '#engine/loads/cools.ts';
import { type HouseholdKind, householdKinds, threeWayDrawsW } from '#engine/loads/household-table.ts';
import { readLoads } from '#engine/loads/reading.ts';
import type { Load } from '#rig/rig.ts';
import { cells, type Row, row } from './row.ts';

const trade = 'common practice';
const stock =
  'open data of a British stock of 2010 in a library of building models (IDEAS, residential appliances)';
const federal = '10 CFR 430.32(a), most kWh a year for those made from 2014';

/** A closed box of a kind and size at 90 °F, kWh a year. */
const closedKWh = (kind: HouseholdKind, volumeL: number): number => {
  const cooler: Cooler = { ...usualCooler(kind.setPointC, kind.powerW, kind), volumeL, goodsShare: 0 };
  return (averageA(cooler, 32.2, 1) * 8760) / 1000;
};

/** Largest energy of a fridge with a quarter of its litres a freezer over it, kWh a year: 1.76 L for one of the freezer. */
const mostKWh = (litres: number): number => 0.285 * (0.75 * litres + 1.76 * 0.25 * litres) + 233.7;

const ac = (more: Partial<Load>, name = 'fridge'): Load => ({ name, count: 1, supply: 'ac', ...more });
const isHousehold = (load: Load): number => Number(buildOf(load) === 'household');
const isSmall = (volumeL: number): number =>
  Number(builtAs(ac({ volumeL, build: 'household' })).kind === householdKinds.small);

/** kWh a day of a kind in use in a room, with the draw and size that are usual. */
const inUseKWh = (kind: HouseholdKind, airC: number): number =>
  (24 * averageA(usualCooler(kind.setPointC, kind.powerW, kind), airC, 1)) / 1000;

export const rows: readonly Row[] = [
  row(
    'cold-law.300',
    `${federal}: top-mounted freezer, 300 L`,
    'recomputed',
    mostKWh(300),
    0.1 * mostKWh(300),
    () => closedKWh(householdKinds.fridge, 300),
    'ours is one box of their mean temperature',
  ),
  row(
    'cold-law.500',
    `${federal}: top-mounted freezer, 500 L`,
    'recomputed',
    mostKWh(500),
    0.15 * mostKWh(500),
    () => closedKWh(householdKinds.fridge, 500),
    'ours is one box of their mean temperature',
  ),
  row(
    'cold-law.small',
    `${federal}: all-refrigerator, manual defrost, 100 L`,
    'recomputed',
    0.24 * 100 + 193.6,
    0.15 * 217.6,
    () => closedKWh(householdKinds.small, 100),
  ),
  row(
    'cold-law.chest',
    '10 CFR 430.32(a), from memory: chest freezer of 200 L, 7.29 kWh a year for an adjusted cubic foot and 107.8',
    'memory',
    7.29 * 1.76 * 7.063 + 107.8,
    0.3 * 198.4,
    () => closedKWh(householdKinds.freezer, 200),
    'the best of the classes; uprights are allowed half as much again',
  ),
  row(
    'cold-set',
    'definition: the mean of three quarters at 4 °C and a quarter at −18',
    'recomputed',
    0.75 * 4 - 0.25 * 18,
    0.2,
    () => householdKinds.fridge.setPointC,
  ),
  row(
    'cold-use.fridge',
    `${trade}: a household fridge in use takes 0.7 to 0.9 kWh a day at 25 °C`,
    'memory',
    0.8,
    0.1,
    () => inUseKWh(householdKinds.fridge, 25),
  ),
  row(
    'cold-use.share',
    `${stock}: a fridge-freezer runs 22 minutes 6,116 times a year, in a kitchen of 20 °C`,
    'seen',
    (22 * 6115.76) / 525_600,
    0.05,
    () => dutyAt(usualCooler(-1.5, 120, householdKinds.fridge), 20),
    'an older stock, which ran longer',
  ),
  ...cells(`${stock}, W while it runs`, 'seen', [
    ['cold-draw.fridge', 110, 13, () => householdKinds.fridge.drawsW[1]],
    ['cold-draw.fridge-freezer', 190, 20, () => householdKinds.fridge.drawsW[2]],
    ['cold-draw.chest', 190, 20, () => householdKinds.freezer.drawsW[2]],
  ]),
  ...cells(`${trade}: draws of household compressors, W`, 'memory', [
    ['cold-draw.low', 80, 10, () => householdKinds.fridge.drawsW[0]],
    ['cold-draw.bar', 80, 10, () => householdKinds.small.drawsW[1]],
    ['cold-draw.bar.low', 60, 10, () => householdKinds.small.drawsW[0]],
    ['cold-draw.bar.high', 120, 15, () => householdKinds.small.drawsW[2]],
    ['cold-draw.freezer', 110, 15, () => householdKinds.freezer.drawsW[1]],
    ['cold-draw.freezer.low', 70, 10, () => householdKinds.freezer.drawsW[0]],
    ['cold-draw.usual', 120, 15, () => householdKinds.fridge.powerW],
    ['cold-draw.usual bar', 80, 10, () => householdKinds.small.powerW],
    ['cold-draw.usual freezer', 110, 15, () => householdKinds.freezer.powerW],
  ]),
  ...cells(`${trade}: what is sold for a house, L`, 'memory', [
    ['cold-size.fridge', 300, 50, () => householdKinds.fridge.volumeL],
    ['cold-size.bar', 100, 15, () => householdKinds.small.volumeL],
    ['cold-size.chest', 200, 30, () => householdKinds.freezer.volumeL],
    [
      'cold-size.largest',
      600,
      60,
      () => {
        const load = ac({ powerW: 2000 });
        const [reading] = readLoads({ loads: [load] });
        return coolerOf(present(reading), { loads: [load], voltageV: 12 }, {}).volumeL;
      },
    ],
  ]),
  row(
    'cold-start',
    `${trade}: household compressors start with four to six times what they run at`,
    'memory',
    5,
    0.9,
    () => present(present(builtAs(ac({ powerW: 100 })).row).surge),
  ),
  ...cells(
    `${trade}: portables with a mains plug draw 45 to 70 W, household compressors 85 W and more`,
    'memory',
    [
      ['cold-which.portable', 0, 0, () => isHousehold(ac({ powerW: 65 }))],
      ['cold-which.household', 1, 0, () => isHousehold(ac({ powerW: 85 }))],
      // 0.3 A at 230 V is a portable's, 0.37 A a household one's.
      ['cold-which.amps', 0, 0, () => isHousehold(ac({ currentA: 65 / 230 }))],
      ['cold-which.more amps', 1, 0, () => isHousehold(ac({ currentA: 85 / 230 }))],
    ],
  ),
  ...cells(`${trade}: bar fridges have up to 140 L, household ones 160 L and more`, 'memory', [
    ['cold-which.bar', 1, 0, () => isSmall(140)],
    ['cold-which.no bar', 0, 0, () => isSmall(170)],
  ]),
  ...cells(`${trade}: portables have up to 130 L, also those with a mains plug`, 'memory', [
    ['cold-which.large portable', 0, 0, () => isHousehold(ac({ powerW: 65, volumeL: 165 }))],
    ['cold-which.tall', 1, 0, () => isHousehold(ac({ powerW: 65, volumeL: 230 }))],
  ]),
  ...cells(`${trade}: heaters of three-way fridges, of 80, 110 and 180 L, W at 12 V`, 'memory', [
    ['cold-three-way.low', 100, 15, () => threeWayDrawsW[0]],
    ['cold-three-way', 135, 20, () => threeWayDrawsW[1]],
    ['cold-three-way.high', 180, 25, () => threeWayDrawsW[2]],
  ]),
  ...cells(`${trade}: sheets of boxes of one size differ from a quarter less to a third more`, 'memory', [
    ['cold-walls.low', 0.75, 0.1, () => leakSpread[0]],
    ['cold-walls.high', 1.33, 0.15, () => leakSpread[1]],
  ]),
];
