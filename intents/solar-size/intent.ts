import { withAsides } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import { factsOf } from '../facts.ts';
import { needLoads } from '../needs.ts';
import { sunFacts, whereSunHangsOn } from '../sun.ts';
import { drawFacts } from '../use.ts';
import { answerSolarSize } from './answer.ts';
import { solarSizeAsides } from './asides-table.ts';
import { computeSolarSize, type SolarSizeFacts } from './compute.ts';
import { forBattery } from './sums/for-battery.ts';
import { forUsualCamp } from './sums/usual-camp.ts';

const panelSize = defineIntent<SolarSizeFacts>({
  name: 'solar-size',
  title: 'What panel do I need?',
  thing: 'panel',
  hangsOnPlace: () => true,
  takes: [...sunFacts, 'loads', 'dailyUseAh', 'dailyUseWh', 'inverter', 'without'],
  hangsOn: new Set([...drawFacts]),
  alsoHangsOn: whereSunHangsOn,
  needs: [{ ...needLoads, ask: 'what it has to run (say “fridge 1.2A” or “40Ah a day”)', key: 'need-run' }],
  guess: (told, setting) => forBattery(factsOf(told), setting) ?? forUsualCamp(factsOf(told), setting),
  reply: (facts, setting) => answerSolarSize(facts, computeSolarSize(facts, setting), setting),
});

/** What panel do I need, and what people ask beside that. */
export const solarSize = withAsides(panelSize, solarSizeAsides);
