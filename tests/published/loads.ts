import { present } from '#basics/present.ts';
import { applianceOf } from '#catalog/appliances.ts';
import { solveFor } from '#engine/explore.ts';
import { dutyAt, usualCooler } from '#engine/loads/cooler.ts';
import { dailyUseAh, runningCurrentA, type Use, usePerLoad } from '#engine/loads/model.ts';
import { dailyEnergy } from '#engine/loads/rules.ts';
import type { Load } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Row } from './row.ts';

const doe = 'US Department of Energy, Estimating appliance and home electronic energy use';
const fridge = 'Harrington, Aye, Fuller (2018), Applied Energy 211:346–357';
const V = 12;

const load = (name: string, rest: Partial<Load>): Load => ({ name, count: 1, supply: 'dc', ...rest });
const use = (...loads: Load[]): Use => ({ loads, voltageV: V });
const energyWh = (...loads: Load[]): number => run(dailyEnergy, { Q: dailyUseAh(use(...loads), {}), V });
/** Power (W) a load takes at 12 V, no inverter between. */
const inputW = (name: string, powerW: number): number => {
  const one = load(name, { powerW });
  return V * runningCurrentA(one, use(one), {});
};
const likelyW = (name: string): number => present(applianceOf(name)).powerW[1];
const duty = (ambientC: number, setPointC = 4): number => dutyAt(usualCooler(setPointC), ambientC);

/** Names as ours, with the published span of watts. */
const plates: readonly (readonly [
  id: string,
  name: string,
  low: number,
  high: number,
  how: 'seen' | 'memory',
  from: string,
])[] = [
  ['E1-01', 'coffee machine', 900, 1200, 'seen', doe],
  ['E1-02', 'hair dryer', 1200, 1875, 'seen', doe],
  ['E1-03', 'toaster', 800, 1400, 'seen', doe],
  ['E1-04', 'microwave', 750, 1100, 'seen', doe],
  ['E1-05', 'laptop', 49, 51, 'seen', doe],
  ['E1-06', 'ceiling fan', 65, 175, 'seen', doe],
  ['E1-07', 'electric blanket', 60, 100, 'seen', doe],
  ['E1-08', 'clock radio', 9, 11, 'seen', doe],
  ['E1-09', 'portable heater', 750, 1500, 'seen', doe],
  ['E1-10.dry', 'cpap', 15, 60, 'memory', 'common practice, CPAP makers’ sheets, no heat'],
  [
    'E1-10.wet',
    'cpap with humidifier',
    70,
    100,
    'memory',
    'common practice, CPAP makers’ sheets, with humidifier',
  ],
  ['E1-11.dry', 'cpap', 20, 30, 'memory', 'common practice, one machine metered at 25 W, humidifier off'],
  [
    'E1-11.wet',
    'cpap with humidifier',
    70,
    82,
    'memory',
    'common practice, one machine metered at 76 W, humidifier on',
  ],
  ['E1-12', 'kettle', 2000, 2400, 'memory', 'common practice, kettles of Australia and Europe'],
  ['E1-13', 'phone', 5, 20, 'memory', 'common practice, phone chargers'],
];

const ratio = (a: number, b: number): number => duty(a) / duty(b);

