import type { Evidence, Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerForget } from './answer.ts';

/** Delete what is kept: of the chat (an admin in a group), else of the asker. */
export const forget: Intent = {
  name: 'forget',
  title: 'Forget us',
  takes: [],
  needs: needs([], []),
  asks: said => {
    const { cues } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    if (!cues.has('forget')) return found;
    add('asks to forget', 2.5);
    if (cues.has('everything')) add('and means all of it', 4);
    if (cues.has('privacy')) add('speaks of data', 2);
    if (said.removed.length > 0 && !cues.has('everything')) add('but only a part of the rig', -4);
    if (cues.has('rig')) add('but only the rig', -1);
    if (Object.keys(said.facts).length > 0) add('but tells facts', -2);
    return found;
  },
  reply: (_facts, setting) => answerForget(setting),
};
