import type { IntentName } from '#answer/answer.ts';
import type { Intent } from '#intents/intent.ts';
import { unitsOf } from '#intents/settle/unsaid.ts';
import { sayingVerbs } from '#language/words/en/people.ts';
import { unitOf } from '#quantity/quantity.ts';
import type { Claim } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import type { ClaimKept, Frame, Memory } from '../memory.ts';
import { undemanding } from '../questions.ts';
import { frameOfQuestion, isSide, questionOf } from './disputes.ts';

// Who claims what, of which question.

const speakers: ReadonlySet<string> = new Set(['i', 'me', 'we', 'us']);
const spokenTo: ReadonlySet<string> = new Set(['you', 'your']);

/** Who claims something: the writer by name, and after an answer "you said" is the bot. */
function claimantIn(who: string, from: string, question: Frame | undefined): string {
  if (speakers.has(who)) return from;
  return spokenTo.has(who) && question !== undefined && question.asked === undefined ? 'bot' : who;
}

/** The claims of a message; what its writer claims under the writer's name. */
export const claimsOf = (heard: Heard, from: string, question: Frame | undefined): Claim[] =>
  heard.claims.map(claim => ({
    who: claimantIn(claim.who, from, question),
    value: claim.value,
    unit: unitOfClaim(claim, heard, question),
  }));

/** A figure claimed without a unit takes that of the question, where its answer is told in one; not one that was told before. */
function unitOfClaim({ value, unit }: Claim, { recognised }: Heard, question: Frame | undefined): string {
  const isSaid = !recognised.mentions.some(one => one.kind === 'number' && one.value === value);
  const units = question ? unitsOf(question.intent, question.subject) : [];
  if (isSaid || units.length === 0 || (unit !== '' && units.some(one => areAlike(one, unit)))) return unit;
  return units.length === 1 ? (units[0] ?? '') : '';
}

/** Whether two units are of one kind: hours and days. */
const areAlike = (a: string, b: string): boolean =>
  a === b || (unitOf(a) !== undefined && unitOf(a)?.dimension === unitOf(b)?.dimension);

/**
 * The claims that an argument is about: those told now, beside those of others that were told before of the same question.
 * @param frame the question
 */
export function claimsFor(
  intent: Intent,
  heard: Heard,
  memory: Memory,
  from: string,
  frame: Frame | undefined,
): Claim[] {
  const question = frame && (frameOfQuestion(memory, questionOf(frame)) ?? frame);
  const now = claimsOf(heard, from, question);
  if (!intent.isArgument || now.length > 1) return now;
  const unit = now[0]?.unit;
  const isOther = (claim: ClaimKept): boolean =>
    now.every(one => one.who !== claim.who) &&
    (unit === undefined || unit === '' || areAlike(claim.unit, unit));
  const kept = memory.claims.filter((one): one is ClaimKept => !isSide(one));
  const ofThis = frame === undefined ? [] : kept.filter(({ of }) => of === questionOf(frame));
  // Claims that were made before anybody asked anything are of the first question.
  const before = ofThis.length > 0 || now.length > 0 ? ofThis : kept.filter(({ of }) => of === undefined);
  const others = frame === undefined ? kept : [...new Set([...before, ...ofThis])];
  return [
    ...others.filter(isOther).map(({ who, value, unit: told }) => ({ who, value, unit: told })),
    ...now,
  ];
}

/** The last question that was no argument itself: of its answer people claim something. */
export const arguedIn = ({ frames }: Memory, frame: Frame | undefined): IntentName | undefined =>
  frame !== undefined && !undemanding.has(frame.intent)
    ? frame.intent
    : [...frames, ...(frame ? [frame] : [])].findLast(({ intent }) => !undemanding.has(intent))?.intent;

/** Verbs of saying that also tell what somebody owns, gets or does: they claim nothing by themselves. */
const ofDoing: ReadonlySet<string> = new Set(
  'has have got get gets goes go went put puts call calls called want wants works made makes state counts count figure'.split(
    ' ',
  ),
);

/** Whether a word says that somebody says something. */
export const isSayingVerb = (word: string): boolean => sayingVerbs.has(word) && !ofDoing.has(word);

/** Whether words say that somebody says something. */
export const isSaying = (words: readonly string[]): boolean => words.some(isSayingVerb);
