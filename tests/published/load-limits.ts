import { present } from '#basics/present.ts';
import { fitsRating, fitsSurge } from '#engine/inverter/check.ts';
import { batteryPowerFor, idleShare } from '#engine/inverter/efficiency.ts';
import { throughWatts } from '#engine/inverter/watts.ts';
import { builtAs } from '#engine/loads/build.ts';
import { dutyAt, usualCooler } from '#engine/loads/cooler.ts';
import { coolerKinds, insulations } from '#engine/loads/cooler-table.ts';
import { householdKinds } from '#engine/loads/household-table.ts';
import { dailyUseAh, useAssumptions } from '#engine/loads/model.ts';
import { inputFactorOf, isPerhapsThreeWay, readLoads } from '#engine/loads/reading.ts';
import type { Load } from '#rig/rig.ts';
import { type Cell, cells, type Row } from './row.ts';

const trade = 'common practice';
const dc = (name: string, more: Partial<Load> = {}): Load => ({ name, count: 1, supply: 'dc', ...more });
const use = (...loads: Load[]) => ({ loads, voltageV: 12, ambientC: 25 });
const cycles = (currentA: number): number =>
  Number(present(readLoads({ loads: [dc('fridge', { currentA })] })[0]).cycles);
const spanOf = (load: Load, name: string, end: 'low' | 'value' | 'high'): number =>
  present(useAssumptions(use(load)).find(a => a.name === name))[end];

type Span = readonly [low: number, likely: number, high: number];
/** A span's three cells, each within 15 %. */
const spans = (id: string, given: Span, ours: Span): readonly Cell[] =>
  (['low', 'likely', 'high'] as const).map(
    (end, i): Cell => [`${id}.${end}`, present(given[i]), 0.15 * present(given[i]), () => present(ours[i])],
  );

const smallLoads: readonly Row[] = [
  ...cells('inverter sheets: 6 to 20 W of idle draw at 1,500 W, about 10', 'memory', [
    ['trade-idle', 10.5, 1.5, () => 1500 * idleShare.value],
    ['trade-idle.low', 6, 0.8, () => 1500 * idleShare.low],
    ['trade-idle.high', 20, 3, () => 1500 * idleShare.high],
  ]),
  ...cells(
    'on paper: an inverter of 1,000 W that idles at 7 W and takes 31.0 W for 20 W by the curve of PVWatts; between them in a straight line',
    'recomputed',
    [
      ['D-small.nothing', 7.12, 0.02, () => batteryPowerFor({ loadW: 0.1, ratingW: 1000, efficiency: 0.9 })],
      ['D-small.half', 19, 0.1, () => batteryPowerFor({ loadW: 10, ratingW: 1000, efficiency: 0.9 })],
      ['D-small.curve', 31, 0.1, () => batteryPowerFor({ loadW: 20, ratingW: 1000, efficiency: 0.9 })],
    ],
  ),
  ...cells(`${trade}: an inverter in a camper has about 1,000 W, and idles at 7 W`, 'memory', [
    ['trade-left-on', 14, 1.5, () => dailyUseAh({ ...use(), isInverterLeftOn: true }, {})],
  ]),
];

const limits: readonly Row[] = [
  ...cells(`${trade}: 93 % of its rating is within what an inverter gives, 97 % is tight`, 'memory', [
    ['trade-rating.within', 1, 0.1, () => Number(fitsRating(1400, 1500) === 'yes')],
    ['trade-rating.tight', 1, 0.1, () => Number(fitsRating(1460, 1500) === 'tight')],
  ]),
  ...cells(
    `${trade}: a typical start of a third more than the surge is tight, of two thirds more it won’t start`,
    'memory',
    [
      ['trade-start.tight', 1, 0.1, () => Number(fitsSurge(2600, 1000) === 'tight')],
      ['trade-start.no', 1, 0.1, () => Number(fitsSurge(3400, 1000) === 'no')],
    ],
  ),
  ...cells('definition: a start that was told is no more than a surge that was told', 'recomputed', [
    ['D-start.within', 1, 0.1, () => Number(fitsSurge(1900, 1000, 2000, true) === 'yes')],
    ['D-start.above', 1, 0.1, () => Number(fitsSurge(2100, 1000, 2000, true) === 'no')],
  ]),
  ...cells(
    `${trade}: 2.2 A of a fridge on 12 V is what it averages, 2.8 A what it draws while it runs`,
    'memory',
    [
      ['trade-average', 0, 0.1, () => cycles(2.2)],
      ['trade-running', 1, 0.1, () => cycles(2.8)],
    ],
  ),
  ...cells(
    `${trade}: compressors of camping fridges draw up to 90 W, three-way heaters 100 W and more`,
    'memory',
    [
      ['trade-compressor', 0, 0.1, () => Number(isPerhapsThreeWay(dc('fridge', { powerW: 90 }), 12))],
      ['trade-heater', 1, 0.1, () => Number(isPerhapsThreeWay(dc('fridge', { powerW: 105 }), 12))],
    ],
  ),
  ...cells(`${trade}: household microwaves cook with up to 1,200 W; 1,400 W is what one takes in`, 'memory', [
    ['trade-cooks', 1, 0.1, () => Number(inputFactorOf(dc('microwave', { powerW: 1200 })) !== undefined)],
    ['trade-takes', 1, 0.1, () => Number(inputFactorOf(dc('microwave', { powerW: 1400 })) === undefined)],
  ]),
];

