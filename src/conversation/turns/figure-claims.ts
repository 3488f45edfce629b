import type { IntentName } from '#answer/answer.ts';
import { unitsOf } from '#intents/settle/unsaid.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { symbolOf, unitOf } from '#quantity/quantity.ts';
import type { Dimension } from '#quantity/units.ts';
import type { Claim } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { personKey } from '../kept/recall.ts';
import type { ClaimKept, Frame, Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { plainly } from './appeal.ts';
import { isAsking, isAskingPlainly } from './asking.ts';
import { isBotCalled } from './called.ts';
import { isSaying } from './claims.ts';
import { claimable, isSide } from './disputes.ts';
import { opensTurn } from './lean.ts';
import { gearKinds } from './side-talk.ts';

// "No way, you need 70", "4 mm² does it", "not a chance, maybe 60": one figure set against an answer or a claim.

/** Questions at whose answers people guess aloud; what they tell in the unit of others is as often a fact. */
const guessedAt: ReadonlySet<IntentName> = new Set<IntentName>([
  'run-time',
  'charge-time',
  'energy-budget',
  'battery-size',
  'battery-bank',
  'solar-yield',
  'solar-size',
  'cable-size',
  'fuse-size',
]);

const words = (text: string): ReadonlySet<string> => new Set(text.split(' '));
/** What its writer has or does is no guess. */
const ofOwn = words('my mine our ours ive weve i we got have has use uses using draws pulls runs its');
/** Words by which somebody puts their own figure right. */
const righting = words('sorry oops whoops typo meant mean actually instead correction was all');
/** Words that make a number alone a guess. */
const guessing = words(
  'nah no nope rubbish wrong way chance maybe more like about closer nearer try need want wants tops most least say id reckon think easy less lucky dreaming only just',
);

const mostWords = 10;
/** A figure is set against what was said so shortly before, ms. */
const openMs = 30 * 60_000;

/** Gear that figures of a cable or a fuse go with. */
const isOfGear = ({ kind }: Mention): boolean =>
  kind === 'thing' || (gearKinds.has(kind) && kind !== 'cable' && kind !== 'fuse');

/** What the figure of a question can be told in. */
function dimensionsOf({ intent, subject }: Frame): ReadonlySet<Dimension> {
  const own = unitsOf(intent, subject).flatMap(unit => unitOf(unit)?.dimension ?? []);
  return new Set(own.includes('area') ? [...own, 'gauge'] : own);
}

/**
 * In what figures told now may be set against the last question of the chat, where somebody else has its answer, or
 * against what somebody else has claimed of late.
 */
function openTo({ frames, claims }: Memory, from: string, at: number): ReadonlySet<Dimension> {
  const isOfLate = (one: number | undefined): boolean => one !== undefined && at - one <= openMs;
  const [frame] = claimable({ frames });
  const before = claims.findLast(
    (one): one is ClaimKept => !isSide(one) && one.who !== from && isOfLate(one.at),
  );
  const isGuessed = frame !== undefined && guessedAt.has(frame.intent) && frame.asked === undefined;
  const isOpen = isGuessed && isOfLate(frame.at) && frame.from !== from;
  const ofClaim = before && unitOf(before.unit)?.dimension;
  return new Set([...(isOpen ? dimensionsOf(frame) : []), ...(ofClaim === undefined ? [] : [ofClaim])]);
}

/** The one figure of a line as its writer's claim; a number alone has the unit of the question. */
function claimIn({ recognised }: Heard, dimensions: ReadonlySet<Dimension>): Claim | undefined {
  const who = 'i';
  const figures = recognised.mentions.filter(({ kind }) => kind === 'amount' || kind === 'number');
  const [figure] = figures;
  if (!figure || figures.length > 1 || figure.isNegative || !(figure.value > 0)) return undefined;
  if (figure.kind === 'number') {
    const isGuess = recognised.words.some(word => guessing.has(word));
    return isGuess && figure.value >= 1 ? { who, value: figure.value, unit: '' } : undefined;
  }
  const { dimension } = figure;
  if (dimension === undefined || !dimensions.has(dimension)) return undefined;
  const isDays = dimension === 'time' && /^(?:d|night|sleep)/.test(figure.spelled ?? '');
  return isDays
    ? { who, value: figure.told, unit: 'days' }
    : { who, value: figure.value, unit: symbolOf(dimension) };
}

/**
 * A figure that somebody sets against another's answer or claim among people, and asks nothing: kept as their claim, in
 * silence. Undefined for any other line.
 */
export function figureClaimed(memory: Memory, message: Message, heard: Heard): Heard | undefined {
  const { kind, onto, text, at } = message;
  const { recognised, hazards } = heard;
  if (kind !== 'group' || onto || text.includes('?') || hazards.length > 0) return undefined;
  if (heard.words > mostWords || heard.isPicked || heard.held || heard.forgetting) return undefined;
  // Said out loud against an answer, it wants one.
  const isLoud = heard.claims.length > 0 && isSaying(recognised.words);
  if (isLoud || isBotCalled(heard, message) || isAsking(heard)) return undefined;
  if (opensTurn(heard) || recognised.words.some(word => righting.has(word))) return undefined;
  if (recognised.mentions.some(isOfGear) || recognised.words.some(word => ofOwn.has(word))) return undefined;
  const from = personKey(message.from);
  const open = openTo(memory, from, at.getTime());
  const claim = open.size > 0 ? claimIn(heard, open) : undefined;
  if (!claim) return undefined;
  const untold = { facts: {}, removed: [], corrects: undefined } as const;
  return { ...heard, ...plainly, ...untold, intent: 'none', claims: [claim] };
}

/** What somebody says of a cable, fuse or panel without asking ("35 mm² is plenty for …"), beside its answer: their claim. */
export function statedIn(heard: Heard, intent: IntentName, who: string): Claim[] {
  const { cable, fuseA, solarAhPerDay, solarWhPerDay } = heard.facts;
  if (heard.cues.has('question-mark') || isAskingPlainly(heard)) return [];
  if (intent === 'cable-size' && cable?.areaMm2 !== undefined)
    return [{ who, value: cable.areaMm2, unit: 'mm²' }];
  if (intent === 'cable-size' && cable?.awg !== undefined) return [{ who, value: cable.awg, unit: 'AWG' }];
  if (intent === 'solar-yield' && solarAhPerDay !== undefined)
    return [{ who, value: solarAhPerDay, unit: 'Ah' }];
  if (intent === 'solar-yield' && solarWhPerDay !== undefined)
    return [{ who, value: solarWhPerDay, unit: 'Wh' }];
  return intent === 'fuse-size' && fuseA !== undefined ? [{ who, value: fuseA, unit: 'A' }] : [];
}
