import { present } from '#basics/present.ts';
import { latitudeMonth } from '#climate/latitude.ts';
import { labelC } from '#engine/solar/cold.ts';
import { panelPowerFor, solarAssumptions } from '#engine/solar/model.ts';
import { largePanelW, leastRatio } from '#engine/solar/module.ts';
import { panelAssumptions } from '#engine/solar/panel.ts';
import { skyClearness } from '#engine/solar/sky.ts';
import { nineInTen } from '#engine/solar/spread.ts';
import { outsideRadiationOf } from '#engine/solar/sun.ts';
import { mountHeating, shadeShare } from '#engine/solar/tables.ts';
import { wiringAssumptions } from '#engine/solar/wiring.ts';
import { overAmps, usualLimitsV } from '#engine/solar/wiring-fit.ts';
import { coldVoltage } from '#engine/solar/wiring-rules.ts';
import { run } from '#rule/rule.ts';
import { cells, type Row, row } from './row.ts';

type End = 'value' | 'low' | 'high';
const ofPanel = (name: string, end: End, controller?: 'mppt' | 'pwm'): number =>
  present(
    solarAssumptions({ latitudeDeg: -30, longitudeDeg: 150, month: 1, controller }).find(
      a => a.name === name,
    ),
  )[end];
const wires = (name: string, end: End, powerW: number, controller: 'mppt' | 'pwm' = 'mppt'): number =>
  present(
    wiringAssumptions({ panels: [{ count: 1, powerW }], controller, blocks: 1, isShaded: false }).find(
      a => a.name === name,
    ),
  )[end];

/** Open-circuit volts at −15 °C against those of the label, by one end of the coefficient. */
const frostyRise = (end: End): number =>
  run(coldVoltage, { V_s: 1, beta: wires('voltageCoefficient', end, 100), T: -15, T_0: labelC });
/** What weak light under cloud takes, by one end. */
const weakLight = (end: End): number =>
  present(panelAssumptions({ sky: 'overcast' }).find(a => a.name === 'reflectionLoss'))[end];

/** Mean sun by month, kWh/m² a day, of open weather files, against what the latitude alone says. */
const places: readonly (readonly [
  id: string,
  name: string,
  latitude: number,
  share: number,
  months: readonly (number | undefined)[],
])[] = [
  [
    'A6-02',
    'Mildura 2010',
    -34.24,
    0.15,
    [8.08, 6.47, 5.5, 3.95, 3.05, 2.48, 2.62, 3.33, 4.33, 5.64, 6.26, 7.84],
  ],
  [
    'A6-04',
    'Los Angeles',
    33.93,
    0.15,
    [2.72, 3.41, 4.76, 5.9, 6.37, 7.13, 7.31, 6.72, 5.43, 4.17, 3.25, 2.72],
  ],
  ['A6-05', 'Chicago', 41.98, 0.15, [1.76, 2.49, 3.44, 4.39, 5.98, 6.29, 6.18, 5.16, 4.19, 2.94, 1.82, 1.5]],
  ['A6-03', 'Seville', 37.42, 0.2, [2.42, 3.37, 4.81, 5.43, 6.94, 7.18, 7.52, 6.82, 5.35, 3.74, 2.54, 2.17]],
  [
    'A6-01',
    'Alice Springs',
    -23.8,
    0.2,
    [7.74, 7.4, 6.76, 5.67, 4.48, 4.26, 4.22, 5.2, 6.43, 6.78, 7.52, 7.8],
  ],
  ['A6-07', 'Singapore', 1.37, 0.2, [4.67, 5.17, 5.02, 4.65, 4.39, 4.33, 4.38, 4.46, 4.55, 4.39]],
  ['A6-11', 'Zurich', 47.48, 0.2, [undefined, 1.81, 3.06, 4.31, 5.02, 5.53, 5.4, 4.72, 3.5]],
  ['A6-08', 'Amsterdam', 52.3, 0.3, [undefined, 1.36, 2.48, 3.43, 4.81, 4.93, 4.93, 4.07, 2.72]],
];

const byLatitude: readonly Row[] = places.flatMap(([id, name, latitude, share, months]) =>
  months.flatMap((gives, m) =>
    gives === undefined
      ? []
      : [
          row(
            `${id}.lat.${m + 1}`,
            `open hourly weather file, ${name}, month ${m + 1}`,
            'seen',
            gives,
            share * gives,
            () => latitudeMonth(latitude, m + 1).clearness * outsideRadiationOf(latitude, m + 1),
            'ours is the mean along the latitude, of every coast and inland',
          ),
        ],
  ),
);

