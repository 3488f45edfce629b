import type { Mention } from '../recognise/mention.ts';
import { cableCurrent, solarOpenVolts } from './slots.ts';

/** Figures of a panel's label: its volts at work are nobody's, its amps size a cable at most. */
export const ofLabel: Readonly<Record<NonNullable<Mention['label']>, readonly number[]>> = {
  'open volts': [solarOpenVolts],
  'working volts': [],
  amps: [cableCurrent],
};
