import { withAsides } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import { heldHigh } from '../held-high-table.ts';
import { overVolts } from '../over-volts.ts';
import { spotted } from '../spotting.ts';
import { withWorked } from '../worked-beside.ts';
import { answerFault } from './answer.ts';
import { faultAsides } from './asides-table.ts';
import { chargerStates } from './charger-states-table.ts';
import { checkAsides } from './checks-table.ts';
import { computeFault } from './compute.ts';
import { fullInTheSun } from './full-in-the-sun.ts';
import { judgedAsides } from './judged-table.ts';
import { mishapAsides } from './mishaps-table.ts';
import { normalAsides } from './normal-table.ts';
import { ownTemperature } from './own-temperature.ts';
import { panelReadings } from './panel-reading.ts';
import { putIn } from './put-in.ts';
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

const known = withWorked(
  withAsides(
    wrong,
    [
      ...panelReadings,
      ...mishapAsides,
      ...heldHigh,
      ...chargerStates,
      ...checkAsides,
      ...normalAsides,
      ...judgedAsides,
      ...faultAsides,
    ],
    () => false,
  ),
  [putIn, ownTemperature, fullInTheSun],
);

/** Over this the volts are too many on any kind of battery, V of 12, but for the cold: then a good charger raises them, °C. */
const muchV = 14.9;
const coldC = 10;

/**
 * Something doesn't work as it should: what to check, likeliest first; and what people ask beside that. Volts far too
 * high for the battery go before all, whatever else the words ask.
 */
export const fault: typeof known = {
  ...known,
  reply: (facts, setting) => {
    const { volts = 0, systemVoltageV = 12, ambientC = coldC } = facts;
    const isMuch = volts > (systemVoltageV > 18 ? 2 * muchV : muchV) && ambientC >= coldC;
    const isOld = setting.recalled.has('volts');
    return (isMuch && !isOld ? overVolts(facts) : undefined) ?? known.reply(facts, setting);
  },
};
