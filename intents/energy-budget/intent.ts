import { byNight } from '../by-night.ts';
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
    'durationH',
    ...whereFacts,
  ],
  hangsOn: new Set([...drawFacts]),
  needs: [needLoads],
  reply: (told, setting) => {
    const facts = byNight(told, setting.parsed.recognised.words);
    return answerEnergyBudget(facts, computeEnergyBudget(facts, setting), setting);
  },
});
