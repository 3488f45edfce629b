import type { Facts } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerChargePath } from './answer.ts';
import { computeChargePath } from './compute.ts';

const takes = [
  'batteries',
  'alternator',
  'cable',
  'solar',
  'volts',
] as const satisfies readonly (keyof Facts)[];

/** Isolator or DC-DC charger. */
export const chargePath: Intent = {
  name: 'charge-path',
  title: 'Isolator or DC-DC charger?',
  takes,
  hangsOn: new Set(['chargers']),
  needs: needs(takes, []),
  reply: facts => answerChargePath(computeChargePath(facts)),
};
