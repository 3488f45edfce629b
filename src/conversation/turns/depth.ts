import type { HeldMaxim, SideTaken } from '#intents/intent.ts';
import { type DepthClaim, depthMaxim, depthOf, depthSaid, isMild } from '#intents/settle/subjects/depth.ts';
import { isSpotted } from '#intents/spotting.ts';
import type { Recognised } from '#language/recognise/recognise.ts';
import { type Chemistry, chemistries } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { personKey } from '../kept/recall.ts';
import type { Message } from '../message.ts';
import { isAsking } from './asking.ts';
import { type Share, sharesIn } from './depth-shares.ts';
import type { Part } from './sides.ts';

// How far down a battery may be taken, as people claim it: no setting of anybody's battery.

/** What says that a share is of how far down it goes. */
const goingDown = [
  'use|uses|used|using|usable|usage|take|taking|run|running|drain|drains|draining|discharge|discharged|discharging|go|going|get|gets|down|below|under|flatten|flattening|dod|deplete|limit|floor|leave|keep|kept|stay|above|drop|drops|dropping|let|depth|cycle|cycling -charging -charger -full -charged -solar -panel -sun -cold -freezing -engine -alternator -voltage_drop -volt_drop -dropped -inverter -fridge -heater -cable -efficient -efficiency -shade -off_the_price -series -parallel -mix',
];
/** What anybody may do, and how well it goes with it: no setting of one's own. */
const ofAnybody = [
  'you|youre|they|should|shouldnt|safe|meant|anyone|everyone|people|never|always|dont|limit|floor|rule|usable|max|maximum|at_most|tops|only|fine|ok|okay|no_worries|no_dramas|no_problem|no_issue|no_probs|easy|reckon|heard|says|said|told_me|supposed|good_for|all_the_time|for_years|without_any|happily',
];
const ownWords: ReadonlySet<string> = new Set('my our mine ours'.split(' '));
const boasting = [
  'no_worries|no_dramas|no_problem|no_issue|no_probs|easy|all_the_time|for_years|years|never_had|all_good|happily|every_night|every_day|always_have',
];

/** Volts that a battery is called by. */
const nominalV: ReadonlySet<number> = new Set([6, 12, 24, 48]);
const rigDimensions: ReadonlySet<string> = new Set(['current', 'power', 'length', 'area', 'gauge', 'energy']);

/** Whether figures are told of which a sum could be made: an argument about shares has none but the battery's size. */
const hasOtherFigures = ({ mentions }: Recognised): boolean =>
  mentions.some(
    ({ kind, dimension = '', value }) =>
      kind === 'amount' &&
      (rigDimensions.has(dimension) || (dimension === 'voltage' && !nominalV.has(value))),
  ) || mentions.filter(({ dimension }) => dimension === 'time').length > 1;

/** The kind of battery that is named, between some places where so wanted; null where several are. */
function kindNamed(
  { mentions }: Recognised,
  first = 0,
  end = Number.POSITIVE_INFINITY,
): Chemistry | 'any' | null | undefined {
  const here = mentions.filter(({ from }) => from >= first && from < end);
  const kinds = [...new Set(here.flatMap(({ kind, key }) => (kind === 'chemistry' ? [key] : [])))];
  if (kinds.length > 1) return null;
  const chemistry = chemistries.find(one => one === kinds[0]);
  if (chemistry) return chemistry;
  return here.some(({ kind }) => kind === 'battery' || kind === 'role') ? 'any' : undefined;
}

const parting: ReadonlySet<string> = new Set([',', '.', ';', '!', 'and', 'but', 'while']);

/** The kind that a share is told of: the one in its own clause, else the one of the line. */
function kindOf(recognised: Recognised, { at }: Share, ofLine: Chemistry | 'any'): Chemistry | undefined {
  const { words } = recognised;
  const first = words.slice(0, at).findLastIndex(word => parting.has(word));
  const next = words.findIndex((word, i) => i > at && parting.has(word));
  const own = kindNamed(recognised, first + 1, next < 0 ? undefined : next) ?? ofLine;
  return own === 'any' ? undefined : own;
}

