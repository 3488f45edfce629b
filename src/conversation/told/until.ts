import { hourOfClock } from '#intents/moments.ts';
import { weekdays } from '#language/words/en/calendar.ts';

/** A day without a time of it: to the middle of it. */
const noon = 12;

const isOfEitherHalf = (word: string): boolean => /^(?:[1-9]|1[0-2]):\d\d$/.test(word);

/**
 * Hours from a moment to a time told ("7am", "sunday lunch", "noon tomorrow"), by the clock of the sun where that is
 * known, else by that of the message. Undefined where nothing of it is a time.
 * @param longitudeDeg where the asker is, for their clock
 */
export function hoursUntil(until: string, at: Date, longitudeDeg = 0): number | undefined {
  const now = at.getUTCHours() + at.getUTCMinutes() / 60 + longitudeDeg / 15;
  const today = (at.getUTCDay() + 6 + Math.floor(now / 24)) % 7;
  const clock = ((now % 24) + 24) % 24;
  const words = until.toLowerCase().split(' ');
  const hours = words.map(hourOfClock).filter(hour => hour !== undefined);
  const day = words.map(word => weekdays[word]).find(one => one !== undefined);
  const isTomorrow = words.includes('tomorrow');
  if (hours.length === 0 && day === undefined && !isTomorrow) return undefined;
  const hour = hours.at(-1) ?? noon;
  const days = day !== undefined ? (day - today + 7) % 7 : isTomorrow ? 1 : 0;
  // "Till 7:00", said without its half of the day: the next such hour.
  if (words.length === 1 && isOfEitherHalf(words[0] ?? ''))
    return Math.round(((((hour - clock) % 12) + 12) % 12 || 12) * 100) / 100;
  const left = days * 24 + hour - clock;
  if (left > 0) return Math.round(left * 100) / 100;
  return Math.round((left + (day !== undefined ? 7 * 24 : 24)) * 100) / 100;
}
