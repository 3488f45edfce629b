import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { print } from '#answer/text.ts';
import { present } from '#basics/present.ts';
import type { Intent } from '#intents/intent.ts';
import { settle } from '#intents/settle/intent.ts';
import { trip } from '#intents/trip/intent.ts';
import { cues } from '#language/words/en/cues.ts';
import { chemistries, type Facts, factsSchema } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
const amount = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const load = fc.record({
  name: fc.constantFrom('fridge', 'freezer', 'light', 'cpap', 'kettle', 'microwave', 'thing'),
  count: fc.integer({ min: 1, max: 4 }),
  currentA: maybe(amount(0.01, 400)),
  powerW: maybe(amount(0.1, 5000)),
  hoursPerDay: maybe(amount(0, 24)),
  supply: fc.constantFrom('dc' as const, 'ac' as const),
  isAverage: maybe(fc.boolean()),
});
const battery = fc.record({
  count: fc.integer({ min: 1, max: 4 }),
  capacityAh: maybe(amount(0.1, 5000)),
  chemistry: maybe(fc.constantFrom(...chemistries)),
  voltageV: maybe(fc.constantFrom(6, 12, 24)),
  stateOfChargePercent: maybe(amount(0, 100)),
});
/** Facts as odd as anybody may tell them. */
const facts = fc.record({
  loads: maybe(fc.array(load, { minLength: 1, maxLength: 4 })),
  dailyUseAh: maybe(amount(0.1, 5000)),
  batteries: maybe(fc.array(battery, { minLength: 1, maxLength: 3 })),
  arrangement: maybe(fc.constantFrom('parallel' as const, 'series' as const)),
  solar: maybe(
    fc.array(fc.record({ count: fc.integer({ min: 1, max: 4 }), powerW: maybe(amount(1, 2000)) }), {
      maxLength: 2,
    }),
  ),
  solarAhPerDay: maybe(amount(0.1, 500)),
  chargers: maybe(
    fc.array(
      fc.record({
        kind: fc.constantFrom('dcdc' as const, 'isolator' as const, 'mains' as const),
        currentA: maybe(amount(0.5, 200)),
      }),
      { maxLength: 2 },
    ),
  ),
  drivingHoursPerDay: maybe(amount(0, 24)),
  drivingPlanH: maybe(fc.array(amount(0, 24), { minLength: 1, maxLength: 8 })),
  durationH: maybe(amount(0.05, 1e5)),
  startHour: maybe(amount(0, 24)),
  latitudeDeg: maybe(amount(-90, 90)),
  month: maybe(fc.integer({ min: 1, max: 12 })),
  sky: maybe(fc.constantFrom('sunny' as const, 'overcast' as const)),
  skyLastDays: maybe(fc.integer({ min: 1, max: 10 })),
  ambientC: maybe(amount(-40, 60)),
  inverter: maybe(fc.record({ powerW: maybe(amount(50, 5000)) })),
  volts: maybe(amount(0, 60)),
});
const known = (drawn: object): Facts =>
  Object.fromEntries(Object.entries(drawn).filter(([, value]) => value !== undefined)) as Facts;
/** The facts as recall hands them to a question: only the keys it takes, and undefined left out throughout. */
const handed = (intent: Intent, drawn: object): Facts => {
  const all = factsSchema.parse(JSON.parse(JSON.stringify(known(drawn))));
  return Object.fromEntries(
    Object.entries(all).filter(([key]) => intent.takes.includes(key as keyof Facts)),
  ) as Facts;
};

const isSound = (text: string) => {
  expect(text).not.toMatch(/NaN|undefined|null|\[object/);
  expect(text.length).toBeLessThan(1500);
};

describe('whatever is told, an answer comes, with numbers that are numbers', () => {
  test('of a trip', () => {
    const intent = trip as Intent;
    fc.assert(
      fc.property(facts, drawn => {
        const given = handed(intent, drawn);
        if (!intent.needs.safeParse(given).success) return;
        const reply = intent.reply(given, settingWith());
        isSound(print(reply));
        for (const figure of Object.values(present(reply.figures))) {
          const { low, value, high } = figure as { low: number; value: number; high: number };
          expect(low).toBeLessThanOrEqual(value);
          expect(value).toBeLessThanOrEqual(high);
        }
      }),
      { numRuns: 60, seed: 12 },
    );
  });

  test('of an argument', () => {
    const claim = fc.record({
      who: fc.constantFrom('me', 'he', 'sam', 'lou'),
      value: amount(0.01, 1e5),
      unit: fc.constantFrom('days', 'h', 'Ah', 'Wh', 'kWh', 'A', 'W', 'V', '%', 'mm²', ''),
    });
    fc.assert(
      fc.property(
        facts,
        fc.array(claim, { maxLength: 4 }),
        fc.subarray([...cues], { maxLength: 5 }),
        (drawn, claims, heard) => {
          const reply = settle.reply(
            handed(settle, drawn),
            settingWith({ claims }, { claims, cues: new Set(heard) }),
          );
          isSound(print(reply));
          if (present(reply.figures).answer === undefined) expect(reply.headline).toMatch(/\?$/);
        },
      ),
      { numRuns: 300, seed: 12 },
    );
  });
});