const mostWords = 26;
const mostRejoinderWords = 18;

const used = ({ usedPercent }: Share) => ({ usedPercent });

const speakers: ReadonlySet<string> = new Set(['i', 'me', 'we', 'us']);

/** Who says which share: as claims were read, else by who is said to say each part. */
function claimsOf(
  parts: readonly Part[],
  heard: Heard,
  ofLine: Chemistry | 'any',
  writer: string,
): SideTaken[] {
  const isReported = heard.claims.length > 1 || parts.some(({ isSaid }) => isSaid);
  const shares = sharesIn(heard.recognised, isReported);
  const side = (who: string, share: Share | undefined): SideTaken[] =>
    share
      ? [{ who, says: depthSaid({ chemistry: kindOf(heard.recognised, share, ofLine), ...used(share) }) }]
      : [];
  if (heard.claims.length > 1)
    return heard.claims.flatMap(({ who, value }) =>
      side(
        speakers.has(who) ? writer : who,
        shares.find(({ told }) => told === value),
      ),
    );
  return parts.flatMap(({ who, from }, i) => {
    const to = parts[i + 1]?.from ?? Number.POSITIVE_INFINITY;
    // "Half of it, I reckon": who says it stands behind.
    const own =
      shares.find(({ at }) => at >= from && at < to) ?? (parts.length === 1 ? shares[0] : undefined);
    return side(who, own);
  });
}

/** How far down a line that opens the matter says that a battery may be taken, and who says it. */
function opened(heard: Heard, parts: readonly Part[], writer: string): HeldMaxim | undefined {
  const { recognised } = heard;
  const { words } = recognised;
  const kind = kindNamed(recognised);
  if (!kind || words.length > mostWords || hasOtherFigures(recognised)) return undefined;
  if (!isSpotted(words, goingDown) || !isSpotted(words, ofAnybody)) return undefined;
  const isReported = heard.claims.length > 1 || parts.some(({ isSaid }) => isSaid);
  const isOwn = !isReported && words.some(word => ownWords.has(word));
  if (isOwn && !isSpotted(words, boasting)) return undefined;
  const sides = claimsOf(parts, heard, kind, writer);
  return sides.length > 0 ? { name: depthMaxim, sides } : undefined;
}

/** More than this is more than half, near enough. */
const aboutHalf = 60;
const more = 80;
const less = 50;

/** Against whom it goes: the other way of what was said, or along with it. */
function vaguely({ says }: SideTaken, way: 'yes' | 'no'): DepthClaim {
  const before = depthOf(says);
  if (way === 'yes') return { ...before, isVague: true };
  return { ...before, usedPercent: before.usedPercent > aboutHalf ? less : more, isVague: true };
}

/** Words that find fault with a share that they name. */
const faulting = [
  'too_careful|too_cautious|conservative|overkill|way_too|too_little|too_low|too_much|wrong|nonsense|rubbish|bull|no_way|myth',
];

/** What was last said of it, so that a line may go on without naming it. */
export interface OpenDepth {
  readonly chemistry?: Chemistry;
  /** Who said what, the latest last; nobody where it was only asked about. */
  readonly sides: readonly SideTaken[];
  /** Who spoke last. */
  readonly by: string;
  /** How full somebody's battery is was asked, and no more. */
  readonly isOfState?: boolean;
}

const limiting = ['limit|floor|minimum|lowest|never|dont_go|shouldnt_go|not_below|not_under'];

/** Shares so near each other are one that is told as a range: "80 or 90". */
const oneRange = 15;

/** The one share that is told, if any; null where several are. */
function oneOf([first, second, ...more]: readonly Share[]): Share | null | undefined {
  if (!first || !second) return first;
  const isRange = more.length === 0 && Math.abs(first.usedPercent - second.usedPercent) <= oneRange;
  return isRange ? { ...first, usedPercent: (first.usedPercent + second.usedPercent) / 2 } : null;
}

