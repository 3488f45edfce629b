import type { Assumption } from '#quantity/range.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Bank } from '../battery/bank.ts';
import { bankAssumptions, usableCapacityAh } from '../battery/usable.ts';
import { type Charge, chargeAssumptions, chargeOf } from '../charging/charge.ts';
import { type Explored, explore, type Values } from '../explore.ts';
import { dayOf, type Use, useAssumptions } from '../loads/model.ts';
import { chargeOver } from '../loads/over.ts';
import { chargeAtPoint, chargeLevel } from './rules.ts';

/** A battery now, and what goes out of it or into it for some hours. */
export interface Later {
  readonly bank: Bank;
  /** State of charge now, %. */
  readonly level: Assumption;
  readonly hours: number;
  readonly use: Use;
  /** A steady current into the battery with all loads paid, A; above nought nothing goes out. */
  readonly intoA?: number;
  /** Of the battery, °C, where told; else as it has to be taken. */
  readonly temperatureC?: number;
  readonly temperature?: Assumption;
}

export type LaterKey = 'levelThen' | 'used';

const within = (percent: number): number => Math.min(100, Math.max(0, percent));

/** What it is charged as: for its assumptions, and to work it out. */
const chargeFrom = ({ bank, temperature, temperatureC }: Later, percent: number): Charge => ({
  bank: { ...bank, stateOfChargePercent: percent },
  isSizeAssumed: false,
  isIsolator: false,
  temperature,
  temperatureC,
});

/** What is left then (%), and what went out (Ah), for one set of values. */
function levelAfter(later: Later, values: Values, trace?: Trace): Record<LaterKey, number> {
  const { bank, use, hours, intoA = 0 } = later;
  const percent = within(values.stateOfCharge ?? later.level.value);
  if (intoA > 0)
    return {
      levelThen: chargeOf(chargeFrom(later, percent), intoA, values, trace).percentAfter(hours),
      used: 0,
    };
  const day = dayOf(use, values, trace);
  const used = chargeOver(day, hours, trace);
  const temperatureC = later.temperatureC ?? values.batteryTemperature;
  const C_real = usableCapacityAh({ bank, currentA: day.currentA, temperatureC, share: 1 }, values, trace);
  const q = run(chargeAtPoint, { q_0: (C_real * percent) / 100, Q_out: used, Q_in: 0 }, trace);
  return { levelThen: within(run(chargeLevel, { q, C_real }, trace)), used };
}

/** How full (%) a battery is after some hours, from how full it is now: loads go out, or a steady current comes in. */
export function exploreLater(later: Later): Explored<LaterKey> {
  const { bank, level, use, temperature, temperatureC, intoA = 0 } = later;
  const ofBank =
    intoA > 0
      ? chargeAssumptions(chargeFrom(later, level.value))
      : bankAssumptions(bank, 100, temperatureC === undefined ? temperature : undefined);
  const assumptions = [
    ...(level.low < level.high ? [level] : []),
    ...ofBank,
    ...(intoA > 0 ? [] : useAssumptions(use)),
  ];
  return explore<LaterKey>(assumptions, 'levelThen', (values, trace) => levelAfter(later, values, trace));
}
