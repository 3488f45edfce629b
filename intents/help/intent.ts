import { defineIntent } from '../define-intent.ts';
import { answerHelp } from './answer.ts';

/** What can you do; how do I ask. */
export const help = defineIntent({
  name: 'help',
  title: 'What can I ask?',
  isTalk: true,
  reply: (_facts, setting) => answerHelp(setting),
});
