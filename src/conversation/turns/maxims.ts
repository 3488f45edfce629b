import { isSpoken } from '#basics/spoken.ts';
import type { HeldMaxim, SideTaken } from '#intents/intent.ts';
import { hasRigFigures, maximIn, maximNamed, type SaidOf, wayOf } from '#intents/settle/maxims.ts';
import type { Maxim } from '#intents/settle/maxims-table.ts';
import { depthMaxim, depthOf, isMild } from '#intents/settle/subjects/depth.ts';
import { isSpotted } from '#intents/spotting.ts';
import type { Heard } from '../hear.ts';
import { personKey } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { isAppealing, plainly } from './appeal.ts';
import { isAsking as isAskingLine } from './asking.ts';
import { withoutAsking } from './asking-whether.ts';
import { isBotCalled } from './called.ts';
import { depthIn, type OpenDepth } from './depth.ts';
import { isOfMaxim, type MaximSide } from './disputes.ts';
import { yesOrNo } from './side-words.ts';
import { type Part, partiesIn } from './sides.ts';

// What people say of the trade ("concrete drains it"), each kept under its name with who said it, and asked about.

/** An argument about a maxim is let go after so long without a word of it, ms. */
const openMs = 3 * 3600_000;
/** A line without its subject is of what was said so shortly before, ms. */
const rejoinMs = 20 * 60_000;
const mostRejoinderWords = 16;

/** The maxim that was last argued about, where nothing has been claimed or asked since. */
function lastHeld({ claims, frames }: Memory, at: number, withinMs: number): MaximSide | undefined {
  const last = claims.at(-1);
  if (!last || !isOfMaxim(last) || last.at === undefined || at - last.at > withinMs) return undefined;
  const since = frames.findLast(frame => frame.intent !== 'settle');
  return since && since.at > last.at ? undefined : last;
}

/** Words that open a line against what was said, or for it. */
const against = [
  'old_wives|wives_tale|myth|rubbish|nonsense|bull|bulldust|bollocks|garbage|crap|codswallop|hogwash|wrong|not_true|isnt_true|aint_true|no_way|not_anymore|not_any_more|not_these_days|these_days|dont_believe|pull_the_other|thats_from_when|used_to_be|used_to|was_true|years_ago|old_days|back_in_the|other_way_round|opposite|disagree|dreaming|on_drugs|furphy|porkies|never_heard|as_if|who_told_you',
];
const along = [
  'agree|agreed|exactly|spot_on|too_right|thats_right|hes_right|shes_right|youre_right|true|my_experience|what_i_was_told|same_here|plus_one|dead_right|correct|found_that_too',
];
const noFirst: ReadonlySet<string> = new Set(
  'nah no nope na not never wrong rubbish cant doesnt isnt dont wont'.split(' '),
);
const yesFirst: ReadonlySet<string> = new Set('yes yeah yep yup ya aye true exactly agreed'.split(' '));
const opposite = (said: string): SaidOf => (said === 'yes' ? 'no' : 'yes');

/** "It does", "you can": for what is said to be so. */
const itDoes = [
  'it_does|they_do|you_can|it_can|they_can|it_will|they_will|it_is|you_do|they_are|can_so|does_so|you_must',
];
const itDoesnt = [
  'it_doesnt|they_dont|you_cant|it_cant|they_cant|it_wont|they_wont|it_isnt|you_dont|it_aint|you_wont|they_arent',
];
const pronouns: ReadonlySet<string> = new Set('it its you they that thats theyre mine the'.split(' '));

/** Words without the "nah" or "no," that they open with, which denies nothing that follows. */
function withoutOpening(words: readonly string[]): readonly string[] {
  const [first = '', next = ''] = words;
  const isOpening =
    first === 'no' ? !isSpoken(next) || pronouns.has(next) : noFirst.has(first) || yesFirst.has(first);
  const isBare = ['nah', 'nope', 'na', 'rubbish', 'wrong', 'no'].includes(first) || yesFirst.has(first);
  return isOpening && isBare ? words.slice(1) : words;
}

/** Which way a line takes the maxim before it: by its own words, else by "it does", else against who spoke last or along with them. */
function rejoinderTo(maxim: Maxim, before: string, words: readonly string[]): SaidOf | undefined {
  return wayOf(maxim, withoutOpening(words)) ?? setAgainst(words, before, maxim.isNegative === true);
}

