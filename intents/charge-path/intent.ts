import { defineIntent } from '../define-intent.ts';
import { answerChargePath } from './answer.ts';
import { computeChargePath } from './compute.ts';

/** Isolator or DC-DC charger. */
export const chargePath = defineIntent({
  name: 'charge-path',
  title: 'Isolator or DC-DC charger?',
  thing: 'dcdc',
  takes: ['batteries', 'alternator', 'cable', 'solar', 'volts', 'chargers'],
  hangsOn: new Set(['chargers']),
  contest: () => 'path',
  reply: (facts, setting) => answerChargePath(computeChargePath(facts), setting),
});
