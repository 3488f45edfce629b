import type { Intent } from '#intents/intent.ts';
import type { Heard } from '../hear.ts';
import type { Lean } from './lean.ts';

/** What the words are about, by the question, or by any that is asked about. */
export const namedBy = (
  of: readonly Intent[],
  { recognised: { words, text }, subject: asked }: Heard,
): string | undefined =>
  asked ?? of.map(intent => intent.subjectIn?.(words, text)).find(subject => subject !== undefined);

/** What the question leant on was about, where it is the same question or was asked back about. */
export const subjectBefore = ({ name }: Intent, { frame, extent }: Lean): string | undefined =>
  (frame?.intent === name || frame?.asked !== undefined) && extent !== 'none' ? frame?.subject : undefined;

/** Another fault, another pair: no turn of the one before, of which the gear alone still holds. */
export function leanOn(lean: Lean, intent: Intent, named: string | undefined): Lean {
  const before = subjectBefore(intent, lean);
  const isAnother = named !== undefined && before !== undefined && named !== before;
  return isAnother && lean.extent === 'all' ? { ...lean, extent: 'gear' } : lean;
}
