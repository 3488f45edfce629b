import {
  declinationOn,
  equationOfTimeMin,
  incidenceDeg,
  solarTimeH,
  sunPosition,
  sunTimesUtcH,
} from '#engine/solar/position.ts';
import { meanDay, outsideRadiationOf, outsideRadiationOn, radians, sunDay } from '#engine/solar/sun.ts';
import { inverseDistance } from '#engine/solar/sun-rules.ts';
import { solarConstantKWM2 } from '#engine/solar/tables.ts';
import { run } from '#rule/rule.ts';
import type { Row } from './row.ts';

const db = 'Duffie & Beckman, Solar Engineering of Thermal Processes';
const spa = 'Reda & Andreas, solar position algorithm, NREL/TP-560-34302';
const pvlib = 'pvlib-python, its own tests';
const simple = 'ours is Spencer’s series for the day, not the full algorithm';
const degrees = (angle: number) => (angle * 180) / Math.PI;
const MJ = 3.6;

// 17 October 2003, 12:30:30 at UTC-7, in Golden, Colorado: day 290.
const golden = () => sunPosition(39.742476, 290, solarTimeH(290, -105.1786, 19 + 30.5 / 60));
// The examples give the declination; a plain angle of incidence is wanted, so the day does not enter.
const zenith = (lat: number, delta: number, hour: number) => incidenceDeg(lat, delta, hour, 0, 0);
const beamRatio = () =>
  Math.cos(radians(incidenceDeg(43, -14, -22.5, 45, 15))) / Math.cos(radians(zenith(43, -14, -22.5)));
// A sun at zenith angle 30° due south at noon stands so at latitude 30° on an equinox.
const vertical = () => {
  // Azimuth 60° east of north at zenith 30°, as seen from the pole of its own frame: hour angle and declination.
  const [z, a, lat] = [radians(30), radians(60), radians(35)];
  const delta = Math.asin(Math.sin(lat) * Math.cos(z) + Math.cos(lat) * Math.sin(z) * Math.cos(a));
  const hour = -Math.atan2(
    Math.sin(z) * Math.sin(a),
    Math.cos(lat) * Math.cos(z) - Math.sin(lat) * Math.sin(z) * Math.cos(a),
  );
  return incidenceDeg(35, degrees(delta), degrees(hour), 90, 180);
};

const january = () => sunTimesUtcH(39.742476, -105.1786, 2)!;
const july = () => sunTimesUtcH(-35, 0, 187)!;
const minute = 1 / 60;
const clock = (h: number, m: number, s: number) => h + m / 60 + s / 3600;

const points: readonly Row[] = [
  {
    id: 'A4-01',
    from: `${db}, ex. 1.5.1, equation of time on 3 February`,
    how: 'seen',
    gives: -13.5,
    within: 0.05,
    run: () => equationOfTimeMin(34),
  },
  {
    id: 'A4-02',
    from: `${db}, ex. 1.5.1, solar time in Madison at 10:30`,
    how: 'seen',
    gives: clock(10, 19, 0),
    within: 0.4 * minute,
    run: () => solarTimeH(34, -89.4, 16.5),
  },
  {
    id: 'A4-03',
    from: `${db}, ex. 1.6.1, angle of incidence`,
    how: 'seen',
    gives: 35,
    within: 0.3,
    run: () => incidenceDeg(43, -14, -22.5, 45, 15),
  },
  {
    id: 'A4-04',
    from: `${db}, ex. 1.6.2a, zenith angle`,
    how: 'seen',
    gives: 66.5,
    within: 0.05,
    run: () => zenith(43, -14, -37.5),
  },
  {
    id: 'A4-05',
    from: `${db}, ex. 1.6.2a, solar azimuth 40° east of south`,
    how: 'seen',
    gives: 140,
    within: 0.3,
    differs: 'day 43 taken for a declination of −14°',
    run: () => sunPosition(43, 43, 9.5).azimuthDeg,
  },
  {
    id: 'A4-06',
    from: `${db}, ex. 1.8.1, beam ratio`,
    how: 'seen',
    gives: 1.66,
    within: 0.01,
    run: beamRatio,
  },
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
    id: 'A4-09',
    from: `${spa}, elevation`,
    how: 'seen',
    gives: 39.872,
    within: 0.5,
    differs: simple,
    run: () => golden().elevationDeg,
  },
  {
    id: 'A4-10',
    from: `${spa}, azimuth`,
    how: 'seen',
    gives: 194.34,
    within: 0.7,
    differs: simple,
    run: () => golden().azimuthDeg,
  },
  {
    id: 'A4-11',
    from: `${spa}, apparent zenith`,
    how: 'seen',
    gives: 50.112,
    within: 0.52,
    differs: `${simple}; no refraction`,
    run: () => 90 - golden().elevationDeg,
  },
  {
    id: 'A4-12',
    from: `${spa}, declination`,
    how: 'seen',
    gives: -9.314,
    within: 0.3,
    differs: simple,
    run: () => degrees(declinationOn(290 + 19.5 / 24)),
  },
  {
    id: 'A4-13a',
    from: `${spa}, sunrise in Golden on 2 January`,
    how: 'seen',
    gives: clock(7, 21, 55) + 7,
    within: 2.5 * minute,
    run: () => january().rise,
  },
  {
    id: 'A4-13b',
    from: `${spa}, solar noon in Golden on 2 January`,
    how: 'seen',
    gives: clock(12, 4, 45) + 7,
    within: 2 * minute,
    run: () => january().noon,
  },
  {
    id: 'A4-13c',
    from: `${spa}, sunset in Golden on 2 January`,
    how: 'seen',
    gives: clock(16, 47, 43) + 7,
    within: 2.5 * minute,
    run: () => january().set,
  },
  {
    id: 'A4-14a',
    from: `${spa}, sunrise at 35° S on 5 July`,
    how: 'seen',
    gives: clock(7, 8, 15),
    within: 2 * minute,
    run: () => july().rise,
  },
  {
    id: 'A4-14b',
    from: `${spa}, solar noon at 0° E on 5 July`,
    how: 'seen',
    gives: clock(12, 4, 36),
    within: 2 * minute,
    run: () => july().noon,
  },
  {
    id: 'A4-14c',
    from: `${spa}, sunset at 35° S on 5 July`,
    how: 'seen',
    gives: clock(17, 1, 4),
    within: 2 * minute,
    run: () => july().set,
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
  {
    id: 'A4-17',
    from: `${pvlib}, test_aoi, wall facing north`,
    how: 'seen',
    gives: 75.52249,
    within: 0.0001,
    run: vertical,
  },
  {
    id: 'A4-18',
    from: `${pvlib}, test_aoi, sun straight on the panel`,
    how: 'seen',
    gives: 0,
    within: 0.0001,
    run: () => incidenceDeg(30, 0, 0, 30, 0),
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
        run: () => MJ * outsideRadiationOf(lat!, m + 1),
      }),
    ),
  ),
];
