import { describe, expect, test } from 'vitest';
import { type Correction, correct, holds } from '#rig/correct.ts';
import type { Stated } from '#rig/rig.ts';

const agm: Stated = { batteries: [{ count: 2, capacityAh: 57, chemistry: 'agm' }] };

describe('putting right', () => {
  test.each<[says: string, facts: Stated, slip: Correction, becomes: Stated]>([
    ['75 not 57', agm, { from: 57, to: 75 }, { batteries: [{ count: 2, capacityAh: 75, chemistry: 'agm' }] }],
    [
      '120 Ah, whatever stood there',
      agm,
      { to: 120, unit: 'Ah' },
      { batteries: [{ count: 2, capacityAh: 120, chemistry: 'agm' }] },
    ],
    ['a number that never stood there changes nothing', agm, { from: 99, to: 1 }, agm],
    ['a count is no quantity', agm, { from: 2, to: 3 }, agm],
    [
      'only the first of two alike',
      { loads: [{ name: 'fan', powerW: 20 }], solar: [{ powerW: 20 }] },
      { from: 20, to: 30 },
      { loads: [{ name: 'fan', powerW: 30 }], solar: [{ powerW: 20 }] },
    ],
    [
      '“1.4, sorry” after 14 A: the same digits',
      { loads: [{ name: 'fridge', currentA: 14 }], batteries: [{ capacityAh: 100 }] },
      { to: 1.4 },
      { loads: [{ name: 'fridge', currentA: 1.4 }], batteries: [{ capacityAh: 100 }] },
    ],
    [
      '“120, sorry” with one figure near it',
      { loads: [{ name: 'fridge', currentA: 2 }], batteries: [{ capacityAh: 100 }] },
      { to: 120 },
      { loads: [{ name: 'fridge', currentA: 2 }], batteries: [{ capacityAh: 120 }] },
    ],
    [
      'a number alone between two figures changes neither',
      { solar: [{ powerW: 100 }], batteries: [{ capacityAh: 120 }] },
      { to: 110 },
      { solar: [{ powerW: 100 }], batteries: [{ capacityAh: 120 }] },
    ],
    ['a number far from all changes nothing', agm, { to: 3 }, agm],
    [
      '40 watts, not amps',
      { loads: [{ name: 'fridge', currentA: 40 }] },
      { to: 40, unit: 'W' },
      { loads: [{ name: 'fridge', powerW: 40 }] },
    ],
  ])('%s', (_says, facts, slip, becomes) => {
    expect(correct(facts, slip)).toEqual(becomes);
  });

  test('the facts handed in stay as they were', () => {
    const before = structuredClone(agm);
    correct(agm, { from: 57, to: 75 });
    expect(agm).toEqual(before);
  });
});

test('whether a number stands in the facts; counts are none', () => {
  expect(holds(agm, 57)).toBe(true);
  expect(holds(agm, 2)).toBe(false);
  expect(holds(agm, 75)).toBe(false);
});
