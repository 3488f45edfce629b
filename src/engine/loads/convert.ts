import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import { chargeOfEnergy } from '../battery/rules.ts';
import { chargeUsed } from '../inverter/rules.ts';
import {
  currentOfCharge,
  currentOfPower,
  dailyEnergy,
  energyOfPower,
  powerOfCurrent,
  powerOfEnergy,
} from './rules.ts';

/** The four electrical kinds that volts and hours bridge. */
export const kinds = ['current', 'charge', 'power', 'energy'] as const;
export type Kind = (typeof kinds)[number];

/** Volts and hours between two kinds: whether each is needed. */
export const bridge = (from: Kind, to: Kind): { readonly volts: boolean; readonly hours: boolean } => ({
  volts: isWatts(from) !== isWatts(to),
  hours: isOverTime(from) !== isOverTime(to),
});

const isWatts = (kind: Kind): boolean => kind === 'power' || kind === 'energy';
const isOverTime = (kind: Kind): boolean => kind === 'charge' || kind === 'energy';

/** A, Ah, W or Wh as another of them, through volts first and then hours. Exact. */
export function convertKind(
  input: {
    readonly value: number;
    readonly from: Kind;
    readonly to: Kind;
    readonly voltageV: number;
    readonly hours: number;
  },
  trace?: Trace,
): number {
  const { from, to, voltageV: V, hours: t } = input;
  const x = isWatts(from) === isWatts(to) ? input.value : throughVolts(input.value, from, V, trace);
  const isThere = isOverTime(from) === isOverTime(to);
  return isThere ? x : throughHours(x, isOverTime(from), isWatts(to), t, trace);
}

function throughVolts(x: number, from: Kind, V: number, trace?: Trace): number {
  if (from === 'power') return run(currentOfPower, { P: x, V }, trace);
  if (from === 'energy') return run(chargeOfEnergy, { E: x, V }, trace);
  if (from === 'current') return run(powerOfCurrent, { I: x, V }, trace);
  return run(dailyEnergy, { Q: x, V }, trace);
}

function throughHours(
  x: number,
  isFromAmount: boolean,
  isInWatts: boolean,
  t: number,
  trace?: Trace,
): number {
  if (isFromAmount)
    return isInWatts ? run(powerOfEnergy, { E: x, t }, trace) : run(currentOfCharge, { Q: x, t }, trace);
  return isInWatts ? run(energyOfPower, { P: x, t }, trace) : run(chargeUsed, { I: x, t }, trace);
}
