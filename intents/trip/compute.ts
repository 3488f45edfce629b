import { present } from '#basics/present.ts';
import type { Bank } from '#engine/battery/bank.ts';
import { type Explored, explore, likelyOf } from '#engine/explore.ts';
import type { BalanceHour } from '#engine/trip/balance.ts';
import { accountByDay, type DayReport, reportByDay } from '#engine/trip/by-day.ts';
import { simulate, startOf, type Trip, type TripResult, tripAssumptions } from '#engine/trip/model.ts';
import { mainsNightH, type TripDay } from '#engine/trip/plan.ts';
import { adverseValues, leastDrivingH, smallestBatteryAh, smallestPanelW } from '#engine/trip/search.ts';
import type { TripDriving, TripPlug } from '#engine/trip/sources.ts';
import type { TripSun } from '#engine/trip/suns.ts';
import type { Range } from '#quantity/range.ts';
import type { Facts, PlannedDay } from '#rig/rig.ts';
import { whereItStands } from '../battery-air.ts';
import { bankFor } from '../learned.ts';
import { levelByVolts } from '../level-by-volts.ts';
import { panelsW, sunOf, whereOf } from '../sun.ts';
import { useOf } from '../use.ts';

/** What is told of a trip; the battery is there. */
export type TripFacts = Facts & { readonly batteries: NonNullable<Facts['batteries']> };

type TripKey = 'lowestCharge' | 'endCharge' | 'margin' | 'dailyUse' | 'dailySun' | 'onOffer';

export interface TripAnswer extends Explored<TripKey> {
  readonly trip: Trip;
  readonly bank: Bank;
  /** The likely run. */
  readonly likely: TripResult;
  readonly startHour: number;
  /** The likely run, a day at a time. */
  readonly days: readonly DayReport[];
  readonly isDurationAssumed: boolean;
  /** What would make it last, or surely last (on the bad side of the assumptions): searched on the same model. */
  readonly remedies: (isSure: boolean) => {
    readonly batteryAh?: number;
    readonly panelW?: number;
    readonly drivingH?: number;
  };
}

/** Time taken for a trip, where nobody said, h. */
const usualH = 72;
/** Longest time that is worked out, h: by then every day is like the one before. */
export const longestH = 28 * 24;

function tripSun(facts: TripFacts, voltageV: number, at: Date): TripSun | undefined {
  // "No sun" of an earlier message gives way to a yield told later.
  const isTold = facts.solarAhPerDay !== undefined || facts.solarWhPerDay !== undefined;
  const isOut = !isTold && facts.without?.some(w => w === 'solar' || w === 'charging');
  const powerW = panelsW(facts);
  const { solarAhPerDay, solarWhPerDay } = facts;
  const ahPerDay = solarAhPerDay ?? (solarWhPerDay === undefined ? undefined : solarWhPerDay / voltageV);
  if (isOut || (powerW === undefined && ahPerDay === undefined)) return undefined;
  return { powerW, ahPerDay, skyLastDays: facts.skyLastDays, sun: sunOf(facts, at) };
}

function drivingOf(facts: TripFacts): TripDriving | undefined {
  if (facts.without?.some(w => w === 'driving' || w === 'charging')) return undefined;
  const { drivingHoursPerDay: hoursPerDay, drivingPlanH } = facts;
  if (hoursPerDay === undefined && drivingPlanH === undefined) return undefined;
  const chargers = facts.chargers?.filter(c => c.kind === 'dcdc' || c.kind === 'isolator') ?? [];
  return {
    hoursPerDay,
    charger: chargers.find(c => c.currentA !== undefined) ?? chargers[0],
    alternator: facts.alternator,
  };
}

/** The days as told: driving, sky, generator and mains, first day first; undefined where nobody told any. */
function daysOf(facts: Facts): readonly TripDay[] | undefined {
  const { days = [], drivingPlanH = [], without = [] } = facts;
  const length = Math.max(days.length, drivingPlanH.length);
  if (length === 0) return undefined;
  const isStill = without.some(w => w === 'driving' || w === 'charging');
  const isQuiet = without.some(w => w === 'generator' || w === 'charging');
  const isOffGrid = without.some(w => w === 'mains' || w === 'charging');
  const mainsH = (told: PlannedDay['mainsH']): number | undefined => (told === true ? mainsNightH : told);
  return Array.from({ length }, (_, i) => ({
    drivingH: isStill ? 0 : drivingPlanH[i],
    sky: days[i]?.sky,
    generatorH: isQuiet ? 0 : days[i]?.generatorH,
    mainsH: isOffGrid ? 0 : mainsH(days[i]?.mainsH),
  }));
}

