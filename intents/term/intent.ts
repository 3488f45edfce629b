import { defineIntent } from '../define-intent.ts';
import { isSpotted } from '../spotting.ts';
import { answerTerm } from './answer.ts';
import { leftAndGone } from './left-and-gone.ts';
import { asksMeaning, termsAsked } from './match.ts';
import { neededTerm } from './needed.ts';
import { plainQuestionIn } from './plain/plain-questions.ts';

/** What is an amp hour; the difference between two words; why not all of the label; and plain questions of how it's done. */
export const term = defineIntent({
  name: 'term',
  title: 'What does that word mean?',
  isTalk: true,
  hasNoSum: true,
  takes: ['batteries', 'arrangement', 'systemVoltageV'],
  isAskedBy: (parsed, about) => {
    if (leftAndGone(parsed) ?? neededTerm(parsed)) return 'for-sure';
    if (termsAsked(parsed).length > 2 && isSpotted(parsed.recognised.words, asksMeaning)) return 'if-unsure';
    const asked = plainQuestionIn(parsed, about);
    return asked && (asked.isBeforeSums ? 'for-sure' : 'if-unsure');
  },
  reply: (facts, setting) => answerTerm(facts, setting),
});
