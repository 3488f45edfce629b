import type { Facts } from '#rig/rig.ts';
import type { Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerTerm } from './answer.ts';

const takes = ['batteries', 'arrangement', 'systemVoltageV'] as const satisfies readonly (keyof Facts)[];

/** What is an amp hour; the difference between two words; why not all of the label. */
export const term: Intent = {
  name: 'term',
  title: 'What does that word mean?',
  isTalk: true,
  hasNoSum: true,
  takes,
  needs: needs(takes, []),
  reply: (facts, setting) => answerTerm(facts, setting),
};
