import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { chargingOf } from '#engine/battery/charging.ts';
import { missingAfterH } from '#engine/battery/fill.ts';
import { chargeRateC } from '#engine/battery/limits.ts';
import { usualTrip } from '#engine/battery/round-trip.ts';
import { usableCapacity } from '#engine/battery/rules.ts';
import { ampacityA, autoCableAreaMm2, conductorOf, resistancePerM } from '#engine/cable/conductor.ts';
import { protect } from '#engine/cable/fuse.ts';
import { conductorResistance } from '#engine/cable/rules.ts';
import { copperResistivity } from '#engine/cable/tables.ts';
import { generatorRatingW, plateNoiseDb } from '#engine/charging/generator.ts';
import { altitudeFactor, heatFactor, ratingNeeded, soundAtDistance } from '#engine/charging/rules.ts';
import { altitudeRules, heatRule } from '#engine/charging/tables.ts';
import { batteryCurrentA, loadedVoltage } from '#engine/inverter/check.ts';
import { partLoadEfficiency } from '#engine/inverter/rules.ts';
import { convertKind } from '#engine/loads/convert.ts';
import { currentOfPower } from '#engine/loads/rules.ts';
import { peakSunHours } from '#engine/solar/model.ts';
import { mpptFactor, panelLosses } from '#engine/solar/rules.ts';
import { stations } from '#engine/solar/stations.ts';
import { outsideRadiationOf, outsideRadiationOn } from '#engine/solar/sun.ts';
import { tiltedRadiation } from '#engine/solar/tilt.ts';
import { run } from '#rule/rule.ts';
import type { Row } from './row.ts';

const common = 'common practice';
const fao = 'Allen et al. (1998), FAO-56';
const MJ = 3.6;

const row = (
  id: string,
  from: string,
  how: Row['how'],
  gives: number,
  within: number,
  ours: () => number,
  differs?: string,
): Row => ({ id, from, how, gives, within, run: ours, differs });

/** FAO-56's short cut for the middle of a month. */
const shortCut = (month: number): number => Math.trunc(30.4 * month - 15);
const fifteenths = [15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349];
/** Most that the short cut moves a table latitude's Ra in any month, MJ/m². */
const movedByShortCut = (): number =>
  Math.max(
    ...[0, -12, -20, -24, -28, -34, -38, 20, 40].flatMap(lat =>
      fifteenths.map(
        (J, m) => MJ * Math.abs(outsideRadiationOn(lat, J) - outsideRadiationOn(lat, shortCut(m + 1))),
      ),
    ),
  );

/** Sun on a panel at 30° in Melbourne's June, over that on flat ground. */
const winterGain = (tiltDeg: number): number => {
  const at = (angle: number): number =>
    tiltedRadiation({ latitudeDeg: -37.8, month: 6, clearness: 0.45, tiltDeg: angle });
  return at(tiltDeg) / at(0);
};
const goldenJune = (): number => {
  const [lat, ghi] = [39.73, 6.89];
  const clearness = ghi / outsideRadiationOf(lat, 6);
  return tiltedRadiation({ latitudeDeg: lat, month: 6, clearness, tiltDeg: 20 }) / ghi;
};

const lithium = present(bankOf([{ count: 1, capacityAh: 100, chemistry: 'lfp' }]));
/** Ah put in of an offer over some hours. */
const lfp =
  (temperatureC: number) =>
  (missingAh: number, offeredA: number, hours: number): number => {
    const battery = chargingOf(lithium, { temperatureC });
    return (missingAh - missingAfterH(battery, missingAh, offeredA, hours)) / battery.efficiency;
  };
const flexible = (areaMm2: number): number =>
  resistancePerM(present(conductorOf({ areaMm2 })), { conductorC: 20, strandFactor: 1 });

const site = { altitudeM: 2000, ambientC: 45 };
const duty = { chargerA: 0, chargeV: 14.4, loadW: 1000, startW: 1000 };

