import { present } from '#basics/present.ts';
import { dailyYield, peakSunHours } from '#engine/solar/model.ts';
import { placeByName } from '#places/find.ts';
import type { Row } from './row.ts';

const months = Array.from({ length: 12 }, (_, i) => i + 1);
const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const yearMean = (of: (month: number) => number) =>
  months.reduce((sum, month) => sum + present(days[month - 1]) * of(month), 0) / 365;

const flat = (latitudeDeg: number, longitudeDeg: number, month: number) =>
  peakSunHours({ latitudeDeg, longitudeDeg, month });

/** Annual means of representative years; ours is a blend of the stations about. */
const stations: readonly (readonly [id: string, name: string, lat: number, lon: number, annual: number])[] = [
  ['A6-01', 'Alice Springs, RMY 943260', -23.8, 133.88, 6.18],
  ['A6-03', 'Seville, RMY 083910', 37.42, -5.9, 4.87],
  ['A6-04', 'Los Angeles, TMY3 722950', 33.93, -118.4, 5.0],
  ['A6-05', 'Chicago, TMY3', 41.98, -87.92, 3.85],
  ['A6-06', 'Golden, PVWatts TMY', 39.73, -105.18, 4.56],
  ['A6-07', 'Singapore, TMY 1990–2010', 1.37, 103.98, 4.49],
  ['A6-08', 'Amsterdam, IWEC 062400', 52.3, 4.77, 2.69],
  ['A6-09', 'Tokyo Hyakuri, IWEC', 36.17, 140.42, 3.58],
  ['A6-10', 'Po valley, PVGIS TMY 2005–2023', 45.0, 8.0, 3.93],
  ['A6-11', 'Zurich-Kloten, TMY 1990–2010', 47.48, 8.54, 3.19],
];

const mildura2010 = [8.08, 6.47, 5.5, 3.95, 3.05, 2.48, 2.62, 3.33, 4.33, 5.64, 6.26, 7.84];

/** Bureau of Meteorology, mean daily exposure by the year, kWh/m². */
const exposure: readonly (readonly [id: string, town: string, annual: number, share: number])[] = [
  ['A6b-01', 'Adelaide', 4.8, 0.08],
  ['A6b-02', 'Brisbane', 5.2, 0.08],
  ['A6b-03', 'Darwin', 5.9, 0.08],
  ['A6b-04', 'Melbourne', 4.2, 0.08],
  ['A6b-05', 'Sydney', 4.6, 0.08],
  ['A6c-01', 'Broome', 6.2, 0.1],
  ['A6c-02', 'Mount Isa', 6.1, 0.1],
  ['A6c-03', 'Townsville', 5.7, 0.1],
  ['A6c-04', 'Dubbo', 5.1, 0.1],
  ['A6c-05', 'Albany', 4.4, 0.1],
  ['A6c-06', 'Kalgoorlie', 5.6, 0.1],
];

/** What 1 kW of panels at the tilt of the latitude brings, kWh a day: best month, worst month, year. */
const yields: readonly (readonly [id: string, town: string, best: number, worst: number, annual: number])[] =
  [
    ['A6b-01', 'Adelaide', 5.72, 2.51, 4.25],
    ['A6b-02', 'Brisbane', 4.61, 3.34, 4.04],
    ['A6b-03', 'Darwin', 5.11, 3.54, 4.47],
    ['A6b-04', 'Melbourne', 4.59, 2.22, 3.58],
    ['A6b-05', 'Sydney', 4.83, 2.82, 3.94],
    ['A6b-06', 'Alice Springs', 5.19, 4.21, 4.81],
  ];

const yieldIn = (town: string, month: number) =>
  dailyYield({
    ...present(placeByName(town)),
    month,
    mount: 'tilted',
    controller: 'mppt',
    powerW: 1000,
    nominalVoltageV: 12,
  }).dailyYieldEnergyWh / 1000;

export const rows: readonly Row[] = [
  ...stations.map(
    ([id, name, lat, lon, gives]): Row => ({
      id,
      from: `open hourly weather file of a representative year, ${name}, annual mean`,
      how: 'seen',
      gives,
      within: 0.08 * gives,
      run: () => yearMean(month => flat(lat, lon, month)),
    }),
  ),
  ...mildura2010.map(
    (gives, m): Row => ({
      id: `A6-02.${m + 1}`,
      from: `open hourly weather file RMY 76031, Mildura, month ${m + 1} of the wet year 2010`,
      how: 'seen',
      gives,
      within: 0.2 * gives,
      differs: 'ours is a long-term mean, 2010 was wet',
      run: () => flat(-34.24, 142.09, m + 1),
    }),
  ),
  ...exposure.map(
    ([id, town, gives, share]): Row => ({
      id,
      from: `Bureau of Meteorology, mean daily solar exposure, ${town}`,
      how: id.startsWith('A6b') ? 'seen' : 'memory',
      gives,
      within: share * gives,
      run: () =>
        yearMean(month =>
          flat(present(placeByName(town)).latitudeDeg, present(placeByName(town)).longitudeDeg, month),
        ),
    }),
  ),
  ...yields.flatMap(([id, town, best, worst, annual]): Row[] => {
    const all = () => months.map(month => yieldIn(town, month));
    const from = `accredited yields of 1 kW facing north at the tilt of the latitude, ${town}`;
    return [
      {
        id: `${id}y`,
        from: `${from}, year`,
        how: 'seen',
        gives: annual,
        within: 0.1 * annual,
        run: () => yearMean(m => yieldIn(town, m)),
      },
      {
        id: `${id}b`,
        from: `${from}, best month`,
        how: 'seen',
        gives: best,
        within: 0.15 * best,
        run: () => Math.max(...all()),
      },
      {
        id: `${id}w`,
        from: `${from}, worst month`,
        how: 'seen',
        gives: worst,
        within: 0.15 * worst,
        run: () => Math.min(...all()),
      },
    ];
  }),
];
