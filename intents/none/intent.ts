import { defineIntent } from '../define-intent.ts';
import { answerNone } from './answer.ts';

/** Talk that asks nothing of the bot. */
export const none = defineIntent({
  name: 'none',
  title: 'Just talk',
  isTalk: true,
  isNeverOffered: true,
  hasNoSum: true,
  isOfNow: true,
  reply: (_facts, setting) => answerNone(setting),
});
