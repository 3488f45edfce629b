import type { Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerForget } from './answer.ts';

/** Delete what is kept: of the chat (an admin in a group), of the asker, or a rig. Asked back once. */
export const forget: Intent = {
  name: 'forget',
  title: 'Forget us',
  isTalk: true,
  isNeverOffered: true,
  isForAdmins: true,
  takes: [],
  needs: needs([], []),
  reply: (_facts, setting) => answerForget(setting),
};
