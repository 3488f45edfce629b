import { defineIntent } from '../define-intent.ts';
import { spotted } from '../spotting.ts';
import { answerFault } from './answer.ts';
import { computeFault } from './compute.ts';
import { symptoms } from './symptoms-table.ts';

/** Something doesn't work as it should: what to check, likeliest first. */
export const fault = defineIntent({
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
  reply: (facts, setting) => answerFault(facts, computeFault(facts, setting)),
});
