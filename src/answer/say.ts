import { english, type Speech } from './speech.ts';

/** How long, as a person would say it: "40 minutes", "about 5 hours", "about 1¾ days". */
export function duration(hours: number, words: Speech = english): string {
  if (!Number.isFinite(hours)) return words.say('for-ever', 'for ever');
  const { n, count, unit } = timeOf(hours, words);
  if (unit === 'minutes') return words.say('minutes', '{n} minutes', { n, count });
  return unit === 'hours'
    ? words.say('about-hours', 'about {n} hours', { n, count })
    : words.say('about-days', 'about {n} days', { n, count });
}

/** The same without "about", for a time that somebody named: "5 hours". */
export function exactly(hours: number, words: Speech = english): string {
  if (!Number.isFinite(hours)) return words.say('for-ever', 'for ever');
  const { n, count, unit } = timeOf(hours, words);
  if (unit === 'minutes') return words.say('minutes', '{n} minutes', { n, count });
  return unit === 'hours'
    ? words.say('hours', '{n} hours', { n, count })
    : words.say('days', '{n} days', { n, count });
}

type Span = { readonly value: number; readonly low: number; readonly high: number };
const inHours = { minutes: 1 / 60, hours: 1, days: 24 } as const;

/** A range of time in the unit that its likely value is said in: "1½–2 days"; empty where both ends are said alike. */
export function timeSpan({ value, low, high }: Span, words: Speech = english): string {
  if (!Number.isFinite(value)) return '';
  const { unit } = timeOf(value, words);
  const n = (hours: number): string => {
    const amount = hours / inHours[unit];
    if (!Number.isFinite(amount)) return words.say('for-ever', 'for ever');
    if (unit === 'minutes') return words.decimals(amount < 12 ? amount : Math.round(amount / 5) * 5, 0);
    const isFine = unit === 'hours' ? value < 4 : value < 8 * 24;
    return isFine && amount < 10 ? quarters(amount) : words.decimals(amount, 0);
  };
  const [a, b] = [n(low), n(high)];
  const named = { n: `${a}–${b}`, count: 2 };
  if (a === b) return '';
  if (unit === 'minutes') return words.say('minutes', '{n} minutes', named);
  return unit === 'hours' ? words.say('hours', '{n} hours', named) : words.say('days', '{n} days', named);
}

/** How long, with its range in the same unit: "about 1¾ days (1½–2 days)". */
export function lasting(span: Span, words: Speech = english): string {
  const range = timeSpan(span, words);
  return range ? `${duration(span.value, words)} (${range})` : duration(span.value, words);
}

/** Two times in one unit, for one line: days where the longer is said in days, and the other is half a day at least. */
export function alike(a: number, b: number, words: Speech = english): readonly [a: string, b: string] {
  const days = (hours: number): string => {
    const n = quarters(hours / 24);
    return words.say('about-days', 'about {n} days', { n, count: Math.round(hours / 6) / 4 });
  };
  const hours = (all: number): string =>
    words.say('about-hours', 'about {n} hours', { n: words.decimals(all, 0), count: Math.round(all) });
  if (isSaidAlike(a, b, words) || !Number.isFinite(a + b)) return [duration(a, words), duration(b, words)];
  if (Math.min(a, b) < 1.5) return [duration(a, words), duration(b, words)];
  return Math.min(a, b) >= 12 && Math.max(a, b) >= 36 ? [days(a), days(b)] : [hours(a), hours(b)];
}

/** Whether two times are said in one unit: an answer has no days beside hours in a line. */
export const isSaidAlike = (a: number, b: number, words: Speech = english): boolean =>
  timeOf(a, words).unit === timeOf(b, words).unit;

/** A time as written (`n`), as a number to choose the plural by (`count`), and its unit. */
function timeOf(hours: number, words: Speech) {
  const told = (value: number) => ({ n: words.decimals(value, 0), count: Math.round(value) });
  const near = (value: number) => ({ n: quarters(value), count: Math.round(value * 4) / 4 });
  if (hours < 1.5)
    return { ...told(hours < 0.2 ? hours * 60 : Math.round(hours * 12) * 5), unit: 'minutes' } as const;
  if (hours < 36) return { ...(hours < 4 ? near(hours) : told(hours)), unit: 'hours' } as const;
  const days = hours / 24;
  return { ...(days < 8 ? near(days) : told(days)), unit: 'days' } as const;
}

/** A number to the nearest quarter, with the fraction sign: 1.7 → "1¾". */
export function quarters(value: number): string {
  const rounded = Math.round(value * 4) / 4;
  const whole = Math.floor(rounded);
  const part = ['', '¼', '½', '¾'][Math.round((rounded - whole) * 4)] ?? '';
  return whole === 0 && part ? part : `${whole}${part}`;
}

/** A number as rough as a range is: two figures above a hundred, 368 → "370". */
const rough = (value: number, words: Speech): string =>
  Math.abs(value) < 100 ? words.plain(value) : words.plain(Number(value.toPrecision(2)));

/** From here on what was worked out is said in fives, and in two figures. */
const [inFives, inTwoFigures] = [100, 1000];

/** A worked-out number as people say it after "about": 28.8 → "29", 111 → "110", 17756 → "18,000". */
export function rounded(value: number, words: Speech = english): string {
  const size = Math.abs(value);
  if (size < inFives) return words.plain(value);
  return size < inTwoFigures
    ? words.decimals(5 * Math.round(value / 5), 0)
    : words.significant(Number(value.toPrecision(2)), 4);
}

/** "36–48 h", "370–640 W": a range to the digits a person uses. */
export function span(low: number, high: number, unit: string, words: Speech = english): string {
  const [a, b] = [rough(low, words), rough(high, words)];
  return a === b ? `${a} ${unit}` : `${a}–${b} ${unit}`;
}

/** "lights, a fan and the pump". */
export function list(parts: readonly string[], joiner = 'and'): string {
  if (parts.length < 2) return parts.join('');
  return `${parts.slice(0, -1).join(', ')} ${joiner} ${parts.at(-1)}`;
}

/** The same in a language. */
export const listIn = (parts: readonly string[], words: Speech): string =>
  list(parts, words.say('and', 'and'));

/** First letter lower case: a sentence or a part of one within another. */
export const withinSentence = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** First letter upper case. */
export const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
