import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { hasCapacity, needLoads, needs } from '../needs.ts';
import { areTimed, hasUse } from '../use.ts';
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
] as const satisfies readonly (keyof Facts)[];

/** What do I use a day. */
export const energyBudget: Intent = {
  name: 'energy-budget',
  title: 'What do I use a day?',
  takes,
  needs: needs(takes, [needLoads]),
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    const hasLoads = hasUse(facts) || said.bareLoads.length > 0;
    if (cues.has('ask-total')) add('asks for a day’s total', 4);
    if (cues.has('ask-how-much') && hasLoads) add('asks how much, of loads', 3);
    else if (cues.has('ask-how-much')) add('asks how much', 1);
    if (hasUse(facts) && !hasCapacity(facts) && facts.durationH === undefined) add('loads and no battery', 1);
    if (cues.has('ask-how-long') || cues.has('last')) add('asks how long', -3);
    if (cues.has('ask-what-size')) add('asks what size', -3);
    if (cues.has('ask-yield') || cues.has('solar') || facts.solar?.length) add('speaks of solar', -2);
    const isOfUse = cues.has('ask-total') && hasLoads;
    if ((cues.has('charge') && !isOfUse) || facts.chargers?.length) add('speaks of charging', -2);
    if (cues.has('fuse') || cues.has('cable')) add('speaks of a fuse or a cable', -3);
    const isMains = facts.loads?.some(load => load.supply === 'ac');
    if (areTimed(facts) && !isMains && cues.has('question-mark') && !hasCapacity(facts))
      add('asks something of loads with their hours', 1);
    if (said.conversion) add('is a conversion', -3);
    if (facts.inverter?.powerW !== undefined) add('an inverter’s size', -1);
    return found;
  },
  reply: (facts, setting) => answerEnergyBudget(facts, computeEnergyBudget(facts, setting), setting),
};
