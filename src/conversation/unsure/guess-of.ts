import type { Reply } from '#answer/reply.ts';
import { answerUnknown, type Unknown } from '#intents/untold.ts';
import type { Mention } from '#language/recognise/mention.ts';
import type { Interpreted } from '../interpret.ts';
import { pick } from '../kept/remembered.ts';

/** In a longer message what seems untold may only not have been read. */
const mostGuessedWords = 14;

/** A time in words alone: "a weekend", "the week". */
const ofTime = /^(?:an? |the )?(?:long )?(?:weekend|week|night|day|fortnight|month)s?$/i;

/** Words of where and how one camps: none of them is gear. */
const ofCamp: ReadonlySet<string> = new Set(
  'camping camp campsite campervan camper van vanlife caravan motorhome tent trip trips holiday holidays weekend getaway bush beach festival family kids'.split(
    ' ',
  ),
);

/**
 * What nobody told a figure of is answered for usual gear, and asked for all the same; of what was read unsurely only
 * advice without a figure.
 */
function guessOf({ intent, facts, heard, ready, setting, isUnsure }: Interpreted): Reply | undefined {
  const { issues, unread, words, recognised } = heard;
  // "For a weekend" is no figure of gear.
  const left = unread.filter(({ text }) => !ofTime.test(text));
  if (ready !== undefined || issues.length + left.length > 0 || words > mostGuessedWords) return undefined;
  // A word that nobody knows may be what is missing.
  const isUnknown = ({ kind, text }: Mention): boolean => kind === 'noun' && !ofCamp.has(text.toLowerCase());
  if (recognised.mentions.some(isUnknown)) return undefined;
  const guess = intent.guess?.(pick(facts, intent.takes), setting);
  return isUnsure && guess?.figures !== undefined ? undefined : guess;
}

/**
 * The answer to a question that lacks something: with usual gear where that can be, else undefined.
 * @param how its asker has said that they don't know it
 */
export function answerLacking(read: Interpreted, how: Unknown | undefined): Reply | undefined {
  const { intent, facts, ready, setting, missing, hazards, heard } = read;
  if (how === undefined || ready !== undefined || heard.issues.length > 0) return guessOf(read);
  const keys = missing.flatMap(({ key }) => key ?? []);
  const isMedical = hazards.includes('medical');
  return answerUnknown({ intent, facts, keys, setting, isMedical }, how) ?? guessOf(read);
}