/** Which way a line goes by "it does", else by its "nah" or "exactly"; "it does" is against what says that it doesn't. */
function setAgainst(words: readonly string[], before: string, isNegative: boolean): SaidOf | undefined {
  const [isDone, isUndone] = [isSpotted(words, itDoes), isSpotted(words, itDoesnt)];
  if (isDone !== isUndone) return isDone === isNegative ? 'no' : 'yes';
  const spoken = words.filter(isSpoken);
  const [first = '', second = ''] = spoken;
  const whole = yesOrNo(spoken);
  if (whole === 'no' || noFirst.has(first) || isSpotted(words, against)) return opposite(before);
  const isAlong = whole === 'yes' || (yesFirst.has(first) && !noFirst.has(second)) || isSpotted(words, along);
  return isAlong ? (before as SaidOf) : undefined;
}

/** What each is said to say of it; who says no more than "not" is against who was told of before. */
function sidesOf(maxim: Maxim, said: readonly Part[], asked: SaidOf | undefined): SideTaken[] {
  const sides: SideTaken[] = [];
  for (const { who, words } of said) {
    const before = sides.at(-1)?.says;
    const way =
      wayOf(maxim, words) ??
      (before === undefined ? (said.length === 1 ? asked : undefined) : rejoinderTo(maxim, before, words));
    if (way !== undefined) sides.push({ who, says: way });
  }
  return sides;
}

/** Volts that a battery or system is called by. */
const nominalV: ReadonlySet<number> = new Set([6, 12, 24, 48]);

/** Whether figures are claimed, or volts were read: a sum settles that. */
const isNumeric = ({ claims, facts }: Heard): boolean =>
  claims.length > 1 || (facts.volts !== undefined && !nominalV.has(facts.volts));

const own: ReadonlySet<string> = new Set('my our we weve ours ive im ill were'.split(' '));
const doing: ReadonlySet<string> = new Set('ill im ive we weve well'.split(' '));
/** Whether a line asks something else, or tells of its writer's own: it says nothing of the trade. */
const asksOrOwns = (heard: Heard): boolean =>
  isAskingLine(heard) || heard.recognised.words.some(word => own.has(word));

/** The maxim that a message speaks of, and who takes which side of it there. */
function heldIn(
  memory: Memory,
  message: Message,
  heard: Heard,
  asking: ReturnType<typeof withoutAsking>,
): HeldMaxim | undefined {
  const { recognised } = heard;
  const { words, mentions } = recognised;
  const { isAsking } = asking;
  const rest = withoutOpening(asking.rest);
  const from = personKey(message.from);
  const before = lastHeld(memory, message.at.getTime(), rejoinMs);
  const depth = depthIn(
    message,
    heard,
    partiesIn(memory, message, { ...recognised, words: asking.rest }),
    openDepth(memory, message.at.getTime()),
    isAsking || isAppealing(words),
    ({ says }) => setAgainst(asking.rest, 'yes', isMild(says)),
  );
  if (depth) return depth;
  const maxim = hasRigFigures(mentions) || isNumeric(heard) ? undefined : maximIn(rest);
  if (maxim) {
    const parts = partiesIn(memory, message, { ...recognised, words: asking.rest });
    const said = parts.filter(({ isSaid }) => isSaid);
    const asked = wayOf(maxim, rest);
    const sides = sidesOf(maxim, said, asked);
    const isOpen = isAsking || message.text.includes('?');
    // "I'll wrap it in foil, yeah?" asks of what its writer does.
    if (sides.length === 0 && rest.some(word => doing.has(word))) return undefined;
    if (sides.length > 0 || isOpen) return { name: maxim.name, sides, ...(asked && { asked }) };
    if (asksOrOwns(heard)) return undefined;
    return asked && { name: maxim.name, sides: [{ who: from, says: asked }], asked };
  }
  const topic = before && before.who !== from ? maximNamed(before.maxim) : undefined;
  if (!before || !topic || message.text.includes('?') || words.length > mostRejoinderWords) return undefined;
  const opens = noFirst.has(words[0] ?? '') || yesFirst.has(words[0] ?? '');
  if (hasRigFigures(mentions) && !opens) return undefined;
  const way = rejoinderTo(topic, before.says, asking.rest);
  return way && { name: topic.name, sides: [{ who: from, says: way }] };
}

