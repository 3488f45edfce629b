import { present } from '#basics/present.ts';
import type { Facts } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
import { type Need, needs } from '../needs.ts';
import { sunFacts } from '../sun.ts';
import { answerSolarYield } from './answer.ts';
import { computeSolarYield, type SolarYieldFacts } from './compute.ts';

const takes = [
  ...sunFacts,
  'loads',
  'dailyUseAh',
  'dailyUseWh',
  'inverter',
] as const satisfies readonly (keyof Facts)[];

const needPanel: Need = {
  anyOf: ['solar'],
  ask: "the panel's watts (say “200W panel”)",
  holds: facts => present(facts.solar).some(panel => panel.powerW !== undefined),
};

/** What will my panel make. */
export const solarYield: Intent<SolarYieldFacts> = {
  name: 'solar-yield',
  title: 'What will my panel make?',
  hangsOnPlace: ({ solar }) => solar !== undefined,
  takes,
  needs: needs(takes, [needPanel]) as Intent<SolarYieldFacts>['needs'],
  reply: (facts, setting) => answerSolarYield(facts, computeSolarYield(facts, setting), setting),
};
