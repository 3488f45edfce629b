import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { IntMap } from '../../../src/language/decide/int-map.ts';

const entries = fc.array(fc.tuple(fc.integer({ min: -(2 ** 31), max: 2 ** 31 - 1 }), fc.nat(1e6)));
/** Keys that meet at one place. */
const crowded = fc.array(
  fc.tuple(
    fc.nat(20).map(n => n * 4096),
    fc.nat(1e6),
  ),
);

test.each([
  ['scattered', entries],
  ['crowded', crowded],
])('holds what a Map holds: %s keys', (_, arbitrary) => {
  fc.assert(
    fc.property(arbitrary, pairs => {
      const map = new Map(pairs);
      const ours = IntMap.from(pairs);
      expect(ours.size).toBe(map.size);
      for (const [key, value] of map) expect(ours.get(key)).toBe(value);
      expect(ours.get(12345)).toBe(map.get(12345) ?? -1);
      expect(new Map(ours.entries())).toEqual(map);
      ours.clear();
      expect(ours.size).toBe(0);
      for (const key of map.keys()) expect(ours.get(key)).toBe(-1);
    }),
  );
});

test('numbers keys by their places', () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer({ min: -1000, max: 1000 })), keys => {
      const map = IntMap.numbering(Int32Array.from(keys));
      expect(keys.map(key => map.get(key))).toEqual(keys.map((_, n) => n));
      expect(map.get(5000)).toBe(-1);
    }),
  );
});
