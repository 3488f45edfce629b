import * as charge from '#engine/battery/charge-rules.ts';
import * as battery from '#engine/battery/rules.ts';
import * as charging from '#engine/charging/rules.ts';
import * as inverter from '#engine/inverter/rules.ts';
import * as cooler from '#engine/loads/cooler-rules.ts';
import * as loads from '#engine/loads/rules.ts';
import * as solar from '#engine/solar/rules.ts';
import { declination, sunsetAngle } from '#engine/solar/sun-rules.ts';
import * as wiring from '#engine/solar/wiring-rules.ts';
import * as trip from '#engine/trip/rules.ts';
import { run } from '#rule/rule.ts';
import { type Cell, cells, type Row, row } from './row.ts';

const exact = 1e-9;

/** Definitions and plain physics, each with numbers that are worked out on paper. */
const definitions: readonly Cell[] = [
  ['240 Wh at 12 V', 20, exact, () => run(battery.chargeOfEnergy, { E: 240, V: 12 })],
  [
    'a 200 Ah block has half the resistance of 8 mΩ, two in series',
    0.008,
    exact,
    () => run(battery.blockResistance, { r_100: 0.008, C_100: 100, C: 200, n_s: 2 }),
  ],
  [
    '12.7 V less 100 A through 10 mΩ',
    11.7,
    exact,
    () => run(battery.voltageUnderLoad, { V_rest: 12.7, I: 100, R_i: 0.008, R_c: 0.002 }),
  ],
  ['100 Ah at 80 %, down to half', 30, exact, () => run(battery.chargeLeft, { DoD: 0.5, s: 0.8, C: 100 })],
  [
    '100 Ah, 12.8 V, 80 %, 3,000 times',
    3_072_000,
    exact,
    () => run(battery.lifeEnergy, { C: 100, V: 12.8, DoD: 0.8, n: 3000 }),
  ],
  ['two strings of 100 Ah', 200, exact, () => run(battery.bankCharge, { n_p: 2, C: 100 })],
  ['four of 3.2 V in series', 12.8, exact, () => run(battery.bankVolts, { n_s: 4, V: 3.2 })],
  [
    'a battery below its rated current gives its label',
    1,
    exact,
    () => run(battery.rateFactor, { C: 100, I: 1, H: 20, k: 1.2 }),
  ],
  ['20 A on offer, 3 A to what runs', 17, exact, () => run(charging.currentLeft, { I_s: 20, I_l: 3 })],
  ['3 A on offer, 5 A asked for', 0, exact, () => run(charging.currentLeft, { I_s: 3, I_l: 5 })],
  ['100 Ah from 40 to 90 %', 50, exact, () => run(charging.chargeMissing, { C: 100, s_1: 0.9, s_0: 0.4 })],
  ['45 Ah at 90 %', 50, exact, () => run(charge.chargeToPutIn, { Q_m: 45, eta_c: 0.9 })],
  ['30 and 12 Ah put in', 42, exact, () => run(charge.allChargeIn, { Q_in: 30, Q_top: 12 })],
  [
    'the last 20 Ah, 100 % falling to 50 %: 20 × 2 × ln 2',
    27.7259,
    1e-4,
    () => run(charge.topChargeIn, { m_t: 20, eta_c: 1, eta_f: 0.5, m_0: 20, m_1: 0 }),
  ],
  [
    'after those 27.73 Ah nothing is missing of the 20',
    0,
    1e-4,
    () => run(charge.missingInTop, { m_t: 20, eta_c: 1, eta_f: 0.5, m_0: 20, Q_in: 27.7259 }),
  ],
  [
    'from 20 to 10 Ah missing, 100 to 50 % at the end, an hour: 2 × ln (20 × 0.75 ÷ 10)',
    0.81093,
    1e-5,
    () => run(charge.topTailTime, { tau: 1, eta_f: 0.5, m_0: 20, eta_c: 1, m_1: 10, m_t: 20 }),
  ],
  [
    'and back: 0.81 h later 10 Ah are missing',
    10,
    1e-3,
    () => run(charge.missingInTopTail, { m_0: 20, eta_f: 0.5, eta_c: 1, m_t: 20, t: 0.81093, tau: 1 }),
  ],
  ['2, 1 and half an hour', 3.5, exact, () => run(charge.fillTime, { t_1: 2, t_2: 1, t_3: 0.5 })],
  [
    'an hour at 25 °C, four fifths of its label left, 20 K colder',
    2.5,
    exact,
    () => run(charge.coldTimeConstant, { tau: 1, k_age: 0.8, T_25: 25, T: 5, T_20: 20 }),
  ],
  [
    '10 mΩ, 2 V to absorption, an hour, 40 Ah missing',
    0.06,
    exact,
    () => run(charge.chargingSlope, { R_i: 0.01, V_a: 14.4, V_rest: 12.4, tau: 1, m: 40 }),
  ],
  [
    '12.4 V and 20 A at 0.06 V/A',
    13.6,
    exact,
    () => run(charge.chargingVolts, { V_a: 14.4, V_rest: 12.4, I: 20, k_V: 0.06 }),
  ],
  [
    '12.4 V and 60 A at 0.06 V/A: no more than absorption',
    14.4,
    exact,
    () => run(charge.chargingVolts, { V_a: 14.4, V_rest: 12.4, I: 60, k_V: 0.06 }),
  ],
  [
    '272 W into 12.4 V and 0.06 V/A: 20 A at 13.6 V',
    20,
    exact,
    () => run(charge.currentOfSources, { I_s: 0, V_rest: 12.4, P: 272, k_V: 0.06 }),
  ],
  [
    '10 A and 136 W into the same: 20 A',
    20,
    exact,
    () => run(charge.currentOfSources, { I_s: 10, V_rest: 12.4, P: 136, k_V: 0.06 }),
  ],
  [
    'nine tenths of the charge, 12 V out for 13.5 V in',
    0.8,
    exact,
    () => run(charge.roundTripEnergy, { eta_c: 0.9, V_out: 12, V_in: 13.5 }),
  ],
  [
    '45 Ah at 12 V, at 13.5 V in the battery, nine tenths',
    36,
    exact,
    () => run(solar.storedCharge, { Q: 45, V_0: 12, V: 13.5, eta_c: 0.9 }),
  ],
  ['276 W at 13.8 V', 20, exact, () => run(charging.chargerCurrent, { P: 276, V: 13.8 })],
  ['nine tenths of 20 A', 18, exact, () => run(charging.outputCurrent, { k_s: 0.9, I_r: 20 })],
  [
    '20 A at 14.4 V, 90 % and a power factor of 0.8',
    400,
    exact,
    () => run(charging.chargerInput, { I: 20, V: 14.4, eta: 0.9, pf: 0.8 }),
  ],
  [
    '400 and 1,600 W on twice the rating',
    1000,
    exact,
    () => run(charging.startRating, { S_c: 400, P_s: 1600, k_g: 2 }),
  ],
  [
    '1,000 VA at height and in heat, a charger of 90 % and 0.8, 14.4 V',
    45,
    exact,
    () => run(charging.generatorCurrent, { S: 1000, f_z: 0.9, f_T: 1, eta: 0.9, pf: 0.8, V: 14.4 }),
  ],
  ['85 % of a 2,000 W generator', 1700, exact, () => run(charging.continuousPower, { k_c: 0.85, S_p: 2000 })],
  ['30 Ah at 20 A', 1.5, exact, () => run(charge.steadyTime, { Q_in: 30, I: 20 })],
  ['900 W at 90 %', 1000, exact, () => run(inverter.inverterInput, { P: 900, eta: 0.9 })],
  [
    '1,000 W running, of them a 200 W motor that starts at five times',
    1800,
    exact,
    () => run(inverter.startingPower, { P: 1000, k_s: 5, P_m: 200 }),
  ],
  ['48 Ah in 24 hours', 2, exact, () => run(loads.averageCurrent, { Q: 48, t_day: 24 })],
  ['10 A at 230 V', 2300, exact, () => run(loads.powerOfCurrent, { I: 10, V: 230 })],
  ['48 Ah a day, 6 hours of it', 12, exact, () => run(loads.chargeOverTime, { Q: 48, t: 6, t_day: 24 })],
  [
    '5 sun hours, a fifth of them let through',
    1,
    exact,
    () => run(solar.overcastSunHours, { H: 5, k_cloud: 0.2 }),
  ],
  [
    'a half sine of 12 hours with 5 kWh/m², weighted by itself: π²/8 × 5/12',
    0.51404,
    1e-5,
    () => run(solar.sunWhileItShines, { G_0: 1, H: 5, N: 12 }),
  ],
  ['480 Wh at 12 V', 40, exact, () => run(solar.dailyYieldCharge, { E: 480, V: 12 })],
  [
    '40 Ah at 12 V in 5 hours at 80 % and 96 %',
    125,
    exact,
    () => run(solar.panelPower, { Q: 40, V: 12, H: 5, f: 0.8, eta_c: 0.96 }),
  ],
  ['two panels of 22 V in series', 44, exact, () => run(wiring.stringVoltage, { n_s: 2, V_oc: 22 })],
  [
    '44 V at 25 °C, a quarter of a percent more for each degree, at −25 °C',
    49.5,
    exact,
    () => run(wiring.coldVoltage, { V_s: 44, beta: -0.0025, T: -25, T_0: 25 }),
  ],
  ['400 W at 96 % into 12.8 V', 30, exact, () => run(wiring.trackedCurrent, { P: 400, eta: 0.96, V: 12.8 })],
  [
    'two strings of 180 W, 18 V of 22.5 V',
    20,
    exact,
    () =>
      run(wiring.switchedCurrent, {
        n_p: 2,
        I_mp: run(wiring.fullPowerCurrent, { P: 180, k_mp: 0.8, V_oc: 22.5 }),
      }),
  ],
  ['50 Ah, 9 that stayed, 4 out', 55, exact, () => run(trip.chargeAfterHour, { q: 50, Q_stay: 9, Q_out: 4 })],
  ['45 of 90 Ah', 50, exact, () => run(trip.chargeLevel, { q: 45, C_real: 90 })],
  ['50 Ah, 20 out, 10 in', 40, exact, () => run(trip.chargeAtPoint, { q_0: 50, Q_out: 20, Q_in: 10 })],
  [
    'a cube of 27 L in foam of 40 mm: six squares of 320 mm',
    0.6144,
    exact,
    () => run(cooler.boxSurface, { g: 6, V: 0.027, d: 0.04 }),
  ],
  [
    '0.8 m² of 40 mm at 0.024 W/(m·K), a quarter more at the seals',
    0.6,
    exact,
    () => run(cooler.wallLeak, { k: 0.024, A: 0.8, d: 0.04, s: 0.25 }),
  ],
  [
    '0.6 W/K, 20 K, half as much again for goods',
    18,
    exact,
    () => run(cooler.heatGain, { UA: 0.6, T_a: 25, T_s: 5, w: 0.5 }),
  ],
  [
    'Carnot between −23.15 and 26.85 °C: 250 K by 50 K',
    5,
    exact,
    () => run(cooler.coolingRatio, { c: 1, T_e: -23.15, T_0: 273.15, T_c: 26.85, L: 0 }),
  ],
];

const sky: readonly Row[] = [
  ...cells(
    'astronomy: beyond the polar circles the sun does not set in summer nor rise in winter, radians and one',
    'recomputed',
    [
      [
        'A4-22.day',
        1 + Math.PI,
        exact,
        () => 1 + run(sunsetAngle, { phi: 1.4, delta: run(declination, { J: 172 }) }),
      ],
      [
        'A4-22.night',
        1,
        exact,
        () => 1 + run(sunsetAngle, { phi: -1.4, delta: run(declination, { J: 172 }) }),
      ],
    ],
  ),
];

export const rows: readonly Row[] = [
  ...definitions.map(([says, gives, within, ours], i) =>
    row(
      `D-${String(i + 1).padStart(2, '0')}`,
      `definition, on paper: ${says}`,
      'recomputed',
      gives,
      within,
      ours,
    ),
  ),
  ...sky,
];
