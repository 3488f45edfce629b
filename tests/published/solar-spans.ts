import { present } from '#basics/present.ts';
import { airAboutFridge, dayTemperature } from '#engine/solar/air.ts';
import { coldestMorning, toldCold } from '#engine/solar/cold.ts';
import { panelAzimuth } from '#engine/solar/facing.ts';
import { peakSunHours, solarAssumptions } from '#engine/solar/model.ts';
import { fullPowerVolts, isNamed } from '#engine/solar/module.ts';
import { skySunHours } from '#engine/solar/sky.ts';
import { shadeShare } from '#engine/solar/tables.ts';
import { judgeWiring, type WiringReason } from '#engine/solar/wiring-fit.ts';
import type { Solar } from '#rig/rig.ts';
import { cells, type Row } from './row.ts';

const trade = 'common practice';
type End = 'value' | 'low' | 'high';
const loss = (name: string, end: End, sky?: 'overcast'): number =>
  present(
    solarAssumptions({ latitudeDeg: -30, longitudeDeg: 150, month: 1, ...(sky && { sky }) }).find(
      a => a.name === name,
    ),
  )[end];
const told = (sun: number): number => peakSunHours({ peakSunHours: sun, sky: 'overcast' });
const ends = (
  id: string,
  [low, value, high]: readonly [number, number, number],
  of: (end: End) => number,
  share = 0.15,
): readonly (readonly [string, number, number, () => number])[] => [
  [`${id}.low`, low, share * Math.abs(low), () => of('low')],
  [`${id}.likely`, value, share * Math.abs(value), () => of('value')],
  [`${id}.high`, high, share * Math.abs(high), () => of('high')],
];

const losses: readonly Row[] = [
  ...cells('PVWatts Version 5 Manual (2014): losses that it takes where nobody says otherwise', 'seen', [
    ['B1-14.dirt', 0.02, 0.002, () => loss('dirtLoss', 'low')],
  ]),
  ...cells(
    'PVWatts Version 5 Manual (2014): mismatch 2 %, connections 0.5, light-induced 1.5, rating 1, together',
    'recomputed',
    [['B1-14.mismatch', 1 - 0.98 * 0.995 * 0.985 * 0.99, 0.008, () => loss('mismatchLoss', 'value')]],
  ),
  ...cells(`${trade}: share of the sun that is lost on tour`, 'memory', [
    ['trade-dirt', 0.05, 0.008, () => loss('dirtLoss', 'value')],
    ['trade-dirt.high', 0.1, 0.015, () => loss('dirtLoss', 'high')],
    ['trade-wiring.low', 0.01, 0.0015, () => loss('wiringLoss', 'low')],
    ['trade-wiring.high', 0.05, 0.008, () => loss('wiringLoss', 'high')],
    ['trade-mismatch.low', 0.02, 0.003, () => loss('mismatchLoss', 'low')],
    ['trade-mismatch.high', 0.08, 0.012, () => loss('mismatchLoss', 'high')],
  ]),
  ...cells('glancing light on glass over a day, 3 to 5 % (handbooks, from memory)', 'memory', [
    ...ends('trade-glancing', [0.02, 0.04, 0.06], end => loss('reflectionLoss', end)),
  ]),
  ...cells('data sheets: cells at a fifth of full sun make 4 to 12 % less of it', 'memory', [
    ['trade-weak.low', 0.04, 0.006, () => loss('reflectionLoss', 'low', 'overcast')],
    ['trade-weak.high', 0.12, 0.018, () => loss('reflectionLoss', 'high', 'overcast')],
  ]),
];

const words: readonly Row[] = [
  ...cells(`${trade}: a panel half in the shade keeps a fifth to three fifths`, 'memory', [
    ...ends('trade-half-shade', [0.2, 0.4, 0.6], end => shadeShare.half[end]),
  ]),
  ...cells(`${trade}: under trees a panel keeps 5 to 30 %`, 'memory', [
    ...ends('trade-trees', [0.05, 0.15, 0.3], end => shadeShare.heavy[end]),
  ]),
  ...cells(`${trade}: a camper reckons with 5 sun hours, 3.5 to 6.5, on a fair day`, 'memory', [
    ...ends('trade-fair-day', [3.5, 5, 6.5], end => skySunHours.mixed[end]),
  ]),
  ...cells(`${trade}: 6 sun hours, 4.5 to 7.5, on a clear day`, 'memory', [
    ...ends('trade-clear-day', [4.5, 6, 7.5], end => skySunHours.sunny[end]),
  ]),
  ...cells(
    'a tenth of a fair day of 5 hours, a third of a clear one of 6, under full cloud (FAO-56 and the trade)',
    'recomputed',
    [
      ['trade-cloud-day.low', 0.5, 0.07, () => skySunHours.overcast.low],
      ['trade-cloud-day.high', 2, 0.3, () => skySunHours.overcast.high],
    ],
  ),
  ...cells(`${trade}: full cloud lets through a tenth to a third`, 'memory', [
    [
      'trade-told-cloud.high',
      0.335,
      0.04,
      () =>
        present(solarAssumptions({ peakSunHours: 5, sky: 'overcast' }).find(a => a.name === 'overcastShare'))
          .high,
    ],
  ]),
  ...cells(`${trade}: so few sun hours as 1.8 are of a cloudy day already, 2.3 are not`, 'memory', [
    ['trade-already', 1.8, 0.001, () => told(1.8)],
    ['trade-not-yet', 0.22 * 2.3, 0.05, () => told(2.3)],
  ]),
];

