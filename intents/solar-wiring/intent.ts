import { present } from '#basics/present.ts';
import type { Facts } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { answerSolarWiring } from './answer.ts';
import { computeSolarWiring, type WiringFacts } from './compute.ts';
import { platesIn } from './plate.ts';

const takes = [
  'solar',
  'arrangement',
  'batteries',
  'systemVoltageV',
  'shade',
  ...whereFacts,
  'ambientC',
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
  reply: ({ systemVoltageV, ...rest }, { parsed }) => {
    const plates = platesIn(parsed);
    const facts = systemVoltageV === plates.plate.limitV ? rest : { ...rest, systemVoltageV };
    const isOne = facts.solar.length === 1 && present(facts.solar[0]).count === 1;
    const isHeldToPlate = plates.plate.limitV !== undefined || plates.plate.ratedA !== undefined;
    return answerSolarWiring(
      facts,
      computeSolarWiring(facts, plates),
      facts.arrangement !== undefined || isOne || isHeldToPlate,
    );
  },
};