const clouds: readonly Row[] = [
  ...cells('NASA POWER and FAO-56: cloudless ground gets 0.71 to 0.77 of the outside sun', 'seen', [
    ['A5d-10', 0.74, 0.05, () => skyClearness.sunny.value],
    ['A5d-10.low', 0.71, 0.06, () => skyClearness.sunny.low],
    ['A5d-10.high', 0.77, 0.05, () => skyClearness.sunny.high],
  ]),
  ...cells(
    'common practice: full cloud lets through 10 to 30 % of a clear day, which is 0.75',
    'recomputed',
    [
      ['A5-14', 0.15, 0.015, () => skyClearness.overcast.value],
      ['A5-14.low', 0.075, 0.008, () => skyClearness.overcast.low],
      ['A5-14.high', 0.225, 0.03, () => skyClearness.overcast.high],
    ],
  ),
  row(
    'A5-15',
    'normal distribution: nine in ten within 1.645 deviations, from memory',
    'memory',
    1.645,
    0.001,
    () => nineInTen,
  ),
];

const panels: readonly Row[] = [
  ...cells('PVWatts manual, table 2: −0.47 %/K standard, −0.35 premium', 'memory', [
    ['B1-11.low', -0.0047, 1e-5, () => ofPanel('powerCoefficient', 'low')],
    ['B1-11.high', -0.0035, 1e-5, () => ofPanel('powerCoefficient', 'high')],
    ['B1-11.middle', -0.0041, 0.0005, () => ofPanel('powerCoefficient', 'value')],
  ]),
  ...cells('Skoplaki & Palyvos (2009): 20.8 free, 26 flat and ventilated, 56.3 not ventilated', 'seen', [
    ['B1-08.tilted', 20.8, 3, () => mountHeating.tilted.value],
    ['B1-08.tilted.low', 20.8, 3, () => mountHeating.tilted.low],
    ['B1-09.tilted.high', 26, 5, () => mountHeating.tilted.high],
    ['B1-09.flat.low', 26, 3, () => mountHeating.flat.low],
    ['B1-10.flat.high', 56.3, 5, () => mountHeating.flat.high],
  ]),
  ...cells(
    'PVWatts: soiling 2 %, wiring and connections 2.5 %, mismatch 2 %; cables by ISO 10133 to 3 %',
    'seen',
    [
      ['B2-01.dirt.low', 0.02, 0.003, () => ofPanel('dirtLoss', 'low')],
      ['B2-01.wiring', 0.03, 0.005, () => ofPanel('wiringLoss', 'value')],
      ['B2-01.mismatch.low', 0.02, 0.003, () => ofPanel('mismatchLoss', 'low')],
      ['B2-01.mismatch', 0.045, 0.0085, () => ofPanel('mismatchLoss', 'value')],
    ],
  ),
  ...cells('definition: a panel without shade keeps all', 'recomputed', [
    ['B3-05', 1, 0, () => shadeShare.none.value],
    ['B3-05.low', 1, 0, () => shadeShare.none.low],
    ['B3-05.high', 1, 0, () => shadeShare.none.high],
  ]),
];

