import type { BalanceHour } from '#engine/trip/balance.ts';
import { driveOf, type TripDay } from '#engine/trip/plan.ts';
import { dayHours } from '#engine/trip/profile.ts';
import { decimals, significant } from '#quantity/round.ts';
import type { TripAnswer } from './compute.ts';
import { dayName, hourOfDay } from './when.ts';

/** One day of a trip as the hours have it: Ah, and the charge in %. */
export interface DayAccount {
  /** From 0. */
  readonly day: number;
  readonly useAh: number;
  readonly sunAh: number;
  readonly drivingAh: number;
  readonly pluggedAh: number;
  readonly lowestPercent: number;
  /** Hour of the day of the lowest charge. */
  readonly lowestHour: number;
  readonly endPercent: number;
}

/** A trip's hours as days: from its start to midnight, whole days, and to its end. */
export function accountByDay(
  hours: readonly BalanceHour[],
  startHour: number,
  capacityAh: number,
): readonly DayAccount[] {
  const days: DayAccount[] = [];
  for (const hour of hours) {
    const clock = startHour + hour.atH;
    const day = Math.ceil(clock / dayHours - 1e-9) - 1;
    const percent = (100 * hour.chargeAh) / capacityAh;
    const before = days.at(-1)?.day === day ? days.pop()! : undefined;
    const isLower = before === undefined || percent < before.lowestPercent - 1e-9;
    days.push({
      day,
      useAh: (before?.useAh ?? 0) + hour.useAh,
      sunAh: (before?.sunAh ?? 0) + hour.sunAh,
      drivingAh: (before?.drivingAh ?? 0) + hour.drivingAh,
      pluggedAh: (before?.pluggedAh ?? 0) + hour.pluggedAh,
      lowestPercent: isLower ? percent : before.lowestPercent,
      lowestHour: isLower ? clock - day * dayHours : before.lowestHour,
      endPercent: percent,
    });
  }
  return days;
}

/** Days that a phone shows. */
const mostShown = 14;
/** Less than this is nothing, Ah. */
const leastAh = 0.5;

const ah = (value: number): string => significant(value, 2);
const percent = (value: number): string => `${decimals(Math.min(100, Math.max(0, value)), 0)} %`;

/** What a day brings, each source by its name. */
function incoming(day: DayAccount, told: TripDay, drivesH: number, plug: string): string[] {
  const parts: string[] = [];
  if (day.drivingAh >= leastAh) {
    const { fromHour, hours } = driveOf(drivesH);
    parts.push(`driving ${ah(day.drivingAh)} (there about ${hourOfDay(fromHour + hours)})`);
  }
  if (day.sunAh >= leastAh) {
    const sky = told.sky === undefined || told.sky === 'mixed' ? '' : ` (${told.sky})`;
    parts.push(`sun ${ah(day.sunAh)}${sky}`);
  }
  if (day.pluggedAh >= leastAh) parts.push(`${plug} ${ah(day.pluggedAh)}`);
  return parts;
}

/** A line for each day: what goes out, what is on offer, how low it gets and how it ends. */
export function dayLines({ trip, hours, startHour, likely }: TripAnswer, startWeekday?: number): string[] {
  const { days: told = [], driving } = trip;
  const isDrivingTold = told.some(day => day.drivingH !== undefined);
  const accounts = accountByDay(hours, startHour, likely.capacityAh);
  const lines = accounts.slice(0, mostShown).map(account => {
    const day = told[account.day] ?? {};
    const drivesH = day.drivingH ?? (isDrivingTold ? 0 : (driving?.hoursPerDay ?? 0));
    const parts = incoming(account, day, drivesH, day.generatorH ? 'generator' : 'mains');
    const name = dayName(account.day, startWeekday);
    const comes = parts.length > 0 ? `; on offer: ${parts.join(', ')}` : '';
    const isLower = account.lowestPercent < account.endPercent - 0.5;
    const low = isLower
      ? `lowest ${percent(account.lowestPercent)} (${hourOfDay(account.lowestHour)}), `
      : '';
    return `${name}: out ${ah(account.useAh)} Ah${comes}; ${low}ends at ${percent(account.endPercent)}.`;
  });
  const rest = accounts.length - lines.length;
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
