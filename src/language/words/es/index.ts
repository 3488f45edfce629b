import type { Foreign } from '../gloss.ts';
import { appliances } from './appliances.ts';
import { asking } from './asking.ts';
import { gear } from './gear.ts';
import { numbers } from './numbers.ts';
import { places, small } from './small.ts';
import { units } from './units.ts';

/** Spanish. */
export const foreign: Foreign = {
  phrases: [small, numbers, units, places, asking],
  things: [gear, appliances],
  endings: ['s', 'es'],
  isCompounding: false,
  elided: [],
};
