import type { Reply } from '#answer/reply.ts';
import type { Setting } from '../intent.ts';

/** One friendly line to talk that asks nothing: no figure, no question, nothing to tap. */
export function answerNone({ parsed: { cues } }: Pick<Setting, 'parsed'>): Reply {
  if (cues.has('thanks')) return { headline: 'You’re welcome.' };
  if (cues.has('greeting')) return { headline: 'G’day.' };
  return { headline: 'No worries.' };
}