const traps: readonly Row[] = [
  row(
    'trap-1',
    `${fao}: int(30.4 M − 15) is not the 15th; what it moves Ra by between 38° S and 40° N`,
    'recomputed',
    0.541,
    0.005,
    movedByShortCut,
  ),
  // Worked out apart, with Cooper's declination on day 162: diffuse share 0.4425, beam ratio 2.04 and nought.
  row(
    'trap-2',
    'Liu–Jordan–Klein, south of the equator: the tilt is added to the latitude',
    'recomputed',
    1.563,
    0.02,
    () => winterGain(30),
  ),
  row(
    'trap-2.pole',
    'Liu–Jordan–Klein: a panel facing the wrong pole in winter, over flat',
    'recomputed',
    0.426,
    0.005,
    () => winterGain(-30),
  ),
  row(
    'trap-3',
    'Liu–Jordan–Klein from PVWatts’ Golden in June: 20° of tilt lose to flat (PVWatts itself: 0.98)',
    'recomputed',
    6.62 / 6.89,
    0.01,
    goldenJune,
  ),
  row(
    'trap-4',
    'PVWatts losses: 2, 3, 5 and 4 % multiply',
    'recomputed',
    0.98 * 0.97 * 0.95 * 0.96,
    1e-9,
    () => run(panelLosses, { L_dirt: 0.02, L_wire: 0.03, L_mismatch: 0.05, L_reflection: 0.04 }),
  ),
  row(
    'trap-8.frost',
    `${common}, LFP cell makers: nothing goes in below 0 °C (100 Ah missing less what 50 A put in)`,
    'memory',
    100,
    0,
    () => 100 - lfp(-1)(100, 50, 1),
  ),
  row('trap-8.cold', `${common}, LFP cell makers: 0.1 C from 0 to 5 °C`, 'memory', 10, 1e-6, () =>
    lfp(3)(100, 50, 1),
  ),
  row(
    'trap-8.edge',
    `${common}, LFP cell makers: at 0 °C itself a tenth, Ah in an hour`,
    'memory',
    10,
    1e-6,
    () => 100 * chargeRateC({ chemistry: 'lfp' }, 0),
  ),
  row(
    'trap-9',
    'IEC 60228 class 5 against 1/58 over the nominal area: 10 to 16 % more',
    'seen',
    0.13,
    0.03,
    () => flexible(6) / run(conductorResistance, { rho: copperResistivity, k_l: 1, S: 6 }) - 1,
  ),
  row('trap-10', `${common}: 6 mm auto cable holds 4.6 mm² of copper`, 'memory', 4.59, 0.14, () =>
    autoCableAreaMm2(6),
  ),
  row(
    'trap-13',
    `${common}: 2,000 m and 45 °C by an industrial set's rules, 0.94 × 0.97`,
    'recomputed',
    0.9118,
    0.0001,
    () =>
      1 /
      run(ratingNeeded, {
        S: 1,
        f_z: run(altitudeFactor, { z: site.altitudeM, ...altitudeRules.industrial }),
        f_T: run(heatFactor, { T: site.ambientC, ...heatRule }),
      }),
  ),
  row(
    'trap-13.starts',
    `${common}: makers begin at 0, 1,000 and 1,500 m; at 1,400 m`,
    'recomputed',
    0.976 - (1 - (0.035 * 1400) / 300),
    0.0001,
    () =>
      run(altitudeFactor, { z: 1400, ...altitudeRules.industrial }) -
      run(altitudeFactor, { z: 1400, ...altitudeRules.petrol }),
  ),
  row(
    'trap-13.rating',
    `${common}: 1,000 W at 2,000 m and 45 °C`,
    'recomputed',
    1000 / (0.94 * 0.97),
    0.01,
    () => generatorRatingW(duty, site, { altitudeShare: 0.94 }),
  ),
  row(
    'trap-14',
    'sound in the open (physics): 65 dB at 7 m is 58.2 dB at 15.24 m',
    'recomputed',
    58.2,
    0.1,
    () => run(soundAtDistance, { L_1: 65, d_1: 7, d_2: 15.24 }),
  ),
  row(
    'trap-14.plate',
    'US 36 CFR 2.12: 60 dBA at 50 ft is 66.8 dB on a sheet for 7 m',
    'recomputed',
    66.76,
    0.01,
    () => plateNoiseDb({ levelDb: 60, atM: 15.24 }),
  ),
];

