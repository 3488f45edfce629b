import { expect, test } from 'vitest';
import { lately } from '#basics/lately.ts';
import { dropOldest } from '#basics/oldest.ts';
import { isPartOf } from '#basics/part-of.ts';
import { present } from '#basics/present.ts';
import { without } from '#basics/without.ts';

test('what is there is given back, nothing and false among it; what is missing is named', () => {
  expect([present(0), present(''), present(false)]).toEqual([0, '', false]);
  expect(() => present(undefined, 'the battery')).toThrow('missing: the battery');
  expect(() => present(null)).toThrow('missing');
});

test('keys are left out of a copy, and an object that has none of them stays itself', () => {
  const load: { name: string; powerW?: number } = { name: 'fridge', powerW: 45 };
  expect(without(load, 'powerW')).toEqual({ name: 'fridge' });
  expect(load).toEqual({ name: 'fridge', powerW: 45 });
  const bare: { name: string; powerW?: number } = { name: 'fridge' };
  expect(without(bare, 'powerW')).toBe(bare);
});

test('the first that was put in goes first, from maps and sets; from an empty one nothing', () => {
  const map = new Map([
    ['a', 1],
    ['b', 2],
  ]);
  map.set('a', 3);
  dropOldest(map);
  expect([...map]).toEqual([['b', 2]]);
  const set = new Set<string>();
  dropOldest(set);
  expect(set.size).toBe(0);
});

test('what was asked of late is not worked out again, nothing among it; the oldest goes first', () => {
  const asked: string[] = [];
  const length = lately((text: string): number | undefined => {
    asked.push(text);
    return text.length || undefined;
  }, 2);
  expect(['', 'a', '', 'a', 'bb', '', 'bb'].map(length)).toEqual([
    undefined,
    1,
    undefined,
    1,
    2,
    undefined,
    2,
  ]);
  expect(asked).toEqual(['', 'a', 'bb', '']);
});

test.for<[part: unknown, whole: unknown, isIn: boolean]>([
  [{ a: 1 }, { a: 1, b: 2 }, true],
  [{ a: 1, b: 2 }, { a: 1 }, false],
  [[{ a: 1 }], [{ b: 2 }, { a: 1, b: 3 }], true],
  [[{ a: 1 }], [{ a: 2 }], false],
  [{ a: [1] }, { a: 1 }, false],
  [{}, 1, false],
  ['x', 'x', true],
])('%j is a part of %j: %s', ([part, whole, isIn]) => expect(isPartOf(part, whole)).toBe(isIn));
