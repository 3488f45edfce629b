import { answerAside, asideIn, asideOf, needsBeside } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import { needLoads } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { hasUse } from '../use.ts';
import { answerStarterReserve } from './answer.ts';
import { starterAsides } from './asides-table.ts';
import { computeStarterReserve } from './compute.ts';

/** Can I run it off the starter battery. */
export const starterReserve = defineIntent({
  name: 'starter-reserve',
  title: 'Will it still start?',
  takes: [
    'loads',
    'dailyUseAh',
    'dailyUseWh',
    'batteries',
    'inverter',
    'durationH',
    'ambientC',
    ...whereFacts,
  ],
  needs: [needLoads],
  // The battery that it is about may be told by its name alone.
  alsoHangsOn: facts => (facts.batteries?.some(({ role }) => role === 'starter') ? ['batteries'] : []),
  subjectIn: words => asideIn(words, starterAsides)?.name,
  needsOn: needsBeside(starterAsides, [needLoads]),
  reply: (told, setting) => {
    const canSum = hasUse(told);
    const hasOwnFigures = canSum && !setting.recalled.has('loads');
    const aside = asideOf(starterAsides, setting, { hasOwnFigures, canSum });
    if (aside) return answerAside(aside, told);
    // "All night" without hours is a night of ten.
    const isNight = told.durationH === undefined && setting.parsed.cues.has('night');
    const facts = isNight ? { ...told, durationH: 10 } : told;
    return answerStarterReserve(facts, computeStarterReserve(facts, setting));
  },
});
