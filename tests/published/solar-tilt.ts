import { shareOf } from '#engine/solar/hourly.ts';
import { meanDay, outsideRadiationOf, radians, sunDay } from '#engine/solar/sun.ts';
import { tiltedPlaneRadiation } from '#engine/solar/sun-rules.ts';
import { groundReflectance } from '#engine/solar/tables.ts';
import { diffuseShare, tiltedRadiation } from '#engine/solar/tilt.ts';
import { run } from '#rule/rule.ts';
import type { Row } from './row.ts';

const db = 'Duffie & Beckman, Solar Engineering of Thermal Processes';
const pvlib = 'pvlib-python, its own tests';
const MJ = 3.6;

// One moment: beam on the panel over beam on the ground.
const moment = () => {
  const [z, b, turn] = [10.5641, 40, 180 - 144.7657].map(radians) as [number, number, number];
  const onPanel = Math.cos(b) * Math.cos(z) + Math.sin(b) * Math.sin(z) * Math.cos(turn);
  return run(tiltedPlaneRadiation, {
    H: 1042.48,
    D: 118.458 / 1042.48,
    R_b: onPanel / Math.cos(z),
    beta: b,
    rho: 0.4,
  });
};
const melbourne = sunDay(-38, meanDay(1)).omega_s;
const hours = Array.from({ length: 24 }, (_, hour) => hour);
const monthlyOnly = 'ours is the monthly mean curve: it holds for an hour under clear sky only';

const points: readonly Row[] = [
  {
    id: 'A5-05',
    from: `${pvlib}, test_erbs, diffuse of 1,000 W/m² at clearness 0.768`,
    how: 'seen',
    gives: 170.79,
    within: 25,
    differs: monthlyOnly,
    run: () => 1000 * diffuseShare(0.768214, 2),
  },
  {
    id: 'A5-07',
    from: `${pvlib}, test_boland, diffuse of 1,000 W/m² at clearness 0.718`,
    how: 'seen',
    gives: 287.23,
    within: 90,
    differs: monthlyOnly,
    run: () => 1000 * diffuseShare(0.718133, 2),
  },
  {
    id: 'A5-08',
    from: `${pvlib}, test_isotropic_float, sky on a panel at 40°`,
    how: 'seen',
    gives: 88.3022,
    within: 0.001,
    run: () => run(tiltedPlaneRadiation, { H: 100, D: 1, R_b: 0, beta: radians(40), rho: 0 }),
  },
  {
    id: 'A5-09',
    from: `${pvlib}, test_get_ground_diffuse, panel at 40°`,
    how: 'seen',
    gives: 26.32,
    within: 0.001,
    run: () => run(tiltedPlaneRadiation, { H: 900, D: 0, R_b: 0, beta: radians(40), rho: 0.25 }),
  },
  {
    id: 'A5-10',
    from: `${pvlib}, test_poa_components_diffuse_components_isotropic, total`,
    how: 'seen',
    gives: 951.7,
    within: 0.02,
    run: moment,
  },
  {
    id: 'A5-11',
    from: `${db}, sec. 2.12, monthly diffuse share at clearness 0.55`,
    how: 'recomputed',
    gives: 0.382,
    within: 0.002,
    run: () => diffuseShare(0.55, radians(113.4)),
  },
  {
    id: 'A5-12',
    from: `${db}, ex. 2.13.1, Melbourne in January, 8 to 9 o'clock`,
    how: 'recomputed',
    gives: 0.0759,
    within: 0.0005,
    run: () => shareOf(8, melbourne),
  },
  {
    id: 'A5-13',
    from: `${db}, ex. 2.13.1, all hours of the day together`,
    how: 'recomputed',
    gives: 1,
    within: 0.002,
    run: () => hours.reduce((sum, hour) => sum + shareOf(hour, melbourne), 0),
  },
];

/** Month, H on the ground, reflectance, H on the panel; MJ/m² a day. */
const madison: readonly (readonly [id: string, month: number, H: number, rho: number, H_T: number])[] = [
  ['A5b-01', 1, 6.44, 0.7, 13.7],
  ['A5b-02', 2, 9.89, 0.7, 17.2],
  ['A5b-04', 4, 16.05, groundReflectance, 14.7],
  ['A5b-05', 5, 21.36, groundReflectance, 16.6],
  ['A5b-07', 7, 22.58, groundReflectance, 16.8],
  ['A5b-08', 8, 20.33, groundReflectance, 17.5],
  ['A5b-10', 10, 10.48, groundReflectance, 15.2],
  ['A5b-11', 11, 6.37, groundReflectance, 11.4],
];

/** What flat ground gets decides the clearness, so that the tilt alone is tested. */
const onPanel = (latitudeDeg: number, month: number, tiltDeg: number, H: number, reflectance?: number) =>
  tiltedRadiation({
    latitudeDeg,
    month,
    tiltDeg,
    clearness: H / outsideRadiationOf(latitudeDeg, month),
    reflectance,
  });

/** Month, GHI, PVWatts' plane of array at 20°, the isotropic method's; kWh/m² a day. */
const golden: readonly (readonly [id: string, month: number, ghi: number, poa: number, isotropic: number])[] =
  [
    ['A5c-01', 1, 2.46, 3.76, 3.66],
    ['A5c-03', 3, 4.57, 5.54, 5.34],
    ['A5c-04', 4, 5.36, 5.87, 5.64],
    ['A5c-06', 6, 6.89, 6.75, 6.62],
    ['A5c-07', 7, 6.19, 6.14, 6.02],
    ['A5c-09', 9, 5.07, 5.87, 5.69],
    ['A5c-10', 10, 3.78, 4.9, 4.77],
    ['A5c-12', 12, 2.24, 3.53, 3.47],
  ];

export const rows: readonly Row[] = [
  ...points,
  ...madison.map(
    ([id, month, H, rho, gives]): Row => ({
      id,
      from: `${db}, ex. 2.19.1, Madison at 60°, month ${month}`,
      how: 'seen',
      gives,
      within: 0.2,
      differs: 'FAO-56 declination',
      run: () => MJ * onPanel(43, month, 60, H / MJ, rho),
    }),
  ),
  ...golden.flatMap(([id, month, ghi, poa, isotropic]): Row[] => [
    {
      id,
      from: `PVWatts hourly output, Golden at 20°, month ${month}, plane of array over horizontal`,
      how: 'seen',
      gives: poa / ghi,
      within: (0.05 * poa) / ghi,
      differs: 'isotropic sky, which runs 1 to 4 % low',
      run: () => onPanel(39.73, month, 20, ghi) / ghi,
    },
    {
      id: `${id}i`,
      from: `Liu–Jordan–Klein method, Golden at 20°, month ${month}`,
      how: 'recomputed',
      gives: isotropic,
      within: 0.015 * isotropic,
      run: () => onPanel(39.73, month, 20, ghi),
    },
  ]),
];
