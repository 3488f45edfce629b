import { defineIntent } from '../define-intent.ts';
import { needLoads } from '../needs.ts';
import { sunFacts } from '../sun.ts';
import { answerList } from './answer.ts';
import { computeList } from './compute.ts';

/** What to buy or bring: the size of each thing. */
export const list = defineIntent({
  name: 'list',
  title: 'What do I need to buy?',
  isItemised: true,
  takes: [
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
  ],
  needs: [
    { ...needLoads, ask: 'what it has to run (say “fridge, lights and phones, 3 days”)', key: 'need-run' },
  ],
  reply: (facts, setting) => answerList(facts, computeList(facts, setting)),
});
