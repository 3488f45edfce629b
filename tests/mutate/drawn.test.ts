import { expect, test } from 'vitest';
import { drawn, type Mutant } from './drawn.ts';

const mutant = (line: number, is: 'static' | 'hybrid' | 'run', replacement = 'true'): Mutant => ({
  id: `${line}${is}${replacement}`,
  fileName: '/any/folder/src/engine/a.ts',
  location: { start: { line, column: 3 }, end: { line, column: 9 } },
  replacement,
  static: is !== 'run',
  coveredBy: is === 'static' ? [] : ['a test'],
});
const all = Array.from({ length: 400 }, (_, i) => [
  mutant(i, 'static'),
  mutant(i, 'run', '"x"'),
  mutant(i, 'hybrid', '"y"'),
]).flat();

test('as many as asked for; the same from the same seed in any order, others from another', () => {
  const seven = drawn(all, { size: 50, seed: 7, isStatic: false });
  expect(seven.size).toBe(50);
  expect(drawn(all.toReversed(), { size: 50, seed: 7, isStatic: false })).toEqual(seven);
  expect(drawn(all, { size: 50, seed: 8, isStatic: false })).not.toEqual(seven);
});

test('the folder that the files stand in changes nothing', () => {
  const moved = all.map(one => ({ ...one, fileName: one.fileName.replace('folder', 'sandbox') }));
  const draw = { size: 50, seed: 7, isStatic: true };
  expect(drawn(moved, draw)).toEqual(drawn(all, draw));
});

test('static are those that no test meets while it runs', () => {
  const some = (isStatic: boolean) => [...drawn(all, { size: 2000, seed: 7, isStatic })];
  expect(some(true)).toHaveLength(400);
  expect(some(true).every(id => id.includes('static'))).toBe(true);
  expect(some(false)).toHaveLength(800);
});

test('each is as likely as any other: of 1,000 seeds every place is drawn by about its share', () => {
  const few = all.filter(({ id }) => id.includes('static')).slice(0, 20);
  const times = new Map<string, number>();
  for (let seed = 1; seed <= 1000; seed++)
    for (const id of drawn(few, { size: 5, seed, isStatic: true })) times.set(id, (times.get(id) ?? 0) + 1);
  // 250 times each, with a spread of 14: four of those either way.
  for (const { id } of few) expect(Math.abs((times.get(id) ?? 0) - 250)).toBeLessThan(56);
});
