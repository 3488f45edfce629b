import { describe, expect, test } from 'vitest';
import { sound } from '#conversation/told/sound.ts';
import { factsSchema, type Stated } from '#rig/rig.ts';

describe('what can’t be meant is taken out and named', () => {
  test.each<[what: string, told: Stated, left: Stated, thing: string, said: string]>([
    [
      'a battery of 0 Ah',
      { batteries: [{ capacityAh: 0, chemistry: 'agm' }] },
      { batteries: [{ chemistry: 'agm' }] },
      'battery',
      '0',
    ],
    [
      'a day of 30 hours',
      { loads: [{ name: 'fan', hoursPerDay: 30 }] },
      { loads: [{ name: 'fan' }] },
      'load',
      '30',
    ],
    [
      '130 % full',
      { batteries: [{ stateOfChargePercent: 130, capacityAh: 100 }] },
      { batteries: [{ capacityAh: 100 }] },
      'battery',
      '130',
    ],
    ['a panel of a megawatt', { solar: [{ powerW: 1e6 }] }, { solar: [{}] }, 'panel', '1000000'],
  ])('%s', (_what, told, left, thing, said) => {
    const { facts, issues } = sound(told);
    expect(facts).toEqual(left);
    expect(issues).toEqual([{ code: 'absurd-value', data: { thing, said } }]);
    expect(factsSchema.safeParse(facts).success).toBe(true);
  });
});

test('what can be meant stays, and is not touched', () => {
  const told: Stated = { loads: [{ name: 'fridge', currentA: 1.2 }], durationH: 72 };
  expect(sound(told)).toEqual({ facts: told, issues: [] });
  expect(sound(told).facts).not.toBe(told);
});

test('a load that nobody named is called a load', () => {
  expect(sound({ loads: [{ currentA: 5 }] } as unknown as Stated).facts).toEqual({
    loads: [{ name: 'load', currentA: 5 }],
  });
});
