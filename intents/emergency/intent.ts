import type { Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerEmergency } from './answer.ts';

/** Smoke, swelling, fumes, a headache with a heater on, an alarm. Nothing is asked back. */
export const emergency: Intent = {
  name: 'emergency',
  title: 'Something is wrong right now',
  isTalk: true,
  isNeverOffered: true,
  takes: [],
  needs: needs([], []),
  reply: () => answerEmergency(),
};
