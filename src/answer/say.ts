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

/** "36–48 h": a range to the digits a person uses. */
export function span(low: number, high: number, unit: string, words: Speech = english): string {
  const [a, b] = [words.plain(low), words.plain(high)];
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

/** First letter upper case. */
export const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
