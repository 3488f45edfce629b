import type { Stated } from './rig.ts';

/** A number put right: "75 not 57", or only the new one with its unit. */
export interface Correction {
  readonly from?: number;
  readonly to: number;
  readonly unit?: string;
}

const quantities: Readonly<Record<string, readonly string[]>> = {
  Ah: ['capacityAh', 'dailyUseAh', 'chargeAhPerDay', 'chargeNeededAh', 'chargeUsedAh', 'chargeLeftAh'],
  Wh: ['energyWh', 'dailyUseWh', 'energyWhPerDay'],
  A: ['currentA', 'netCurrentA', 'fuseA', 'maxCurrentA', 'alternatorA'],
  W: ['powerW', 'startsPowerW'],
  h: ['durationH', 'hoursPerDay', 'hoursOnce', 'drivingHoursPerDay', 'drivingH', 'generatorH', 'mainsH'],
  m: ['lengthM'],
  'mm²': ['areaMm2'],
  V: ['volts', 'voltageV', 'openCircuitV'],
};

/** Keys that one thing may have only one of: a draw in amps told as watts is the same draw. */
const swaps: Readonly<Record<string, string>> = { W: 'currentA', A: 'powerW' };

/** Every number of the facts passed through a function with its key. */
function mapped(
  value: unknown,
  by: (value: number, key: string) => [key: string, value: number],
  key = '',
): unknown {
  if (Array.isArray(value)) return value.map(one => mapped(one, by, key));
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value).map(([k, v]) => (typeof v === 'number' ? by(v, k) : [k, mapped(v, by, k)])),
  );
}

/** Whether a number stands in the facts. */
export const holds = (facts: Stated, number: number): boolean => {
  let isThere = false;
  mapped(facts, (value, key) => {
    if (value === number && key !== 'count') isThere = true;
    return [key, value];
  });
  return isThere;
};

/** Puts a number right wherever it stands; where no old number is told, the first of its unit is meant, or its unit was wrong. */
export function correct(facts: Stated, { from, to, unit }: Correction): Stated {
  let isDone = false;
  const keys = unit === undefined ? undefined : quantities[unit];
  const put = (isIt: (value: number, key: string) => boolean, as?: string): Stated =>
    mapped(facts, (value, key) => {
      if (isDone || !isIt(value, key)) return [key, value];
      isDone = true;
      return [as ?? key, to];
    }) as Stated;
  // "40 watts, not amps": the same number of another unit.
  const other = unit === undefined ? undefined : swaps[unit];
  if (other !== undefined && (from === undefined || from === to)) {
    const swapped = put((value, key) => key === other && value === to, unit === 'W' ? 'powerW' : 'currentA');
    if (isDone) return swapped;
  }
  return from === undefined
    ? put((_, key) => !!keys?.includes(key))
    : put((value, key) => value === from && key !== 'count');
}
