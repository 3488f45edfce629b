import { defineIntent } from '../define-intent.ts';
import { needBattery, needLoads } from '../needs.ts';
import { sunFacts } from '../sun.ts';
import { hasUse } from '../use.ts';
import { answerRigCheck } from './answer.ts';
import { computeRigCheck } from './compute.ts';

/** What is the weakest part of my rig, and what mends it cheapest. */
export const rigCheck = defineIntent({
  name: 'rig-check',
  title: 'What is weak in my rig?',
  takes: [
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
  ],
  needs: [
    needBattery,
    // An inverter can be held against its battery flat out.
    { ...needLoads, holds: facts => hasUse(facts) || facts.inverter?.powerW !== undefined },
  ],
  reply: (facts, setting) => answerRigCheck(facts, computeRigCheck(facts, setting), setting),
});