/** Where people spoke of how far down a battery may be taken, or the bot was just asked. */
function openDepth(memory: Memory, at: number): OpenDepth | undefined {
  const before = lastHeld(memory, at, rejoinMs);
  if (before?.maxim === depthMaxim)
    return {
      chemistry: depthOf(before.says).chemistry,
      sides: sidesOfOpen(memory, depthMaxim),
      by: before.who,
    };
  const last = memory.frames.at(-1);
  const isOfIt = last?.subject === 'how-deep' || last?.subject === depthMaxim;
  const isOfState = last?.intent === 'charge-level';
  if (!last || !(isOfIt || isOfState) || at - last.at > rejoinMs) return undefined;
  return { chemistry: last.facts.batteries?.[0]?.chemistry, sides: [], by: last.from, isOfState };
}

/** The argument about a maxim that is open, with all who took a side. */
function openIn(memory: Memory, at: number): HeldMaxim | undefined {
  const last = lastHeld(memory, at, openMs);
  return last && { name: last.maxim, sides: sidesOfOpen(memory, last.maxim) };
}

/** Who took which side of a maxim, the latest last. */
const sidesOfOpen = ({ claims }: Memory, name: string): SideTaken[] =>
  claims
    .filter(isOfMaxim)
    .filter(({ maxim }) => maxim === name)
    .map(({ who, says }): SideTaken => ({ who, says }));

/** Of the trade nobody claims a figure. */
const unclaimed = { ...plainly, claims: [] } as const;
/** What is said of any battery is no fact of anybody's. */
const untold = { facts: {}, removed: [], corrects: undefined } as const;
const asked = { ...unclaimed, ...untold, intent: 'settle', isAppeal: true } as const;

/** Sides taken now, with those that others took before. */
const withOthers = (now: readonly SideTaken[], before: readonly SideTaken[]): SideTaken[] => [
  ...before.filter(({ who }) => now.every(one => one.who !== who)),
  ...now,
];

/**
 * A message with the maxim that it speaks of, if any: asked about, as an argument that the bot settles; claimed among
 * people, as talk that is kept for when it is asked.
 */
export function withMaxim(memory: Memory, message: Message, heard: Heard): Heard {
  if (heard.forgetting || heard.undo || heard.isPicked || message.onto) return heard;
  const { words } = heard.recognised;
  const asking = withoutAsking(words);
  const { rest, isAsking } = asking;
  const held = heldIn(memory, message, heard, asking);
  const isCall = isAppealing(words);
  if (!held) {
    const isAlone = isCall || (isAsking && rest.filter(isSpoken).every(word => word === 'bot'));
    const open = isAlone || isBareDispute(heard) ? openIn(memory, message.at.getTime()) : undefined;
    return open ? { ...heard, ...asked, held: open } : heard;
  }
  const isReported = held.sides.some(({ who }) => who !== personKey(message.from));
  const isMarked = message.text.includes('?');
  const isQuestion =
    isAsking || held.of !== undefined || (isMarked && (isReported || isBotCalled(heard, message)));
  if (held.name === depthMaxim) {
    const isAnswered = isQuestion || message.kind !== 'group' || isBotCalled(heard, message);
    const all = { ...held, sides: withOthers(held.sides, sidesOfOpen(memory, depthMaxim)) };
    const { depthOfDischargePercent: _share, ...facts } = heard.facts;
    const claims = heard.claims.length > 1 ? heard.claims : [];
    return isAnswered
      ? { ...heard, ...asked, facts, claims, held: all }
      : { ...heard, ...unclaimed, ...untold, intent: 'none', held };
  }
  if (isQuestion) return { ...heard, ...asked, held };
  if (message.kind !== 'group' || held.sides.length === 0) return heard;
  const isRejoinder = held.asked === undefined || isHeldByOther(memory, message, held.name);
  return isRejoinder || heard.intent === 'unclear'
    ? { ...heard, ...unclaimed, intent: 'none', held }
    : { ...heard, held };
}

/** Whether it is read as an argument, and tells nothing to settle it by. */
const isBareDispute = ({ intent, facts, claims }: Heard): boolean =>
  intent === 'settle' && claims.length === 0 && Object.keys(facts).length === 0;

/** Whether somebody else has spoken of a maxim of late. */
const isHeldByOther = ({ claims }: Memory, { from, at }: Message, name: string): boolean =>
  claims.some(
    claim =>
      isOfMaxim(claim) &&
      claim.maxim === name &&
      claim.who !== personKey(from) &&
      at.getTime() - (claim.at ?? 0) < openMs,
  );
