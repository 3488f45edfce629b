import { present } from '#basics/present.ts';
import { latitudeMonth } from '#climate/latitude.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { absorptionVoltage } from '#engine/battery/charging.ts';
import { bankResistanceOhm } from '#engine/battery/limits.ts';
import { startingW } from '#engine/inverter/watts.ts';
import { dayOf } from '#engine/loads/model.ts';
import { chargeOver } from '#engine/loads/over.ts';
import { solarAssumptions } from '#engine/solar/model.ts';
import { skySunHours } from '#engine/solar/sky.ts';
import { outsideRadiationOf, radians } from '#engine/solar/sun.ts';
import { diffuseShare } from '#engine/solar/tilt.ts';
import { cells, type Row, row } from './row.ts';

const agm = present(bankOf([{ count: 1, capacityAh: 100, chemistry: 'agm' }]));
const cloud = present(
  solarAssumptions({ peakSunHours: 5, sky: 'overcast' }).find(a => a.name === 'overcastShare'),
);
const wiring = present(solarAssumptions({}).find(a => a.name === 'wiringLoss'));

/** Erbs' two curves at a clearness of 0.5: where days are short, and where they are long. */
const erbs = {
  short: 1.391 - 3.56 / 2 + 4.189 / 4 - 2.137 / 8,
  long: 1.311 - 3.022 / 2 + 3.427 / 4 - 1.821 / 8,
};

/** Long-term means of flat ground, kWh/m² a day: place, latitude, month. */
const farFromTheTropics: readonly (readonly [
  id: string,
  place: string,
  latitude: number,
  month: number,
  gives: number,
])[] = [
  ['A7-13.lat', 'Seattle', 47.6, 7, 6.1],
  ['A7-19.lat', 'Anchorage', 61.2, 6, 5.1],
  ['A7-25.lat', 'Oslo, December', 59.9, 12, 0.22],
  ['A7-26.lat', 'Oslo', 59.9, 6, 5.5],
  ['A7-31.lat', 'Reykjavik', 64.1, 6, 5.1],
];

export const rows: readonly Row[] = [
  ...cells('common practice: −18 mV/K from 25 °C, AGM at 14.2 to 14.7 V', 'memory', [
    ['C4-02.at15', 14.6, 0.03, () => absorptionVoltage(agm, 15)],
    ['C4-02.at35', 14.2, 0.03, () => absorptionVoltage(agm, 35)],
  ]),
  ...cells('definition, on paper', 'recomputed', [
    ['D-40 a block of 100 Ah has its own 10 mΩ', 0.01, 1e-9, () => bankResistanceOhm(agm, 10)],
    [
      'D-41 of 48 Ah told a day, 6 hours take 12',
      12,
      1e-9,
      () =>
        chargeOver(
          dayOf({ loads: [{ name: 'rig', count: 1, supply: 'dc', chargeAhPerDay: 48 }], voltageV: 12 }, {}),
          6,
        ),
    ],
    [
      'D-42 a heater of 1,000 W asks no more to start',
      1000,
      1e-9,
      () => startingW({ loads: [{ name: 'kettle', count: 1, powerW: 1000, supply: 'ac' }], mainsV: 230 }, {}),
    ],
  ]),
  ...cells('common practice: full cloud lets through 10 to 30 %, a fifth in the middle', 'memory', [
    ['A5-16', 0.2, 0.0235, () => cloud.value],
    ['A5-16.low', 0.1, 0.01, () => cloud.low],
    ['A5-16.hours', 0.2 * 6, 0.1, () => skySunHours.overcast.value],
    ['A5-17', 5, 0.5, () => skySunHours.mixed.value],
  ]),
  row('D4-17.panel', 'vehicle rules: cables lose 5 % at most', 'memory', 0.05, 0.005, () => wiring.high),
  ...cells(
    'Erbs et al. (1982), in Duffie & Beckman, sec. 2.12: two curves that meet at 81.4°',
    'recomputed',
    [
      ['A5-18.short', erbs.short, 1e-9, () => diffuseShare(0.5, radians(80))],
      ['A5-18.long', erbs.long, 1e-9, () => diffuseShare(0.5, radians(83))],
    ],
  ),
  ...farFromTheTropics.map(([id, place, latitude, month, gives]) =>
    row(
      id,
      `handbooks of solar radiation, ${place}`,
      'memory',
      gives,
      0.15 * gives,
      () => latitudeMonth(latitude, month).clearness * outsideRadiationOf(latitude, month),
      'ours is the mean along the latitude, of every coast and inland',
    ),
  ),
];
