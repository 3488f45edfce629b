import { defineIntent } from '../define-intent.ts';
import { answerForget } from './answer.ts';

/** Delete what is kept: of the chat (an admin in a group), of the asker, or a rig. Asked back once. */
export const forget = defineIntent({
  name: 'forget',
  title: 'Forget us',
  isTalk: true,
  isNeverOffered: true,
  isForAdmins: true,
  reply: (_facts, setting) => answerForget(setting),
});
