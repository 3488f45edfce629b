import { expect, test } from 'vitest';
import { hear } from '#conversation/hear.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { asDriven } from '#conversation/turns/as-driven.ts';

const heard = (text: string, ...options: object[]) => ({
  ...hear(emptyMemory(), {
    chat: 'c',
    from: 'kim',
    text,
    at: new Date('2026-01-15T09:00:00Z'),
    kind: 'group',
  }),
  intent: 'charge-time',
  facts: { durationH: 2 },
  options: options.map(stated => ({ intent: 'charge-time', probability: 0.4, stated })) as never,
});

test('hours driven are the drive’s where reading is torn between it and the question’s', () => {
  const driven = asDriven(
    heard('drove 2 hours with a 30A dcdc', { durationH: 2 }, { drivingHoursPerDay: 2 }),
  );
  expect(driven.facts).toEqual({ drivingHoursPerDay: 2 });
  expect(driven.options).toHaveLength(1);
  expect(driven.options[0]?.probability).toBeCloseTo(0.8, 6);
});

test.each([
  ['nobody drives', '2 hours on a 30A charger', [{ durationH: 2 }, { drivingHoursPerDay: 2 }]],
  ['no reading has it so', 'drove here, 2 hours on a 30A charger', [{ durationH: 2 }]],
])('not where %s', (_why, text, options) => {
  expect(asDriven(heard(text, ...options)).facts).toEqual({ durationH: 2 });
});
