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
  '%': [
    'stateOfChargePercent',
    'targetChargePercent',
    'depthOfDischargePercent',
    'dutyPercent',
    'dropLimitPercent',
  ],
  '°C': ['ambientC'],
};

/** Units that are told in another than the facts are kept in, as a factor. */
const inBase: Readonly<Record<string, readonly [unit: string, factor: number]>> = {
  days: ['h', 24],
  min: ['h', 1 / 60],
  mAh: ['Ah', 0.001],
  kWh: ['Wh', 1000],
  kW: ['W', 1000],
};

/** A correction in the units of the facts. */
function inFacts(correction: Correction): Correction {
  const [unit, factor] = inBase[correction.unit ?? ''] ?? [correction.unit, 1];
  const { from, to } = correction;
  return {
    to: to * factor,
    ...(from !== undefined && { from: from * factor }),
    ...(unit !== undefined && { unit }),
  };
}

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
const figures: ReadonlySet<string> = new Set(
  Object.entries(quantities).flatMap(([unit, keys]) => (unit === '°C' ? [] : keys)),
);
/** The digits that a number is told by, whatever its size: 14 for 1.4 and for 140. */
const digitsOf = (value: number): string => value.toExponential().replace('.', '').split('e')[0] ?? '';
/** A slip is no further off than this, as a factor. */
const mostOff = 5;

/** A figure of the facts, by its key and value. */
interface Figure {
  readonly key: string;
  readonly value: number;
}

/**
 * The figures that a new number may put right, the likeliest first: those of the same digits ("1.4" for 14) alone, where
 * there are any, else those that are near.
 * @param keys which figures its unit can be of; absent: any
 */
function candidates(facts: Stated, to: number, keys?: readonly string[]): Figure[] {
  const found: Figure[] = [];
  mapped(facts, (value, key) => {
    const isOfUnit = keys?.includes(key) ?? figures.has(key);
    const isNew = !found.some(one => one.key === key && one.value === value);
    if (isOfUnit && isNew && value > 0 && value !== to) found.push({ key, value });
    return [key, value];
  });
  const alike = found.filter(({ value }) => digitsOf(value) === digitsOf(to));
  if (alike.length > 0) return alike;
  const off = ({ value }: Figure): number => Math.abs(Math.log(value / to));
  const near = found.filter(one => to > 0 && off(one) <= Math.log(mostOff)).sort((a, b) => off(a) - off(b));
  const [first, second] = near;
  // A unit tells enough where one figure has it; two alike near are told apart by nobody.
  const isClear = first && (!second || off(second) > clearlyNearer * off(first));
  return isClear ? [first] : near;
}

/** So many times nearer than the next, a figure is the one that is meant. */
const clearlyNearer = 2;

/** The keys of a figure that a correction can be of, and the new ones that they get. */
const replaced = (facts: Stated, { key, value }: Figure, to: number): Stated => {
  let isDone = false;
  return mapped(facts, (v, k) => {
    if (isDone || k !== key || v !== value) return [k, v];
    isDone = true;
    return [k, to];
  }) as Stated;
};

/** The facts as a number may put them right where it could be of two figures or more, the likeliest first; empty where it is plain. */
export function doubtful(facts: Stated, correction: Correction): Stated[] {
  const { from, to, unit } = inFacts(correction);
  if (from !== undefined) return [];
  if (unit !== undefined && !quantities[unit]) return [];
  const keys = unit === undefined ? undefined : quantities[unit];
  const found = candidates(facts, to, keys);
  return found.length < 2 ? [] : found.slice(0, 2).map(one => replaced(facts, one, to));
}

/** Whether a number puts right something that stands in the facts. */
export const isOf = (facts: Stated, correction: Correction): boolean =>
  JSON.stringify(correct(facts, correction)) !== JSON.stringify(facts) ||
  doubtful(facts, correction).length > 0;

/** Puts a number right wherever it stands; where no old number is told, the likeliest of its unit is meant, or its unit was wrong. */
export function correct(facts: Stated, correction: Correction): Stated {
  const { from: told, to, unit } = inFacts(correction);
  // A unit of which no fact is kept puts nothing right.
  if (unit !== undefined && told === undefined && !quantities[unit]) return facts;
  const keys = unit === undefined ? undefined : quantities[unit];
  const likely = told === undefined ? candidates(facts, to, keys) : [];
  let isDone = false;
  const put = (isIt: (value: number, key: string) => boolean, as?: string): Stated =>
    mapped(facts, (value, key) => {
      if (isDone || !isIt(value, key)) return [key, value];
      isDone = true;
      return [as ?? key, to];
    }) as Stated;
  // "40 watts, not amps": the same number of another unit.
  const other = unit === undefined ? undefined : swaps[unit];
  if (other !== undefined && (told === undefined || told === to)) {
    const swapped = put((value, key) => key === other && value === to, unit === 'W' ? 'powerW' : 'currentA');
    if (isDone) return swapped;
  }
  if (told !== undefined) return put((value, key) => value === told && key !== 'count');
  const [first] = likely;
  if (likely.length === 1 && first) return replaced(facts, first, to);
  // However far off, the one figure of its unit is meant.
  return likely.length === 0 && keys ? put((_, key) => keys.includes(key)) : facts;
}

/** Whether the figure that a correction puts in stands among some facts already. */
export const isAmong = (facts: Stated, correction: Correction): boolean =>
  holds(facts, inFacts(correction).to);
