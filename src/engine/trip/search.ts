import { present } from '#basics/present.ts';
import type { Assumption, Values } from '../assumption.ts';
import { likelyOf } from '../explore.ts';
import { nearEnough } from '../grain.ts';
import { varied } from './laid.ts';
import { simulate } from './model.ts';
import type { Trip } from './trip.ts';

/**
 * Values on the bad side of the assumptions, each moved by its share of the whole spread, so that together they
 * give about the low end of the range (root sum of squares, as `explore` combines them).
 * @param margins of the likely run, and then of each assumption's low and high end where that differs, as `explore` ran them; by default run anew
 */
export function adverseValues(
  trip: Trip,
  assumptions: readonly Assumption[],
  margins?: readonly number[],
): Values {
  const likely: Values = likelyOf(assumptions);
  const at = (values: Values): number => simulate(trip, values).margin;
  let n = 0;
  const next = (values: () => Values): number => margins?.[n++] ?? at(values());
  const margin = next(() => likely);
  const moves = assumptions.map(a => {
    const [low, high] = [a.low, a.high].map(end =>
      end === a.value ? margin : next(() => ({ ...likely, [a.name]: end })),
    );
    const end = present(low) < present(high) ? a.low : a.high;
    return {
      name: a.name,
      value: a.value,
      end,
      loss: Math.max(0, margin - Math.min(present(low), present(high))),
    };
  });
  const whole = Math.sqrt(moves.reduce((sum, m) => sum + m.loss ** 2, 0));
  if (whole === 0) return likely;
  return Object.fromEntries(moves.map(m => [m.name, m.value + ((m.end - m.value) * m.loss) / whole]));
}

/** Ends of the searches: beyond them nobody would go. */
const most = { batteryTimes: 40, panelW: 3000, drivingH: 14 } as const;

/** Where a search starts, as a share of its end. */
const least = 1e-3;

/**
 * Smallest input for which the trip stays above its limit: bisection on the trip itself by equal factors, to
 * half a per cent, rounded to the side that lasts. Undefined where even the most isn't enough; 0 where nothing is needed.
 * @param canBeNone the trip can be reckoned without it: a battery there must be
 */
function smallest(
  greatest: number,
  values: Values,
  change: (input: number) => Trip,
  canBeNone = true,
): number | undefined {
  const lasts = (input: number): boolean =>
    simulate(change(input), values, undefined, undefined, true).margin >= 0;
  let [from, to] = [greatest * least, greatest];
  if (lasts(from)) return canBeNone && lasts(0) ? 0 : from;
  if (!lasts(to)) return undefined;
  while (to / from > 1 + nearEnough) {
    const middle = Math.sqrt(from * to);
    if (lasts(middle)) to = middle;
    else from = middle;
  }
  return to;
}

/** Smallest capacity (Ah) of the same kind of battery that lasts the trip. */
export function smallestBatteryAh(trip: Trip, values: Values): number | undefined {
  const { bank } = trip;
  return smallest(
    bank.capacityAh * most.batteryTimes,
    values,
    capacityAh => varied(trip, { bank: { ...bank, capacityAh } }),
    false,
  );
}

/** Smallest rating (W) of all panels together that makes the trip last, under the trip's own sun. */
export function smallestPanelW(trip: Trip, values: Values): number | undefined {
  const sun = trip.sun?.sun ?? {};
  const sunny: Trip = { ...trip, sun: { ...trip.sun, sun, powerW: most.panelW, ahPerDay: undefined } };
  return smallest(most.panelW, values, powerW => varied(sunny, { sun: { ...present(sunny.sun), powerW } }));
}

/** Fewest hours of driving a day that make the trip last. */
export function leastDrivingH(trip: Trip, values: Values): number | undefined {
  const days = trip.days?.map(({ drivingH: _, ...day }) => day);
  return smallest(most.drivingH, values, hoursPerDay =>
    varied(trip, { days, driving: { ...trip.driving, hoursPerDay } }),
  );
}
