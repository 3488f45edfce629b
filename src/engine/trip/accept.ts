import type { Assumption } from '#quantity/range.ts';
import type { Chemistry } from '#rig/rig.ts';
import { chargeRateC } from '../battery/limits.ts';
import { chemistryRow } from '../battery/tables.ts';
import { missingAfterH } from '../charging/fill.ts';
import { chargeRow } from '../charging/tables.ts';
import type { Values } from '../explore.ts';
import type { Acceptance } from './balance.ts';

/** What is taken for granted of how a battery takes its last part; lithium's is over in minutes. */
export function acceptanceAssumptions(chemistry: Chemistry): Assumption[] {
  if (chemistry === 'lfp') return [];
  const [value, low, high] = chargeRow(chemistry).timeConstantH;
  const why = `how fast ${chemistryRow(chemistry).name} takes its last part`;
  return [{ name: 'timeConstant', value, low, high, unit: 'h', why }];
}

/** A battery on charge, as far as acceptance goes. */
export interface Accepting {
  readonly chemistry: Chemistry;
  readonly capacityAh: number;
  /** Share of the charge put in that stays. */
  readonly efficiency: number;
  /** Of the battery, °C; 25 by default. */
  readonly temperatureC?: number;
}

/**
 * What a battery takes of a steady current: up to its C-rate limit, and by the ampere-hour law (Woodbridge) no
 * more than what is missing over its time constant; the closed form of the charging model, hour by hour.
 * Lithium takes nothing below freezing.
 */
export function acceptance(battery: Accepting, values: Values = {}): Acceptance {
  const { chemistry, capacityAh, efficiency } = battery;
  const limitA = chargeRateC({ chemistry }, battery.temperatureC) * capacityAh;
  const timeConstantH = values.timeConstant ?? chargeRow(chemistry).timeConstantH[0];
  return (missingAh, offeredA, hours) => {
    const currentA = Math.min(offeredA, limitA);
    const left = missingAfterH({ missingAh, currentA, timeConstantH, efficiency }, hours);
    return (missingAh - left) / efficiency;
  };
}
