import { present } from '#basics/present.ts';
import { convertKind } from '#engine/loads/convert.ts';
import { dailyEnergy } from '#engine/loads/rules.ts';
import { areaOfGauge, diameterOfGauge } from '#quantity/gauge.ts';
import { fromBase, toBase, unitOf } from '#quantity/quantity.ts';
import { run } from '#rule/rule.ts';
import type { Row } from './row.ts';

const base = (value: number, unit: string): number => toBase(value, present(unitOf(unit)));
const to = (value: number, unit: string): number => fromBase(value, present(unitOf(unit)));

/** Gauge (0 and below for 1/0 …), diameter in mm, area in mm². */
const gauges: readonly (readonly [id: string, gauge: number, mm: number, mm2: number])[] = [
  ['D2-01', -3, 11.684, 107.22],
  ['D2-03', -1, 9.266, 67.43],
  ['D2-04', 0, 8.251, 53.48],
  ['D2-06', 2, 6.544, 33.63],
  ['D2-08', 4, 5.189, 21.15],
  ['D2-10', 6, 4.115, 13.3],
  ['D2-12', 10, 2.588, 5.26],
  ['D2-13', 12, 2.053, 3.31],
  ['D2-14', 14, 1.628, 2.08],
  ['D2-16', 18, 1.024, 0.823],
];

export const rows: readonly Row[] = [
  {
    id: 'G-01',
    from: 'SI: an amp hour in coulombs (amps times seconds)',
    how: 'memory',
    gives: 3600,
    within: 1e-6,
    run: () =>
      to(
        convertKind({ value: 1, from: 'charge', to: 'current', voltageV: 12, hours: base(3600, 's') / 3600 }),
        'A',
      ),
  },
  {
    id: 'G-02',
    from: 'SI: a kilowatt hour in megajoules',
    how: 'seen',
    gives: 3.6,
    within: 1e-9,
    run: () =>
      convertKind({
        value: base(1, 'kWh'),
        from: 'energy',
        to: 'power',
        voltageV: 12,
        hours: base(3600, 's') / 3600,
      }) / 1e6,
  },
  {
    id: 'G-04',
    from: 'definition: 100 Ah at 12.8 V in Wh',
    how: 'recomputed',
    gives: 1280,
    within: 1e-9,
    run: () => run(dailyEnergy, { Q: 100, V: 12.8 }),
  },
  {
    id: 'G-05',
    from: 'definition of the circular mil: a wire a thousandth of an inch thick, mm²',
    how: 'recomputed',
    gives: 5.067075e-4,
    within: 1e-9,
    run: () => (Math.PI / 4) * (1000 * base(0.001, 'inch')) ** 2,
  },
  {
    id: 'G-06',
    from: 'definition of the international foot, m',
    how: 'memory',
    gives: 0.3048,
    within: 1e-12,
    run: () => base(1, 'ft'),
  },
  {
    id: 'G-07',
    from: 'definition of Fahrenheit: 50 °F in °C',
    how: 'recomputed',
    gives: 10,
    within: 1e-6,
    run: () => base(50, '°F'),
  },
  {
    id: 'E3-04',
    from: 'arithmetic: 10 W of idle draw for a day, Wh',
    how: 'recomputed',
    gives: 240,
    within: 1e-9,
    run: () => convertKind({ value: 10, from: 'power', to: 'energy', voltageV: 12, hours: base(1, 'day') }),
  },
  {
    id: 'trap-12',
    from: 'arithmetic: 10 W of idle draw is 20 Ah a day at 12 V',
    how: 'recomputed',
    gives: 20,
    within: 1e-9,
    run: () => convertKind({ value: 10, from: 'power', to: 'charge', voltageV: 12, hours: 24 }),
  },
  ...gauges.flatMap(([id, gauge, mm, mm2]): Row[] => [
    {
      id: `${id}.d`,
      from: `ASTM B258, gauge ${gauge}, diameter in mm`,
      how: 'seen',
      gives: mm,
      within: 0.001,
      run: () => diameterOfGauge(gauge),
    },
    {
      id: `${id}.a`,
      from: `ASTM B258, gauge ${gauge}, copper in mm²`,
      how: 'seen',
      gives: mm2,
      within: mm2 * 0.002,
      run: () => areaOfGauge(gauge),
    },
  ]),
];
