import { present } from '#basics/present.ts';
import { dust } from '../grain.ts';
import type { Sky } from '../solar/case.ts';
import type { BalanceHour } from './balance.ts';
import { driveOf, isIntoNextDay, type TripDay } from './plan.ts';
import { dayHours } from './profile.ts';
import type { Trip } from './trip.ts';

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
  /** At the hours of `marks`; absent where the trip doesn't go on then. */
  readonly morningPercent?: number;
  readonly eveningPercent?: number;
}

/** Hours of the day at which a level is looked at: before the sun fills it, and as it goes. */
const marks = { morning: 7, evening: 19 } as const;

/** A trip's hours as days: from its start to midnight, whole days, and to its end. */
export function accountByDay(
  hours: readonly BalanceHour[],
  startHour: number,
  capacityAh: number,
): readonly DayAccount[] {
  const days: DayAccount[] = [];
  for (const hour of hours) {
    const clock = startHour + hour.atH;
    const day = Math.ceil(clock / dayHours - dust) - 1;
    const percent = (100 * hour.chargeAh) / capacityAh;
    const before = days.at(-1)?.day === day ? present(days.pop()) : undefined;
    const isAt = (mark: number): boolean => Math.abs(clock - day * dayHours - mark) < 0.5;
    const isLower = before === undefined || percent < before.lowestPercent - dust;
    days.push({
      day,
      useAh: (before?.useAh ?? 0) + hour.useAh,
      sunAh: (before?.sunAh ?? 0) + hour.sunAh,
      drivingAh: (before?.drivingAh ?? 0) + hour.drivingAh,
      pluggedAh: (before?.pluggedAh ?? 0) + hour.pluggedAh,
      lowestPercent: isLower ? percent : before.lowestPercent,
      lowestHour: isLower ? clock - day * dayHours : before.lowestHour,
      endPercent: percent,
      morningPercent: isAt(marks.morning) ? percent : before?.morningPercent,
      eveningPercent: isAt(marks.evening) ? percent : before?.eveningPercent,
    });
  }
  return days;
}

/** A day with what was told of it. */
export interface DayReport extends DayAccount {
  /** Hour of the day at which the drive is over, where there is one. */
  readonly arrivesHour?: number;
  /** Its own sky, where it has one. */
  readonly sky?: Sky;
  /** What it was plugged into, where it was; mains of the evening before too. */
  readonly plug?: 'generator' | 'mains' | 'generator and mains';
}

/** What a day was plugged into, by what was told of it and of the day before. */
function plugOn({ generatorH = 0, mainsH = 0 }: TripDay, before: TripDay): DayReport['plug'] {
  const isOnMains = mainsH > 0 || isIntoNextDay(before.mainsH ?? 0);
  if (generatorH <= 0) return 'mains';
  return isOnMains ? 'generator and mains' : 'generator';
}

/** The days of a trip as its hours have them, each with what was told of it. */
export function reportByDay(
  { days: told = [], driving }: Trip,
  accounts: readonly DayAccount[],
): readonly DayReport[] {
  const isDrivingTold = told.some(day => day.drivingH !== undefined);
  return accounts.map(account => {
    const today = told[account.day] ?? {};
    const { drivingH, sky } = today;
    const drivesH = drivingH ?? (isDrivingTold ? 0 : (driving?.hoursPerDay ?? 0));
    const { fromHour, hours } = driveOf(drivesH);
    return {
      ...account,
      ...(drivesH > 0 && account.drivingAh > 0 && { arrivesHour: fromHour + hours }),
      ...(sky && { sky }),
      ...(account.pluggedAh > 0 && { plug: plugOn(today, told[account.day - 1] ?? {}) }),
    };
  });
}
