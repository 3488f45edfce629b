import type { Evidence, Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerHelp } from './answer.ts';

/** What can you do; how do I ask. */
export const help: Intent = {
  name: 'help',
  title: 'What can I ask?',
  takes: [],
  needs: needs([], []),
  asks: said => {
    const found: Evidence[] = [];
    if (said.cues.has('help')) found.push({ because: 'asks for help', weight: 5 });
    if (said.cues.has('settings')) found.push({ because: 'asks for the settings', weight: 4 });
    if (Object.keys(said.facts).length > 0) found.push({ because: 'but tells facts', weight: -3 });
    return found;
  },
  reply: (_facts, setting) => answerHelp(setting),
};
