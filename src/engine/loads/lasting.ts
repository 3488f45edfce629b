import { run } from '#rule/rule.ts';
import type { Assumption } from '../assumption.ts';
import type { Bank } from '../battery/bank.ts';
import { runTime } from '../battery/rules.ts';
import { bankAssumptions, depthFrom, usableCapacityAh } from '../battery/usable.ts';
import { type Explored, explore, taken } from '../explore.ts';
import { remembered } from '../remembered.ts';
import { type Clock, currentOver, meanAirC } from './by-clock.ts';
import { dayOf, type Use, useAssumptions } from './model.ts';

/** A bank, what runs on it, and what bears on both. */
export interface Lasting {
  readonly bank: Bank;
  readonly use: Use;
  /** Share used as the person said it, %. */
  readonly depthPercent?: number;
  /** Of the battery, °C. */
  readonly temperatureC?: number;
  /** How full it is, %, where that is no more than likely; it goes before the bank's own. */
  readonly level?: Assumption;
  /** From when on, where it is known how it draws by the hour; absent: the whole day's average counts. */
  readonly clock?: Omit<Clock, 'meanC'>;
  /** Instead of the bank's own: a starter battery may go less deep. */
  readonly assumptions?: readonly Assumption[];
}

/**
 * How long (h) a bank lasts from its state of charge with nothing coming in, its usable capacity (Ah) and a
 * day's use (Ah), and the biggest single draw (A): the closed form, with ranges. The rate counts at the running currents, the time at the average.
 */
export function exploreRunTime(
  input: Lasting,
): Explored<'runTime' | 'usableCapacity' | 'dailyUse'> & { readonly peakA: number } {
  const { bank, use } = input;
  // From 60 % a battery with half of its charge to use has 10 % of it left to use.
  const ofUse = useAssumptions(use);
  const assumptions = [
    ...(input.assumptions ?? bankAssumptions(bank, input.depthPercent)),
    ...ofUse,
    ...(input.level ? [input.level] : []),
  ];
  const dayFor = remembered([...ofUse.map(a => a.name), 'ambientC'], (values, trace) =>
    dayOf(use, values, trace),
  );
  let peakA = 0;
  const explored = explore<'runTime' | 'usableCapacity' | 'dailyUse'>(
    assumptions,
    'runTime',
    (values, trace) => {
      const day = dayFor(values, trace);
      const { dailyUse, currentA } = day;
      if (trace) peakA = day.peakA;
      const percent = input.level ? taken(values, input.level.name) : (bank.stateOfChargePercent ?? 100);
      const depthOfDischarge = depthFrom(bank, taken(values, 'depthOfDischarge'), percent);
      const usableCapacity = usableCapacityAh(
        { bank, currentA, temperatureC: input.temperatureC },
        { ...values, depthOfDischarge },
        trace,
      );
      const clock = input.clock && { ...input.clock, meanC: meanAirC(use, values) };
      const I = currentOver(day, usableCapacity, clock, trace);
      return { runTime: run(runTime, { Q_usable: usableCapacity, I }, trace), usableCapacity, dailyUse };
    },
  );
  const { runTime: lasts, usableCapacity: usable, dailyUse } = explored.figures;
  return {
    ...explored,
    figures: { runTime: atLeastNone(lasts), usableCapacity: atLeastNone(usable), dailyUse },
    peakA,
  };
}

/** Effects of several assumptions add up past nothing left, and less than nothing lasts no time. */
const atLeastNone = <R extends { readonly low: number }>(range: R): R => ({
  ...range,
  low: Math.max(0, range.low),
});
