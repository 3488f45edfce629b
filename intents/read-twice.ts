import type { Mention } from '#language/recognise/mention.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import { amountsOf } from './figures-told.ts';
import { momentsIn } from './moments.ts';
import { isSpotted } from './spotting.ts';

/** One thing read off a battery twice, and the time between. */
export interface ReadTwice {
  readonly of: 'volts' | 'percent' | 'left' | 'used';
  /** The earlier and the later reading: V, % or Ah. */
  readonly first: number;
  readonly later: number;
  /** Hours between, where they are told or can be guessed. */
  readonly hours?: number;
  /** Hour of the clock at the earlier reading, where it was named. */
  readonly fromH?: number;
  /** Guessed by the times of day that were named. */
  readonly isRough: boolean;
  readonly capacityAh?: number;
  readonly chemistry?: Chemistry;
}

type Pair = Pick<ReadTwice, 'of' | 'first' | 'later'>;

/** Volts that 12 V and 24 V batteries read, at rest, in use and on charge. */
const batteryV = [
  { least: 10.4, most: 14.9 },
  { least: 20.8, most: 29.8 },
] as const;
/** Whole volts name a system, unless they stand behind words of what was read. */
const beforeReading: ReadonlySet<string> = new Set(
  'to then now and was at reads read says showed shows down up from'.split(' '),
);

const wordBefore = (mentions: readonly Mention[], at: number): string => mentions[at - 1]?.text ?? '';

/** The two of a list that differ; undefined where there are more or fewer. */
function twoOf(values: readonly number[]): readonly [number, number] | undefined {
  const [first, later, ...more] = [...new Set(values)];
  return first !== undefined && later !== undefined && more.length === 0 ? [first, later] : undefined;
}

function voltsIn(mentions: readonly Mention[]): Pair | undefined {
  for (const { least, most } of batteryV) {
    const read = mentions.filter(({ kind, dimension, told }, at) => {
      if (kind !== 'number' && dimension !== 'voltage') return false;
      if (told < least || told > most) return false;
      return !Number.isInteger(told) || beforeReading.has(wordBefore(mentions, at));
    });
    const two = twoOf(read.map(({ told }) => told));
    if (two) return { of: 'volts', first: two[0], later: two[1] };
  }
  return undefined;
}

/** "From 60 to 65 %". */
const ofSpan: ReadonlySet<string> = new Set(['from', 'to', 'was', 'at', 'now']);
/** Words that make bare numbers a level in %. */
const ofLevel = ['soc|percent|percentage|state_of_charge'];

/** "From 60 to 65 %", "soc was 90 and now 64". */
function percentIn(
  words: readonly string[],
  mentions: readonly Mention[],
  areTimed: boolean,
): Pair | undefined {
  const signed = amountsOf(mentions, 'percent');
  const isLevelTold = isSpotted(words, ofLevel) && signed.length === 0;
  const isBare = signed.length === 1 || isLevelTold;
  const isLevel = (mention: Mention, at: number): boolean => {
    if (mention.kind !== 'number' || !Number.isInteger(mention.told) || mention.told > 100) return false;
    const before = wordBefore(mentions, at);
    // "At 8" is an hour.
    if (before === 'at' && mention.told <= 12) return false;
    const behind = mentions[at + 1];
    const isDated = areTimed && (/^(?:this|last)$/.test(behind?.text ?? '') || behind?.kind === 'clock');
    return isDated || (isLevelTold || areTimed ? beforeReading : ofSpan).has(before);
  };
  // "Burned 11 % since sundown" is no level.
  const isUse = (at: number): boolean => /^(?:burned|burnt|lost|used|gone)$/.test(wordBefore(mentions, at));
  const read = mentions.filter(
    (mention, at) => (signed.includes(mention) && !isUse(at)) || (isBare && isLevel(mention, at)),
  );
  const two = twoOf(read.map(({ told }) => told));
  return two && Math.max(...two) <= 100 ? { of: 'percent', first: two[0], later: two[1] } : undefined;
}

const besideCapacity: ReadonlySet<string> = new Set(['chemistry', 'battery', 'role']);

