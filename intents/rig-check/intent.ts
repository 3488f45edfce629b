import type { Facts } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
import { needBattery, needLoads, needs } from '../needs.ts';
import { sunFacts } from '../sun.ts';
import { hasUse } from '../use.ts';
import { answerRigCheck } from './answer.ts';
import { computeRigCheck } from './compute.ts';

const takes = [
  ...sunFacts,
  'loads',
  'dailyUseAh',
  'dailyUseWh',
  'inverter',
  'chargers',
  'alternator',
  'alternatorA',
  'drivingHoursPerDay',
  'cable',
  'fuseA',
] as const satisfies readonly (keyof Facts)[];

/** What is the weakest part of my rig, and what mends it cheapest. */
export const rigCheck: Intent = {
  name: 'rig-check',
  title: 'What is weak in my rig?',
  takes,
  needs: needs(takes, [
    needBattery,
    // An inverter can be held against its battery flat out.
    { ...needLoads, holds: facts => hasUse(facts) || facts.inverter?.powerW !== undefined },
  ]),
  reply: (facts, setting) => answerRigCheck(facts, computeRigCheck(facts, setting), setting),
};
