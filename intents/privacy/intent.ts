import { defineIntent } from '../define-intent.ts';
import { answerPrivacy } from './answer.ts';

/** What is kept, why, how long, and how to have it deleted. */
export const privacy = defineIntent({
  name: 'privacy',
  title: 'What do you keep about us?',
  isTalk: true,
  reply: () => answerPrivacy(),
});
