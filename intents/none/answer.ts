import type { Reply } from '#answer/reply.ts';
import type { RequestContext } from '../intent.ts';

/** One friendly line to talk that asks nothing: no figure, no question, nothing to tap. */
export function answerNone({ parsed: { cues } }: Pick<RequestContext, 'parsed'>): Reply {
  if (cues.has('thanks')) return { headline: 'You’re welcome.' };
  if (cues.has('greeting')) return { headline: 'G’day.' };
  return { headline: 'No worries.' };
}