/** Amp hours that name a battery's size: beside its kind, or "of" and "on" before it. */
export function isCapacity(mentions: readonly Mention[], mention: Mention): boolean {
  const at = mentions.indexOf(mention);
  return (
    besideCapacity.has(mentions[at + 1]?.kind ?? '') ||
    besideCapacity.has(mentions[at - 1]?.kind ?? '') ||
    /^(?:of|on|a|my|our|the)$/.test(wordBefore(mentions, at))
  );
}

const mostCounted = 8;

/** "Two 100 Ah", "2 x 100 Ah": how many there are. */
function countBefore(mentions: readonly Mention[], size: Mention): number {
  const at = mentions.indexOf(size);
  const count = mentions[wordBefore(mentions, at) === 'x' ? at - 2 : at - 1];
  const isCount = count?.kind === 'number' && Number.isInteger(count.told) && count.told <= mostCounted;
  return isCount ? Math.max(1, count.told) : 1;
}

const counters = [
  'shunt|monitor|meter|counter|app|display|screen|bmv|left|remaining|used|gone|said|showed|says|shows|reading|read',
];
const usedUp = ['used|gone|consumed|taken_out|out_of_it|drawn'];

function countedIn(
  words: readonly string[],
  mentions: readonly Mention[],
  sizes: readonly Mention[],
): Pair | undefined {
  const read = amountsOf(mentions, 'charge').filter(({ rate }) => rate === undefined);
  const two = twoOf(read.filter(one => !sizes.includes(one)).map(({ value }) => value));
  if (!two || !isSpotted(words, counters)) return undefined;
  const [first, later] = two;
  return { of: later > first && isSpotted(words, usedUp) ? 'used' : 'left', first, later };
}

const changing: ReadonlySet<string> = new Set('to now later then after before'.split(' '));
/** So near to a reading a word tells when it was, mentions. */
const nearWords = 3;

/** Whether the later figure is told as what the first became: "from 12.6 to 12.3", "88 % and now 70". */
function isBecome(mentions: readonly Mention[], { first, later }: Pair): boolean {
  const is = (value: number) => (one: Mention) =>
    (one.kind === 'number' || one.kind === 'amount') && (one.told === value || one.value === value);
  const [one, other] = [mentions.findIndex(is(first)), mentions.findIndex(is(later))];
  const [from, to] = [Math.min(one, other), Math.max(one, other)];
  if (from < 0) return false;
  const between = mentions.slice(Math.max(from + 1, to - nearWords), to);
  const behind = mentions.slice(to + 1, to + 1 + nearWords);
  const near = [...between, ...behind.filter(({ text }) => text !== 'to')];
  // "When we left", not "when must I charge it".
  const isWhen = near.some(
    one => one.text === 'when' && /^(?:we|i)$/.test(mentions[mentions.indexOf(one) + 1]?.text ?? ''),
  );
  return isWhen || near.some(({ text }) => changing.has(text));
}

/** What was read twice, as a message tells it; undefined where it tells no two readings of one thing at two times. */
export function readTwice(
  { batteries = [] }: Facts,
  words: readonly string[],
  mentions: readonly Mention[],
): ReadTwice | undefined {
  const charges = amountsOf(mentions, 'charge');
  const sizes = charges.filter(one => isCapacity(mentions, one));
  const { isTurned, areNamed, ...time } = momentsIn(words, mentions);
  const pair =
    percentIn(words, mentions, areNamed === true) ??
    countedIn(words, mentions, sizes.length > 0 || charges.length < 3 ? sizes : charges.slice(-1)) ??
    voltsIn(mentions);
  if (!pair) return undefined;
  if (!areNamed && !isBecome(mentions, pair)) return undefined;
  // Volts that move at once are pulled down by what runs.
  if (pair.of === 'volts' && time.hours === undefined) return undefined;
  const house = batteries.find(({ role }) => role !== 'starter');
  const size = sizes[0] ?? (pair.of === 'volts' || pair.of === 'percent' ? charges[0] : undefined);
  const known = house?.capacityAh === undefined ? undefined : house.capacityAh * house.count;
  return {
    of: pair.of,
    first: isTurned ? pair.later : pair.first,
    later: isTurned ? pair.first : pair.later,
    ...time,
    capacityAh:
      (size && size.value * countBefore(mentions, size)) ??
      (pair.of === 'volts' || pair.of === 'percent' ? known : undefined),
    chemistry:
      (mentions.find(({ kind }) => kind === 'chemistry')?.key as Chemistry | undefined) ?? house?.chemistry,
  };
}
