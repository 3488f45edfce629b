import { describe, expect, test } from 'vitest';
import { differences, figureDifferences } from './match.ts';
import { phraseSchema } from './phrases.ts';

const fridge = { name: 'fridge', count: 1, currentA: 1.2, supply: 'dc' };

describe('what is missing or extra is seen', () => {
  test.for<[what: string, got: unknown, want: unknown, problems: number]>([
    ['the same', { loads: [fridge] }, { loads: [{ name: 'Fridges', currentA: 1.2 }] }, 0],
    ['another number', { loads: [fridge] }, { loads: [{ currentA: 1.3 }] }, 1],
    ['one load too many', { loads: [fridge, fridge] }, { loads: [{ name: 'fridge', currentA: 1.2 }] }, 1],
    [
      'one too few',
      { loads: [fridge] },
      { loads: [{ name: 'fridge', currentA: 1.2 }, { name: 'light' }] },
      1,
    ],
    [
      'a key too many',
      { loads: [{ ...fridge, hoursPerDay: 24 }] },
      { loads: [{ name: 'fridge', currentA: 1.2 }] },
      1,
    ],
    [
      'count 2 unsaid',
      { loads: [{ ...fridge, count: 2 }] },
      { loads: [{ name: 'fridge', currentA: 1.2 }] },
      1,
    ],
    ['another fact beside', { loads: [fridge], durationH: 72 }, { durationH: 72 }, 0],
    ['nothing there', {}, { inverter: { powerW: 100 } }, 1],
    [
      'in another order',
      { batteries: [{ capacityAh: 1 }, { capacityAh: 9 }] },
      { batteries: [{ capacityAh: 9 }, { capacityAh: 1 }] },
      0,
    ],
    [
      'a unit by its long name',
      { claims: [{ who: 'sam', value: 2, unit: 'days' }] },
      { claims: [{ who: 'sam', value: 2, unit: 'nights' }] },
      0,
    ],
    ['a null', { month: null }, { month: 4 }, 1],
  ])('%s', ([, got, want, problems]) => {
    expect(differences(got, want, true)).toHaveLength(problems);
  });

  test('figures out of range, absent, or the wrong word', () => {
    const figures = { runTime: { value: 42 }, recommendation: { value: 'dcdc' } };
    expect(
      figureDifferences(figures, { runTime: { min: 40, max: 44 }, recommendation: { value: 'DCDC' } }),
    ).toEqual([]);
    expect(
      figureDifferences(figures, {
        runTime: { max: 41 },
        dailyUse: { min: 1 },
        recommendation: { value: 'isolator' },
      }),
    ).toHaveLength(3);
  });
});

describe('rows are checked', () => {
  test.for<[row: object, isRight: boolean]>([
    [{ say: 'a', means: { loads: [{ powerW: 5 }] }, figures: { runTime: { min: 1 } }, show: 'help' }, true],
    [{ say: 'a', not: true }, true],
    [{ say: '' }, false],
    [{ say: 'a', mean: {} }, false],
    [{ say: 'a', means: { load: [] } }, false],
    [{ say: 'a', means: { loads: [{ power: 5 }] } }, false],
    [{ say: 'a', figures: { runTime: {} } }, false],
    [{ say: 'a', not: true, means: {} }, false],
  ])('%j', ([row, isRight]) => {
    expect(phraseSchema.safeParse(row).success).toBe(isRight);
  });
});
