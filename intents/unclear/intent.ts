import type { Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerUnclear } from './answer.ts';

/** The bot can't tell: it asks back, with examples. Nothing speaks for it; it is what is left. */
export const unclear: Intent = {
  name: 'unclear',
  title: 'Ask me again',
  isTalk: true,
  isNeverOffered: true,
  hasNoSum: true,
  isOfNow: true,
  takes: [],
  needs: needs([], []),
  reply: (_facts, setting) => answerUnclear(setting),
};
