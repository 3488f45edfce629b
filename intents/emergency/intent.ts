import { defineIntent } from '../define-intent.ts';
import { answerEmergency } from './answer.ts';

/** Smoke, swelling, fumes, a headache with a heater on, an alarm. Nothing is asked back. */
export const emergency = defineIntent({
  name: 'emergency',
  title: 'Something is wrong right now',
  isTalk: true,
  isNeverOffered: true,
  reply: (_, { parsed }) => answerEmergency(parsed),
});
