import { unitsOf } from '#intents/settle/unsaid.ts';
import { symbolOf, unitOf } from '#quantity/quantity.ts';
import type { Dimension } from '#quantity/units.ts';
import type { Claim } from '#rig/rig.ts';
import type { Interpreted } from '../interpret.ts';
import type { ClaimKept, Frame, Memory, SideKept } from '../memory.ts';
import { undemanding } from '../questions.ts';
import { claimsOf } from '../turns/claims.ts';
import { claimable, claimedOf, frameOfQuestion, isSide, questionOf } from '../turns/disputes.ts';
import { statedIn } from '../turns/figure-claims.ts';

/** How many claims are kept of a chat. */
const claimsKept = 8;

/**
 * Claims after a message: what is claimed now takes the place of what the same person claimed before of that question.
 * @param isSettled whether the bot says who is right of it
 */
export function keepClaims(
  memory: Memory,
  read: Interpreted,
  from: string,
  at: number,
  isSettled: boolean,
): Memory['claims'] {
  const { heard, intent, frame } = read;
  const ofThis = intent.isArgument
    ? frame && questionOf(frame)
    : undemanding.has(intent.name)
      ? undefined
      : at;
  const told = numbersOf(memory, read, from);
  const last = claimedOf(memory, told);
  // A claim that is changed stays with its question.
  const changed =
    told.length > 0 && isChanging(heard.recognised.words) ? lastOf(memory, from)?.of : undefined;
  // What tells its own question is of that; an argument with nothing before it is its own.
  const of = changed ?? ofThis ?? (intent.isArgument ? at : last && questionOf(last));
  const now: (ClaimKept | SideKept)[] = [
    ...told.map(claim => ({ ...claim, of, at })),
    ...(heard.sided?.sides ?? []).map(side => ({ ...side, of: heard.sided?.of, at })),
    // What gives the reason of a side is no argument of its own.
    ...(heard.sided ? [] : (heard.held?.sides ?? [])).map(side => ({ ...side, maxim: heard.held?.name, at })),
  ];
  const isRenewed = (claim: ClaimKept | SideKept): boolean =>
    now.some(
      one => one.who === claim.who && (one.of === claim.of || claim.of === undefined) && areOfOne(one, claim),
    );
  const all = [...memory.claims.filter(claim => !isRenewed(claim)), ...now].slice(-claimsKept);
  const settled = isSettled ? (heard.sided?.of ?? of) : undefined;
  return settled === undefined ? all : all.map(one => (one.of === settled ? { ...one, isSettled } : one));
}

/** Whether one claim takes the place of another of the same person: a side a side, a time a time. */
function areOfOne(a: ClaimKept | SideKept, b: ClaimKept | SideKept): boolean {
  if (isSide(a) || isSide(b)) return isSide(a) && isSide(b) && a.maxim === b.maxim;
  return (
    a.unit === b.unit ||
    a.unit === '' ||
    b.unit === '' ||
    unitOf(a.unit)?.dimension === unitOf(b.unit)?.dimension
  );
}

/** The numbers that a message claims, said or guessed. */
function numbersOf(memory: Memory, read: Interpreted, from: string): Claim[] {
  const before = lastOf(memory, from);
  const [last] = claimable(memory);
  const question =
    read.intent.isArgument && read.frame ? frameOfQuestion(memory, questionOf(read.frame)) : last;
  // "Ok, 10 then" of who has said hours.
  const own = claimsOf(read.heard, from, question).map(claim =>
    claim.unit === '' && claim.who === from && before ? { ...claim, unit: before.unit } : claim,
  );
  if (own.length > 0) return own;
  const stated = statedIn(read.heard, read.intent.name, from);
  return stated.length > 0 ? stated : guessOf(memory, read, from, before);
}

const lastOf = ({ claims }: Memory, from: string): ClaimKept | undefined =>
  claims.findLast((claim): claim is ClaimKept => claim.who === from && !isSide(claim));

const mostWordsOfGuess = 8;
const mostWordsOfNumber = 4;
/** "Change mine to 8", "put me down for 160": of who has claimed before. */
const ofMine: ReadonlySet<string> = new Set('mine me my ill i'.split(' '));
const changing: ReadonlySet<string> = new Set(
  'change changing make put call now actually say going go switch'.split(' '),
);

/** Whether a line says that its writer's claim is another now. */
const isChanging = (words: readonly string[]): boolean =>
  words.some(word => ofMine.has(word)) && words.some(word => changing.has(word));

/** Whether a figure among people may be a guess at the last question: somebody else's, that has its answer. */
const isOpenTo = (last: Frame | undefined, from: string): last is Frame =>
  last !== undefined && last.from !== from && last.asked === undefined;

/** In what a figure is claimed: days as days, else the base unit, where the question or an earlier claim has such a one. */
function unitFor(
  dimension: Dimension | undefined,
  known: readonly string[],
  spelled = '',
): string | undefined {
  if (dimension === undefined || !known.some(unit => unitOf(unit)?.dimension === dimension)) return undefined;
  return dimension === 'time' && /^(?:d|night|sleep)/.test(spelled) ? 'days' : symbolOf(dimension);
}

/**
 * A guess among people, which may be argued about later: "2 days easy" by somebody else after "how long will it last?"
 * or after a rig was told, "160" after "what panel?", and "ok, 10 then" of who has claimed before.
 */
function guessOf(
  memory: Memory,
  { heard, intent }: Interpreted,
  from: string,
  before: ClaimKept | undefined,
): Claim[] {
  const { recognised, words } = heard;
  const figures = recognised.mentions.filter(({ kind }) => kind === 'amount' || kind === 'number');
  const [figure] = figures;
  if (!figure || figures.length > 1 || words > mostWordsOfGuess || figure.isNegative) return [];
  const isChanged = before !== undefined && isChanging(recognised.words);
  const [last] = claimable(memory);
  const isGuess = intent.name === 'none' && words <= mostWordsOfNumber && isOpenTo(last, from);
  if (figure.kind === 'number') {
    const isQuoted = memory.claims.some(claim => !isSide(claim) && claim.value === figure.value);
    if (isQuoted || !(isGuess || (before && (isChanged || words <= mostWordsOfNumber)))) return [];
    const units = last ? unitsOf(last.intent, last.subject) : [];
    return [
      { who: from, value: figure.value, unit: before?.unit ?? (units.length === 1 ? (units[0] ?? '') : '') },
    ];
  }
  const isOfRig = memory.talk?.lastIntent === 'rig' && memory.talk.lastFrom !== from;
  const isHowLong = last?.intent === 'run-time' && last.from !== from && last.facts.durationH === undefined;
  const isTimed = figure.dimension === 'time' && (isOfRig || isHowLong);
  const known = [
    ...(isTimed ? ['h'] : []),
    ...(isGuess ? unitsOf(last.intent, last.subject) : []),
    ...(isChanged ? [before.unit, ...(last ? unitsOf(last.intent, last.subject) : [])] : []),
  ];
  const unit = unitFor(figure.dimension, known, figure.spelled);
  if (unit === undefined) return [];
  return [{ who: from, value: unit === 'days' ? figure.told : figure.value, unit }];
}
