import { type IntentName, intentNames } from '#answer/answer.ts';
import { intentNamed, intents } from '#intents';
import type { AskedByFigures, Intent } from '#intents/intent.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Stated } from '#rig/rig.ts';

/** Whether a name that was read is a question that the bot answers. */
export const isIntent = (name: string): name is IntentName =>
  (intentNames as readonly string[]).includes(name);

const namesOf = (has: (intent: Intent) => unknown): ReadonlySet<string> =>
  new Set(intents.filter(has).map(({ name }) => name));

/** Talk, and gear that is told: never "the question before". */
export const passingBy = namesOf(({ isTalk, isOfGear }) => isTalk || isOfGear);
/** Never one of two readings that are asked about: silence, a question back, what can't wait, what asks back itself. */
export const unasked = namesOf(({ isNeverOffered }) => isNeverOffered);
/** Nothing is worked out for these: asked about only where it is another question. */
export const plain = namesOf(one => one.isTalk || one.isOfGear || one.isWorkedOut === false);
/** Questions that ask for nothing, so that they could always be answered. */
export const undemanding = namesOf(({ isTalk, asksNothing }) => isTalk || asksNothing);
/** Questions that are never one of two in a message. */
export const alone = namesOf(one => one.isTalk || one.asksNothing || one.isOfGear);
/** Questions in which a level told is the level now. */
export const ofNow = namesOf(({ isOfNow }) => isOfNow);

/** The question that its words ask whatever it was read as, if any. */
export function askedInWords(
  parsed: ParsedMessage,
  about: string | undefined,
): { readonly intent: IntentName; readonly isSure: boolean } | undefined {
  for (const { name, isAskedBy } of intents) {
    const asked = isAskedBy?.(parsed, about);
    if (asked) return { intent: name, isSure: asked === 'for-sure' };
  }
  return undefined;
}

/** The question that a message's words and figures ask together, whatever it was read as, if any. */
export function askedInFigures(
  parsed: ParsedMessage,
): (AskedByFigures & { readonly intent: IntentName }) | undefined {
  for (const { name, askedByFigures } of intents) {
    const asked = askedByFigures?.(parsed);
    if (asked) return { ...asked, intent: name };
  }
  return undefined;
}

/** Whether people would rather look at the answer. */
export const isPictured = (name: IntentName): boolean => intentNamed(name).isPictured === true;
/** Whether what it does depends on whether an admin asks. */
export const isForAdmins = (name: IntentName): boolean => intentNamed(name).isForAdmins === true;
/** Whether the answer would be closer with a place, by what is known. */
export const hangsOnPlace = (name: IntentName, facts: Stated): boolean =>
  intentNamed(name).hangsOnPlace?.(facts) === true;

/** Questions about what the sun makes where they camp. */
export const underSun: ReadonlySet<string> = new Set<IntentName>(['solar-yield', 'solar-size', 'trip']);
