import { exactly } from '#answer/say.ts';
import { english } from '#answer/speech.ts';
import { describeBattery, describeCharger, describeLoad, describePanels } from '#intents/describe.ts';
import type { Stated } from '#rig/rig.ts';

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
  if (facts.durationH !== undefined && facts.durationH !== other.durationH)
    parts.push(`${exactly(facts.durationH, english)} in all`);
  const simple: readonly (readonly [keyof Stated, string])[] = [
    ['dailyUseAh', 'Ah a day'],
    ['dailyUseWh', 'Wh a day'],
    ['drivingHoursPerDay', 'h of driving a day'],
    ['chargeUsedAh', 'Ah used'],
    ['chargeLeftAh', 'Ah left'],
    ['systemVoltageV', 'V system'],
    ['volts', 'V read'],
    ['netCurrentA', 'A on the monitor'],
    ['fuseA', 'A fuse'],
    ['targetChargePercent', '% wanted'],
    ['ambientC', '°C'],
  ];
  for (const [key, unit] of simple)
    if (facts[key] !== undefined && facts[key] !== other[key]) parts.push(`${facts[key]} ${unit}`);
  const { cable, inverter } = facts;
  const lengths = [
    [cable?.lengthM, other.cable?.lengthM, 'm of cable'],
    [cable?.areaMm2, other.cable?.areaMm2, 'mm² cable'],
    [cable?.awg, other.cable?.awg, 'AWG cable'],
    [cable?.currentA, other.cable?.currentA, 'A through it'],
    [inverter?.powerW, other.inverter?.powerW, 'W inverter'],
  ] as const;
  for (const [mine, others, unit] of lengths)
    if (mine !== undefined && mine !== others) parts.push(`${mine} ${unit}`);
  if (facts.place !== undefined && facts.place !== other.place) parts.push(`in ${facts.place}`);
  return parts;
}
