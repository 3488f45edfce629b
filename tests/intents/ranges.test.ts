import fc from 'fast-check';
import { expect, test } from 'vitest';
import { intents } from '#intents';
import { factsOf } from '#intents/facts.ts';
import { cues } from '#language/words/en/cues.ts';
import { chemistries, type Facts, factsSchema } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

// Ranges contain their likely value, for the main figures of every question, whatever was told.

const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 3 });
const amount = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const whole = (min: number, max: number) => fc.integer({ min, max });
const listOf = <T>(one: fc.Arbitrary<T>) => maybe(fc.array(one, { minLength: 1, maxLength: 3 }));

const told = fc.record({
  loads: listOf(
    fc.record({
      name: fc.constantFrom(
        'fridge',
        'freezer',
        'light',
        'cpap',
        'kettle',
        'microwave',
        'water pump',
        'thing',
      ),
      count: whole(1, 3),
      currentA: maybe(amount(0.05, 100)),
      powerW: maybe(amount(1, 3000)),
      hoursPerDay: maybe(amount(0.1, 24)),
      supply: fc.constantFrom('dc' as const, 'ac' as const),
      isAverage: maybe(fc.boolean()),
    }),
  ),
  batteries: listOf(
    fc.record({
      count: whole(1, 3),
      capacityAh: maybe(amount(5, 800)),
      chemistry: maybe(fc.constantFrom(...chemistries)),
      voltageV: maybe(fc.constantFrom(6, 12, 24)),
      stateOfChargePercent: maybe(amount(0, 100)),
    }),
  ),
  arrangement: maybe(fc.constantFrom('parallel' as const, 'series' as const)),
  solar: listOf(
    fc.record({
      count: whole(1, 3),
      powerW: maybe(amount(10, 600)),
      controller: maybe(fc.constantFrom('mppt' as const, 'pwm' as const)),
    }),
  ),
  mount: maybe(fc.constantFrom('flat' as const, 'tilted' as const)),
  chargers: listOf(
    fc.record({
      kind: fc.constantFrom('dcdc' as const, 'isolator' as const, 'mains' as const, 'generator' as const),
      currentA: maybe(amount(2, 100)),
    }),
  ),
  alternator: maybe(fc.constantFrom('smart' as const, 'fixed' as const)),
  inverter: maybe(fc.record({ powerW: maybe(amount(100, 4000)), surgeW: maybe(amount(200, 8000)) })),
  cable: maybe(
    fc.record({
      lengthM: maybe(amount(0.2, 20)),
      areaMm2: maybe(fc.constantFrom(1.5, 2.5, 4, 6, 10, 16, 35, 70)),
      awg: maybe(whole(-3, 18)),
      autoCableMm: maybe(fc.constantFrom(3, 4, 6)),
      currentA: maybe(amount(0.5, 200)),
    }),
  ),
  dailyUseAh: maybe(amount(1, 300)),
  drivingHoursPerDay: maybe(amount(0, 10)),
  durationH: maybe(amount(0.5, 400)),
  latitudeDeg: maybe(amount(-90, 90)),
  month: maybe(whole(1, 12)),
  sky: maybe(fc.constantFrom('sunny' as const, 'mixed' as const, 'overcast' as const)),
  shade: maybe(fc.constantFrom('none' as const, 'half' as const, 'heavy' as const)),
  peakSunHours: maybe(amount(0.5, 9)),
  ambientC: maybe(amount(-30, 50)),
  volts: maybe(amount(9, 58)),
  targetChargePercent: maybe(amount(10, 100)),
  chargeNeededAh: maybe(amount(1, 200)),
  depthOfDischargePercent: maybe(amount(5, 100)),
  altitudeM: maybe(amount(0, 4000)),
});

/** Without the keys that nothing was told of, throughout. */
const parsed = (drawn: object): Facts => factsOf(factsSchema.parse(JSON.parse(JSON.stringify(drawn))));

const claim = fc.record({
  who: fc.constantFrom('me', 'sam', 'lou'),
  value: amount(0.1, 2000),
  unit: fc.constantFrom('days', 'h', 'Ah', 'Wh', 'A', 'W', '%', 'mm²'),
});
const heard = fc.subarray([...cues], { maxLength: 5 });

/** Questions whose answer is no number, or a number only where memory or claims hold one. */
const isWords = new Set(['charge-path', 'convert', 'term', 'learn']);
const isTalk = new Set(['rig', 'help', 'privacy', 'forget', 'emergency', 'none', 'unclear']);

test.for(intents.filter(({ name }) => !isTalk.has(name)).map(intent => [intent.name, intent] as const))(
  '%s',
  ([name, intent]) => {
    let seen = 0;
    fc.assert(
      fc.property(told, fc.array(claim, { maxLength: 3 }), heard, (drawn, claims, words) => {
        const facts = Object.fromEntries(
          Object.entries(parsed(drawn)).filter(([key]) => intent.takes.includes(key as keyof Facts)),
        ) as Facts;
        if (!intent.needs.safeParse(facts).success) return;
        const setting = settingWith({ claims }, { claims, cues: new Set(words) });
        for (const [key, figure] of Object.entries(intent.reply(facts, setting).figures ?? {})) {
          if (!('low' in figure)) continue;
          seen++;
          const { low, value, high } = figure;
          expect(Number.isNaN(value), key).toBe(false);
          expect(low, key).toBeLessThanOrEqual(value);
          expect(value, key).toBeLessThanOrEqual(high);
        }
      }),
      { numRuns: 250, seed: 12 },
    );
    if (!isWords.has(name)) expect(seen).toBeGreaterThan(20);
  },
);
