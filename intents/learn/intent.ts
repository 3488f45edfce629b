import type { Facts } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerLearn } from './answer.ts';

/** The rig, for numbers of one's own in the lessons. */
const takes = [
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
] as const satisfies readonly (keyof Facts)[];

/** Teach me, next, quiz answers. */
export const learn: Intent = {
  name: 'learn',
  title: 'Teach me 12 V power',
  isTalk: true,
  hasNoSum: true,
  takes,
  needs: needs(takes, []),
  reply: (facts, setting) => answerLearn(facts, setting),
};
