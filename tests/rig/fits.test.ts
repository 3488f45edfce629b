import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { present } from '#basics/present.ts';
import { memorySchema } from '#conversation/memory.ts';
import { fits } from '#rig/fits.ts';
import { factsSchema } from '#rig/rig.ts';

const odd = fc.constantFrom<unknown>(
  undefined,
  null,
  true,
  '',
  'agm',
  'mixed',
  'x'.repeat(61),
  0,
  -1,
  1,
  6.5,
  24,
  25,
  1e7,
  1e30,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  [],
  {},
  [1],
  ['x'],
  [null],
);
const row = fc.dictionary(
  fc.constantFrom('name', 'count', 'currentA', 'powerW', 'capacityAh', 'chemistry', 'kind', 'drivingH', 'x'),
  odd,
  { maxKeys: 4 },
);
const anything = fc.oneof(odd, row, fc.array(row, { maxLength: 3 }));
// Most facts are numbers: many of these are sound.
const likely = fc.oneof({ weight: 3, arbitrary: fc.constantFrom<unknown>(1, 2, 6, 12) }, anything);
const facts = fc.dictionary(fc.constantFrom(...Object.keys(factsSchema.shape), 'unknown'), likely, {
  maxKeys: 3,
});

describe('the plain test of a shape says what zod says', () => {
  test('of facts', () => {
    let sound = 0;
    fc.assert(
      fc.property(facts, value => {
        const isSound = factsSchema.safeParse(value).success;
        if (isSound && Object.keys(value).length > 0) sound++;
        return fits(factsSchema)(value) === isSound;
      }),
      { numRuns: 1000, seed: 16 },
    );
    // Else nothing would be told of what is sound.
    expect(sound).toBeGreaterThan(100);
  });

  test('of a memory with one thing in it changed', () => {
    const memory = {
      version: 2,
      rigs: { '': { batteries: [{ capacityAh: 100 }] } },
      frames: [
        {
          intent: 'run-time',
          facts: { loads: [{ name: 'fridge', currentA: 1.2 }] },
          claims: [],
          from: 'kim',
          at: 1,
        },
      ],
      talk: { lastValues: [['durationH', 3]], asks: [['kim', 'trip']], at: 1 },
      undo: { from: 'kim', at: 1, rigs: { kim: null } },
      learned: {
        '': { at: 1, mean: [1, 2, 3, 4, 5], cov: Array(15).fill(0), readings: 1, gear: [1, 2, 3] },
      },
      claims: [],
      lessons: {},
      settings: {},
    };
    expect(fits(memorySchema)(memory)).toBe(true);
    const paths: (string | number)[][] = [];
    const walk = (value: unknown, path: (string | number)[]): void => {
      paths.push(path);
      if (Array.isArray(value)) for (const [i, one] of value.entries()) walk(one, [...path, i]);
      else if (typeof value === 'object' && value !== null)
        for (const [key, one] of Object.entries(value)) walk(one, [...path, key]);
    };
    walk(memory, []);
    fc.assert(
      fc.property(fc.constantFrom(...paths.slice(1)), anything, (path, value) => {
        const copy = structuredClone(memory) as never;
        const owner = path
          .slice(0, -1)
          .reduce<Record<string | number, unknown>>((inner, key) => inner[key] as never, copy);
        owner[present(path.at(-1))] = value;
        return fits(memorySchema)(copy) === memorySchema.safeParse(copy).success;
      }),
      { numRuns: 1000, seed: 16 },
    );
  });

  test('what it does not know of a schema, zod is asked', () => {
    const even = z.strictObject({ n: z.number().multipleOf(2), day: z.date().optional() });
    expect(fits(even)({ n: 4 })).toBe(true);
    expect(fits(even)({ n: 3 })).toBe(false);
    expect(fits(even)({ n: 4, day: new Date(0) })).toBe(true);
    expect(fits(z.object({ n: z.number() }))({ n: 1, more: 2 })).toBe(true);
  });
});
