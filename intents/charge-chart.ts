import type { Chart } from '#answer/chart/chart.ts';
import { explore } from '#engine/explore.ts';
import type { BalanceHour } from '#engine/trip/balance.ts';
import { simulate, startOf, type Trip, tripAssumptions } from '#engine/trip/model.ts';

const weekdays = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'] as const;
const held = (percent: number): number => Math.min(100, Math.max(0, percent));
/** Longest stretch drawn, h. */
const longestH = 14 * 24;

/**
 * The battery's charge hour by hour as a picture: the likely line, and the band that the assumptions leave,
 * from the same simulation as the answer. Made only when somebody looks: it runs the trip some 25 times.
 */
export function chargeChart(
  told: Trip,
  words: { readonly title: string; readonly note: string },
  startWeekday?: number,
): Chart {
  const trip = { ...told, durationH: Math.min(told.durationH, longestH) };
  const assumptions = tripAssumptions(trip);
  const values = Object.fromEntries(assumptions.map(a => [a.name, a.value]));
  const hours: number[] = [];
  const explored = explore<string>(assumptions, '0', current => {
    const row: Record<string, number> = {};
    let n = 0;
    const at: BalanceHour[] = [];
    const { capacityAh } = simulate(trip, current, undefined, hour => at.push(hour));
    for (const hour of at) {
      if (hours.length <= n) hours.push(hour.atH);
      row[n++] = (100 * hour.chargeAh) / capacityAh;
    }
    return row;
  });
  const start = trip.bank.stateOfChargePercent ?? 100;
  const { margin, lowestCharge } = simulate(trip, values);
  const startHour = startOf(trip);
  const days = Math.ceil((startHour + trip.durationH) / 24) + 1;
  return {
    kind: 'charge',
    ...words,
    startHour,
    dayNames: Array.from({ length: days }, (_, day) =>
      startWeekday === undefined ? `day ${day + 1}` : (weekdays[(startWeekday + day) % 7] as string),
    ),
    points: [
      { atH: 0, percent: start, lowPercent: start, highPercent: start },
      ...hours.map((atH, n) => {
        const range = explored.figures[n]!;
        return {
          atH,
          percent: held(range.value),
          lowPercent: held(range.low),
          highPercent: held(range.high),
        };
      }),
    ],
    limitPercent: held(lowestCharge - margin),
  };
}