const panels: readonly Row[] = [
  ...cells(`${trade}: panels for 12 V have 18 to 22 V open, and are called by 12 V`, 'memory', [
    ['trade-named', 1, 0, () => Number(isNamed({ count: 1, openCircuitV: 15 }))],
    ['trade-labelled', 0, 0, () => Number(isNamed({ count: 1, openCircuitV: 18 }))],
  ]),
  ...cells(`${trade}: a roof panel of 60 cells gives its power at 31 to 34 V`, 'memory', [
    ['trade-roof-cells', 32.5, 3, () => fullPowerVolts({ panels: [{ count: 1, powerW: 300 }] }).high],
  ]),
  ...cells(
    `${trade}: campers turn a panel to the midday sun, or are up to half a right angle off`,
    'memory',
    [['trade-azimuth', 45, 5, () => panelAzimuth.high]],
  ),
];

/** Whether a wiring of 12 V on PWM, or of panels side by side, is judged so. */
const isJudged = (reason: WiringReason, panels: readonly Solar[], controller: 'pwm' | 'mppt'): number => {
  const volts = panels.map(panel => present(panel.openCircuitV));
  const stringVoltage = Math.min(...volts);
  const coldVoltage = { value: stringVoltage, low: stringVoltage, high: stringVoltage };
  const about = { panels, controller, blocks: 1, isShaded: false };
  return Number(judgeWiring(about, 1, { stringVoltage, coldVoltage, chargeCurrent: 5 }).reason === reason);
};
const panel = (openCircuitV: number): Solar => ({ count: 1, powerW: 100, openCircuitV });

const wirings: readonly Row[] = [
  ...cells(
    `${trade}: a PWM controller for 12 V wants panels of up to 25 V open; of 30 V it wastes`,
    'memory',
    [
      ['trade-pwm.fits', 0, 0.1, () => isJudged('pwm-wastes', [panel(24)], 'pwm')],
      ['trade-pwm.wastes', 1, 0.1, () => isJudged('pwm-wastes', [panel(30)], 'pwm')],
    ],
  ),
  ...cells(`${trade}: side by side panels may differ by a twelfth in volts, not by a ninth`, 'memory', [
    ['trade-alike', 0, 0.1, () => isJudged('unlike-volts', [panel(22), panel(20.1)], 'mppt')],
    ['trade-unlike', 1, 0.1, () => isJudged('unlike-volts', [panel(22), panel(19.6)], 'mppt')],
  ]),
];

const air: readonly Row[] = [
  ...cells(`${trade}: a fair camping day has 25 °C, 15 to 35`, 'memory', [
    ...ends('trade-fair-air', [15, 25, 35], end => dayTemperature({})[end], 0.1),
  ]),
  ...cells(`${trade}: the mean of such a day and its night, 20 to 32 °C`, 'memory', [
    ...ends('trade-mean-air', [20, 25, 32], end => airAboutFridge({})[end], 0.1),
  ]),
  ...cells(`${trade}: a van or tent is kept at 10 to 18 °C in the cold`, 'memory', [
    ['trade-sheltered', 10, 1, () => airAboutFridge({ latitudeDeg: 60, longitudeDeg: 25, month: 1 }).value],
    [
      'trade-sheltered.most',
      18,
      2,
      () => airAboutFridge({ latitudeDeg: 60, longitudeDeg: 25, month: 1 }).high,
    ],
  ]),
  ...cells(`${trade}: a frosty morning where nobody said where, 0 to −20 °C`, 'memory', [
    ['trade-frost', -10, 1, () => coldestMorning({}).value],
    ['trade-frost.low', -20, 2, () => coldestMorning({}).low],
  ]),
  ...cells(`${trade}: 9 °C is a cold morning, 11 °C none`, 'memory', [
    ['trade-cold', 1, 0, () => Number(toldCold(9) !== undefined)],
    ['trade-mild', 0, 0, () => Number(toldCold(11) !== undefined)],
  ]),
];

export const rows: readonly Row[] = [...losses, ...words, ...panels, ...wirings, ...air];
