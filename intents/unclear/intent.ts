import { defineIntent } from '../define-intent.ts';
import { answerUnclear } from './answer.ts';

/** The bot can't tell: it asks back, with examples. Nothing speaks for it; it is what is left. */
export const unclear = defineIntent({
  name: 'unclear',
  title: 'Ask me again',
  isTalk: true,
  isNeverOffered: true,
  hasNoSum: true,
  isOfNow: true,
  reply: (_facts, setting) => answerUnclear(setting),
});
