import type { ChargeChart, Chart, PlanChart } from '#answer/chart/chart.ts';
import { explore } from '#engine/explore.ts';
import { dayLengthOf } from '#engine/solar/sun.ts';
import type { BalanceHour } from '#engine/trip/balance.ts';
import { simulate, startOf, type Trip, tripAssumptions } from '#engine/trip/model.ts';
import { decimals } from '#quantity/round.ts';
import type { Setting } from '../intent.ts';
import { bankFor } from '../learned.ts';
import { type TripAnswer, type TripFacts, tripOf } from './compute.ts';
import { dayName, moment } from './when.ts';

/** Title and note, and whether the days are asked for one by one. */
interface Words {
  readonly title: string;
  readonly note: string;
  readonly isByDay: boolean;
}

const held = (percent: number): number => Math.min(100, Math.max(0, percent));
/** Longest stretch drawn, h, and days shown one by one. */
const longestH = 14 * 24;
const mostDays = 14;

const likelyOf = (trip: Trip) => Object.fromEntries(tripAssumptions(trip).map(a => [a.name, a.value]));

/** Dusk and dawn, hours of the day: by place and month, else as on any day. */
function nightOf({ where }: Trip): { readonly nightFrom: number; readonly nightTo: number } {
  const { latitudeDeg, month } = where ?? {};
  const daylightH = latitudeDeg === undefined || month === undefined ? 12 : dayLengthOf(latitudeDeg, month);
  return { nightFrom: 12 + daylightH / 2, nightTo: 12 - daylightH / 2 };
}

/** A trip as a picture: the days one by one where those are asked for, else the charge over the hours. */
export function tripChart(facts: TripFacts, result: TripAnswer, setting: Setting, words: Words): Chart {
  return words.isByDay ? planOf(facts, result, words) : chargeOf(facts, result, setting, words);
}

function planOf(facts: TripFacts, { days, figures }: TripAnswer, { title, note }: Words): PlanChart {
  const shown = days.slice(0, mostDays);
  return {
    kind: 'plan',
    title,
    note,
    unit: 'Ah',
    limitPercent: held(figures.lowestCharge.value - figures.margin.value),
    days: shown.map(day => ({
      name: dayName(day.day, facts.startWeekday),
      outAh: day.useAh,
      sunAh: day.sunAh,
      drivingAh: day.drivingAh,
      pluggedAh: day.pluggedAh,
      lowestPercent: held(day.lowestPercent),
      endPercent: held(day.endPercent),
    })),
    ...(days.length > shown.length && { cut: `${days.length - shown.length} more days not drawn` }),
  };
}

/**
 * The charge hour by hour: the likely line, and the band that the assumptions leave, from the same simulation as the
 * answer. Made only when somebody looks: it runs the trip some 25 times.
 */
function chargeOf(
  facts: TripFacts,
  { trip: told, likely, figures }: TripAnswer,
  setting: Setting,
  { title, note }: Words,
): ChargeChart {
  const trip = { ...told, durationH: Math.min(told.durationH, longestH) };
  const hours: number[] = [];
  const explored = explore<string>(tripAssumptions(trip), '0', current => {
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
  const startHour = startOf(trip);
  const days = Math.ceil((startHour + trip.durationH) / 24);
  const { flatAtH, lowest } = likely.balance;
  const when = (atH: number): string => moment(atH, startHour, facts.startWeekday);
  const before = setting.before && beforeOf(setting.before as TripFacts, setting, trip.durationH);
  const isCut = (flatAtH ?? lowest.atH) > trip.durationH;
  return {
    kind: 'charge',
    title,
    note,
    clock: {
      startHour,
      dayNames: Array.from({ length: days }, (_, day) =>
        facts.startWeekday === undefined ? `day ${day + 1}` : dayName(day, facts.startWeekday),
      ),
      ...nightOf(trip),
    },
    points: [
      { atH: 0, percent: start, lowPercent: start, highPercent: start },
      ...hours.map((atH, n) => {
        const { value, low, high } = explored.figures[n]!;
        return { atH, percent: held(value), lowPercent: held(low), highPercent: held(high) };
      }),
    ],
    limitPercent: held(figures.lowestCharge.value - figures.margin.value),
    mark: isCut
      ? { atH: 0, percent: start, says: `starts at ${decimals(start, 0)} %` }
      : flatAtH === undefined
        ? {
            atH: lowest.atH,
            percent: held(figures.lowestCharge.value),
            says: `lowest ${decimals(figures.lowestCharge.value, 0)} %, ${when(lowest.atH)}`,
          }
        : { atH: flatAtH, percent: 0, says: `flat, ${when(flatAtH)}` },
    ...(before && { before }),
    ...(told.durationH > longestH && { cut: `the first ${longestH / 24} days are drawn` }),
  };
}

/** The likely line of the trip before a "what if", and how low it went. */
function beforeOf(facts: TripFacts, { at, mainsV }: Setting, durationH: number): ChargeChart['before'] {
  const bank = bankFor(facts);
  if (!bank) return undefined;
  const trip = tripOf(facts, bank, at, mainsV);
  const points: { atH: number; percent: number }[] = [
    { atH: 0, percent: trip.bank.stateOfChargePercent ?? 100 },
  ];
  const rows: BalanceHour[] = [];
  const { capacityAh, lowestCharge, balance } = simulate(trip, likelyOf(trip), undefined, hour =>
    rows.push(hour),
  );
  for (const hour of rows)
    if (hour.atH <= durationH)
      points.push({ atH: hour.atH, percent: held((100 * hour.chargeAh) / capacityAh) });
  const flat =
    balance.flatAtH === undefined ? undefined : moment(balance.flatAtH, startOf(trip), facts.startWeekday);
  const mark = {
    atH: balance.flatAtH ?? balance.lowest.atH,
    percent: flat === undefined ? held(lowestCharge) : 0,
  };
  return {
    points,
    mark,
    says: flat === undefined ? `lowest ${decimals(held(lowestCharge), 0)} %` : `flat, ${flat}`,
  };
}
