import { present } from '#basics/present.ts';
import { dayLengthOn, outsideRadiationOn, sunDay } from '#engine/solar/sun.ts';
import { inverseDistance } from '#engine/solar/sun-rules.ts';
import { run } from '#rule/rule.ts';
import type { Row } from './row.ts';

// Ours is in kWh/m²; FAO-56 prints MJ/m².
const MJ = 3.6;
const Ra = (lat: number, J: number) => MJ * outsideRadiationOn(lat, J);
const fao = 'Allen et al. (1998), FAO-56';

const examples: readonly Row[] = [
  [
    'A1-01',
    'ex. 8, inverse relative distance on 3 September',
    'seen',
    0.985,
    0.0005,
    () => run(inverseDistance, { J: 246 }),
  ],
  ['A1-02', 'ex. 8, declination', 'seen', 0.12, 0.0005, () => sunDay(-20, 246).delta],
  ['A1-03', 'ex. 8, sunset hour angle at 20° S', 'seen', 1.527, 0.001, () => sunDay(-20, 246).omega_s],
  ['A1-04', 'ex. 8, Ra at 20° S', 'seen', 32.2, 0.05, () => Ra(-20, 246)],
  ['A1-05', 'ex. 8, Ra as evaporation', 'memory', 13.1, 0.05, () => 0.408 * Ra(-20, 246)],
  ['A1-06', 'ex. 9, daylight at 20° S', 'seen', 11.7, 0.05, () => dayLengthOn(-20, 246)],
  ['A1-07', 'ex. 10, Ra in Rio de Janeiro in May', 'seen', 25.11, 0.02, () => Ra(-22.9, 135)],
  ['A1-08', 'ex. 10, daylight in Rio', 'seen', 10.9, 0.05, () => dayLengthOn(-22.9, 135)],
  ['A1-11', 'ex. 18, Ra in Uccle', 'seen', 41.09, 0.03, () => Ra(50.8, 187)],
  ['A1-13', 'ex. 18, daylight in Uccle', 'memory', 16.1, 0.05, () => dayLengthOn(50.8, 187)],
].map(([id, what, how, gives, within, call]) => ({
  id,
  from: `${fao}, ${what}`,
  how,
  gives,
  within,
  run: call,
})) as Row[];

/** The true 15th of each month: the short cut int(30.4 M − 15) misses it by up to two days. */
const fifteenths = [15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349];

const table = (
  kind: string,
  prefix: string,
  within: number,
  model: (lat: number, J: number) => number,
  lines: readonly (readonly number[])[],
): Row[] =>
  lines.flatMap(([lat, ...cells], i) =>
    cells.map((gives, m) => ({
      id: `${prefix}-0${i + 1}.${m + 1}`,
      from: `${fao}, table ${kind}, latitude ${lat}, 15th of month ${m + 1}`,
      how: 'seen' as const,
      gives,
      within,
      run: () => model(present(lat), present(fifteenths[m])),
    })),
  );

const outside = table('2.6', 'A2', 0.12, Ra, [
  [0, 36.2, 37.5, 37.9, 36.8, 34.8, 33.4, 33.9, 35.7, 37.2, 37.4, 36.3, 35.6],
  [-12, 40.1, 39.6, 37.7, 34.0, 30.2, 28.1, 28.9, 32.1, 36.0, 38.6, 39.8, 40.0],
  [-20, 41.9, 40.0, 36.6, 31.3, 26.6, 24.1, 25.0, 28.9, 34.2, 38.6, 41.2, 42.1],
  [-24, 42.5, 40.0, 35.8, 29.8, 24.6, 21.9, 22.9, 27.2, 33.1, 38.3, 41.7, 43.0],
  [-28, 43.0, 39.8, 34.8, 28.1, 22.5, 19.7, 20.7, 25.3, 31.8, 37.8, 41.9, 43.6],
  [-34, 43.4, 39.2, 33.0, 25.3, 19.2, 16.2, 17.4, 22.3, 29.6, 36.7, 42.0, 44.3],
  [-38, 43.4, 38.5, 31.7, 23.3, 16.9, 13.9, 15.1, 20.2, 28.0, 35.8, 41.9, 44.5],
  [20, 26.8, 30.6, 34.7, 37.9, 39.3, 39.5, 39.3, 38.3, 35.8, 31.8, 27.7, 25.6],
  [40, 15.0, 20.4, 27.2, 34.7, 39.7, 41.9, 40.8, 36.7, 30.0, 22.5, 16.3, 13.6],
]);

const daylight = table('2.7', 'A3', 0.06, dayLengthOn, [
  [-12, 12.6, 12.4, 12.1, 11.7, 11.4, 11.3, 11.4, 11.6, 11.9, 12.3, 12.6, 12.7],
  [-24, 13.3, 12.8, 12.2, 11.4, 10.8, 10.5, 10.7, 11.2, 11.9, 12.6, 13.2, 13.5],
  [-34, 14.0, 13.2, 12.2, 11.1, 10.2, 9.7, 9.9, 10.7, 11.8, 12.9, 13.8, 14.3],
  [-38, 14.4, 13.4, 12.3, 11.0, 9.9, 9.4, 9.6, 10.5, 11.8, 13.0, 14.1, 14.6],
  [40, 9.5, 10.5, 11.7, 13.1, 14.2, 14.8, 14.6, 13.6, 12.2, 10.9, 9.7, 9.2],
  [0, 12.0, 12.0, 12.0, 12.0, 12.0, 12.0, 12.0, 12.0, 12.0, 12.0, 12.0, 12.0],
]);

export const rows: readonly Row[] = [...examples, ...outside, ...daylight];
