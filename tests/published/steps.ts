import { present } from '#basics/present.ts';
import { bankOf, bankOfOne } from '#engine/battery/bank.ts';
import { chargeRow } from '#engine/battery/charge-table.ts';
import { blocksAt } from '#engine/battery/tables.ts';
import { circuitCurrents } from '#engine/cable/circuit.ts';
import { autoCableAreaMm2, conductorAssumptions, gaugeFor } from '#engine/cable/conductor.ts';
import { fuseFor } from '#engine/cable/fuse.ts';
import { chargeOf } from '#engine/charging/charge.ts';
import { generatorAssumptions, generatorSizeFor } from '#engine/charging/generator.ts';
import { sourceCurrentA } from '#engine/charging/source.ts';
import { fitsBank } from '#engine/inverter/check.ts';
import { learn } from '#engine/learn/learn.ts';
import { unlearned } from '#engine/learn/state.ts';
import { dayOf, type Use } from '#engine/loads/model.ts';
import { solarAssumptions } from '#engine/solar/model.ts';
import { radians } from '#engine/solar/sun.ts';
import { diffuseShare } from '#engine/solar/tilt.ts';
import { accountByDay } from '#engine/trip/by-day.ts';
import { exploreLevel } from '#engine/trip/level-at.ts';
import { simulate } from '#engine/trip/model.ts';
import type { Battery, Load } from '#rig/rig.ts';
import { cells, type Row } from './row.ts';

// The steps within sums: hours of a day, shares of a hundred, blocks of 12 V. Each row is a sum that fits on a scrap of
// paper, asked of the function that takes the step.

const load = (name: string, rest: Partial<Load>): Load => ({ name, count: 1, supply: 'dc', ...rest });
const use = (one: Load, more: Partial<Use> = {}): Use => ({ loads: [one], voltageV: 12, ...more });
const dayAh = (one: Load): number => dayOf(use(one), {}).dailyUse;
const whole: Use = { loads: [], voltageV: 12, dailyUseAh: 48 };
/** Ah a day that an inverter of 1000 W idles away where it is left on, with a telly on it for so many hours. */
const idleAh = (tellyH: number): number => {
  const telly = load('tv', { supply: 'ac', powerW: 60, hoursPerDay: tellyH });
  const { parts } = dayOf(use(telly, { isInverterLeftOn: true, inverterW: 1000 }), { idleShare: 0.012 });
  return present(parts.find(part => part.load.name === 'inverter, idle')).chargeAh;
};

const agm = (stateOfChargePercent?: number) =>
  bankOfOne({ capacityAh: 100, chemistry: 'agm', stateOfChargePercent });
const lithium = bankOfOne({ capacityAh: 100, chemistry: 'lfp', stateOfChargePercent: 20 });
const charged = chargeOf({ bank: lithium, isIsolator: false, isSizeAssumed: false }, 20, {
  fullAt: 1,
  chargeEfficiency: 0.99,
  topEfficiency: 0.99,
});

const plainTrip = {
  depthOfDischarge: 0.5,
  peukertExponent: 1,
  age: 1,
};
/** A trip of 20 h at 1 A from half of 100 Ah. */
const halfway = simulate(
  {
    bank: agm(50),
    use: { loads: [], dailyUseAh: 24, voltageV: 12, ambientC: 25 },
    durationH: 20,
    startHour: 8,
  },
  plainTrip,
);

const level = (value: number) =>
  ({ name: 'stateOfCharge', value, low: value, high: value, unit: '%', why: 'told' }) as const;
const later = (percent: number, netA: number, durationH: number): number =>
  exploreLevel({
    bank: { ...agm(), ageYears: 0 },
    use: whole,
    level: level(percent),
    durationH,
    clockH: 20,
    netA,
  }).figures.stateOfCharge.value;

