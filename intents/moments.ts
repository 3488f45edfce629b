import type { Mention } from '#language/recognise/mention.ts';
import { amountsOf } from './figures-told.ts';
import { isSpotted } from './spotting.ts';

/** When two things were read: the hours between, if they are told or can be guessed. */
interface Moments {
  readonly hours?: number;
  /** Hour of the clock at the earlier one, where it is named. */
  readonly fromH?: number;
  /** Two times are named. */
  readonly areNamed?: true;
  /** By the times of day that were named. */
  readonly isRough: boolean;
  /** The later one was told first: "12.3 this morning, 12.6 last night". */
  readonly isTurned: boolean;
}

/** Hours of the clock that times of day stand for where readings are told by them. Common practice. */
const dayTimes: Readonly<Record<string, number>> = {
  sunrise: 6,
  dawn: 6,
  daybreak: 6,
  sunup: 6,
  morning: 7,
  breakfast: 7.5,
  brekkie: 7.5,
  woke: 7,
  wake: 7,
  waking: 7,
  noon: 12,
  midday: 12,
  lunch: 12.5,
  lunchtime: 12.5,
  arvo: 16,
  afternoon: 16,
  dusk: 18,
  sunset: 18,
  sundown: 18,
  tea: 18,
  teatime: 18,
  dinner: 18.5,
  evening: 19,
  supper: 19,
  nightfall: 19,
  night: 21,
  bedtime: 22,
  bed: 22,
  midnight: 24,
};
/** Hours of a night that were not told. Common practice. */
const nightH = 10;
const nightFromH = 21;
/** The hours of a day in which the sun charges, where it was all day. Common practice. */
const sunnyH = 8;
const allDay = ['all_day|whole_day|all_the_day|today'];
const rising: ReadonlySet<string> = new Set(['got', 'get', 'gets', 'getting', 'woke', 'were']);

const onClock = /^(\d{1,2})(?::(\d\d))?(am|pm)?$/;

const joining: ReadonlySet<string> = new Set(['last', 'this', 'yesterday', 'tomorrow', 'in', 'at']);

interface Moment {
  readonly at: number;
  readonly hour: number;
  readonly isRough: boolean;
}

/** An hour of the clock told small: "7am", "5:40am", "17:30", "sunrise"; undefined where it is none. */
export function hourOfClock(word: string): number | undefined {
  if (Object.hasOwn(dayTimes, word)) return dayTimes[word];
  const [, hour, minutes = '0', half] = onClock.exec(word) ?? [];
  if (hour === undefined) return undefined;
  const plain = half === undefined ? Number(hour) : (Number(hour) % 12) + (half === 'pm' ? 12 : 0);
  return plain + Number(minutes) / 60;
}

/** The hour of the clock in a time as it is told: "friday 6pm", "noon sunday". */
export const hourNamed = (told: string): number | undefined =>
  told
    .split(' ')
    .map(hourOfClock)
    .find(hour => hour !== undefined);

/** The times of day that a message names, in their order; "7 this morning" is one. */
function namedIn(mentions: readonly Mention[]): readonly Moment[] {
  const all = mentions.flatMap((mention, at): Moment[] => {
    const isUp = mention.text === 'up' && rising.has(mentions[at - 1]?.text ?? '');
    const isTime = isUp || mention.kind === 'clock' || Object.hasOwn(dayTimes, mention.text);
    if (!isTime) return [];
    const told = isUp ? 'morning' : mention.kind === 'clock' ? mention.key : mention.text;
    const hour = hourNamed(told);
    const isRough = told.split(' ').some(word => Object.hasOwn(dayTimes, word));
    return hour === undefined ? [] : [{ at, hour, isRough }];
  });
  // "7pm last night", "6 this morning": the hour counts.
  const isSame = ({ at, isRough }: Moment, n: number): boolean => {
    const before = all[n - 1];
    const between = before && mentions.slice(before.at + 1, at);
    return isRough && !!between && between.length <= 1 && between.every(({ text }) => joining.has(text));
  };
  return all.filter((moment, n) => !isSame(moment, n));
}

/** Whether a time is said to be of the day before: "last night", "6pm yesterday". */
const isOfBefore = (mentions: readonly Mention[], at: number): boolean =>
  [at - 2, at - 1].some(near => /^(?:last|yesterday)$/.test(mentions[near]?.text ?? '')) ||
  [at + 1, at + 2].some(near => mentions[near]?.text === 'yesterday');

/** The hours between the two times that a message names, else the one stretch of time that it tells. */
export function momentsIn(words: readonly string[], mentions: readonly Mention[]): Moments {
  const [first, later] = namedIn(mentions);
  if (first && later) {
    const isTurned = isOfBefore(mentions, later.at) && !isOfBefore(mentions, first.at);
    const [early, late] = isTurned ? [later, first] : [first, later];
    const told = isTurned ? undefined : mentions[late.at]?.variants.find(({ why }) => why === 'span')?.value;
    const around = (late.hour - early.hour + 24) % 24 || 24;
    const isRough = first.isRough || later.isRough;
    const hours = isRough || told === undefined || told <= 0 ? around : told;
    return { hours, fromH: early.hour % 24, areNamed: true, isRough, isTurned };
  }
  if (isSpotted(words, ['half_an_hour|half_hour'])) return { hours: 0.5, isRough: false, isTurned: false };
  const [stretch] = amountsOf(mentions, 'time').filter(({ rate, told }) => rate === undefined && told > 0);
  if (stretch && !(stretch.told === 1 && stretch.value === 1))
    return { hours: stretch.value, isRough: false, isTurned: false };
  const isNight =
    words.includes('overnight') || mentions.some(({ kind, key }) => kind === 'rate' && key === 'night');
  if (!isNight && isSpotted(words, allDay)) return { hours: sunnyH, isRough: true, isTurned: false };
  return { ...(isNight && { hours: nightH, fromH: nightFromH }), isRough: true, isTurned: false };
}

/** "Since yesterday arvo": the hour of the clock from which on something was counted, and how many days before; undefined where none is named. */
export function sinceIn(
  words: readonly string[],
  mentions: readonly Mention[],
): { readonly hour: number; readonly daysBefore: number } | undefined {
  const [from, ...more] = namedIn(mentions);
  if (!from || more.length > 0 || !words.includes('since')) return undefined;
  return { hour: from.hour % 24, daysBefore: isOfBefore(mentions, from.at) ? 1 : 0 };
}
