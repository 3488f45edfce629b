import { hourOfDay } from '#answer/clock.ts';
import { decimals, significant } from '#quantity/round.ts';
import type { TripAnswer } from './compute.ts';
import { dayName } from './when.ts';

/** Days that a phone shows. */
const mostShown = 14;
/** Less than this is nothing, Ah. */
const leastAh = 0.5;

const ah = (value: number): string => significant(value, 2);
const percent = (value: number): string => `${decimals(Math.min(100, Math.max(0, value)), 0)} %`;

/** What a day brings, each source by its name. */
function incoming({
  drivingAh,
  sunAh,
  pluggedAh,
  arrivesHour,
  sky,
  plug,
}: TripAnswer['days'][number]): string[] {
  const parts: string[] = [];
  if (drivingAh >= leastAh) {
    const there = arrivesHour === undefined ? '' : ` (there about ${hourOfDay(arrivesHour)})`;
    parts.push(`driving ${ah(drivingAh)}${there}`);
  }
  if (sunAh >= leastAh)
    parts.push(`sun ${ah(sunAh)}${sky === undefined || sky === 'mixed' ? '' : ` (${sky})`}`);
  if (pluggedAh >= leastAh) parts.push(`${plug ?? 'mains'} ${ah(pluggedAh)}`);
  return parts;
}

/** A line for each day: what goes out, what is on offer, how low it gets and how it ends. */
export function dayLines({ days }: TripAnswer, startWeekday?: number): string[] {
  const lines = days.slice(0, mostShown).map(day => {
    const parts = incoming(day);
    const comes = parts.length > 0 ? `; on offer: ${parts.join(', ')}` : '';
    const isLower = day.lowestPercent < day.endPercent - 0.5;
    const low = isLower ? `lowest ${percent(day.lowestPercent)} (${hourOfDay(day.lowestHour)}), ` : '';
    const name = dayName(day.day, startWeekday);
    return `${name}: out ${ah(day.useAh)} Ah${comes}; ${low}ends at ${percent(day.endPercent)}.`;
  });
  const rest = days.length - lines.length;
  return rest > 0 ? [...lines, `And ${rest} more days.`] : lines;
}

/** Words by which people ask for the days one by one, and nothing else. */
const asking: readonly string[] = [
  'day by day',
  'day for day',
  'show me each day',
  'show each day',
  'show every day',
  'list the days',
  'daily breakdown',
  'breakdown by day',
];

/** Whether the words of a message ask for the days one by one. */
export const asksByDay = (words: readonly string[]): boolean => {
  const text = ` ${words.join(' ')} `;
  return asking.some(phrase => text.includes(` ${phrase} `));
};
