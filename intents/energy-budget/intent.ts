import { defineIntent } from '../define-intent.ts';
import { needLoads } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { drawFacts } from '../use.ts';
import { answerEnergyBudget } from './answer.ts';
import { computeEnergyBudget } from './compute.ts';

/** What do I use a day. */
export const energyBudget = defineIntent({
  name: 'energy-budget',
  title: 'What do I use a day?',
  isItemised: true,
  takes: [
    'loads',
    'dailyUseAh',
    'dailyUseWh',
    'batteries',
    'arrangement',
    'inverter',
    'systemVoltageV',
    'ambientC',
    ...whereFacts,
  ],
  hangsOn: new Set([...drawFacts]),
  needs: [needLoads],
  reply: (facts, setting) => answerEnergyBudget(facts, computeEnergyBudget(facts, setting), setting),
});
