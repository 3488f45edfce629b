import { dcdcInputA } from '#engine/charging/charge.ts';
import { plateNoiseDb } from '#engine/charging/generator.ts';
import {
  altitudeFactor,
  apparentPower,
  heatFactor,
  ratingNeeded,
  soundAtDistance,
} from '#engine/charging/rules.ts';
import {
  alternatorSpareA,
  altitudeRules,
  dcdc,
  heatRule,
  isolatorClosesV,
  noiseLimits,
} from '#engine/charging/tables.ts';
import { run } from '#rule/rule.ts';
import type { Row } from './row.ts';

const common = 'common practice, makers’ and training sheets';
const eu785 = 'Commission Implementing Decision (EU) 2017/785, annex';

const height = (z: number, rule: keyof typeof altitudeRules) =>
  run(altitudeFactor, { z, ...altitudeRules[rule] });
const heat = (T: number) => run(heatFactor, { T, ...heatRule });

export const rows: readonly Row[] = [
  {
    id: 'F1-03',
    from: eu785,
    how: 'seen',
    gives: (100 * 13.5 - 750) / 13.5,
    within: 8,
    differs:
      'ours is the rule of half of a usual alternator; a 100 A one less 750 W for the car itself leaves 44 A',
    run: () => alternatorSpareA,
  },
  {
    id: 'F1-05',
    from: `${common}: regulated voltage at 60 °C, 13.2–14.3 V`,
    how: 'memory',
    gives: 13.75,
    within: 0.55,
    differs: 'ours is what arrives at the charger',
    run: () => dcdc.inV[0],
  },
  { id: 'F1-08', from: common, how: 'memory', gives: 13, within: 0.3, run: () => isolatorClosesV },
  { id: 'F1-09', from: common, how: 'memory', gives: 0.875, within: 0.03, run: () => dcdc.efficiency[0] },
  { id: 'F1-09.low', from: common, how: 'memory', gives: 0.85, within: 0.001, run: () => dcdc.efficiency[1] },
  {
    id: 'F1-10',
    from: 'power in = power out ÷ efficiency',
    how: 'recomputed',
    gives: 48.5,
    within: 0.3,
    run: () => dcdcInputA(40, undefined, { eta: 0.88, V_i: 13.5, V_o: 14.4 }),
  },
  {
    id: 'F2-01',
    from: common,
    how: 'memory',
    gives: 0.94,
    within: 0.001,
    run: () => height(2000, 'industrial'),
  },
  {
    id: 'F2-01.low',
    from: common,
    how: 'memory',
    gives: 1,
    within: 1e-9,
    run: () => height(900, 'industrial'),
  },
  { id: 'F2-02', from: common, how: 'memory', gives: 0.97, within: 0.001, run: () => heat(45) },
  { id: 'F2-02.low', from: common, how: 'memory', gives: 1, within: 1e-9, run: () => heat(39) },
  {
    id: 'F2-03',
    from: `${common}: the two multiply`,
    how: 'memory',
    gives: 0.912,
    within: 0.001,
    run: () => 1 / run(ratingNeeded, { S: 1, f_z: height(2000, 'industrial'), f_T: heat(45) }),
  },
  { id: 'F2-04', from: common, how: 'memory', gives: 0.93, within: 0.001, run: () => height(2100, 'high') },
  { id: 'F2-04.low', from: common, how: 'memory', gives: 1, within: 1e-9, run: () => height(1500, 'high') },
  {
    id: 'F2-05',
    from: 'ISO 3046 and makers’ practice, from memory',
    how: 'memory',
    gives: 0.965,
    within: 0.001,
    run: () => height(300, 'petrol'),
  },
  {
    id: 'F2-05.100m',
    from: 'ISO 3046 and makers’ practice, from memory',
    how: 'memory',
    gives: 0.01,
    within: 0.002,
    run: () => 1 - height(100, 'petrol'),
  },
  {
    id: 'F2-06',
    from: 'US 36 CFR 2.12: 60 dBA at 50 feet',
    how: 'seen',
    gives: 60,
    within: 0,
    run: () => noiseLimits.unitedStates.levelDb,
  },
  {
    id: 'F2-06.m',
    from: 'US 36 CFR 2.12: 60 dBA at 50 feet',
    how: 'seen',
    gives: 50 * 0.3048,
    within: 1e-9,
    run: () => noiseLimits.unitedStates.atM,
  },
  {
    id: 'F2-08',
    from: 'Queensland parks: 65 dB at 7 m',
    how: 'seen',
    gives: 65,
    within: 0,
    run: () => noiseLimits.queensland.levelDb,
  },
  {
    id: 'F2-09',
    from: 'sound in the open (physics)',
    how: 'recomputed',
    gives: 58.2,
    within: 0.1,
    run: () => run(soundAtDistance, { L_1: 65, d_1: 7, d_2: 15.24 }),
  },
  {
    id: 'F2-09.back',
    from: 'sound in the open (physics)',
    how: 'recomputed',
    gives: 65 - 58.2 + 60,
    within: 0.1,
    run: () => plateNoiseDb(noiseLimits.unitedStates),
  },
  {
    id: 'E3-10',
    from: 'definition of the power factor',
    how: 'recomputed',
    gives: 1000,
    within: 1e-9,
    run: () => run(apparentPower, { P: 600, pf: 0.6 }),
  },
];