/** What charges on a generator and on mains: a mains charger, of the rating told. */
function plugOf({ chargers = [] }: Facts, days: readonly TripDay[] = []): TripPlug {
  const isOnGenerator = days.some(day => (day.generatorH ?? 0) > 0);
  return {
    charger:
      chargers.find(c => c.kind === 'mains') ??
      chargers.find(c => c.kind === 'generator' && c.currentA !== undefined),
    generatorW: isOnGenerator ? chargers.find(c => c.kind === 'generator')?.powerW : undefined,
  };
}

/** The trip that the facts describe. */
export function tripOf(
  facts: TripFacts,
  bank: Bank,
  at: Date,
  mainsV?: number,
  words: readonly string[] = [],
): Trip {
  const driving = drivingOf(facts);
  const days = daysOf(facts);
  const trip: Trip = {
    bank,
    depthPercent: facts.depthOfDischargePercent,
    use: useOf(facts, bank.voltageV, mainsV, at),
    sun: tripSun(facts, bank.voltageV, at),
    driving,
    days,
    plug: plugOf(facts, days),
    stand: whereItStands(words),
    where: { ...whereOf(facts), month: facts.month ?? at.getUTCMonth() + 1 },
    durationH: Math.min(longestH, facts.durationH ?? usualH),
    startHour: facts.startHour,
  };
  // A plan goes to the end of its last day.
  if (!days || (facts.durationH !== undefined && facts.durationH !== days.length * 24)) return trip;
  return { ...trip, durationH: Math.min(longestH, days.length * 24 - startOf(trip)) };
}

/**
 * Figures above nought are explored by factors, but points of charge add and take away: far from nought the two
 * are the same, so that is where they are explored.
 */
const away = 1e5;
const back = (range: Range): Range => {
  const near = (x: number): number => Math.round((x - away) * 1e6) / 1e6;
  return { value: near(range.value), low: near(range.low), high: near(range.high) };
};
/** Between empty and full. */
const within = (range: Range): Range => {
  const held = (x: number): number => Math.min(100, Math.max(0, x));
  return { value: held(range.value), low: held(range.low), high: held(range.high) };
};

/** Lowest and last charge (%), what fills and empties it, over the hours of a trip. */
export function computeTrip(
  facts: TripFacts,
  at: Date,
  mainsV?: number,
  words: readonly string[] = [],
): TripAnswer {
  const told = present(bankFor(facts));
  const level = levelByVolts(facts, told);
  const bank: Bank = level ? { ...told, stateOfChargePercent: level.value } : told;
  const trip: Trip = { ...tripOf(facts, bank, at, mainsV, words), level };
  const assumptions = tripAssumptions(trip);
  const likelyValues = likelyOf(assumptions);
  const margins: number[] = [];
  const explored = explore<TripKey>(assumptions, 'margin', (values, trace) => {
    const { lowestCharge, endCharge, margin, dailyUse, dailySun, onOffer } = simulate(trip, values, trace);
    margins.push(margin);
    return {
      lowestCharge: lowestCharge + away,
      endCharge: endCharge + away,
      margin: margin + away,
      dailyUse,
      dailySun,
      onOffer,
    };
  });
  const hours: BalanceHour[] = [];
  const likely = simulate(trip, likelyValues, undefined, hour => hours.push(hour));
  const isOut = (source: 'solar' | 'driving'): boolean =>
    !!facts.without?.some(w => w === source || w === 'charging');
  return {
    ...explored,
    figures: {
      ...explored.figures,
      lowestCharge: within(back(explored.figures.lowestCharge)),
      endCharge: within(back(explored.figures.endCharge)),
      margin: back(explored.figures.margin),
    },
    trip,
    bank,
    likely,
    startHour: startOf(trip),
    days: reportByDay(trip, accountByDay(hours, startOf(trip), likely.capacityAh)),
    isDurationAssumed: facts.durationH === undefined && !trip.days,
    remedies: isSure => {
      const values = isSure ? adverseValues(trip, assumptions, margins) : likelyValues;
      return {
        batteryAh: smallestBatteryAh(trip, values),
        panelW: isOut('solar') ? undefined : smallestPanelW(trip, values),
        drivingH:
          isOut('driving') || trip.days?.some(day => day.drivingH !== undefined)
            ? undefined
            : leastDrivingH(trip, values),
      };
    },
  };
}