const atH = (h: number, chargeAh: number) => ({
  atH: h,
  chargeAh,
  useAh: 1,
  sunAh: 0,
  drivingAh: 0,
  pluggedAh: 0,
});
/** Eight in the evening, midnight, seven in the morning, noon; of 200 Ah. */
const account = accountByDay([atH(4, 180), atH(15, 120), atH(20, 140)], 16, 200);

const limited = (more: Partial<Battery>): Battery => ({
  count: 2,
  capacityAh: 100,
  chemistry: 'lfp',
  ...more,
});

const heights = (altitudeM: number): number =>
  generatorAssumptions({ altitudeM }).filter(({ name }) => name === 'altitudeShare').length;

const tilt = (latitudeDeg: number): number =>
  present(
    solarAssumptions({ latitudeDeg, longitudeDeg: 150, month: 6, mount: 'tilted' }).find(
      ({ name }) => name === 'panelTilt',
    ),
  ).value;

const steady = {
  labelAh: 100,
  capacityAh: 100,
  useAh: Array<number>(24).fill(1),
  sunAh: Array<number>(24).fill(0),
};
/** Where a level that was read puts a rig of which nothing was known. */
const taught = (percent: number): number =>
  100 * (1 - learn(unlearned(0), { at: 0, percent }, steady).learned.mean[0]);

const warmth = (airC?: number) =>
  present(conductorAssumptions(undefined, airC).find(({ name }) => name === 'conductorC'));

/** Erbs' monthly curves at the ends that they are published for. */
const winter = (K: number): number => 1.391 - 3.56 * K + 4.189 * K ** 2 - 2.137 * K ** 3;
const summer = (K: number): number => 1.311 - 3.022 * K + 3.427 * K ** 2 - 1.821 * K ** 3;

