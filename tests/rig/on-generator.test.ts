import { expect, test } from 'vitest';
import { withChargerOn } from '#rig/on-generator.ts';
import type { Stated } from '#rig/rig.ts';

test('amps told of a generator are its charger’s', () => {
  expect(withChargerOn({ chargers: [{ kind: 'generator', currentA: 30 }] })).toEqual({
    chargers: [{ kind: 'generator' }, { kind: 'mains', currentA: 30 }],
  });
});

test.each<Stated>([
  { chargers: [{ kind: 'generator', powerW: 2000 }] },
  { chargers: [{ kind: 'mains', currentA: 10 }] },
  { chargers: [{ kind: 'generator', powerW: 1000, currentA: 8 }] },
  {},
])('%j stays as it was told', facts => {
  expect(withChargerOn(facts)).toEqual(facts);
});