export const rows: readonly Row[] = [
  ...plates.map(
    ([id, name, low, high, how, from]): Row => ({
      id,
      from: `${from}: ${name}`,
      how,
      gives: (low + high) / 2,
      within: (high - low) / 2,
      run: () => likelyW(name),
    }),
  ),
  {
    id: 'E2-01',
    from: `${doe}: (120 + 150) W, 4 h a day, a year`,
    how: 'seen',
    gives: 394,
    within: 0.5,
    run: () =>
      (energyWh(
        load('computer', { powerW: 120, hoursPerDay: 4 }),
        load('screen', { powerW: 150, hoursPerDay: 4 }),
      ) *
        365) /
      1000,
  },
  {
    id: 'E2-02',
    from: `${doe}: a fridge runs a third of the hours it is plugged in`,
    how: 'seen',
    gives: 8,
    within: 0.5,
    differs: 'ours has 35 % at 25 °C, and more in the heat',
    run: () => 24 * duty(25),
  },
  {
    id: 'E2-03',
    from: `${doe}: 1,000 W for a quarter of an hour a day`,
    how: 'seen',
    gives: 0.25,
    within: 1e-9,
    run: () => energyWh(load('oven', { powerW: 1000, minutesPerDay: 15 })) / 1000,
  },
  {
    id: 'E2-04',
    from: 'common practice, a measured microwave of 700 W output',
    how: 'memory',
    gives: 1100,
    within: 30,
    run: () => inputW('microwave', 700),
  },
  {
    id: 'E2-05',
    from: 'common practice, measured microwaves of 1,000 W output',
    how: 'memory',
    gives: 1550,
    within: 50,
    run: () => inputW('microwave', 1000),
  },
  {
    id: 'trap-11',
    from: 'common practice: a "1000 W" microwave draws about 1,500 W',
    how: 'memory',
    gives: 1500,
    within: 100,
    run: () => inputW('microwave', 1000),
  },
  ...[1, 2, 4].map(
    (litres, i): Row => ({
      id: `E2-07.${litres}L`,
      from: `physics, 4,186 J/(kg·K): ${litres} L a day from 15 °C to the boil in a kettle that brings 85 % into it (E2-09, common practice), h`,
      how: 'recomputed',
      gives: (litres * 98.84) / 0.85 / present(applianceOf('kettle')).powerW[1],
      within: 0.003,
      run: () => present(present(applianceOf('kettle')).hoursPerDay[i]),
    }),
  ),
  {
    id: 'E2-10',
    from: `${fridge}: wall gain and condensing temperature both rise with the ambient`,
    how: 'seen',
    gives: 2.78,
    within: 0.45,
    differs: 'between load alone (2.33) and load with Carnot’s ratio (3.24)',
    run: () => ratio(32, 16),
  },
  {
    id: 'E2-11',
    from: 'physics: fridge at 4 °C, wall gain alone from 16 to 32 °C, the floor of ours',
    how: 'recomputed',
    gives: 2.33,
    within: 0.5,
    differs: 'ours adds the compressor’s fall',
    run: () => ratio(32, 16),
  },
  {
    id: 'E2-12',
    from: 'physics: the same with Carnot’s ratio, the ceiling of ours',
    how: 'recomputed',
    gives: 3.24,
    within: 0.75,
    differs: 'real compressors fall less than Carnot’s',
    run: () => ratio(32, 16),
  },
  {
    id: 'E2-13',
    from: 'physics: fridge at 4 °C from 25 to 32 °C with Carnot’s ratio, the ceiling',
    how: 'recomputed',
    gives: 1.52,
    within: 0.15,
    differs: 'real compressors fall less than Carnot’s',
    run: () => ratio(32, 25),
  },
  {
    id: 'E2-15',
    from: 'IEC 62552-3: half of 16 and 32 °C is about a day at 24 to 25 °C',
    how: 'memory',
    gives: 24.5,
    within: 0.5,
    run: () => present(solveFor((duty(16) + duty(32)) / 2, 16, 32, duty)),
  },
  {
    id: 'method-25',
    from: 'common practice: a fridge at 4 °C runs 35 % of the time at 25 °C',
    how: 'memory',
    gives: 0.35,
    within: 0.01,
    run: () => duty(25),
  },
  {
    id: 'method-35',
    from: 'common practice: a fridge at 4 °C runs half of the time at 35 °C, ten points either way',
    how: 'memory',
    gives: 0.5,
    within: 0.1,
    run: () => duty(35),
  },
  {
    id: 'trade-50h',
    from: 'common practice: 1 A on a 100 Ah AGM, half of it used',
    how: 'memory',
    gives: 50,
    within: 1e-9,
    run: () => 50 / (present(usePerLoad(use(load('fridge', { currentA: 1 })), {})[0]).chargeAh / 24),
  },
];
