import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, Values } from '../assumption.ts';
import { taken } from '../explore.ts';
import {
  altitudeFactor,
  apparentPower,
  chargerInput,
  continuousPower,
  heatFactor,
  ratingNeeded,
  soundAtDistance,
  startRating,
} from './rules.ts';
import {
  altitudeRules,
  continuousShare,
  generatorSizesW,
  generatorStartFactor,
  heatRule,
  mainsCharger,
  motorPowerFactor,
  plateDistanceM,
} from './tables.ts';

/** Where a generator stands. */
export interface Site {
  readonly altitudeM?: number;
  readonly ambientC?: number;
}

/** What a generator has to carry at one time. */
export interface GeneratorDuty {
  /** Charging current of the charger on it, A; 0 without one. */
  readonly chargerA: number;
  /** Volts it charges at (14.4 a 12 V battery). */
  readonly chargeV: number;
  /** Other loads, W, and the most they ask for while a motor starts, W. */
  readonly loadW: number;
  readonly startW: number;
}

const below = (z: number, rule: { k_z: number; z_0: number; z_s: number }): number =>
  run(altitudeFactor, { z, ...rule });

/** What is taken for granted of a charger on a generator, and of the engine at a height. */
export function generatorAssumptions(site: Site): Assumption[] {
  const [eta, etaLow, etaHigh] = mainsCharger.efficiency;
  const [pf, pfLow, pfHigh] = mainsCharger.powerFactor;
  const found: Assumption[] = [
    {
      name: 'chargerEfficiency',
      value: eta,
      low: etaLow,
      high: etaHigh,
      unit: '',
      why: 'a usual mains charger',
    },
    {
      name: 'powerFactor',
      value: pf,
      low: pfLow,
      high: pfHigh,
      unit: '',
      why: 'of chargers: poor on plain ones, nearly 1 with correction',
    },
  ];
  const { altitudeM = 0 } = site;
  if (altitudeM > 300) {
    const value = below(altitudeM, altitudeRules.petrol);
    found.push({
      name: 'altitudeShare',
      value,
      low: value,
      high: below(altitudeM, altitudeRules.industrial),
      unit: '',
      why: 'of its power left at that height, a small petrol engine; makers differ',
    });
  }
  return found;
}

/** What a generator whose watts were told gives of them without a break. */
export const continuousAssumption: Assumption = {
  name: 'continuousShare',
  value: continuousShare[0],
  low: continuousShare[1],
  high: continuousShare[2],
  unit: '',
  why: 'of its watts without a break; most are sold by what they give for a moment',
};

/** What a generator that goes by so many watts (W, counted as VA) gives without a break. */
export const continuousW = (plateW: number, values: Values, trace?: Trace): number =>
  run(continuousPower, { k_c: taken(values, continuousAssumption.name), S_p: plateW }, trace);

/** What a generator gives a starting motor; for loads with one. */
export const startAssumption: Assumption = {
  name: 'startFactor',
  value: generatorStartFactor[0],
  low: generatorStartFactor[1],
  high: generatorStartFactor[2],
  unit: '',
  why: 'times its rating for a moment, while a motor starts',
};

/** Shares of its power (0–1) that height and heat leave; they multiply. */
export function deratingOf(
  site: Site,
  values: Values,
  trace?: Trace,
): { readonly f_z: number; readonly f_T: number } {
  const f_z = Math.max(0.3, values.altitudeShare ?? 1);
  const { ambientC = 20 } = site;
  const f_T = Math.max(
    0.3,
    run(heatFactor, { T: ambientC, ...heatRule }, ambientC > heatRule.T_0 ? trace : undefined),
  );
  return { f_z, f_T };
}

/** What a generator must give without a break (W, counted as VA) for what it carries, by its rating at sea level in mild air. */
export function generatorRatingW(duty: GeneratorDuty, site: Site, values: Values, trace?: Trace): number {
  const chargerW =
    duty.chargerA > 0
      ? run(
          chargerInput,
          {
            I: duty.chargerA,
            V: duty.chargeV,
            eta: taken(values, 'chargerEfficiency'),
            pf: taken(values, 'powerFactor'),
          },
          trace,
        )
      : 0;
  const hasMotor = duty.startW > duty.loadW;
  const loadsW = hasMotor ? run(apparentPower, { P: duty.loadW, pf: motorPowerFactor }, trace) : duty.loadW;
  const k_g = values.startFactor ?? generatorStartFactor[0];
  const S_s = hasMotor ? run(startRating, { S_c: chargerW, P_s: duty.startW, k_g }, trace) : 0;
  const S = Math.max(chargerW + loadsW, S_s);
  const { f_z, f_T } = deratingOf(site, values, trace);
  return run(ratingNeeded, { S, f_z, f_T }, f_z * f_T < 1 || duty.loadW > 0 ? trace : undefined);
}

/** Noise (dB) on a maker's sheet, at 7 m, that just meets a limit told at another distance. */
export const plateNoiseDb = (limit: { readonly levelDb: number; readonly atM: number }): number =>
  run(soundAtDistance, { L_1: limit.levelDb, d_1: limit.atM, d_2: plateDistanceM });

/**
 * The next usual generator size (W, as it is sold) that gives so much (W) without a break, as a rule.
 * @param aboveW where one of so many watts falls short, a bigger one
 */
export function generatorSizeFor(neededW: number, aboveW = 0): number {
  const leastW = neededW / continuousShare[0];
  const isEnough = (size: number): boolean => size >= leastW && size > aboveW;
  const sold = generatorSizesW.find(isEnough);
  return sold ?? 1000 * Math.max(Math.ceil(leastW / 1000), Math.floor(aboveW / 1000) + 1);
}
