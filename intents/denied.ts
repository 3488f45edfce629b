import type { Mention } from '#language/recognise/mention.ts';
import type { Facts } from '#rig/rig.ts';
import { amountsOf, isOverBattery } from './figures-told.ts';

/** Told figures that speak against what a row asserts, in volts of a 12 V system: each by itself does. */
export interface Denied {
  /** The battery, or the thing itself, reads so many volts or more. */
  readonly voltsFrom?: number;
  /** It reads less than that. */
  readonly voltsUnder?: number;
  /** Only volts read so count. */
  readonly taken?: NonNullable<Facts['voltsTaken']>;
  /** So many amps are told, or more; less than that. */
  readonly ampsFrom?: number;
  readonly ampsUnder?: number;
  /** It is as warm as that, or colder, °C. */
  readonly ambientFromC?: number;
  readonly ambientUnderC?: number;
  /** The battery is less full than that, %. */
  readonly percentUnder?: number;
  /** All mains loads together take less than that, W. */
  readonly mainsUnderW?: number;
  /** What is told to be as hot as that, °C; a time as long as that, h. */
  readonly hotFromC?: number;
  readonly hoursFrom?: number;
  /** The panel's side reads more than any battery does. */
  readonly hasPanelVolts?: true;
}

/** Over this a reading is none of a 12 V battery, V. */
const mostV = 16;

const mainsW = ({ loads = [] }: Facts): number | undefined => {
  const watts = loads
    .filter(({ supply }) => supply === 'ac')
    .map(({ powerW, count }) => (powerW ?? Number.NaN) * count);
  const sum = watts.reduce((a, b) => a + b, 0);
  return watts.length === 0 || Number.isNaN(sum) ? undefined : sum;
};

const isWithin = (
  value: number | undefined,
  from = Number.POSITIVE_INFINITY,
  under = Number.NEGATIVE_INFINITY,
): boolean => value !== undefined && (value >= from || value < under);

/** The largest amount of a dimension that is told. */
const most = (mentions: readonly Mention[], dimension: 'temperature' | 'time'): number | undefined => {
  const values = amountsOf(mentions, dimension).map(({ value }) => value);
  return values.length > 0 ? Math.max(...values) : undefined;
};

/**
 * Whether figures that were told deny a row.
 * @param facts what was told, without what memory filled in
 * @param blocks of 12 V in series
 */
export function isDenied(
  denied: Denied | undefined,
  facts: Facts,
  mentions: readonly Mention[] = [],
  blocks = 1,
): boolean {
  if (!denied) return false;
  const { volts = Number.POSITIVE_INFINITY, voltsTaken, netCurrentA, ambientC, batteries = [] } = facts;
  const isRead = volts <= mostV * blocks && (denied.taken === undefined || voltsTaken === denied.taken);
  const amps = amountsOf(mentions, 'current').map(({ value }) => Math.abs(value));
  const told = netCurrentA === undefined ? amps : [Math.abs(netCurrentA), ...amps];
  const percent = batteries.find(
    ({ stateOfChargePercent }) => stateOfChargePercent !== undefined,
  )?.stateOfChargePercent;
  return (
    isWithin(isRead ? volts / blocks : undefined, denied.voltsFrom, denied.voltsUnder) ||
    isWithin(told.length > 0 ? Math.max(...told) : undefined, denied.ampsFrom, denied.ampsUnder) ||
    isWithin(ambientC, denied.ambientFromC, denied.ambientUnderC) ||
    isWithin(percent, undefined, denied.percentUnder) ||
    isWithin(mainsW(facts), undefined, denied.mainsUnderW) ||
    isWithin(most(mentions, 'temperature'), denied.hotFromC) ||
    isWithin(most(mentions, 'time'), denied.hoursFrom) ||
    (denied.hasPanelVolts === true && isOverBattery(mentions))
  );
}
