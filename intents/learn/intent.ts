import { defineIntent } from '../define-intent.ts';
import { answerLearn } from './answer.ts';

/** Teach me, next, quiz answers. */
export const learn = defineIntent({
  name: 'learn',
  title: 'Teach me 12 V power',
  isTalk: true,
  hasNoSum: true,
  // The rig, for numbers of one's own in the lessons.
  takes: [
    'loads',
    'dailyUseAh',
    'dailyUseWh',
    'batteries',
    'arrangement',
    'systemVoltageV',
    'solar',
    'mount',
    'place',
    'latitudeDeg',
    'longitudeDeg',
    'chargers',
    'inverter',
  ],
  reply: (facts, setting) => answerLearn(facts, setting),
});
