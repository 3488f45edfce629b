import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, AssumptionName, Values, ValuesToSet } from '../assumption.ts';
import { usualTrip } from '../battery/round-trip.ts';
import { chemistryRow } from '../battery/tables.ts';
import { taken } from '../explore.ts';
import { learnedYield } from '../learn/rules.ts';
import type { Sky, SolarCase } from './case.ts';
import { averagePeakSunHours, clearnessFor } from './climate.ts';
import { panelAzimuth } from './facing.ts';
import { controllerAssumptions, panelAssumptions, systemFactor } from './panel.ts';
import {
  dailyYieldCharge,
  dailyYieldEnergy,
  overcastSunHours,
  panelPower,
  peakSunHoursOf,
  storedCharge,
  sunWhileItShines,
} from './rules.ts';
import { skyClearness, skySunHours, sunHoursAnywhere } from './sky.ts';
import { dayLengthOf } from './sun.ts';
import { tiltedRadiation } from './tilt.ts';

export type { Sky, SolarCase } from './case.ts';
export { hourlyShares } from './hourly.ts';

/** Under full cloud a given figure at or below this is taken to be the cloudy figure already, h. */
const overcastAlreadyH = 2;

const isCutByCloud = (c: SolarCase) => c.sky === 'overcast' && (c.peakSunHours ?? 0) > overcastAlreadyH;

/** Where the sun hours come from: told, from place and month, from a place in the average of its year, or from nothing. */
const sunSource = (c: SolarCase): 'told' | 'month' | 'year' | 'unknown' => {
  if (c.peakSunHours !== undefined) return 'told';
  if (c.latitudeDeg === undefined) return 'unknown';
  return c.month === undefined ? 'year' : 'month';
};

/**
 * Everything that a solar figure takes for granted, each with its span and reason. What the case already
 * states is not among them.
 */
export function solarAssumptions(c: SolarCase): readonly Assumption[] {
  return [...sunAssumptions(c), ...panelAssumptions(c), ...controllerAssumptions(c)];
}

function sunAssumptions(c: SolarCase): Assumption[] {
  const source = sunSource(c);
  const sky = c.sky ?? 'mixed';
  if (source === 'told')
    return isCutByCloud(c)
      ? [
          {
            name: 'overcastShare',
            value: 0.22,
            low: 0.1,
            high: 0.35,
            unit: '',
            why: 'full cloud lets through a tenth to a third',
          },
        ]
      : [];
  if (source === 'unknown')
    return [c.isMonthTold && c.month !== undefined ? sunHoursAnywhere(c.month, sky) : skySunHours[sky]];
  if (source === 'year') return [averagePeakSunHours(c.latitudeDeg as number, c.longitudeDeg, sky)];
  const clearness =
    sky === 'mixed'
      ? clearnessFor(c.latitudeDeg as number, c.longitudeDeg, c.month as number, c.overDays)
      : skyClearness[sky];
  if (c.mount !== 'tilted') return [clearness];
  const value = tiltFor(c.latitudeDeg as number);
  return [
    clearness,
    {
      name: 'panelTilt',
      value,
      low: value - 12,
      high: value + 12,
      unit: '°',
      why: 'angled about as steeply as the latitude',
    },
    panelAzimuth,
  ];
}

/** The usual tilt for the year, °: the latitude, within what a camper's stand does. */
const tiltFor = (latitudeDeg: number) => Math.min(60, Math.max(15, Math.abs(latitudeDeg)));

const clearnessName = (sky: Sky): AssumptionName => (sky === 'mixed' ? 'clearness' : skyClearness[sky].name);

/** The name of the assumption that carries the sun; the sky has its own, so that one trip may know two skies. */
function sunName(c: SolarCase): AssumptionName | undefined {
  const sky: Sky = c.sky ?? 'mixed';
  switch (sunSource(c)) {
    case 'told':
      return isCutByCloud(c) ? 'overcastShare' : undefined;
    case 'month':
      return clearnessName(sky);
    case 'year':
    case 'unknown':
      return skySunHours[sky].name;
  }
}

const needs = new WeakMap<SolarCase, readonly Assumption[]>();

/** What is assumed of a panel and its controller; a case is explored many times, and its list made once. */
function neededOf(c: SolarCase): readonly Assumption[] {
  let needed = needs.get(c);
  if (!needed) {
    needed = [...panelAssumptions(c), ...controllerAssumptions(c)];
    needs.set(c, needed);
  }
  return needed;
}

/** Values as explore moves them; what is missing falls back on its likely value. */
function valuesOf(c: SolarCase, values: Values): Values {
  const sun = sunName(c);
  // Looking up the climate is the dear part, so it is done only where nobody brought it.
  const lacksSun =
    (sun && values[sun] === undefined) || (c.mount === 'tilted' && values.panelTilt === undefined);
  const needed = neededOf(c);
  // Explored, all are there, and nothing is to be made.
  if (!lacksSun && needed.every(a => values[a.name] !== undefined)) return values;
  const likely: ValuesToSet = {};
  for (const a of needed) likely[a.name] = a.value;
  if (lacksSun) for (const a of sunAssumptions(c)) likely[a.name] = a.value;
  return Object.assign(likely, values);
}

/**
 * Peak sun hours in the plane of the panel, h (= kWh/m² a day), shade not yet counted.
 * Monthly mean: a single day may be far off it.
 */
export function peakSunHours(c: SolarCase, values: Values = {}, trace?: Trace): number {
  return sunHours(c, valuesOf(c, values), trace);
}

