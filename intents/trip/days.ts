import { hourOfDay } from '#answer/clock.ts';
import { decimals, significant } from '#quantity/round.ts';
import { spotted } from '../spotting.ts';
import type { TripAnswer } from './compute.ts';
import { dayName } from './when.ts';

/** Days that a phone shows. */
const mostShown = 14;
/** Less than this is nothing, Ah. */
const leastAh = 0.5;
/** A low between the levels shown is told from so many points on, %. */
const leastPoints = 3;

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

/** The levels of a day: morning and evening, how low it gets between them, and where the trip ends. */
function levels(day: TripAnswer['days'][number], isLast: boolean): string {
  const { morningPercent, eveningPercent, lowestPercent, endPercent, lowestHour } = day;
  const shown = [morningPercent, eveningPercent].filter(level => level !== undefined);
  const isLower = lowestPercent < Math.min(...shown, endPercent) - leastPoints;
  return [
    morningPercent === undefined ? '' : `morning ${percent(morningPercent)}`,
    eveningPercent === undefined ? '' : `evening ${percent(eveningPercent)}`,
    isLower ? `lowest ${percent(lowestPercent)} (${hourOfDay(lowestHour)})` : '',
    isLast || shown.length === 0 ? `ends at ${percent(endPercent)}` : '',
  ]
    .filter(Boolean)
    .join(', ');
}

/** "Day 2", "Friday", "Days 2–4", "Friday to Sunday". */
function nameOf(first: number, last: number, startWeekday?: number): string {
  const name = dayName(first, startWeekday);
  if (first === last) return name;
  return startWeekday === undefined
    ? `Days ${first + 1}–${last + 1}`
    : `${name} to ${dayName(last, startWeekday)}`;
}

/** A line for each day, or for several that are alike: what goes out, what is on offer, morning and evening level. */
export function dayLines({ days }: TripAnswer, startWeekday?: number): string[] {
  const told: { readonly first: number; last: number; readonly text: string }[] = [];
  for (const [i, day] of days.entries()) {
    const parts = incoming(day);
    const comes = parts.length > 0 ? `; on offer: ${parts.join(', ')}` : '';
    const text = `out ${ah(day.useAh)} Ah${comes}; ${levels(day, i === days.length - 1)}.`;
    const before = told.at(-1);
    if (before?.text === text) before.last = day.day;
    else told.push({ first: day.day, last: day.day, text });
  }
  const lines = told
    .slice(0, mostShown)
    .map(({ first, last, text }) => `${nameOf(first, last, startWeekday)}: ${text}`);
  const rest = days.length - 1 - (told[mostShown - 1]?.last ?? days.length - 1);
  return rest > 0 ? [...lines, `And ${rest} more ${rest === 1 ? 'day' : 'days'}.`] : lines;
}

/** Words by which people ask for the days one by one, in the patterns of `spotting.ts`. */
const asking = [
  'day_by_day|day_for_day|daily_plan|daily_breakdown|breakdown_by_day|plan_by_day|per_day_plan|itinerary',
  'day|days plan',
  'show|list|tell each_day|every_day|the_days',
  'plan each_day|every_day',
  'morning|mornings evening|evenings each|every level|levels|charge|percent',
] as const;

/** What a question is about that asks so. */
export const byDay = 'by-day';

/** Whether the words of a message ask for the days one by one. */
export const asksByDay = (words: readonly string[]): boolean =>
  spotted(words, asking, pattern => [pattern]) !== undefined;
