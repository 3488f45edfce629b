import type { Facts } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerSolarWiring } from './answer.ts';
import { computeSolarWiring, type WiringFacts } from './compute.ts';

const takes = [
  'solar',
  'arrangement',
  'batteries',
  'systemVoltageV',
  'shade',
] as const satisfies readonly (keyof Facts)[];

/** Panels in series or parallel, and whether that suits the controller and the battery. */
export const solarWiring: Intent<WiringFacts> = {
  name: 'solar-wiring',
  title: 'Panels in series or parallel?',
  takes,
  needs: needs(takes, [
    {
      anyOf: ['solar'],
      ask: 'the panels (say “two 100W panels, 22 V open circuit, MPPT”)',
      holds: facts => !!facts.solar?.length,
    },
  ]) as Intent<WiringFacts>['needs'],
  reply: facts =>
    answerSolarWiring(
      computeSolarWiring(facts),
      facts.arrangement !== undefined || (facts.solar.every(s => s.count === 1) && facts.solar.length === 1),
    ),
};
