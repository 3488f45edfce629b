import type { Mention } from './mention.ts';

const nouns: Readonly<Record<string, string>> = {
  day: 'day',
  days: 'day',
  d: 'day',
  '24h': 'day',
  daily: 'day',
  night: 'night',
  nights: 'night',
  nite: 'night',
  evening: 'night',
  evenings: 'night',
  eve: 'night',
  hour: 'hour',
  hr: 'hour',
  h: 'hour',
  week: 'week',
  arvo: 'day',
  morning: 'day',
  mornings: 'day',
  afternoon: 'day',
  sleep: 'night',
  bedtime: 'night',
  weekday: 'day',
  dusk: 'night',
};
const every: ReadonlySet<string> = new Set([
  'a',
  'an',
  'per',
  'each',
  'every',
  'p',
  '/',
  'the',
  'any',
  'all',
  'of',
  'in',
]);
const strong: ReadonlySet<string> = new Set(['per', 'each', 'every', '/', 'p']);
const alone: Readonly<Record<string, string>> = {
  daily: 'day',
  nightly: 'night',
  everyday: 'day',
  hourly: 'hour',
  pd: 'day',
  perday: 'day',
  weekly: 'week',
  overnight: 'night',
  overnite: 'night',
};

const hoursOfWeek = 168;

const make = (rate: string, from: number, to: number, text: string): Mention => ({
  kind: 'rate',
  key: rate,
  cls: `/${rate}`,
  text,
  from,
  to,
  // "Spending a week in Utah": a stay perhaps, and no rate.
  value: rate === 'week' ? hoursOfWeek : Number.NaN,
  told: Number.NaN,
  variants: [],
});

/** Whether "a day", "each night" or "daily" stands at a word. */
const isADay = (words: readonly string[], at: number): boolean => {
  const [word = '', next = ''] = [words[at], words[at + 1]];
  return word === 'daily' || word === 'nightly' || (every.has(word) && (next === 'day' || next === 'night'));
};

/** "A day", "per night", "/d", "daily": how often, standing at a word. */
export function rateAt(
  words: readonly string[],
  at: number,
  before: Mention | undefined,
): Mention | undefined {
  const word = words[at]!;
  if (Object.hasOwn(alone, word)) return make(alone[word]!, at, at + 1, word);
  if (!every.has(word)) return undefined;
  const next = words[at + 1] ?? '';
  if (!Object.hasOwn(nouns, next)) return undefined;
  const isOfAmount = before?.kind === 'amount' || before?.kind === 'number';
  if (strong.has(word)) {
    if (word === '/' && !isOfAmount) return undefined;
    if ((next === 'd' || next === 'h') && word !== '/' && word !== 'p' && word !== 'per') return undefined;
    return make(nouns[next]!, at, at + 2, `${word} ${next}`);
  }
  // "15 watts an hour a day", "a lamp I use an hour a day": an hour of use; of a charge or an energy it is a rate.
  if (
    next === 'hour' &&
    before?.dimension !== 'charge' &&
    before?.dimension !== 'energy' &&
    isADay(words, at + 2)
  )
    return undefined;
  if (
    (word === 'a' || word === 'an') &&
    (next === 'day' ||
      next === 'night' ||
      next === 'hour' ||
      next === 'week' ||
      next === 'evening' ||
      next === 'arvo' ||
      next === 'morning' ||
      next === 'nite')
  )
    // "For a day", "last a week" are spans; after an amount or a noun it is a rate.
    return isOfAmount ||
      before?.kind === 'thing' ||
      before?.kind === 'noun' ||
      (before?.kind === 'word' &&
        /^(?:hours|times|twice|once|use|much|amps|power|ah|juice|watts|burn|need|long)$/.test(before.text))
      ? make(nouns[next]!, at, at + 2, `${word} ${next}`)
      : undefined;
  if (word === 'the' && isOfAmount && (next === 'day' || next === 'night'))
    return make(nouns[next]!, at, at + 2, `${word} ${next}`);
  if ((word === 'of' || word === 'in') && isOfAmount && (next === 'evening' || next === 'evenings'))
    return make('night', at, at + 2, `${word} ${next}`);
  if (word === 'all' && (next === 'day' || next === 'night'))
    return { ...make(`all${next}`, at, at + 2, `${word} ${next}`), ...(next === 'day' ? { value: 24 } : {}) };
  return undefined;
}
