import { averageA, dutyAt, usualCooler } from '#engine/loads/cooler.ts';
import { boxSurface, compressorDuty, coolingRatio, wallLeak } from '#engine/loads/cooler-rules.ts';
import { coolerKinds, cooling, type Insulation, insulations } from '#engine/loads/cooler-table.ts';
import { run } from '#rule/rule.ts';
import { cells, type Row, row } from './row.ts';

const trade = 'common practice';
const foam = (kind: Insulation) => insulations[kind];

/** Surface (m²) that conducts of a box that is half as long again as wide and high, by its width inside and its foam, m. */
const langmuir = (w: number, d: number): number => 8 * w ** 2 + 0.54 * 4 * 3.5 * w * d + 8 * 0.15 * d ** 2;
const surface = (litres: number, d: number): number =>
  run(boxSurface, { g: cooling.shape, V: litres / 1000, d });

/** What the walls of a usual fridge of 40 L let in at 25 °C, W. */
const wallsW = (): number => {
  const { thicknessM: d, conductivity: k, sealsShare: s } = foam(coolerKinds.fridge.insulation);
  return 21 * run(wallLeak, { k, A: surface(coolerKinds.fridge.volumeL, d), d, s });
};

/** Watts of heat for a watt between a plate and a condenser, °C. */
const pumped = (T_e: number, T_c: number): number =>
  run(coolingRatio, { c: cooling.carnotShare, T_e, T_0: 273.15, T_c, L: cooling.lossK });

/** Wh a day of a closed and empty box. */
const closedWh = (volumeL: number, insulation: Insulation, setPointC: number, ambientC: number): number =>
  24 * averageA({ setPointC, volumeL, insulation, goodsShare: 0, powerW: 60 }, ambientC, 1);

const boxes: readonly Row[] = [
  ...cells('the building trade: boards of rigid polyurethane are declared 0.022 to 0.028 W/(m·K)', 'memory', [
    ['fridge-foam.thin', 0.025, 0.003, () => foam('thin').conductivity],
    ['fridge-foam.usual', 0.025, 0.003, () => foam('usual').conductivity],
    ['fridge-foam.good', 0.025, 0.003, () => foam('good').conductivity],
    ['fridge-foam.thick', 0.025, 0.003, () => foam('thick').conductivity],
    ['fridge-foam.very thick', 0.025, 0.003, () => foam('very thick').conductivity],
  ]),
  ...cells(
    `${trade}: foam of 20 to 30 mm in light boxes, 30 to 40 in camping ones, 60 to 80 in household chests, 100 to 120 in solar ones`,
    'memory',
    [
      ['fridge-wall.thin', 0.025, 0.005, () => foam('thin').thicknessM],
      ['fridge-wall.usual', 0.035, 0.005, () => foam('usual').thicknessM],
      ['fridge-wall.thick', 0.07, 0.01, () => foam('thick').thicknessM],
      ['fridge-wall.very thick', 0.11, 0.01, () => foam('very thick').thicknessM],
    ],
  ),
  row(
    'fridge-shape',
    'Langmuir, Adams & Meikle (1913), formula from memory: walls, 0.54 of the edges, 0.15 of each corner; 40 L',
    'recomputed',
    langmuir((0.04 / 1.5) ** (1 / 3), 0.035),
    0.03 * langmuir((0.04 / 1.5) ** (1 / 3), 0.035),
    () => surface(40, 0.035),
    'ours takes the middle of the foam',
  ),
  row(
    'fridge-cans',
    'calorimetry, 4,186 J/(kg·K): a dozen cans of 375 mL a day, cooled by 20 K, W',
    'recomputed',
    (12 * 0.375 * 4186 * 20) / 86_400,
    0.5,
    () => coolerKinds.fridge.goodsShare[0] * wallsW(),
    'the low end of ours: hardly opened beside it',
  ),
];

const compressors: readonly Row[] = [
  ...cells(`${trade}, sheets of small compressors of 12 V, W of heat for a watt`, 'memory', [
    ['fridge-ratio.-23', 1.15, 0.15, () => pumped(-23.3, 54.4)],
    ['fridge-ratio.-10', 1.6, 0.2, () => pumped(-10, 45)],
  ]),
  ...cells(`${trade}: plates are 10 to 15 K below the box, condensers 10 to 20 K above the air`, 'memory', [
    ['fridge-plate', 12.5, 2.5, () => cooling.plateBelowK],
    ['fridge-condenser', 15, 5, () => cooling.condenserAboveK],
  ]),
  ...cells('definition: heat by what is pumped; never more than all the time', 'recomputed', [
    ['E2-17', 1, 1e-9, () => run(compressorDuty, { q: 200, P: 45, COP: 1.5 })],
    ['E2-17.part', 0.4, 1e-9, () => run(compressorDuty, { q: 24, P: 40, COP: 1.5 })],
  ]),
  row(
    'E2-17.tropics',
    `${trade}: a fridge in use rests a fifth of the time at 43 °C`,
    'memory',
    0.8,
    0.1,
    () => dutyAt(usualCooler(4), 43),
  ),
  row(
    'trade-freezer',
    `${trade}: a freezer of 12 V runs half of the time at 25 °C`,
    'memory',
    0.5,
    0.05,
    () => dutyAt(usualCooler(-15), 25),
  ),
];

/** Closed and empty, Wh a day; within 30 %: walls and compressors of one class differ as much. */
const sheets: readonly (readonly [
  id: string,
  volumeL: number,
  insulation: Insulation,
  setPointC: number,
  ambientC: number,
  wh: number,
])[] = [
  ['portable', 40, 'good', 5, 32, 0.9 * 12 * 24],
  ['portable freezer', 40, 'good', -15, 32, 2.1 * 12 * 24],
  ['upright of 85 L', 85, 'usual', 5, 25, 345],
  ['upright of 130 L', 130, 'usual', 5, 25, 460],
  ['chest freezer', 200, 'thick', -18, 25, 660],
  ['solar chest freezer', 165, 'very thick', -18, 32, 430],
];

const days: readonly Row[] = sheets.map(([id, volumeL, insulation, setPointC, ambientC, wh]) =>
  row(
    `fridge-day.${id}`,
    `makers’ sheets, ${id}, ${volumeL} L at ${ambientC} °C, Wh a day`,
    'memory',
    wh,
    0.3 * wh,
    () => closedWh(volumeL, insulation, setPointC, ambientC),
    'how each was tested is not known; boxes of one class differ as much',
  ),
);

export const rows: readonly Row[] = [...boxes, ...compressors, ...days];
