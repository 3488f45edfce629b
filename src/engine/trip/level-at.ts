import { present } from '#basics/present.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, Values } from '../assumption.ts';
import type { Bank } from '../battery/bank.ts';
import { storageAssumptions } from '../battery/charging.ts';
import { ageAssumption } from '../battery/usable.ts';
import { type Explored, explore, taken } from '../explore.ts';
import { eachHour } from '../hours.ts';
import { dayOf, type Use, useAssumptions } from '../loads/model.ts';
import { hourlyShares } from '../solar/hourly.ts';
import { dailyYield, type SolarCase, solarAssumptions, storedOf } from '../solar/model.ts';
import { useByHour } from './profile.ts';
import { levelLater } from './rules.ts';

/** A battery now, and what empties and fills it until a time. */
export interface Ahead {
  readonly bank: Bank;
  readonly use: Use;
  /** How full it is now, %. */
  readonly level: Assumption;
  readonly durationH: number;
  /** Hour of the day that it is now, by the sun. */
  readonly clockH: number;
  /** The panels, where there are any. */
  readonly sun?: SolarCase & { readonly powerW: number };
  /** What flows in all the while, A, in the place of use and sun. */
  readonly netA?: number;
}

/** Points of charge add and take away: far from nought factors and sums are the same (`explore`). */
const away = 1e5;

/** How full (%) a battery will be after some hours: from hour to hour, never above full or below empty. */
export function exploreLevel(ahead: Ahead): Explored<'stateOfCharge' | 'used' | 'sunIn'> {
  const { bank, use, level, durationH, clockH, sun, netA } = ahead;
  const panel = sun && { ...sun, nominalVoltageV: bank.voltageV, chemistry: bank.chemistry };
  const shares = hourlyShares(sun?.latitudeDeg ?? 0, sun?.month ?? 3);
  const assumptions = [
    level,
    ageAssumption(bank),
    ...(netA === undefined ? useAssumptions(use) : []),
    ...(panel ? [...solarAssumptions(panel), ...storageAssumptions(bank.chemistry)] : []),
  ];
  const explored = explore<'stateOfCharge' | 'used' | 'sunIn'>(
    assumptions,
    'stateOfCharge',
    (values, trace) => {
      const C = bank.capacityAh * taken(values, 'age');
      const flow = netA === undefined ? byHour(values, trace) : undefined;
      let percent = taken(values, level.name);
      let [used, sunIn] = [0, 0];
      eachHour(clockH, durationH, (hour, span) => {
        const out = (flow ? present(flow.use[hour]) : -Math.min(0, present(netA))) * span;
        const into = (flow ? present(flow.sun[hour]) : Math.max(0, present(netA))) * span;
        percent = Math.min(100, Math.max(0, percent + (100 * (into - out)) / C));
        used += out;
        sunIn += into;
      });
      if (trace) run(levelLater, { s: taken(values, level.name) / 100, Q_in: sunIn, Q_out: used, C }, trace);
      return { stateOfCharge: percent + away, used, sunIn };
    },
  );
  const { stateOfCharge: s } = explored.figures;
  const within = (x: number): number => Math.min(100, Math.max(0, x - away));
  return {
    ...explored,
    figures: {
      ...explored.figures,
      stateOfCharge: { value: within(s.value), low: within(s.low), high: within(s.high) },
    },
  };

  function byHour(values: Values, trace?: Trace) {
    const day = dayOf(use, values, trace);
    const daily = panel ? storedOf(dailyYield(panel, values, trace).dailyYieldAh, panel, values, trace) : 0;
    return {
      use: useByHour(day, use.ambientC ?? values.ambientC ?? 25),
      sun: shares.map(share => share * daily),
    };
  }
}
