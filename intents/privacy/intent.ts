import type { Evidence, Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerPrivacy } from './answer.ts';

/** What is kept, why, how long, and how to have it deleted. */
export const privacy: Intent = {
  name: 'privacy',
  title: 'What do you keep about us?',
  takes: [],
  needs: needs([], []),
  asks: said => {
    const found: Evidence[] = [];
    if (said.cues.has('privacy')) found.push({ because: 'asks what is kept', weight: 5 });
    if (said.cues.has('forget')) found.push({ because: 'but wants it deleted', weight: -2 });
    return found;
  },
  reply: () => answerPrivacy(),
};
