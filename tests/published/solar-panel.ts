import { present } from '#basics/present.ts';
import { partLoadEfficiency } from '#engine/inverter/rules.ts';
import { dayTemperature } from '#engine/solar/air.ts';
import { coldestMorning, labelC, voltageCoefficient } from '#engine/solar/cold.ts';
import { fullPowerShare } from '#engine/solar/module.ts';
import { panelAssumptions } from '#engine/solar/panel.ts';
import {
  cellTemperature,
  mpptFactor,
  panelLosses,
  pwmFactor,
  sunWhileItShines,
  temperatureFactor,
} from '#engine/solar/rules.ts';
import { outsideRadiationOf } from '#engine/solar/sun.ts';
import { mountHeating } from '#engine/solar/tables.ts';
import { tiltedRadiation } from '#engine/solar/tilt.ts';
import { coldVoltage } from '#engine/solar/wiring-rules.ts';
import { run } from '#rule/rule.ts';
import type { Row } from './row.ts';

const pvlib = 'pvlib-python, its own tests';
const pvwatts = 'Dobos (2014), PVWatts Version 5 Manual';
const golden = 'PVWatts hourly output, Golden, 4 kW at 20°';
const ross = 'ours is Ross’s model without wind';

/** Heating by a nominal operating cell temperature, K·m²/kW. */
const byNoct = (noct: number) => (noct - 20) / 0.8;
const cell = (T_a: number, k: number, G: number) => run(cellTemperature, { T_a, k, G });
const free = 20.8;
const coefficient = present(panelAssumptions({}).find(a => a.name === 'powerCoefficient'));
const factorAt = (T_c: number, gamma = coefficient.value) => run(temperatureFactor, { gamma, T_c, T_0: 25 });

// The ten losses of PVWatts' defaults, of which two are nought, in two goes of four.
const kept =
  run(panelLosses, { L_dirt: 0.02, L_wire: 0.02, L_mismatch: 0.02, L_reflection: 0.03 }) *
  run(panelLosses, { L_dirt: 0.005, L_wire: 0.015, L_mismatch: 0.01, L_reflection: 0.03 });

const ghi = [2.46, 3.4, 4.57, 5.36, 6.08, 6.89, 6.19, 5.7, 5.07, 3.78, 2.91, 2.24];
const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const goldenPlane = () =>
  ghi.reduce((sum, H, m) => {
    const clearness = H / outsideRadiationOf(39.73, m + 1);
    return (
      sum + present(days[m]) * tiltedRadiation({ latitudeDeg: 39.73, month: m + 1, clearness, tiltDeg: 20 })
    );
  }, 0);
/** Air at Golden, 1,830 m, the months weighed by their sun. */
const sunlitC =
  ghi.reduce((sum, H, m) => {
    const there = { latitudeDeg: 39.73, longitudeDeg: -105.18, heightM: 1830, month: m + 1 };
    return sum + present(days[m]) * H * dayTemperature(there).value;
  }, 0) / ghi.reduce((sum, H, m) => sum + present(days[m]) * H, 0);
const goldenRatio = (noct: number) => {
  const G = run(sunWhileItShines, { G_0: 1, H: 1930.9 / 365, N: 12 });
  return kept * factorAt(cell(sunlitC, byNoct(noct), G), -0.0047);
};

const pwm = (V_bat: number, V_mp: number, f_T = 1, eta = 1) =>
  run(pwmFactor, { V_bat, V_mp, f_T, eta, f_L: 1, k_shade: 1 });
const mppt = (f_T: number) => run(mpptFactor, { f_T, f_L: 1, k_shade: 1, eta: 0.95 });
/** By how much (%) MPPT brings more than PWM, cells at a temperature. */
const gain = (T_c: number) => 100 * (mppt(factorAt(T_c)) / pwm(13.1, 18.1, factorAt(T_c), 0.95) - 1);

/** Part-load efficiency of an inverter by its efficiency at the rating. */
const inverter = (z: number, eta_n: number) => run(partLoadEfficiency, { eta_n, z });

/** Volts of a string in the cold against those at 25 °C, by the steepest panel taken for possible. */
const rise = (T: number) => run(coldVoltage, { V_s: 1, beta: voltageCoefficient.low, T, T_0: labelC });

