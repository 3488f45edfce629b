import type { Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerHelp } from './answer.ts';

/** What can you do; how do I ask. */
export const help: Intent = {
  name: 'help',
  title: 'What can I ask?',
  isTalk: true,
  takes: [],
  needs: needs([], []),
  reply: (_facts, setting) => answerHelp(setting),
};
