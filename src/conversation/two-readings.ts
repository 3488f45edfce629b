import type { IntentName } from '#answer/answer.ts';
import { exactly } from '#answer/say.ts';
import { english } from '#answer/speech.ts';
import { intentNamed } from '#intents';
import { describeBattery, describeCharger, describeLoad } from '#intents/describe.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Stated } from '#rig/rig.ts';
import type { Heard } from './hear.ts';
import { isIntent, plain } from './questions.ts';
import { sound } from './sound.ts';

/**
 * Less sure than this of the whole reading, two readings that answer differently are asked about. Chosen on the open
 * messages: higher asks more often than it saves a wrong answer.
 */
export const leastSure = 0.4;

/** A reading somebody may choose, by the words of its button. */
export interface Choice {
  readonly say: string;
  readonly intent: IntentName;
  readonly facts: Stated;
}

/** Two readings that answer differently, and what both say. */
export interface Two {
  readonly options: readonly [Choice, Choice];
  readonly shared: Stated;
}

/** What reading adds without changing an answer. */
const free: ReadonlySet<string> = new Set(['supply', 'isAverage', 'role', 'voltsTaken', 'isRoundTrip']);

/** Facts as one text, alike for readings that answer alike. */
function textOf(value: unknown): string {
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

interface Reading {
  readonly intent: IntentName;
  readonly stated: Readonly<Record<string, unknown>>;
  readonly probability: number;
}

/** What an answer hangs on: the question, and of the facts those that it takes. */
function keyOf({ intent, stated }: Reading): string {
  const { takes } = intentNamed(intent);
  const used = Object.fromEntries(
    Object.entries(stated).filter(([key]) => key === 'claims' || (takes as readonly string[]).includes(key)),
  );
  return `${intent} ${textOf(used)}`;
}

/** The readings, those that answer alike as one, likeliest first. */
export function readingsOf({ options }: Pick<ParsedMessage, 'options'>): Reading[] {
  const merged = new Map<string, Reading>();
  for (const { intent, stated, probability } of options) {
    if (!isIntent(intent)) continue;
    const reading: Reading = { intent, stated, probability };
    const key = keyOf(reading);
    const before = merged.get(key);
    merged.set(key, before ? { ...before, probability: before.probability + probability } : reading);
  }
  return [...merged.values()].sort((a, b) => b.probability - a.probability);
}

const isSame = (a: unknown, b: unknown): boolean => textOf(a) === textOf(b);

/** What one reading has that the other hasn't, in a few words. */
function wordsOf(facts: Stated, other: Stated): string {
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
  rows(
    facts.solar,
    other.solar,
    ({ count, powerW }) => `${count ? `${count} × ` : ''}${powerW ?? 'some'} W solar`,
  );
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
  ];
  for (const [key, unit] of simple)
    if (facts[key] !== undefined && facts[key] !== other[key]) parts.push(`${facts[key]} ${unit}`);
  return parts.slice(0, 2).join(', ').slice(0, 60);
}

/** The facts of a reading that can stand. */
export const factsIn = ({
  claims: _c,
  removed: _r,
  corrects: _s,
  owner: _o,
  term: _t,
  choice: _ch,
  ...facts
}: Reading['stated']): Stated => sound(facts as Stated).facts;

/** Of an unsure message the two likeliest readings that answer differently, where they can be told apart in words. */
export function twoReadings(heard: Heard): Two | undefined {
  const [first, second] = readingsOf(heard);
  if (!first || !second || heard.certainty >= leastSure) return undefined;
  if (plain.has(first.intent) || plain.has(second.intent)) return undefined;
  const [mine, other] = [factsIn(first.stated), factsIn(second.stated)];
  const isOtherQuestion = first.intent !== second.intent;
  const says = isOtherQuestion
    ? [intentNamed(first.intent).title, intentNamed(second.intent).title]
    : [wordsOf(mine, other), wordsOf(other, mine)];
  const [one, two] = says as [string, string];
  if (one === two || one === '' || two === '') return undefined;
  const shared = Object.fromEntries(
    Object.entries(mine).filter(([key, value]) => isSame(value, other[key as keyof Stated])),
  ) as Stated;
  return {
    options: [
      { say: one, intent: first.intent, facts: mine },
      { say: two, intent: second.intent, facts: other },
    ],
    shared,
  };
}
