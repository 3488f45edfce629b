import { type IntentName, intentNames } from '#answer/answer.ts';

/** Whether a name that was read is a question that the bot answers. */
export const isIntent = (name: string): name is IntentName =>
  (intentNames as readonly string[]).includes(name);

const talk = ['none', 'unclear', 'help', 'privacy', 'forget', 'learn', 'term', 'emergency'] as const;

/** Talk, and gear that is told: never "the question before". */
export const passingBy: ReadonlySet<string> = new Set([...talk, 'rig']);
/** Never one of two readings that are asked about: silence, a question back, what can't wait, what asks back itself. */
export const unasked: ReadonlySet<string> = new Set(['none', 'unclear', 'emergency', 'forget']);
/** Nothing is worked out for these: asked about only where it is another question. */
export const plain: ReadonlySet<string> = new Set([...talk, 'rig', 'fault']);
/** Questions that ask for nothing, so that they could always be answered. */
export const undemanding: ReadonlySet<string> = new Set([...talk, 'fault', 'settle', 'convert']);
/** Questions that are never one of two in a message. */
export const alone: ReadonlySet<string> = new Set([...undemanding, 'rig']);
