import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, Values } from '../assumption.ts';
import { dust } from '../grain.ts';
import { type Day, dailyUseAh, type Use, useAssumptions } from './model.ts';
import { averageCurrent, chargeOverTime } from './rules.ts';

/**
 * Charge (Ah) used over a time (h). From a day on it grows evenly. In less than a day a thing that runs for some
 * hours takes at most its day's charge: a lamp of 5 h costs the same whether the night has 10 h or 24.
 */
export function chargeOver(day: Day, hours: number, trace?: Trace): number {
  if (hours >= 24 || day.parts.length === 0)
    return run(chargeOverTime, { Q: day.dailyUse, t: hours, t_day: 24 }, trace);
  const total = day.parts.reduce(
    (sum, part) => sum + part.chargeAh * Math.min(1, hours / Math.max(part.hours, dust)),
    0,
  );
  trace?.lookup({
    name: 'chargeOverTime',
    says: `what each load takes within ${Math.round(hours * 10) / 10} h`,
    value: total,
    unit: 'Ah',
    source: 'sum of the loads',
  });
  return total;
}

/** The average current (A) of all that runs at once: what has no hours of its own is on throughout. */
export const meanwhileA = (use: Use, values: Values, trace?: Trace): number =>
  run(averageCurrent, { Q: dailyUseAh({ ...use, doAllRunOn: true }, values, trace), t_day: 24 }, trace);

/** What that takes for granted. */
export const meanwhileAssumptions = (use: Use): Assumption[] => useAssumptions({ ...use, doAllRunOn: true });
