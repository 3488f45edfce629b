import { present } from '#basics/present.ts';
import { explore, likelyOf } from '#engine/explore.ts';
import { dayLengthOf } from '#engine/solar/sun.ts';
import type { BalanceHour } from '#engine/trip/balance.ts';
import { simulate, type Trip, tripAssumptions } from '#engine/trip/model.ts';

const held = (percent: number): number => Math.min(100, Math.max(0, percent));
const startPercent = ({ bank }: Trip): number => bank.stateOfChargePercent ?? 100;

/**
 * The charge of a trip hour by hour, %: the likely line, and the band that the assumptions leave, from the same
 * simulation as the answer. Only for a picture: it runs the trip some 25 times.
 */
export function levelsOf(trip: Trip) {
  const hours: number[] = [];
  const explored = explore<string>(tripAssumptions(trip), '0', values => {
    const row: Record<string, number> = {};
    const rows: BalanceHour[] = [];
    const { capacityAh } = simulate(trip, values, undefined, hour => rows.push(hour));
    rows.forEach((hour, n) => {
      hours[n] ??= hour.atH;
      row[n] = (100 * hour.chargeAh) / capacityAh;
    });
    return row;
  });
  const start = startPercent(trip);
  return [
    { atH: 0, percent: start, lowPercent: start, highPercent: start },
    ...hours.map((atH, n) => {
      const { value, low, high } = present(explored.figures[n]);
      return { atH, percent: held(value), lowPercent: held(low), highPercent: held(high) };
    }),
  ];
}

/** The likely line alone, %, how low it goes and when, and when it is flat, if ever. */
export function likelyLine(trip: Trip) {
  const values = likelyOf(tripAssumptions(trip));
  const rows: BalanceHour[] = [];
  const { capacityAh, lowestCharge, balance } = simulate(trip, values, undefined, hour => rows.push(hour));
  const points = rows.map(({ atH, chargeAh }) => ({ atH, percent: held((100 * chargeAh) / capacityAh) }));
  return {
    points: [{ atH: 0, percent: startPercent(trip) }, ...points],
    lowestPercent: held(lowestCharge),
    lowestAtH: balance.lowest.atH,
    flatAtH: balance.flatAtH,
  };
}

/** Dusk and dawn, hours of the day: by place and month, else as on any day. */
export function nightOf({ where }: Trip): { readonly nightFrom: number; readonly nightTo: number } {
  const { latitudeDeg, month } = where ?? {};
  const daylightH = latitudeDeg === undefined || month === undefined ? 12 : dayLengthOf(latitudeDeg, month);
  return { nightFrom: 12 + daylightH / 2, nightTo: 12 - daylightH / 2 };
}
