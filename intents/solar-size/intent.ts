import type { Facts } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
import { needLoads, needs } from '../needs.ts';
import { sunFacts } from '../sun.ts';
import { drawFacts } from '../use.ts';
import { answerSolarSize } from './answer.ts';
import { computeSolarSize, type SolarSizeFacts } from './compute.ts';

const takes = [
  ...sunFacts,
  'loads',
  'dailyUseAh',
  'dailyUseWh',
  'inverter',
  'without',
] as const satisfies readonly (keyof Facts)[];

/** What panel do I need. */
export const solarSize: Intent<SolarSizeFacts> = {
  name: 'solar-size',
  title: 'What panel do I need?',
  hangsOnPlace: () => true,
  takes,
  hangsOn: new Set([...drawFacts]),
  needs: needs(takes, [
    { ...needLoads, ask: 'what it has to run (say “fridge 1.2A” or “40Ah a day”)', key: 'need-run' },
  ]),
  reply: (facts, setting) => answerSolarSize(facts, computeSolarSize(facts, setting), setting),
};
