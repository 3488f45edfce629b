import type { Facts } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
import { needLoads, needs } from '../needs.ts';
import { sunFacts } from '../sun.ts';
import { answerList } from './answer.ts';
import { computeList } from './compute.ts';

const takes = [
  ...sunFacts,
  'loads',
  'dailyUseAh',
  'dailyUseWh',
  'durationH',
  'drivingHoursPerDay',
  'depthOfDischargePercent',
  'cable',
  'inverter',
  'chargers',
  'alternator',
  'without',
] as const satisfies readonly (keyof Facts)[];

/** What to buy or bring: the size of each thing. */
export const list: Intent = {
  name: 'list',
  title: 'What do I need to buy?',
  isItemised: true,
  takes,
  needs: needs(takes, [
    { ...needLoads, ask: 'what it has to run (say “fridge, lights and phones, 3 days”)', key: 'need-run' },
  ]),
  reply: (facts, setting) => answerList(facts, computeList(facts, setting)),
};