function sunHours(c: SolarCase, values: Values, trace?: Trace): number {
  switch (sunSource(c)) {
    case 'told': {
      const H = c.peakSunHours as number;
      if (!isCutByCloud(c)) return H;
      return run(overcastSunHours, { H, k_cloud: taken(values, 'overcastShare') }, trace);
    }
    case 'unknown':
    case 'year': {
      const H = taken(values, skySunHours[c.sky ?? 'mixed'].name);
      trace?.lookup({
        name: 'peakSunHours',
        says: 'taken for want of place and month',
        value: H,
        unit: 'h',
        source: 'common practice',
      });
      return H;
    }
    case 'month': {
      const [latitudeDeg, month] = [c.latitudeDeg as number, c.month as number];
      const H = tiltedRadiation(
        {
          latitudeDeg,
          month,
          clearness: taken(values, clearnessName(c.sky ?? 'mixed')),
          tiltDeg: c.mount === 'tilted' ? taken(values, 'panelTilt') : 0,
          awayDeg: values.panelAzimuth ?? 0,
        },
        trace,
      );
      return run(peakSunHoursOf, { H_T: H, G_0: 1 }, trace);
    }
  }
}

/** What energy is divided by for charge, V: a PWM passes amps as they are, and those flow at the battery's volts on charge. */
const countedAtV = (c: SolarCase & { readonly nominalVoltageV: number }, values: Values): number =>
  c.controller === 'pwm' ? (c.blocks ?? 1) * taken(values, 'chargingVoltage') : c.nominalVoltageV;

/** What a panel brings on an average day of the month. */
export interface DailyYield {
  /** h, in the plane of the panel. */
  readonly peakSunHours: number;
  readonly dailyYieldEnergyWh: number;
  /** Ah at the battery's nominal voltage. */
  readonly dailyYieldAh: number;
}

/**
 * Energy and charge that panels of `powerW` (rating, all together) deliver to the battery on an average day.
 * What a full battery can't take is not subtracted here.
 * @param nominalVoltageV 12.0 lead-acid, 12.8 LFP; twice that in a 24 V system
 */
export function dailyYield(
  c: SolarCase & { readonly powerW: number; readonly nominalVoltageV: number },
  values: Values = {},
  trace?: Trace,
): DailyYield {
  const all = valuesOf(c, values);
  const H = sunHours(c, all, trace);
  const f = systemFactor(c, strength(c, H, trace), all, trace);
  const reckoned = run(dailyYieldEnergy, { P: c.powerW, H, f }, trace);
  const percent = c.learned && all.learnedSun;
  const E = percent === undefined ? reckoned : run(learnedYield, { k_s: percent / 100, E: reckoned }, trace);
  const Q = run(dailyYieldCharge, { E, V: countedAtV(c, all) }, trace);
  return { peakSunHours: H, dailyYieldEnergyWh: E, dailyYieldAh: Q };
}

/** A battery that panels charge, by what sizing knows of it: its kind, and its nominal volts. */
type Charged = SolarCase & { readonly nominalVoltageV: number };

/** What the battery makes of a usual charge from the sun: the share of its charge that stays, and its volts meanwhile. */
function chargedBySun(
  c: Charged,
  values: Values,
  trace?: Trace,
): { readonly eta_c: number; readonly V: number } {
  const chemistry = c.chemistry ?? 'agm';
  const { chargeShare, inV } = usualTrip(chemistry, values, undefined, trace);
  return { eta_c: chargeShare, V: (inV * c.nominalVoltageV) / chemistryRow(chemistry).nominalV };
}

/** A day's yield as it flows into the battery, Ah at the volts that it charges at. */
export function flowingAh(made: DailyYield, c: Charged, values: Values = {}): number {
  return c.controller === 'pwm' ? made.dailyYieldAh : made.dailyYieldEnergyWh / chargedBySun(c, values).V;
}

/**
 * What of a day's yield (Ah at the nominal voltage; of a PWM as they flow) can be taken out of the battery again, Ah.
 * Takes the assumptions of `solarAssumptions` and `storageAssumptions`.
 */
export function storedOf(yieldAh: number, c: Charged, values: Values = {}, trace?: Trace): number {
  const { eta_c, V } = chargedBySun(c, values, trace);
  const isAmps = c.controller === 'pwm';
  return run(
    storedCharge,
    { Q: yieldAh, V_0: c.nominalVoltageV, V: isAmps ? c.nominalVoltageV : V, eta_c },
    trace,
  );
}

/**
 * Panel rating that puts back `dailyAh` a day on an average day of the month, W.
 * Takes the assumptions of `solarAssumptions` and `storageAssumptions`. Infinite where the sun doesn't rise.
 */
export function panelPowerFor(
  dailyAh: number,
  c: Charged,
  values: Values = {},
  trace?: Trace,
): { readonly peakSunHours: number; readonly panelPowerW: number } {
  const all = valuesOf(c, values);
  const H = sunHours(c, all, trace);
  const f = systemFactor(c, strength(c, H, trace), all, trace);
  const { eta_c, V } = chargedBySun(c, values, trace);
  const P = run(
    panelPower,
    { Q: dailyAh, V: c.controller === 'pwm' ? countedAtV(c, all) : V, H, f, eta_c },
    trace,
  );
  return { peakSunHours: H, panelPowerW: P };
}

/** What panels of a rating bring at best: in full sun, W at the battery. */
export const bestPowerOf = (powerW: number, c: SolarCase, values: Values = {}): number =>
  powerW * systemFactor(c, 1, valuesOf(c, values));

/** How strong the sun typically is while the day's energy comes in, kW/m². Matters to a panel's heat alone. */
function strength(c: SolarCase, H: number, trace?: Trace): number {
  const isPlaced = c.latitudeDeg !== undefined && c.month !== undefined;
  const N = isPlaced ? dayLengthOf(c.latitudeDeg as number, c.month as number) : 12;
  return N > 0 ? run(sunWhileItShines, { G_0: 1, H, N }, trace) : 0;
}
