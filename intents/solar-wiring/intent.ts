import { present } from '#basics/present.ts';
import { withAsides } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import { whereFacts } from '../sun.ts';
import { answerSolarWiring } from './answer.ts';
import { solarWiringAsides } from './asides-table.ts';
import { computeSolarWiring, type WiringFacts } from './compute.ts';
import { handlingAsides } from './handling-table.ts';
import { platesIn } from './plate.ts';
import { controllerAsked } from './sums/controller.ts';

const wiring = defineIntent<WiringFacts>({
  name: 'solar-wiring',
  title: 'Panels in series or parallel?',
  thing: 'panel',
  takes: ['solar', 'arrangement', 'batteries', 'systemVoltageV', 'shade', ...whereFacts, 'ambientC'],
  needs: [
    {
      anyOf: ['solar'],
      ask: 'the panels (say “two 100W panels, 22 V open circuit, MPPT”)',
      key: 'need-panels',
      holds: facts => !!facts.solar?.length,
    },
  ],
  numbersBeside: parsed => {
    const { plate, fullPowerA, voltageCoefficient } = platesIn(parsed);
    const percent = voltageCoefficient && -100 * voltageCoefficient;
    return [plate.limitV, plate.ratedA, fullPowerA, percent].filter(number => number !== undefined);
  },
  reply: ({ systemVoltageV, ...rest }, { parsed }) => {
    const plates = platesIn(parsed);
    const facts = systemVoltageV === plates.plate.limitV ? rest : { ...rest, systemVoltageV };
    const isOne = facts.solar.length === 1 && present(facts.solar[0]).count === 1;
    const isHeldToPlate = plates.plate.limitV !== undefined || plates.plate.ratedA !== undefined;
    const result = computeSolarWiring(facts, plates);
    const reply = answerSolarWiring(facts, result, facts.arrangement !== undefined || isOne || isHeldToPlate);
    return controllerAsked(facts, result, parsed, reply);
  },
});

/** Panels in series or parallel, whether that suits controller and battery, and what people ask beside it. */
export const solarWiring = withAsides(wiring, [...handlingAsides, ...solarWiringAsides]);
