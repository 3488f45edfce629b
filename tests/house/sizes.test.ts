import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { programFiles, read } from './source.ts';

/** Tables of data: their length is the world's, not ours. */
const isTable = (path: string): boolean =>
  /(\/(words|data)\/|\/(tables|units|[a-z-]+-table)\.ts$)/.test(path);

const sizes = programFiles()
  .filter(path => !isTable(path))
  .map(path => ({ path, lines: read(path).trimEnd().split('\n').length }))
  .sort((a, b) => a.lines - b.lines);

const at = (share: number): number => present(sizes[Math.ceil(share * sizes.length) - 1]).lines;
const over = (limit: number): string[] =>
  sizes.filter(file => file.lines > limit).map(({ path, lines }) => `${path} has ${lines} lines`);

test('half of the files have 80 lines or less', () => {
  expect(sizes.length).toBeGreaterThan(10);
  expect(at(0.5)).toBeLessThanOrEqual(80);
});

test('nine in ten have less than 200', () => {
  expect(at(0.9), over(199).join('\n')).toBeLessThan(200);
});

test('none has more than 300', () => {
  expect(over(300)).toEqual([]);
});
