import type { Assumption } from '../assumption.ts';
import type { Bank } from '../battery/bank.ts';
import type { Stand } from '../battery/temperature.ts';
import type { Use } from '../loads/model.ts';
import type { Where } from '../solar/air.ts';
import type { TripDay } from './plan.ts';
import type { TripDriving, TripPlug } from './sources.ts';
import type { TripSun } from './suns.ts';
import { arrivalHour, drivingFromHour } from './tables.ts';

/** A trip: the battery, what runs on it, what fills it, and for how long. */
export interface Trip {
  readonly bank: Bank;
  /** How full it is at the start, %, where that is no more than likely; it goes before the bank's own. */
  readonly level?: Assumption;
  /** Share the person will use, %. */
  readonly depthPercent?: number;
  readonly use: Use;
  readonly sun?: TripSun;
  readonly driving?: TripDriving;
  /** The days as told, first day first; what a day leaves open is as on every day. */
  readonly days?: readonly TripDay[];
  /** What charges on the days that have a generator or mains. */
  readonly plug?: TripPlug;
  /** Where it goes, for the battery's temperature; by default where the sun is. */
  readonly where?: Where;
  readonly stand?: Stand;
  readonly durationH: number;
  /** Hour of the first day it starts at; default 4 pm, or with the first drive of a plan. */
  readonly startHour?: number;
}

/** Whether there is any driving. */
export const isDriven = ({ driving, days }: Trip): boolean =>
  days?.some(day => day.drivingH !== undefined)
    ? days.some(day => (day.drivingH ?? 0) > 0)
    : !!driving?.hoursPerDay;
/** Whether a generator or mains charges on any day. */
export const isPlugged = ({ days }: Trip): boolean =>
  !!days?.some(day => (day.generatorH ?? 0) > 0 || (day.mainsH ?? 0) > 0);

/** Whether it is on mains on any day. */
export const isOnMains = ({ days }: Trip): boolean => !!days?.some(day => (day.mainsH ?? 0) > 0);

/** The hour a trip starts at: as told, else in the morning of a first day whose drive or sky was told, else in the afternoon. */
export function startOf({ startHour, days }: Trip): number {
  const first = days?.[0];
  return startHour ?? (first?.drivingH || first?.sky ? drivingFromHour : arrivalHour);
}
