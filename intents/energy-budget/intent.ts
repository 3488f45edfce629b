import type { Facts } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
import { needLoads, needs } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { drawFacts } from '../use.ts';
import { answerEnergyBudget } from './answer.ts';
import { computeEnergyBudget } from './compute.ts';

const takes = [
  'loads',
  'dailyUseAh',
  'dailyUseWh',
  'batteries',
  'arrangement',
  'inverter',
  'systemVoltageV',
  'ambientC',
  ...whereFacts,
] as const satisfies readonly (keyof Facts)[];

/** What do I use a day. */
export const energyBudget: Intent = {
  name: 'energy-budget',
  title: 'What do I use a day?',
  isItemised: true,
  takes,
  hangsOn: new Set([...drawFacts]),
  needs: needs(takes, [needLoads]),
  reply: (facts, setting) => answerEnergyBudget(facts, computeEnergyBudget(facts, setting), setting),
};
