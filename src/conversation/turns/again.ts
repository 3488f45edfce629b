import { type Intent, needsOf } from '#intents/intent.ts';
import { withLearned } from '#intents/learned.ts';
import type { Cue } from '#language/words/en/cues.ts';
import { gearKeys } from '#rig/gear.ts';
import type { Facts, LearnedOfRig, Stated } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { pick } from '../kept/remembered.ts';
import type { Frame } from '../memory.ts';
import type { Lean } from './lean.ts';

/** "Will it?" asked before is asked by what turns it too. */
export const asked = (heard: Heard, { frame, extent }: Lean): Heard =>
  frame?.isCheck &&
  extent === 'all' &&
  !['ask-how-long', 'ask-how-much', 'ask-what-size'].some(cue => heard.cues.has(cue as never))
    ? { ...heard, cues: new Set([...heard.cues, 'ask-can-it']) }
    : heard;

const asAgain: readonly Cue[] = ['ask-working', 'ask-why', 'simpler', 'same-again'];

/** Whether the answer before is asked for once more, another way, and nothing is told. */
export const isAskedAgain = ({ facts, removed, corrects, cues }: Heard): boolean =>
  Object.keys(facts).length === 0 &&
  removed.length === 0 &&
  corrects === undefined &&
  asAgain.some(cue => cues.has(cue));

/**
 * What the question turned had out of memory and nobody has told or taken out since: it counts for no more in the turn,
 * and is looked up again for the next.
 */
export const stillRecalled = (
  frame: Frame | undefined,
  told: Stated,
  { removed }: Pick<Heard, 'removed'>,
): (keyof Stated)[] =>
  ((frame?.recalled ?? []) as (keyof Stated)[]).filter(
    key => told[key] === undefined && (removed.length === 0 || !gearKeys.includes(key as never)),
  );

/** The facts of the same question before, where it could be answered; looked up by what asks for them, a picture. */
export function beforeOf(intent: Intent, frame: Frame, learned: LearnedOfRig | undefined) {
  if (frame.intent !== intent.name) return undefined;
  return (): Facts | undefined => {
    const parsed = needsOf(intent, frame.subject).safeParse(pick(frame.facts, intent.takes));
    return parsed.success ? withLearned(parsed.data, learned) : undefined;
  };
}