export const rows: readonly Row[] = [
  {
    id: 'B1-01',
    from: `${pvlib}, test_ross, full sun`,
    how: 'seen',
    gives: 67.5,
    within: 0.01,
    run: () => cell(30, byNoct(50), 1),
  },
  {
    id: 'B1-02',
    from: `${pvlib}, test_ross, 800 W/m²`,
    how: 'seen',
    gives: 50,
    within: 0.01,
    run: () => cell(20, byNoct(50), 0.8),
  },
  {
    id: 'B1-03',
    from: `${pvlib}, test_sapm_cell, open rack in wind`,
    how: 'seen',
    gives: 43.509,
    within: 5,
    differs: ross,
    run: () => cell(20, free, 0.9),
  },
  {
    id: 'B1-04',
    from: `${pvlib}, Faiman's model in wind`,
    how: 'seen',
    gives: 35.203,
    within: 4,
    differs: ross,
    run: () => cell(20, free, 0.9),
  },
  {
    id: 'B1-05',
    from: `${pvlib}, test_pvsyst_cell_default`,
    how: 'seen',
    gives: 45.138,
    within: 2,
    differs: ross,
    run: () => cell(20, 26, 0.9),
  },
  {
    id: 'B1-06',
    from: `${pvlib}, test_noct_sam`,
    how: 'seen',
    gives: 55.231,
    within: 1.1,
    differs: ross,
    run: () => cell(25, byNoct(45), 1),
  },
  {
    id: 'B1-07',
    from: `${pvlib}, test_pvwatts_dc`,
    how: 'seen',
    gives: 88.65,
    within: 0.001,
    run: () => 100 * 0.9 * factorAt(30, -0.003),
  },
  {
    id: 'B1-08',
    from: 'Skoplaki & Palyvos (2009), free-standing panel',
    how: 'seen',
    gives: 20.8,
    within: 2,
    differs: 'on the ground a little warmer',
    run: () => mountHeating.tilted.value,
  },
  {
    id: 'B1-09',
    from: 'Skoplaki & Palyvos (2009), flat roof, well ventilated',
    how: 'seen',
    gives: 26,
    within: 2,
    differs: 'the cool end of ours',
    run: () => mountHeating.flat.low,
  },
  {
    id: 'B1-10',
    from: 'Skoplaki & Palyvos (2009), roof, not ventilated',
    how: 'seen',
    gives: 56.3,
    within: 0.5,
    differs: 'the hot end of ours',
    run: () => mountHeating.flat.high,
  },
  {
    id: 'B1-11a',
    from: `${pvwatts}, table 2, standard panel, %/K`,
    how: 'memory',
    gives: -0.47,
    within: 1e-9,
    run: () => 100 * coefficient.low,
  },
  {
    id: 'B1-11b',
    from: `${pvwatts}, table 2, premium panel, %/K`,
    how: 'memory',
    gives: -0.35,
    within: 1e-9,
    run: () => 100 * coefficient.high,
  },
  {
    id: 'B1-12',
    from: `${pvlib}, test_fuentes, installed NOCT on a roof`,
    how: 'seen',
    gives: 49,
    within: 3,
    run: () => 20 + 0.8 * mountHeating.flat.value,
  },
  {
    id: 'B1-13',
    from: `${golden}, roof over open rack`,
    how: 'seen',
    gives: 0.986,
    within: 0.003,
    run: () => goldenRatio(49) / goldenRatio(45),
  },
  {
    id: 'B2-01',
    from: `${pvlib}, test_pvwatts_losses_default, %`,
    how: 'seen',
    gives: 14.0757,
    within: 0.001,
    run: () => 100 * (1 - kept),
  },
  {
    id: 'B2-02',
    from: 'the same losses added up, which must not be done, %',
    how: 'recomputed',
    gives: 15 - 14.0757,
    within: 0.001,
    run: () => 15 - 100 * (1 - kept),
  },
  {
    id: 'B2-07',
    from: `${golden}, DC performance ratio of the year`,
    how: 'seen',
    gives: 0.8146,
    within: 0.02,
    differs: 'one mean day for the year',
    run: () => goldenRatio(45),
  },
  {
    id: 'B2-08',
    from: `${golden}, AC yield of a kW, kWh a day`,
    how: 'seen',
    gives: 4.13,
    within: 0.12,
    differs: 'one mean day for the year',
    run: () => (1930.9 / 365) * goldenRatio(45) * 0.96,
  },
  {
    id: 'B2-09',
    from: `${golden}, sun on the panels in a year, kWh/m²`,
    how: 'seen',
    gives: 1930.9,
    within: 70,
    differs: 'isotropic sky, which runs 1 to 4 % low',
    run: goldenPlane,
  },
  {
    id: 'B3-01',
    from: 'common practice, 120 W panel of 17 V on a 12 V battery, W',
    how: 'memory',
    gives: 84,
    within: 1,
    run: () => 120 * pwm(12, 17),
  },
  {
    id: 'B3-02',
    from: 'common practice, loss of the same, %',
    how: 'memory',
    gives: 30,
    within: 2,
    run: () => 100 * (1 - pwm(12, 17)),
  },
  {
    id: 'B3-03',
    from: 'common practice, MPPT over PWM in a mild climate: 15 to 30 %',
    how: 'memory',
    gives: 22.5,
    within: 7.5,
    run: () => gain(38),
  },
  {
    id: 'B3-04',
    from: 'common practice, MPPT over PWM with hot cells: 0 to 10 %',
    how: 'memory',
    gives: 5,
    within: 4.99,
    run: () => gain(70),
  },
  {
    id: 'trade-pwm-60',
    from: 'common practice, what a PWM loses of a 60-cell panel of 31 V on a 12 V battery: more than half, %',
    how: 'memory',
    gives: 57.5,
    within: 2.5,
    run: () => 100 * (1 - pwm(13.1, 31)),
  },
  ...[
    [10, 1.06],
    [0, 1.1],
    [-10, 1.14],
    [-20, 1.18],
    [-40, 1.25],
  ].map(
    ([T, gives]): Row => ({
      id: `nec-690.7-${T}`,
      from: `NEC table 690.7(A), crystalline silicon, volts at ${T} °C against those of the label`,
      how: 'memory',
      gives: present(gives),
      within: 0.011,
      run: () => rise(present(T)),
    }),
  ),
  ...(
    [
      ['Canberra', -35.3, 149.1, -7],
      ['Perth', -31.95, 115.86, 2],
      ['Darwin', -12.46, 130.84, 13],
      ['Alice Springs', -23.7, 133.88, -3],
      ['Edinburgh', 55.95, -3.19, -7],
      ['Berlin', 52.52, 13.4, -13],
      ['Denver', 39.74, -104.99, -22],
      ['Minneapolis', 44.98, -93.27, -27],
    ] as const
  ).map(
    ([town, latitudeDeg, longitudeDeg, gives]): Row => ({
      id: `coldest-${town}`,
      from: `coldest night of a usual year in ${town}, climate tables, K below a label’s 25 °C`,
      how: 'memory',
      gives: labelC - gives,
      within: 4,
      run: () => labelC - coldestMorning({ latitudeDeg, longitudeDeg }).value,
    }),
  ),
  {
    id: 'trade-full-power-60',
    from: 'data sheets of 60-cell panels: 30.5 V at full power, 37.5 V open circuit',
    how: 'memory',
    gives: 30.5 / 37.5,
    within: 0.02,
    run: () => fullPowerShare.value,
  },
  {
    id: 'trade-full-power-36',
    from: 'data sheets of 36-cell panels: 18 V at full power, 22 V open circuit',
    how: 'memory',
    gives: 18 / 22,
    within: 0.02,
    run: () => fullPowerShare.value,
  },
  {
    id: 'B2-03',
    from: `${pvlib}, test_pvwatts_scalars, AC of 90 W DC, W`,
    how: 'seen',
    gives: 85.5856,
    within: 0.001,
    run: () => 90 * inverter(0.9, 0.95),
  },
  {
    id: 'B2-04',
    from: `${pvlib}, test_pvwatts_scalars, AC at the rating, W`,
    how: 'seen',
    gives: 95,
    within: 0.001,
    run: () => 100 * inverter(1, 0.95),
  },
  {
    id: 'B2-06a',
    from: `${pvwatts}, eq. 11, load 5 % of the rating, 96 % at it`,
    how: 'recomputed',
    gives: 0.864,
    within: 0.002,
    run: () => inverter(0.05, 0.96),
  },
  {
    id: 'B2-06b',
    from: `${pvwatts}, eq. 11, load 10 % of the rating, 96 % at it`,
    how: 'recomputed',
    gives: 0.922,
    within: 0.002,
    run: () => inverter(0.1, 0.96),
  },
  {
    id: 'B2-06c',
    from: `${pvwatts}, eq. 11, load 20 % of the rating, 96 % at it`,
    how: 'recomputed',
    gives: 0.949,
    within: 0.002,
    run: () => inverter(0.2, 0.96),
  },
];