const controllers: readonly Row[] = [
  ...cells('common practice: MPPT controllers turn over 92 to 98 %', 'memory', [
    ['B3-06', 0.95, 0.03, () => ofPanel('controllerEfficiency', 'value', 'mppt')],
    ['B3-06.low', 0.92, 0.03, () => ofPanel('controllerEfficiency', 'low', 'mppt')],
    ['B3-06.high', 0.98, 0.02, () => ofPanel('controllerEfficiency', 'high', 'mppt')],
    ['B3-07', 0.95, 0.03, () => wires('controllerEfficiency', 'value', 100)],
    ['B3-07.low', 0.92, 0.03, () => wires('controllerEfficiency', 'low', 100)],
    ['B3-07.high', 0.98, 0.02, () => wires('controllerEfficiency', 'high', 100)],
  ]),
  row('B3-08', 'common practice: without tracking 15 to 30 % less', 'memory', 0.775, 0.075, () =>
    ofPanel('controllerEfficiency', 'low'),
  ),
  ...cells('common practice: 36 cells have their best at 17 to 18.5 V and 21 to 23 V open', 'memory', [
    ['B3-01.panel', 18, 0.5, () => ofPanel('panelVoltage', 'value', 'pwm')],
    ['B3-01.panel.low', 17, 0.5, () => ofPanel('panelVoltage', 'low', 'pwm')],
    ['B3-01.panel.high', 18.5, 1, () => ofPanel('panelVoltage', 'high', 'pwm')],
    ['B3-09', 22, 1, () => wires('openCircuitVoltage', 'value', 100)],
    ['B3-09.low', 21, 1.5, () => wires('openCircuitVoltage', 'low', 100)],
    ['B3-09.high', 23, 2.5, () => wires('openCircuitVoltage', 'high', 100)],
    ['B3-10', 0.82, 0.05, () => wires('fullPowerShare', 'value', 100, 'pwm')],
    ['B3-10.low', 0.79, 0.05, () => wires('fullPowerShare', 'low', 100, 'pwm')],
    ['B3-10.high', 0.85, 0.05, () => wires('fullPowerShare', 'high', 100, 'pwm')],
  ]),
  ...cells('common practice: panels of 60 to 72 cells have 37 to 50 V open', 'memory', [
    ['B3-11', 41, 3, () => wires('openCircuitVoltage', 'value', 400)],
    ['B3-11.low', 37, 2, () => wires('openCircuitVoltage', 'low', 400)],
    ['B3-11.high', 50, 2, () => wires('openCircuitVoltage', 'high', 400)],
  ]),
  ...cells('silicon: 0.27 to 0.35 %/K more open-circuit volts below 25 °C, at −15 °C', 'memory', [
    ['B3-12', 1.125, 0.02, () => frostyRise('value')],
    ['B3-12.low', 1.108, 0.015, () => frostyRise('high')],
  ]),
  row(
    'B3-12.high',
    'NEC table 690.7(A), crystalline silicon at −11 to −15 °C',
    'memory',
    1.16,
    0.02,
    () => frostyRise('low'),
    'data sheets end at 0.35 %/K, which is 1.14; the code’s table, for all modules, is on the safe side',
  ),
  ...cells('common practice: what stands between panels for 12 V and panels for roofs', 'memory', [
    // Those for 12 V are sold up to 200 W, those for roofs from 240 W.
    ['trade-roof-panel', 220, 20, () => largePanelW],
    // Panels of 30 to 32 cells, 0.6 V each, hardly fill a battery; those of 36 do.
    ['trade-least-volts', 18, 1.2, () => leastRatio],
  ]),
  row('trade-over-amps', 'NEC 690.8(A)(1), 125 % for bright sun', 'memory', 1.25, 1e-9, () => overAmps),
  ...cells(
    'data sheets and optics: 3 to 4 % less at a fifth of full sun, 4 to 5 % of diffuse light thrown back',
    'memory',
    [['trade-weak-light', 1 - 0.965 * 0.955, 0.012, () => weakLight('value')]],
  ),
  ...cells('handbooks: a battery on charge has 12.5 to 14.4 V', 'memory', [
    ['B3-13', 13.4, 0.9, () => ofPanel('chargingVoltage', 'value', 'pwm')],
    ['B3-13.low', 12.5, 0.5, () => ofPanel('chargingVoltage', 'low', 'pwm')],
    ['B3-13.high', 14.4, 0.8, () => ofPanel('chargingVoltage', 'high', 'pwm')],
    ['B3-14', 13.4, 0.9, () => wires('chargingVoltage', 'value', 100)],
    ['B3-14.low', 12.5, 0.5, () => wires('chargingVoltage', 'low', 100)],
    ['B3-14.high', 14.4, 0.5, () => wires('chargingVoltage', 'high', 100)],
  ]),
  ...[50, 100, 150].map(volts =>
    row(
      `B3-15.${volts}`,
      `common practice: controllers for ${volts} V of panel are sold`,
      'memory',
      1,
      0,
      () => Number(usualLimitsV.some(v => v === volts)),
    ),
  ),
  row(
    'C4-11.sun',
    'common practice: 78 % of the energy comes back of lead-acid; 30 Ah at 12.4 V a day, 5 h, 4 W for every 3 that arrive',
    'memory',
    ((30 * 12.4) / 0.78 / 5) * (4 / 3),
    10,
    () =>
      panelPowerFor(30, { peakSunHours: 5, ambientC: 25, nominalVoltageV: 12, chemistry: 'agm' }).panelPowerW,
  ),
  row(
    'C4-11.sun.lfp',
    'common practice: 95 % of the energy comes back of LFP; 30 Ah at 13.1 V a day, 5 h, 4 W for every 3 that arrive',
    'memory',
    ((30 * 13.1) / 0.95 / 5) * (4 / 3),
    9,
    () =>
      panelPowerFor(30, { peakSunHours: 5, ambientC: 25, nominalVoltageV: 12.8, chemistry: 'lfp' })
        .panelPowerW,
  ),
];

export const rows: readonly Row[] = [...byLatitude, ...clouds, ...panels, ...controllers];
