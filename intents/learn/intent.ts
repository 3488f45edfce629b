import type { Cue } from '#language/said.ts';
import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerLearn } from './answer.ts';

/** The rig, for numbers of one's own in the lessons. */
const takes = [
  'loads',
  'dailyUseAh',
  'dailyUseWh',
  'batteries',
  'arrangement',
  'systemVoltageV',
  'solar',
  'mount',
  'place',
  'latitudeDeg',
  'longitudeDeg',
  'chargers',
  'inverter',
] as const satisfies readonly (keyof Facts)[];

/** How plainly each word asks for a lesson. */
const signs: readonly (readonly [cue: Cue, because: string, weight: number])[] = [
  ['learn', 'asks to be taught', 5],
  ['quiz', 'asks for a question', 5],
  ['quiz-answer', 'answers a question', 4],
  ['next', 'asks for the next step', 3],
  ['previous', 'asks for the step before', 3],
  ['start-over', 'asks to start over', 3],
  ['progress', 'asks how far it is', 4],
  ['simpler', 'asks for easier words', 3],
  ['stop', 'asks to stop', 4],
];

/** Teach me, next, quiz answers. */
export const learn: Intent = {
  name: 'learn',
  title: 'Teach me 12 V power',
  takes,
  needs: needs(takes, []),
  asks: said => {
    const found: Evidence[] = signs.flatMap(([cue, because, weight]) =>
      said.cues.has(cue) ? [{ because, weight }] : [],
    );
    if (said.lesson) found.push({ because: 'names a lesson', weight: 4 });
    if (said.choice && !said.cues.has('quiz-answer'))
      found.push({ because: 'looks like a choice', weight: 3 });
    const isSizing = !!said.facts.loads?.length && !!said.facts.batteries?.length;
    if (found.length > 0 && isSizing) found.push({ because: 'a load and a battery to size', weight: -4 });
    if (found.length > 0 && said.claims.length > 1) found.push({ because: 'an argument', weight: -4 });
    return found;
  },
  reply: (facts, setting) => answerLearn(facts, setting),
};
