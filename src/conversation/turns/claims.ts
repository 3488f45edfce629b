import type { IntentName } from '#answer/answer.ts';
import type { Intent } from '#intents/intent.ts';
import { sayingVerbs } from '#language/words/en/people.ts';
import type { Claim } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import type { Frame, Memory } from '../memory.ts';
import { undemanding } from '../questions.ts';

// Who claimed what, of the chat's question, until it is settled.

const speakers: ReadonlySet<string> = new Set(['i', 'me', 'we', 'us']);

/** The claims of a message; what its writer claims under the writer's name. */
const claimsOf = ({ claims }: Heard, from: string): Claim[] =>
  claims.map(claim => ({ ...claim, who: speakers.has(claim.who) ? from : claim.who }));

/** The claims that an argument is about: those told now, beside those of others that were told before. */
export function claimsFor(intent: Intent, heard: Heard, { claims: kept }: Memory, from: string): Claim[] {
  const now = claimsOf(heard, from);
  if (!intent.isArgument || now.length > 1) return now;
  const unit = now[0]?.unit;
  const isOther = (claim: Claim): boolean =>
    now.every(one => one.who !== claim.who) && (unit === undefined || unit === '' || claim.unit === unit);
  return [...kept.filter(isOther), ...now];
}

/** The last question that was no argument itself: of its answer people claim something. */
export const arguedIn = ({ frames }: Memory, frame: Frame | undefined): IntentName | undefined =>
  [...frames, ...(frame ? [frame] : [])].findLast(({ intent }) => !undemanding.has(intent))?.intent;

/** Verbs of saying that also tell what somebody owns, gets or does: they claim nothing by themselves. */
const ofDoing: ReadonlySet<string> = new Set(
  'has have got get gets goes go went put puts call calls called want wants works made makes state counts count figure'.split(
    ' ',
  ),
);
/** Whether words say that somebody says something. */
export const isSaying = (words: readonly string[]): boolean =>
  words.some(word => sayingVerbs.has(word) && !ofDoing.has(word));

/** How many claims are kept of a chat, and of a question. */
export const claimsKept = 8;

/** Claims after a message: what is claimed now takes the place of what the same person claimed before. */
export function keepClaims(memory: Memory, heard: Heard, from: string): Claim[] {
  const before = memory.claims.find(claim => claim.who === from);
  // "Ok, 10 then" of who has said hours.
  const own = claimsOf(heard, from).map(claim =>
    claim.unit === '' && claim.who === from && before ? { ...claim, unit: before.unit } : claim,
  );
  const told = own.length > 0 ? own : guessOf(memory, heard, from);
  const isRenewed = (claim: Claim): boolean =>
    told.some(one => one.who === claim.who && (one.unit === claim.unit || areTimes(one, claim)));
  return [...memory.claims.filter(claim => !isRenewed(claim)), ...told].slice(-claimsKept);
}

const times: ReadonlySet<string> = new Set(['h', 'days']);
const areTimes = (a: Claim, b: Claim): boolean => times.has(a.unit) && times.has(b.unit);

const mostWordsOfGuess = 8;
const mostWordsOfNumber = 4;

/**
 * A guess among people, which may be argued about later: "2 days easy" by somebody else after "how long will it last?"
 * or after a rig was told, and "ok, 10 then" of who has claimed before.
 */
function guessOf({ frames, talk, claims }: Memory, heard: Heard, from: string): Claim[] {
  const { recognised, words } = heard;
  const figures = recognised.mentions.filter(({ kind }) => kind === 'amount' || kind === 'number');
  const [figure] = figures;
  if (!figure || figures.length > 1 || words > mostWordsOfGuess || figure.isNegative) return [];
  if (figure.kind === 'number') {
    const before = claims.find(claim => claim.who === from);
    const isQuoted = claims.some(claim => claim.value === figure.value);
    return before && !isQuoted && words <= mostWordsOfNumber ? [{ ...before, value: figure.value }] : [];
  }
  const last = frames.findLast(({ intent }) => intent !== 'settle');
  const isOfRig = talk?.lastIntent === 'rig' && talk.lastFrom !== from;
  const isHowLong = last?.intent === 'run-time' && last.from !== from && last.facts.durationH === undefined;
  if (figure.dimension !== 'time' || (!isOfRig && !isHowLong)) return [];
  const isDays = /^(?:d|night|sleep)/.test(figure.spelled ?? '');
  return [
    isDays ? { who: from, value: figure.told, unit: 'days' } : { who: from, value: figure.value, unit: 'h' },
  ];
}
