import { present } from '#basics/present.ts';
import { meanDay, outsideRadiationOf, outsideRadiationOn, sunDay } from '#engine/solar/sun.ts';
import { inverseDistance } from '#engine/solar/sun-rules.ts';
import { solarConstantKWM2 } from '#engine/solar/tables.ts';
import { run } from '#rule/rule.ts';
import type { Row } from './row.ts';

const db = 'Duffie & Beckman, Solar Engineering of Thermal Processes';
const pvlib = 'pvlib-python, its own tests';
const degrees = (angle: number) => (angle * 180) / Math.PI;
const MJ = 3.6;

const points: readonly Row[] = [
  {
    id: 'A4-07',
    from: `${db}, ex. 1.10.1, daily H0 at 43° N on 15 April`,
    how: 'seen',
    gives: 33.8,
    within: 0.25,
    differs: 'FAO-56 declination',
    run: () => MJ * outsideRadiationOn(43, 105),
  },
  {
    id: 'A4-08',
    from: `${db}, ex. 1.10.1, sunset hour angle`,
    how: 'seen',
    gives: 98.9,
    within: 0.4,
    differs: 'FAO-56 declination',
    run: () => degrees(sunDay(43, 105).omega_s),
  },
  {
    id: 'A4-15',
    from: `${pvlib}, test_nrel_earthsun_distance, 2 January`,
    how: 'seen',
    gives: 0.98329,
    within: 0.0008,
    differs: 'FAO-56 gives the inverse square of the distance',
    run: () => 1 / Math.sqrt(run(inverseDistance, { J: 2 })),
  },
  {
    id: 'A4-16',
    from: `${pvlib}, test_get_extra_radiation, day 300`,
    how: 'seen',
    gives: 1383.64,
    within: 10,
    run: () => 1000 * solarConstantKWM2 * run(inverseDistance, { J: 300 }),
  },
];

const declinations: readonly (readonly [id: string, month: number, degrees: number])[] = [
  ['A4b-01', 1, -20.9],
  ['A4b-03', 3, -2.4],
  ['A4b-04', 4, 9.4],
  ['A4b-06', 6, 23.1],
  ['A4b-07', 7, 21.2],
  ['A4b-09', 9, 2.2],
  ['A4b-10', 10, -9.6],
  ['A4b-12', 12, -23.0],
];

const monthly: readonly (readonly number[])[] = [
  [0, 36.2, 37.4, 37.8, 36.7, 34.8, 33.5, 34.0, 35.7, 37.2, 37.3, 36.3, 35.7],
  [30, 21.3, 25.7, 31.5, 36.8, 40.0, 41.1, 40.4, 37.8, 33.2, 27.4, 22.2, 19.9],
  [-45, 42.8, 37.1, 28.6, 19.6, 12.9, 10.0, 11.3, 16.6, 24.9, 34.0, 41.2, 44.5],
];

export const rows: readonly Row[] = [
  ...points,
  ...declinations.map(
    ([id, month, gives]): Row => ({
      id,
      from: `${db}, table 1.6.1, declination on the mean day of month ${month}`,
      how: 'seen',
      gives,
      within: 0.6,
      differs: 'FAO-56 declination, not Cooper’s',
      run: () => degrees(sunDay(0, meanDay(month)).delta),
    }),
  ),
  ...monthly.flatMap(([lat, ...cells], i) =>
    cells.map(
      (gives, m): Row => ({
        id: `A4c-0${i + 1}.${m + 1}`,
        from: `${db}, table 1.10.1, H0 at latitude ${lat}, month ${m + 1}`,
        how: 'seen',
        gives,
        within: lat === -45 && m === 1 ? 0.45 : 0.35,
        differs: 'FAO-56 declination; the table is not exactly its own formula',
        run: () => MJ * outsideRadiationOf(present(lat), m + 1),
      }),
    ),
  ),
];
