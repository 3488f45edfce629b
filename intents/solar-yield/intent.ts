import { present } from '#basics/present.ts';
import { withAsides } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import { factsOf } from '../facts.ts';
import type { Need } from '../needs.ts';
import { sunFacts, whereSunHangsOn } from '../sun.ts';
import { answerSolarYield } from './answer.ts';
import { solarYieldAsides } from './asides-table.ts';
import { computeSolarYield, type SolarYieldFacts } from './compute.ts';
import { daySeen } from './sums/day-seen.ts';
import { answerSeen, bestOf, panelAmpsIn, seenOf } from './sums/seen.ts';
import { sunHoursOf } from './sums/sun-hours.ts';
import { tiltOf } from './sums/tilt.ts';

const needPanel: Need = {
  anyOf: ['solar'],
  ask: "the panel's watts (say “200W panel”)",
  key: 'need-panel',
  holds: facts => present(facts.solar).some(panel => panel.powerW !== undefined),
};

const made = defineIntent<SolarYieldFacts>({
  name: 'solar-yield',
  title: 'What will my panel make?',
  thing: 'panel',
  hangsOnPlace: ({ solar }) => solar !== undefined,
  takes: [...sunFacts, 'loads', 'dailyUseAh', 'dailyUseWh', 'inverter', 'netCurrentA'],
  needs: [needPanel],
  // What stays of it is told for lead-acid, whether its kind was named or not.
  alsoHangsOn: facts => [
    ...(facts.batteries?.every(({ chemistry }) => chemistry !== 'lfp') ? ['batteries.chemistry'] : []),
    // Panels whose volts are too low bring nothing, whatever their watts.
    ...(facts.solar?.some(panel => panel.openCircuitV !== undefined)
      ? []
      : ['solar.powerW', ...whereSunHangsOn(facts)]),
  ],
  subjectIn: panelAmpsIn,
  guess: (told, setting) => tiltOf(factsOf(told), setting) ?? sunHoursOf(factsOf(told), setting),
  reply: (facts, setting) => {
    const seen = seenOf(facts, setting);
    const best = seen
      ? answerSeen(seen)
      : (daySeen(facts, setting) ?? tiltOf(facts, setting) ?? bestOf(facts, setting));
    return best ?? answerSolarYield(facts, computeSolarYield(facts, setting), setting);
  },
});

/** What will my panel make, and what people ask beside that. */
export const solarYield = withAsides(made, solarYieldAsides);