export const rows: readonly Row[] = [
  ...cells('definition of hour, day and per cent, on paper: 12 V', 'recomputed', [
    ['T-01.60 W for 30 minutes', 2.5, 1e-9, () => dayAh(load('light', { powerW: 60, minutesPerDay: 30 }))],
    ['T-01.5 A, 30 % of the time', 36, 1e-9, () => dayAh(load('fridge', { currentA: 5, dutyPercent: 30 }))],
    ['T-01.1.5 A all day', 36, 1e-9, () => dayAh(load('cpap', { currentA: 1.5, hoursPerDay: 24 }))],
    [
      'T-01.4 A for 8 h of a compressor',
      32,
      1e-9,
      () => dayAh(load('fridge', { currentA: 4, hoursPerDay: 8 })),
    ],
    ['T-01.1 A once for 30 h, of a day', 24, 1e-9, () => dayAh(load('fan', { currentA: 1, hoursOnce: 30 }))],
    ['T-01.48 Ah a day are 2 A', 2, 1e-9, () => dayOf(whole, {}).currentA],
    ['T-01.48 Ah a day at most', 2, 1e-9, () => dayOf(whole, {}).peakA],
    ['T-01.240 Wh a day', 20, 1e-9, () => dayOf({ loads: [], voltageV: 12, dailyUseWh: 240 }, {}).dailyUse],
    ['T-01.half as much again', 72, 1e-9, () => dayOf(whole, { learnedDraw: 150 }).dailyUse],
    [
      'T-01.each part of it too',
      54,
      1e-9,
      () =>
        present(dayOf(use(load('fridge', { chargeAhPerDay: 36 })), { learnedDraw: 150 }).parts[0]).chargeAh,
    ],
    [
      'T-01.36 Ah a day told of a thing',
      1.5,
      1e-9,
      () => dayOf(use(load('fridge', { chargeAhPerDay: 36 })), {}).currentA,
    ],
    ['T-01.12 W of idling for 20 h', 20, 1e-9, () => idleAh(4)],
    ['T-01.12 W of idling for 10 h', 10, 1e-9, () => idleAh(14)],
  ]),
  ...cells('definition of a state of charge, on paper: 100 Ah', 'recomputed', [
    ['T-02.80 %, 2 A out for 10 h', 60, 1e-6, () => later(80, -2, 10)],
    ['T-02.30 %, 4 A in for 10 h', 70, 1e-6, () => later(30, 4, 10)],
    ['T-02.90 %, 4 A in for 10 h', 100, 1e-6, () => later(90, 4, 10)],
    ['T-02.20 Ah out of 50', 30, 1e-6, () => halfway.endCharge],
    ['T-02.20 points below half', -20, 1e-6, () => halfway.margin],
    ['T-02.120 of 200 Ah at seven', 60, 1e-6, () => present(account[1]).morningPercent ?? 0],
    ['T-02.180 of 200 Ah at eight', 90, 1e-6, () => present(account[0]).endPercent],
    ['T-02.the lowest at seven', 7, 1e-6, () => present(account[1]).lowestHour],
    ['T-02.two days', 2, 0, () => account.length],
    ['T-02.a gauge says 70 %', 70, 1.5, () => taught(70)],
    ['T-02.a gauge says 40 %', 40, 1.5, () => taught(40)],
  ]),
  ...cells('LFP takes a steady current nearly to the end and keeps 99 % of it; from 20 % at 20 A', 'memory', [
    ['T-03.to 80 %', 60 / 0.99 / 20, 0.05, () => charged.timeTo80H],
    ['T-03.after an hour', 39.8, 0.1, () => charged.percentAfter(1)],
    ['T-03.needed', 80 / 0.99, 0.5, () => charged.neededAh],
    ['T-03.start', 20, 1e-9, () => charged.startPercent],
  ]),
  ...cells(
    'definition: lead has 2 V a cell and lithium iron phosphate 3.2 V; 12 V are one block',
    'recomputed',
    [
      ['T-04.48 V of lead', 4, 0, () => blocksAt(48)],
      ['T-04.51.2 V', 4, 0, () => blocksAt(51.2)],
      ['T-04.36 V', 3, 0, () => blocksAt(36)],
      [
        'T-04.a torch’s 4 V lead battery is no power bank',
        4,
        1e-9,
        () => present(bankOf([{ count: 1, capacityAh: 4, voltageV: 4, chemistry: 'agm' }])).capacityAh,
      ],
      [
        'T-04.two of 6 V',
        12,
        1e-9,
        () => present(bankOf([{ count: 2, capacityAh: 200, voltageV: 6, chemistry: 'agm' }])).voltageV,
      ],
      [
        'T-04.two of 6 V keep their Ah',
        200,
        1e-9,
        () => present(bankOf([{ count: 2, capacityAh: 200, voltageV: 6, chemistry: 'agm' }])).capacityAh,
      ],
      [
        'T-04.two of 12 V side by side',
        200,
        1e-9,
        () => present(bankOf([{ count: 2, capacityAh: 100, voltageV: 12, chemistry: 'agm' }])).capacityAh,
      ],
    ],
  ),
  ...cells('Kirchhoff: one current through a string, strings side by side add up', 'recomputed', [
    [
      'T-05.side by side',
      200,
      1e-9,
      () => present(bankOf([limited({ maxCurrentA: 100 })], 'parallel')).maxCurrentA ?? 0,
    ],
    [
      'T-05.in series',
      100,
      1e-9,
      () => present(bankOf([limited({ maxCurrentA: 100 })], 'series')).maxCurrentA ?? 0,
    ],
  ]),
  ...cells(
    'heater makers’ sheets that agree: some 10 A as the glow plug starts, at 24 V half of it',
    'memory',
    [
      [
        'T-06.12 V',
        10,
        1,
        () =>
          circuitCurrents(
            {
              kind: 'loads',
              use: 'general',
              voltageV: 12,
              facts: { loads: [load('diesel heater', { currentA: 1 })] },
            },
            {},
          ).continuousA,
      ],
      [
        'T-06.24 V',
        5,
        0.5,
        () =>
          circuitCurrents(
            {
              kind: 'loads',
              use: 'general',
              voltageV: 24,
              facts: { loads: [load('diesel heater', { currentA: 1 })] },
            },
            {},
          ).continuousA,
      ],
    ],
  ),
  ...cells('ASTM B258 areas: 8 AWG has 8.37 mm², 6 AWG 13.3 mm²', 'recomputed', [
    ['T-07.8 mm²', 8, 0, () => gaugeFor(8)],
    ['T-07.8.6 mm²', 8, 0, () => gaugeFor(8.6)],
    ['T-07.10 mm²', 6, 0, () => gaugeFor(10)],
  ]),
  ...cells('common practice: auto cable of 3 mm has 1.13 mm² of copper, of 6 mm 4.6 mm²', 'memory', [
    ['T-08.3 mm', 1.13, 0.06, () => autoCableAreaMm2(3)],
    ['T-08.6 mm', 4.6, 0.4, () => autoCableAreaMm2(6)],
  ]),
  ...cells('common practice: copper under load some 10 K above warm air', 'memory', [
    ['T-09.air of 45 °C', 55, 3, () => warmth(45).value],
    ['T-09.nobody said', 35, 5, () => warmth().value],
    ['T-09.at least', 20, 3, () => warmth().low],
    ['T-09.a closed locker in summer', 60, 5, () => warmth().high],
    ['T-09.air of 45 °C, at most', 70, 3, () => warmth(45).high],
  ]),
  ...cells('NEC 240.6(A): above 600 A the ratings go by hundreds', 'memory', [
    ['T-10.625 A', 700, 0, () => fuseFor(500).ratingA],
    ['T-10.720 A', 800, 0, () => fuseFor(576).ratingA],
  ]),
  ...cells('makers’ sheets that agree: a petrol generator gives its watts up to 300 m', 'memory', [
    ['T-11.250 m', 0, 0, () => heights(250)],
    ['T-11.350 m', 1, 0, () => heights(350)],
  ]),
  ...cells('common practice: generators above 10 kW are sold by the kilowatt', 'memory', [
    ['T-12.11.2 kW', 12000, 0, () => generatorSizeFor(0.9 * 11200)],
  ]),
  ...cells('Duffie & Beckman, eq. 2.12.1: the curves hold from a clearness of 0.3 to 0.8', 'memory', [
    ['T-13.0.25 in winter', winter(0.3), 0.003, () => diffuseShare(0.25, radians(75))],
    ['T-13.0.35 in winter', winter(0.35), 0.003, () => diffuseShare(0.35, radians(75))],
    ['T-13.0.9 in summer', summer(0.8), 0.003, () => diffuseShare(0.9, radians(100))],
    ['T-13.0.75 in summer', summer(0.75), 0.003, () => diffuseShare(0.75, radians(100))],
  ]),
  ...cells('common practice: tilted as the latitude, 10 to 15° at least so that rain washes it', 'memory', [
    ['T-14.Cairns', 17, 2, () => tilt(-16.9)],
    ['T-14.Darwin', 14, 2, () => tilt(-12.5)],
    ['T-14.Hobart', 43, 2, () => tilt(-42.9)],
    ['T-14.Tromsø', 60, 5, () => tilt(69.6)],
  ]),
  ...cells(
    'common practice: a lithium bank gives its C-rate for long, twice for a moment; 100 Ah, 1 C',
    'memory',
    [['T-15.for long', 100, 5, () => fitsBank(lithium, 50).limitA]],
  ),
  ...cells('power = volts × amps: 500 W into a battery that charges at 13.8 V', 'recomputed', [
    [
      'T-16.mains charger by its watts',
      36.2,
      1,
      () =>
        sourceCurrentA(
          { kind: 'mains', powerW: 500, row: chargeRow('agm'), blocks: 1 },
          { chargerOutput: 1, chargeVoltage: 13.8 },
        ),
    ],
  ]),
];
