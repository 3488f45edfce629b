import { defineIntent } from '../define-intent.ts';
import { answerTerm } from './answer.ts';

/** What is an amp hour; the difference between two words; why not all of the label. */
export const term = defineIntent({
  name: 'term',
  title: 'What does that word mean?',
  isTalk: true,
  hasNoSum: true,
  takes: ['batteries', 'arrangement', 'systemVoltageV'],
  reply: (facts, setting) => answerTerm(facts, setting),
});