const camps: readonly Row[] = [
  ...cells(`${trade}: the air about a fridge in a camp is 17 °C or more over day and night`, 'memory', [
    [
      'trade-camp-air.low',
      17,
      2,
      () =>
        present(useAssumptions({ loads: [dc('fridge')], voltageV: 12 }).find(a => a.name === 'ambientC')).low,
    ],
  ]),
  ...cells('definition: 5 A at 12 V are 60 W to an inverter', 'recomputed', [
    ['D-through', 60, 0.1, () => throughWatts({ loads: [dc('thing', { currentA: 5 })], mainsV: 230 }, {})],
  ]),
];

const boxes: readonly Row[] = [
  ...cells(`${trade}: controls and fan take a twentieth of a fridge’s draw in the cold`, 'memory', [
    ['trade-in-the-cold', 0.05, 0.005, () => dutyAt(usualCooler(4), 0)],
  ]),
  ...cells(
    `${trade}: soft and light boxes have 25 mm, and lids that let in a third of what the walls do`,
    'memory',
    [
      ['trade-thin', 0.025, 0.004, () => insulations.thin.thicknessM],
      ['trade-thin.seals', 0.35, 0.05, () => insulations.thin.sealsShare],
    ],
  ),
  ...cells(`${trade}: lids of chests, opened from above, let in a tenth`, 'memory', [
    ['trade-chest.seals', 0.1, 0.015, () => insulations.thick.sealsShare],
    ['trade-solar-chest.seals', 0.1, 0.015, () => insulations['very thick'].sealsShare],
  ]),
  ...cells(`${trade}: openings and warm goods as a share of the walls: fridges in camps`, 'memory', [
    ...spans('trade-goods.fridge', [0.3, 0.65, 1], coolerKinds.fridge.goodsShare),
  ]),
  ...cells(`${trade}: the same of freezers`, 'memory', [
    ...spans('trade-goods.freezer', [0.1, 0.35, 0.7], coolerKinds.freezer.goodsShare),
  ]),
  ...cells(`${trade}: of household ones, over their labels`, 'memory', [
    ...spans('trade-goods.household', [0.1, 0.25, 0.6], householdKinds.fridge.goodsShare),
    ...spans('trade-goods.bar', [0.1, 0.25, 0.6], householdKinds.small.goodsShare),
    ...spans('trade-goods.chest', [0.05, 0.15, 0.4], householdKinds.freezer.goodsShare),
  ]),
  ...cells(`${trade}: bar fridges are set to 4 °C, chest freezers to −18`, 'memory', [
    ['trade-set.bar', 4, 0.5, () => householdKinds.small.setPointC],
    ['trade-set.chest', -18, 1, () => householdKinds.freezer.setPointC],
  ]),
  ...cells(
    'household compressors, sheets from memory: as much heat again for a watt as those of 12 V have, and a third more',
    'memory',
    [
      ['trade-pumps.fridge', 1.35, 0.15, () => householdKinds.fridge.pumping],
      ['trade-pumps.chest', 1.35, 0.15, () => householdKinds.freezer.pumping],
      ['trade-pumps.bar', 1.1, 0.15, () => householdKinds.small.pumping],
    ],
  ),
  ...cells(
    `${trade}: compressors of 45 W sit on boxes of 26 to 60 L; boxes in camps have 20 to 80 L`,
    'memory',
    [
      ['trade-box.low', 26, 3, () => spanOf(dc('fridge', { powerW: 45 }), 'fridge volume', 'low')],
      ['trade-box.high', 60, 8, () => spanOf(dc('fridge', { powerW: 45 }), 'fridge volume', 'high')],
      ['trade-any-box.low', 20, 2.5, () => spanOf(dc('fridge'), 'fridge volume', 'low')],
      ['trade-any-box.high', 80, 10, () => spanOf(dc('fridge'), 'fridge volume', 'high')],
    ],
  ),
  ...cells(
    'definition: where nothing is told of its walls they are as usual, and a box as usual draws as usual',
    'recomputed',
    [
      ['D-walls', 1, 0.1, () => spanOf(dc('fridge', { volumeL: 80 }), 'fridge walls', 'value')],
      ['D-draw', 45, 1, () => present(builtAs(dc('fridge')).row).powerW[1]],
    ],
  ),
];

export const rows: readonly Row[] = [...smallLoads, ...limits, ...camps, ...boxes];
