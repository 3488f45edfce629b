import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Values } from '../assumption.ts';
import { isDay } from '../learn/predict.ts';
import { useByHour } from '../trip/profile.ts';
import type { Day, Use } from './model.ts';
import { averageCurrent, currentOverHours } from './rules.ts';

/** From when on a rig runs, of which readings told how it draws by day and by night. */
export interface Clock {
  /** Hour of the day that it is now, by the sun. */
  readonly startsAtH: number;
  /** Half the logarithm of the draw by day over that by night, beyond what is expected. */
  readonly byDay: number;
  /** Mean air, °C, for what cools. */
  readonly meanC: number;
}

/** Mean air where nobody told it, °C: mild camping weather, as for a fridge. */
const mildC = 25;

/** The air that a day's use goes by, °C. */
export const meanAirC = (use: Use, values: Values): number => use.ambientC ?? values.ambientC ?? mildC;

/** Ah of each hour of a day, with as much more by day as was learnt; the day's sum stays. */
function hoursOf(day: Day, { byDay, meanC }: Clock): number[] {
  const tilted = useByHour(day, meanC).map((ah, hour) => ah * Math.exp(isDay(hour) ? byDay : -byDay));
  const sum = tilted.reduce((total, ah) => total + ah, 0);
  return tilted.map(ah => (ah * day.dailyUse) / sum);
}

/** Hours until so many Ah are drawn, from an hour of the day on; some are drawn each day. */
function hoursUntil(chargeAh: number, byHour: readonly number[], startsAtH: number): number {
  const daily = byHour.reduce((total, ah) => total + ah, 0);
  const days = Math.floor(chargeAh / daily);
  let left = chargeAh - days * daily;
  let clock = startsAtH;
  while (left > 0) {
    const hour = Math.floor(clock);
    const span = hour + 1 - clock;
    const ah = byHour[hour % byHour.length] ?? 0;
    if (ah * span >= left) return 24 * days + clock + left / ah - startsAtH;
    left -= ah * span;
    clock = hour + 1;
  }
  return 24 * days;
}

/**
 * The average current (A) over the time that a battery lasts: of the whole day where no clock is known, else of the
 * hours that it is, a night more than a day where lights are on.
 * @param usableAh what there is to use
 */
export function currentOver(day: Day, usableAh: number, clock: Clock | undefined, trace?: Trace): number {
  const t = clock && day.dailyUse > 0 ? hoursUntil(usableAh, hoursOf(day, clock), clock.startsAtH) : 0;
  return t > 0
    ? run(currentOverHours, { Q: usableAh, t }, trace)
    : run(averageCurrent, { Q: day.dailyUse, t_day: 24 }, trace);
}
