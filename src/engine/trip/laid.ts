import { present } from '#basics/present.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, AssumptionName, Values } from '../assumption.ts';
import { type Day, dayOf, type LoadUse, useAssumptions } from '../loads/model.ts';
import { remembered } from '../remembered.ts';
import type { DailyYield } from '../solar/model.ts';
import { type Plan, planOf } from './plan.ts';
import { dayHours, useByHour } from './profile.ts';
import { drivingA, drivingAssumptions, plugAssumptions, pluggedA } from './sources.ts';
import { type Skies, skiesOf, yieldsOf } from './suns.ts';
import { isDriven, isOnMains, isPlugged, startOf, type Trip } from './trip.ts';

/** What of a trip stays the same whatever is assumed: laid out once, however often it is run. */
export interface Laid {
  readonly plan: Plan;
  readonly use: readonly Assumption[];
  readonly skies?: Skies;
  readonly isDriven: boolean;
  readonly isPlugged: boolean;
  /** Parts that hang on a few of the values each. */
  readonly dayOf: (
    values: Values,
    trace?: Trace,
  ) => {
    readonly day: Day;
    readonly byHour: readonly number[];
    /** The same while the mains carry what runs on mains. */
    readonly onMainsByHour: readonly number[];
  };
  readonly yields: (values: Values) => readonly DailyYield[];
  readonly drivingA: (values: Values, trace?: Trace) => number;
  /** On a generator, and on mains. */
  readonly pluggedA: (values: Values, trace?: Trace) => number;
  readonly mainsA: (values: Values) => number;
}

const namesOf = (list: readonly Assumption[]): AssumptionName[] => list.map(a => a.name);
const nothing = (): number => 0;
/** What a battery still carries on a hook-up: appliances for mains run on that. */
const isOfBattery = ({ load }: LoadUse): boolean => load.supply !== 'ac';

/** The current on offer while driving, where there is any. */
function drivingOf(trip: Trip): Pick<Laid, 'isDriven' | 'drivingA'> {
  const { driving, bank } = trip;
  if (!isDriven(trip)) return { isDriven: false, drivingA: nothing };
  const names = namesOf(drivingAssumptions(driving, bank));
  return {
    isDriven: true,
    drivingA: remembered(names, (values, trace) => drivingA(driving, bank, values, trace)),
  };
}

const laidOut = new WeakMap<Trip, Laid>();

/** A trip laid out; once, however often it is asked for. */
export function laidOf(trip: Trip): Laid {
  const known = laidOut.get(trip);
  if (known) return known;
  const { days: told = [], sun, durationH } = trip;
  const days = Math.max(1, Math.ceil((startOf(trip) + durationH) / dayHours));
  // The sun of a trip varies with its days, the more the fewer they are.
  const overDays = Math.max(1, durationH / dayHours);
  const skies =
    sun &&
    skiesOf(
      { ...sun, sun: { ...sun.sun, overDays } },
      trip.bank.voltageV,
      told.map(day => day.sky),
    );
  const { use, bank, plug = {} } = trip;
  const useAssumed = useAssumptions(use);
  const plugs = isPlugged(trip);
  const isMains = isOnMains(trip);
  const plugNames = plugs ? namesOf(plugAssumptions(plug, bank)) : [];
  const laid: Laid = {
    plan: planOf(days, told, trip.driving?.hoursPerDay ?? 0, day => skies?.placeOf(told[day]?.sky) ?? 0),
    use: useAssumed,
    skies,
    ...drivingOf(trip),
    isPlugged: plugs,
    dayOf: remembered([...namesOf(useAssumed), 'ambientC'], (values, trace) => {
      const day = dayOf(use, values, trace);
      const meanC = use.ambientC ?? values.ambientC ?? 25;
      const byHour = useByHour(day, meanC);
      return { day, byHour, onMainsByHour: isMains ? useByHour(day, meanC, isOfBattery) : byHour };
    }),
    yields: remembered(skies ? namesOf(skies.assumptions) : [], values =>
      skies ? yieldsOf(skies, values) : [],
    ),
    pluggedA: plugs
      ? remembered(plugNames, (values, trace) => pluggedA(plug, bank, values, { trace }))
      : nothing,
    mainsA: isMains
      ? remembered(plugNames, values => pluggedA(plug, bank, values, { isOnMains: true }))
      : nothing,
  };
  laidOut.set(trip, laid);
  return laid;
}

/** A trip with another battery, another panel or other driving: what that leaves as it was isn't laid out again. */
export function varied(
  trip: Trip,
  change: Partial<Pick<Trip, 'bank' | 'sun'>> | Pick<Trip, 'driving' | 'days'>,
): Trip {
  const other = { ...trip, ...change };
  if ('sun' in change && !trip.sun) return other;
  const laid = laidOf(trip);
  const days = other.days ?? [];
  const skyOf = (day: number): number => present(laid.plan.skies[day]);
  laidOut.set(other, {
    ...laid,
    ...('driving' in change && {
      plan: planOf(laid.plan.days, days, other.driving?.hoursPerDay ?? 0, skyOf),
      ...drivingOf(other),
    }),
  });
  return other;
}
