import type { Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerNone } from './answer.ts';

/** Talk that asks nothing of the bot. */
export const none: Intent = {
  name: 'none',
  title: 'Just talk',
  isTalk: true,
  isNeverOffered: true,
  hasNoSum: true,
  isOfNow: true,
  takes: [],
  needs: needs([], []),
  reply: (_facts, setting) => answerNone(setting),
};
