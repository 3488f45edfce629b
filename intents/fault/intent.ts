import { withAsides } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import { overVolts } from '../over-volts.ts';
import { spotted } from '../spotting.ts';
import { answerFault } from './answer.ts';
import { faultAsides } from './asides-table.ts';
import { checkAsides } from './checks-table.ts';
import { computeFault } from './compute.ts';
import { judgedAsides } from './judged-table.ts';
import { mishapAsides } from './mishaps-table.ts';
import { normalAsides } from './normal-table.ts';
import { symptoms } from './symptoms-table.ts';

const wrong = defineIntent({
  name: 'fault',
  title: 'What is wrong with it?',
  asksNothing: true,
  isWorkedOut: false,
  takes: [
    'loads',
    'batteries',
    'arrangement',
    'systemVoltageV',
    'solar',
    'shade',
    'chargers',
    'alternator',
    'inverter',
    'cable',
    'fuseA',
    'durationH',
    'volts',
    'voltsTaken',
    'netCurrentA',
    'ambientC',
    'dailyUseAh',
    'dailyUseWh',
    'mount',
    'place',
    'latitudeDeg',
    'longitudeDeg',
    'altitudeM',
    'month',
    'sky',
    'peakSunHours',
  ],
  subjectIn: words => spotted(words, symptoms, ({ spots }) => spots)?.name,
  reply: (facts, setting) =>
    (setting.recalled.has('volts') ? undefined : overVolts(facts)) ??
    answerFault(facts, computeFault(facts, setting)),
});

/** Something doesn't work as it should: what to check, likeliest first; and what people ask beside that. */
export const fault = withAsides(
  wrong,
  [...mishapAsides, ...checkAsides, ...normalAsides, ...judgedAsides, ...faultAsides],
  () => false,
);