/** The whole way of the sun into a 230 V socket: controller, lead-acid battery, inverter at a tenth of its rating. */
const throughTheHouse = (): number =>
  run(mpptFactor, { f_T: 1, f_L: 1, k_shade: 1, eta: 0.95 }) *
  usualTrip('agm').energyShare *
  run(partLoadEfficiency, { eta_n: 0.9, z: 0.1 });

const wire = (areaMm2: number) => present(conductorOf({ areaMm2 }));

/** Currents and copper of a camper, and how many of the fuses chosen for them are above what the copper carries. */
const fusesAboveCable = (): number =>
  [1, 5, 12, 20, 30, 45, 60, 100, 185].flatMap(amps =>
    [0.75, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 70].filter(
      S => protect(amps, wire(S)).fuse.ratingA > ampacityA(S),
    ),
  ).length;

const [dimmest, brightest] = (() => {
  const all = () =>
    stations
      .filter(s => Math.abs(s.latitudeDeg) < 55)
      .flatMap(({ latitudeDeg, longitudeDeg }) =>
        fifteenths.map((_, m) => MJ * peakSunHours({ latitudeDeg, longitudeDeg, month: m + 1 })),
      );
  return [() => Math.min(...all()), () => Math.max(...all())];
})() as [() => number, () => number];

const more: readonly Row[] = [
  row(
    'B2-05',
    'pvlib-python, test_pvwatts_scalars, nothing in, nothing out (100 W less it)',
    'seen',
    100,
    0,
    () =>
      100 -
      batteryCurrentA(0, 1000, { inverterEfficiency: 0.9, loadedVoltage: loadedVoltage(12, false).value }),
  ),
  row(
    'C2-11.usable',
    'IEEE 485 style, read forwards: 557.8 Ah at 80 %, 10 °C (1.19) and end of life give 300 Ah',
    'recomputed',
    300,
    0.1,
    () => run(usableCapacity, { C: 557.8, DoD: 0.8, k_rate: 1, k_temp: 1 / 1.19, k_age: 0.8 }),
  ),
  row(
    'C4-16',
    'a measured off-grid house, panel to socket, 62 % (physics essays)',
    'seen',
    0.62,
    0.05,
    throughTheHouse,
  ),
  row(
    'D5-06',
    'all standards: a fuse is never above what its cable carries (fuses that are, and one)',
    'memory',
    1,
    0,
    () => 1 + fusesAboveCable(),
  ),
  row(
    'E3-09',
    'NEMA MG 1, half a horsepower of code K at 230 V: 17.4 to 19.5 A while it starts',
    'recomputed',
    18.45,
    1.15,
    () => run(currentOfPower, { P: 0.5 * 8.5 * 1000, V: 230 }),
  ),
  row(
    'G-03',
    'Bureau of Meteorology: 20 MJ/m² are 5.556 peak sun hours',
    'recomputed',
    5.556,
    0.001,
    () => convertKind({ value: 20e6, from: 'power', to: 'energy', voltageV: 12, hours: 1 / 3600 }) / 1000,
  ),
  row(
    'G-08.low',
    'Bureau of Meteorology: a day brings 1 MJ/m² at least, outside the polar circles',
    'seen',
    2.5,
    1.5,
    dimmest,
    'ours are means of a month, the middle of winter included',
  ),
  row(
    'G-08.high',
    'Bureau of Meteorology: a day brings 35 MJ/m² at most',
    'seen',
    31,
    4,
    brightest,
    'ours are means of a month',
  ),
  row(
    'C3-24.bank',
    `${common}: two LFP of 12.8 V in series are 25.6 V`,
    'memory',
    25.6,
    1e-9,
    () => present(bankOf([{ count: 2, capacityAh: 100, chemistry: 'lfp' }], 'series')).voltageV,
  ),
];

export const rows: readonly Row[] = [...traps, ...more];
