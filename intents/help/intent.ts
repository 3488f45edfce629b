import { defineIntent } from '../define-intent.ts';
import { answerHelp } from './answer.ts';
import { asksWhoAnswers, whoAnswers } from './who-am-i.ts';

/** What can you do; how do I ask; who are you. */
export const help = defineIntent({
  name: 'help',
  title: 'What can I ask?',
  isTalk: true,
  isAskedBy: parsed => (asksWhoAnswers(parsed) ? 'for-sure' : undefined),
  reply: (_facts, setting) => (asksWhoAnswers(setting.parsed) ? whoAnswers : answerHelp(setting)),
});
