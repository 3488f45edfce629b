import { describeBattery, describeCharger, describeLoad, describePanels } from '#intents/describe.ts';
import type { Stated } from '#rig/rig.ts';
import { figureInWords } from './unused-in-words.ts';

/** What reading adds without changing an answer. */
const free: ReadonlySet<string> = new Set(['supply', 'isAverage', 'role', 'voltsTaken', 'isRoundTrip']);

/** Facts as one text, alike for readings that answer alike. */
export function textOf(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(textOf).sort().join()}]`;
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  const entries = Object.entries(value).filter(
    ([key, v]) => v !== undefined && !free.has(key) && !(key === 'count' && v === 1),
  );
  return `{${entries
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, v]) => `${key}:${textOf(v)}`)
    .join()}}`;
}

/** Whether two facts say the same. */
export const isSame = (a: unknown, b: unknown): boolean => textOf(a) === textOf(b);

/** Single figures that tell two readings apart, in the order in which they are told. */
const figures = [
  'durationH',
  'dailyUseAh',
  'dailyUseWh',
  'drivingHoursPerDay',
  'chargeUsedAh',
  'chargeLeftAh',
  'systemVoltageV',
  'volts',
  'netCurrentA',
  'fuseA',
  'targetChargePercent',
  'ambientC',
] as const satisfies readonly (keyof Stated)[];
const ofCable = ['lengthM', 'areaMm2', 'awg'] as const;

/** What some facts say that others don't, in few words each. */
export function partsOf(facts: Stated, other: Stated): string[] {
  const parts: string[] = [];
  const rows = <T>(
    mine: readonly T[] | undefined,
    others: readonly T[] | undefined,
    say: (row: T) => string,
  ): void => {
    for (const row of mine ?? []) if (!others?.some(one => isSame(one, row))) parts.push(say(row));
  };
  rows(facts.loads, other.loads, load => describeLoad(load));
  rows(facts.batteries, other.batteries, battery => describeBattery(battery));
  rows(facts.chargers, other.chargers, charger => describeCharger(charger));
  rows(facts.solar, other.solar, panels => describePanels(panels));
  for (const key of figures)
    if (facts[key] !== undefined && facts[key] !== other[key]) parts.push(figureInWords(key, facts[key]));
  const { cable, inverter } = facts;
  for (const key of ofCable)
    if (cable?.[key] !== undefined && cable[key] !== other.cable?.[key])
      parts.push(figureInWords(key, cable[key]));
  if (cable?.currentA !== undefined && cable.currentA !== other.cable?.currentA)
    parts.push(`${figureInWords('currentA', cable.currentA)} through it`);
  if (inverter?.powerW !== undefined && inverter.powerW !== other.inverter?.powerW)
    parts.push(`${figureInWords('powerW', inverter.powerW)} inverter`);
  if (facts.place !== undefined && facts.place !== other.place)
    parts.push(figureInWords('place', facts.place));
  return parts;
}
