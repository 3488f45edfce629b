import { withAsides } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import { needLoads } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { hasUse } from '../use.ts';
import { answerStarterReserve } from './answer.ts';
import { starterAsides } from './asides-table.ts';
import { answerStartsAt } from './by-volts.ts';
import { computeStarterReserve } from './compute.ts';

const reserve = defineIntent({
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
    'volts',
    ...whereFacts,
  ],
  needs: [needLoads],
  // The battery that it is about may be told by its name alone.
  alsoHangsOn: facts => (facts.batteries?.some(({ role }) => role === 'starter') ? ['batteries'] : []),
  guess: (facts, { parsed }) => answerStartsAt(facts, parsed.facts),
  reply: (told, setting) => {
    const starts = answerStartsAt(told, setting.parsed.facts);
    if (starts) return starts;
    // "All night" without hours is a night of ten.
    const isNight = told.durationH === undefined && setting.parsed.cues.has('night');
    const facts = isNight ? { ...told, durationH: 10 } : told;
    return answerStarterReserve(facts, computeStarterReserve(facts, setting));
  },
});

/** Can I run it off the starter battery, and what people ask beside that. */
export const starterReserve = withAsides(
  reserve,
  starterAsides,
  (_, facts, { recalled }) => hasUse(facts) && !recalled.has('loads'),
);
