import type { ChargeChart, Chart, PlanChart } from '#answer/chart/chart.ts';
import { decimals } from '#quantity/round.ts';
import { levelsOf, likelyLine, nightOf } from '../charge-levels.ts';
import type { RequestContext } from '../intent.ts';
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

/** A trip as a picture: the days one by one where those are asked for, else the charge over the hours. */
export function tripChart(
  facts: TripFacts,
  result: TripAnswer,
  setting: RequestContext,
  words: Words,
): Chart {
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

/** The charge hour by hour, made only when somebody looks. */
function chargeOf(
  facts: TripFacts,
  { trip: told, likely, figures, startHour }: TripAnswer,
  setting: RequestContext,
  { title, note }: Words,
): ChargeChart {
  const trip = { ...told, durationH: Math.min(told.durationH, longestH) };
  const start = trip.bank.stateOfChargePercent ?? 100;
  const days = Math.ceil((startHour + trip.durationH) / 24);
  const { flatAtH, lowest } = likely.balance;
  const { startWeekday } = facts;
  const when = (atH: number): string => moment(atH, { startHour, durationH: trip.durationH, startWeekday });
  const turned = setting.before?.() as TripFacts | undefined;
  const before = turned && beforeOf(turned, setting, trip.durationH, startHour);
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
    points: levelsOf(trip),
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
function beforeOf(
  facts: TripFacts,
  { at, mainsV }: RequestContext,
  durationH: number,
  startHour: number,
): ChargeChart['before'] {
  const bank = bankFor(facts);
  if (!bank) return undefined;
  const { points, lowestPercent, lowestAtH, flatAtH } = likelyLine(tripOf(facts, bank, at, mainsV));
  const flat =
    flatAtH === undefined
      ? undefined
      : moment(flatAtH, { startHour, durationH, startWeekday: facts.startWeekday });
  return {
    points: points.filter(({ atH }) => atH <= durationH),
    mark: { atH: flatAtH ?? lowestAtH, percent: flat === undefined ? lowestPercent : 0 },
    says: flat === undefined ? `lowest ${decimals(lowestPercent, 0)} %` : `flat, ${flat}`,
  };
}
