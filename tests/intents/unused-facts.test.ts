import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { factsOf } from '#intents/facts.ts';
import { intents } from '#intents/index.ts';
import type { Intent } from '#intents/intent.ts';
import { unusedOf, worked } from '#intents/unused.ts';
import type { Stated } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const setting = settingWith();
const asked: readonly string[] = [
  'run-time',
  'battery-size',
  'solar-size',
  'trip',
  'charge-time',
  'generator',
];

/** Rigs that differ in what a temperature could bear on. */
const rigs: readonly Stated[] = (['agm', 'lfp'] as const).flatMap(chemistry =>
  ([{ currentA: 4, dutyPercent: 40 }, { powerW: 45 }, { currentA: 2, isAverage: true }] as const).flatMap(
    draw =>
      [-5, 3, 26, 43].map(ambientC => ({
        batteries: [{ capacityAh: 100, chemistry, stateOfChargePercent: 60 }],
        loads: [{ name: 'fridge', ...draw }],
        solar: [{ powerW: 200, controller: 'pwm' as const }],
        chargers: [
          { kind: 'generator' as const, powerW: 1000 },
          { kind: 'mains' as const, currentA: 20 },
        ],
        durationH: 48,
        ambientC,
      })),
  ),
);

/** What an answer comes to; undefined where the question can't be answered. */
function answerOf(intent: Intent, facts: Stated): string | undefined {
  const taken = Object.entries(facts).filter(([key]) => intent.takes.includes(key as keyof Stated));
  const parsed = intent.needs.safeParse(Object.fromEntries(taken));
  if (!parsed.success) return undefined;
  const { headline, lines, verdict, figures, cautions, assumed } = intent.reply(
    factsOf(parsed.data as Stated),
    setting,
  );
  return JSON.stringify([headline, lines, verdict, figures, cautions, assumed]);
}

test.for(asked)('%s: what is named as unused turns no line from frost to heat', name => {
  const intent = present(intents.find(one => one.name === name));
  const turned: string[] = [];
  for (const facts of rigs) {
    const base = answerOf(intent, facts);
    if (base === undefined) continue;
    const parsed = intent.needs.parse(
      Object.fromEntries(Object.entries(facts).filter(([key]) => intent.takes.includes(key as keyof Stated))),
    );
    const unused = unusedOf(
      intent,
      { facts, told: facts, setting },
      worked(() => intent.reply(parsed as never, setting)),
    );
    if (!unused.some(({ path }) => path[0] === 'ambientC')) continue;
    for (const ambientC of [-20, -2, 4, 20, 33, 50])
      if (answerOf(intent, { ...facts, ambientC }) !== base) turned.push(`${facts.ambientC} → ${ambientC}`);
  }
  expect(turned).toEqual([]);
});
