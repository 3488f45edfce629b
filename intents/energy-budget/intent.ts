import { withAsides } from '../asides.ts';
import { byNight } from '../by-night.ts';
import { defineIntent } from '../define-intent.ts';
import { needLoads } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { drawFacts } from '../use.ts';
import { answerEnergyBudget } from './answer.ts';
import { useAsides } from './asides-table.ts';
import { computeEnergyBudget } from './compute.ts';
import { answerStandby } from './standby.ts';

const budget = defineIntent({
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
  // Summed up over the days told.
  alsoHangsOn: ({ durationH }) => (durationH !== undefined && durationH > 24 ? ['durationH'] : []),
  needs: [needLoads],
  // A current read off with everything off is a day's use by itself.
  guess: (_, { parsed }) => answerStandby(parsed.facts),
  reply: (told, setting) => {
    const facts = byNight(told, setting.parsed.recognised.words);
    return answerEnergyBudget(facts, computeEnergyBudget(facts, setting), setting);
  },
});

/** What do I use a day, and what people ask beside that. */
export const energyBudget = withAsides(budget, useAsides);
