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

/** Figures that a number alone may put right; counts, months and the like are not among them. */
const figures: ReadonlySet<string> = new Set(Object.values(quantities).flat());
/** The digits that a number is told by, whatever its size: 14 for 1.4 and for 140. */
const digitsOf = (value: number): string => value.toExponential().replace('.', '').split('e')[0] ?? '';
/** A slip is no further off than this, as a factor. */
const mostOff = 5;

/** The figure that a number without a unit most likely puts right: the one of the same digits ("1.4" for 14), else the nearest. */
function likest(facts: Stated, to: number): number | undefined {
  const found: number[] = [];
  mapped(facts, (value, key) => {
    if (figures.has(key) && value > 0 && value !== to) found.push(value);
    return [key, value];
  });
  const alike = found.filter(value => digitsOf(value) === digitsOf(to));
  if (alike.length > 0) return alike.length === 1 ? alike[0] : undefined;
  const off = (value: number): number => Math.abs(Math.log(value / to));
  const [first, second] = found.sort((a, b) => off(a) - off(b));
  if (first === undefined || to <= 0 || off(first) > Math.log(mostOff)) return undefined;
  return second === undefined || off(second) > 2 * off(first) ? first : undefined;
}

/** Puts a number right wherever it stands; where no old number is told, the first of its unit is meant, or its unit was wrong. */
export function correct(facts: Stated, { from: told, to, unit }: Correction): Stated {
  const from = told ?? (unit === undefined ? likest(facts, to) : undefined);
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
