import { isSpoken } from '#basics/spoken.ts';
import { isSpotted } from '#intents/spotting.ts';
import type { Mention } from '#language/recognise/mention.ts';
import type { Recognised } from '#language/recognise/recognise.ts';

// "80 % of it", "down to 20", "half", "the lot": which share of a battery words say may be taken out.

/** A share that is told, by the place of its first word. */
export interface Share {
  readonly at: number;
  readonly usedPercent: number;
  /** The figure as it stands, %; undefined where words tell it. */
  readonly told?: number;
}

const words = (text: string): ReadonlySet<string> => new Set(text.split(' '));

/** Before a share these tell what is left, ... */
const leftBefore = words(
  'to below under past beneath leave leaving keep keeping kept stay above over left least',
);
/** ... behind it these; */
const leftBehind = words('left remaining floor soc full in');
/** these tell what is taken out, before a share and behind it. */
const usedBefore = words('use uses used using get gets take takes pull drain usable out');
const usedBehind = words('of dod depth out usable discharge discharged deep');
/** Between those and the share. */
const between = words('about around like say only ever just the a an at most more than roughly up even');

/** The last telling word before a place, and the first behind it. */
const before = (all: readonly string[], at: number): string =>
  all.slice(0, at).findLast(word => isSpoken(word) && !between.has(word)) ?? '';
const behind = (all: readonly string[], at: number): string =>
  all.slice(at).find(word => isSpoken(word)) ?? '';

const half = 50;

/** Whether a share is what is left: by the words around it, else where it is less than half. */
function isLeft(all: readonly string[], { from, to }: Mention, percent: number): boolean {
  const [first, next] = [before(all, from), behind(all, to)];
  if (leftBefore.has(first)) return true;
  if (usedBefore.has(first) || usedBehind.has(next)) return false;
  return leftBehind.has(next) || percent < half;
}

const leastPercent = 5;
const mostPercent = 100;

/** The share that an amount is, %; of numbers alone those that can be one. */
function percentOf({ kind, dimension, value, isNegative }: Mention): number | undefined {
  if (isNegative) return undefined;
  const isPercent = kind === 'amount' && dimension === 'percent';
  const isPart = kind === 'number' && value > 0 && value < 1;
  if (!isPercent && !isPart && kind !== 'number') return undefined;
  const percent = isPart ? 100 * value : value;
  return percent >= leastPercent && percent <= mostPercent ? percent : undefined;
}

/** Whether a number alone stands where shares do: "below 50", "to 20". */
const isLed = (all: readonly string[], { kind, value, from }: Mention): boolean =>
  kind !== 'number' || value < 1 || leftBefore.has(before(all, from)) || usedBefore.has(before(all, from));

/** All of it, in words. */
const all = [
  'the_lot|all_of_it|the_whole_lot|the_whole_thing|every_bit|everything|whole_capacity|full_capacity|totally_flat|completely_flat|dead_flat|right_down|right_flat|all_the_way|to_nothing|to_zero|until_it_cuts|till_it_cuts|bms_cuts|run_flat|till_its_flat|until_its_flat|flatten_em|flatten_it|flatten_them',
];

/** The word that says all of it. */
const placeOfAll = (said: readonly string[]): number =>
  said.findLastIndex(word =>
    ['lot', 'all', 'everything', 'flat', 'flatten', 'down', 'zero', 'nothing'].includes(word),
  );

/**
 * The shares of a battery that a line tells, in its order.
 * @param isBare a number alone counts wherever it stands
 */
export function sharesIn({ words: said, mentions }: Recognised, isBare: boolean): Share[] {
  const shares = mentions.flatMap((mention): Share[] => {
    const percent = percentOf(mention);
    if (percent === undefined || !(isBare || isLed(said, mention))) return [];
    const usedPercent = isLeft(said, mention, percent) ? mostPercent - percent : percent;
    return [{ at: mention.from, usedPercent, told: percent }];
  });
  if (shares.length > 0 || !isSpotted(said, all)) return shares;
  return [{ at: Math.max(0, placeOfAll(said)), usedPercent: mostPercent }];
}
