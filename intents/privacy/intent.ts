import type { Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerPrivacy } from './answer.ts';

/** What is kept, why, how long, and how to have it deleted. */
export const privacy: Intent = {
  name: 'privacy',
  title: 'What do you keep about us?',
  isTalk: true,
  takes: [],
  needs: needs([], []),
  reply: () => answerPrivacy(),
};