/** What going so deep does to it. */
const harming = ['how_you|thatll|that_will|youll|that|it kill*|wreck*|ruin*|stuff|stuffs|cook*'];

/** What somebody sets against a claim about it, or says along with it: a share of their own, else "rubbish". */
function rejoined(
  { chemistry, sides, isOfState }: OpenDepth,
  heard: Heard,
  from: string,
  wayOf: (before: SideTaken) => 'yes' | 'no' | undefined,
): HeldMaxim | undefined {
  const { recognised } = heard;
  if (recognised.words.length > mostRejoinderWords || hasOtherFigures(recognised)) return undefined;
  const kind = kindNamed(recognised);
  const share = oneOf(sharesIn(recognised, true));
  if (kind === null || share === null) return undefined;
  if (isOfState && !isSpotted(recognised.words, limiting)) return undefined;
  const isQuoted =
    share !== undefined &&
    isSpotted(recognised.words, faulting) &&
    sides.some(({ who, says }) => who !== from && depthOf(says).usedPercent === share.usedPercent);
  const before = sides.at(-1);
  const isWarned = before !== undefined && !isMild(before.says) && isSpotted(recognised.words, harming);
  const way = isQuoted || (isWarned && !share) ? 'no' : before && !share ? wayOf(before) : undefined;
  const own = sides.find(({ who }) => who === from);
  // Who has told a share of their own means that by "rubbish".
  if (way && own) return { name: depthMaxim, sides: [own] };
  const claim =
    before && way
      ? vaguely(before, way)
      : share && { chemistry: kind === 'any' ? chemistry : (kind ?? chemistry), ...used(share) };
  return claim && { name: depthMaxim, sides: [{ who: from, says: depthSaid(claim) }] };
}

/** What asks whether it may go so far. */
const askingOfIt = [
  'is_it_ok|is_it_okay|is_it_fine|is_it_safe|ok_to|okay_to|fine_to|safe_to|can_i|can_you|can_we|could_i|should_i|should_you use|go|take|run|drain|discharge|get|pull -how|what|why|which|when|long|long_as',
];

/** "Is it ok to go down to 20 % on an AGM?" */
function askedOf({ recognised }: Heard): HeldMaxim | undefined {
  const { words } = recognised;
  const kind = kindNamed(recognised);
  const share = oneOf(sharesIn(recognised, false));
  if (!kind || !share || words.length > mostRejoinderWords) return undefined;
  if (hasOtherFigures(recognised) || !isSpotted(words, goingDown) || !isSpotted(words, askingOfIt))
    return undefined;
  const chemistry = kind === 'any' ? undefined : kind;
  return { name: depthMaxim, sides: [], of: depthSaid({ chemistry, ...used(share) }) };
}

/**
 * What a message says or asks of how far down a battery may be taken, if that is what it is about.
 * @param open what was said of it shortly before
 * @param isAppeal whether it asks who is right
 * @param wayOf whether words without a share agree with what was said
 */
export function depthIn(
  message: Message,
  heard: Heard,
  parts: readonly Part[],
  open: OpenDepth | undefined,
  isAppeal: boolean,
  wayOf: (before: SideTaken) => 'yes' | 'no' | undefined,
): HeldMaxim | undefined {
  // "Can get 80 % out of an AGM, no worries" asks nothing.
  const isTelling = !message.text.includes('?') && isSpotted(heard.recognised.words, boasting);
  const isQuestion = message.text.includes('?') || isAsking(heard);
  if (!isAppeal && !isTelling && isQuestion) return askedOf(heard);
  const from = personKey(message.from);
  return (
    opened(heard, parts, from) ?? (open && open.by !== from ? rejoined(open, heard, from, wayOf) : undefined)
  );
}
