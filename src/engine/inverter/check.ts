import { present } from '#basics/present.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, Values } from '../assumption.ts';
import type { Bank } from '../battery/bank.ts';
import { limitsOf, loadedVoltageV } from '../battery/limits.ts';
import { restVoltsAt } from '../battery/rest.ts';
import { blocksAt } from '../battery/tables.ts';
import { taken } from '../explore.ts';
import { efficiencyAt, inverterSizesW, likelyInverterW } from './efficiency.ts';
import { batteryCurrent } from './rules.ts';

/** Above this share of its continuous rating an inverter runs hot and has nothing in hand. Common practice. */
const tightShare = 0.95;

/** Surge rating as a multiple of the continuous one, where it is not told. Common practice. */
export const surgeFactor = 2;

/** A surge rating that nobody told is sure up to this multiple of the continuous one. Common practice. */
const sureSurge = 1.5;

/** Starting powers are typical ones: only well above the surge rating a motor surely won't start. Common practice. */
const surelyTooMuch = 1.5;

/** Where inverters cut out by low voltage, V for a 12 V system. Common practice: 10.5, warning at 11. */
export const cutOutV = 10.5;

export type Fit = 'yes' | 'tight' | 'no';
export const worst = (...fits: readonly Fit[]): Fit =>
  fits.includes('no') ? 'no' : fits.includes('tight') ? 'tight' : 'yes';

/** Whether the running sum fits the continuous rating: 1,400 W on 1,500 W does, 1,600 W doesn't, however short. */
export function fitsRating(runW: number, ratingW: number): Fit {
  if (runW > ratingW) return 'no';
  return runW > tightShare * ratingW ? 'tight' : 'yes';
}

/**
 * Whether motors start within the surge rating.
 * @param isTold the start is told, not typical of the thing: then a surge rating that was told is a limit
 * @param hardestW the same of motors that start as hard as any of their kind, for a surge rating that nobody told
 */
export function fitsSurge(
  startW: number,
  ratingW: number,
  toldSurgeW?: number,
  isTold = false,
  hardestW = startW,
): Fit {
  const surgeW = toldSurgeW ?? surgeFactor * ratingW;
  const isLimit = isTold && toldSurgeW !== undefined;
  if (startW > (isLimit ? 1 : surelyTooMuch) * surgeW) return 'no';
  const isSure =
    toldSurgeW === undefined ? Math.max(startW, hardestW) <= sureSurge * ratingW : startW <= toldSurgeW;
  return isSure ? 'yes' : 'tight';
}

/** The smallest usual inverter that runs and starts these, W. */
export const inverterFor = (runW: number, startW: number): number =>
  inverterSizesW.find(size => fitsRating(runW, size) === 'yes' && startW <= surgeFactor * size) ??
  Math.ceil(Math.max(runW / tightShare, startW / surgeFactor) / 500) * 500;

/** Volts under load to reckon with: nominal, as the trade does, with the span of a full to a nearly empty bank. */
export function loadedVoltage(nominalV: number, isLithium: boolean | undefined): Assumption {
  const blocks = blocksAt(nominalV);
  const [value, low, high] =
    isLithium === undefined ? [12, 11.5, 12.8] : isLithium ? [12.8, 12.3, 13.2] : [12, 11.5, 12.4];
  return {
    name: 'loadedVoltage',
    value: present(value) * blocks,
    low: present(low) * blocks,
    high: present(high) * blocks,
    unit: 'V',
    why: isLithium ? 'lithium under load' : `a ${12 * blocks} V battery under load`,
  };
}

/**
 * Battery current (A) behind a mains load. Takes the assumptions `inverterEfficiency`, `loadedVoltage` and, where there, `idleShare`.
 * @param ratingW of the inverter; absent: a usual one for the load
 */
export function batteryCurrentA(
  loadW: number,
  ratingW: number | undefined,
  values: Values,
  trace?: Trace,
): number {
  if (loadW <= 0) return 0;
  const efficiency = taken(values, 'inverterEfficiency');
  const at = { loadW, ratingW: ratingW ?? likelyInverterW(loadW), efficiency, idleShare: values.idleShare };
  const eta = efficiencyAt(at, trace);
  return run(batteryCurrent, { P: loadW, eta, V: taken(values, 'loadedVoltage') }, trace);
}

/** What a bank makes of a current: within its limit, for a short time, or not. */
export interface BankFit {
  readonly fit: Fit;
  readonly limitA: number;
  /** At the inverter from a half full bank, V. */
  readonly sagToV: number;
  readonly cutOutV: number;
}

/** A usual limit that nobody told is passed for sure from here on: sheets of batteries of one size and kind differ by about a quarter. Common practice. */
const clearly = 1.25;

/** Whether a bank can give a current (A): its own limit first, then the volts left against the inverter's cut-out. */
export function fitsBank(bank: Bank, currentA: number, temperatureC?: number): BankFit {
  const { dischargeA: limitA, surgeA } = limitsOf(bank, temperatureC);
  const blocks = blocksAt(bank.voltageV);
  const restV = blocks * restVoltsAt(50, bank.chemistry);
  const sagToV = loadedVoltageV({ bank, restV, currentA });
  const cutOut = cutOutV * blocks;
  const isOver = currentA > limitA;
  const isSag = sagToV < cutOut;
  // A limit told in so many words is not to be passed, however short.
  const isFar = currentA > (bank.maxCurrentA === undefined ? clearly : 1) * limitA;
  const isHopeless = isFar || currentA > surgeA || (isOver && isSag);
  return { fit: isHopeless ? 'no' : isOver || isSag ? 'tight' : 'yes', limitA, sagToV, cutOutV: cutOut };
}
