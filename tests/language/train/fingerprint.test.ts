import { describe, expect, test } from 'vitest';
import { asksOf, codeOf, needsOf } from '../../../src/tools/train/files.ts';
import { digest, fingerprint, fittedFiles } from '../../../src/tools/train/fingerprint.ts';
import { everyNth, groupsToFit, isClosed, readGroups } from '../../../src/tools/train/groups.ts';

describe('what of code counts', () => {
  const code = (text: string): string => codeOf(text).join(' ');
  test.for<[what: string, a: string, b: string]>([
    ['comments and white space', 'const a = 1; // one', '/** A. */\nconst  a =\n1;'],
    ['types', 'const a = (b: number): string => c(b)', 'const a = (b) => c(b)'],
    ['trailing commas', 'f(a, [b, c])', 'f(\n  a,\n  [b, c,],\n)'],
  ])('%s count for nothing', ([, a, b]) => {
    expect(code(a)).toBe(code(b));
  });
  test.for<[what: string, a: string, b: string]>([
    ['a number', 'const a = 1;', 'const a = 2;'],
    ['a text', "const a = 'b // c';", "const a = 'b // d';"],
    ['a regular expression', 'const a = /a b/;', 'const a = /a  b/;'],
    ['a name', 'f(a)', 'f(b)'],
  ])('%s counts', ([, a, b]) => {
    expect(code(a)).not.toBe(code(b));
  });
});

test('imports of types ask for nothing, data beside a file is asked for', () => {
  const text = `import type { A } from './a.ts';
import { type B, c } from './c.ts';
import json from './d.json' with { type: 'json' };
export { e } from './e.ts';
const f = new URL('./f.txt', import.meta.url);`;
  expect(asksOf(codeOf(text))).toEqual(['./c.ts', './d.json', './e.ts', './f.txt']);
});

test('the weights belong to messages, code, words and tables, and not to what never meets them', () => {
  const paths = fittedFiles();
  for (const path of [
    'src/language/lex/lex.ts',
    'src/language/recognise/units.ts',
    'src/language/propose/slots.ts',
    'src/language/decide/context-features.ts',
    'src/language/hazards/features.ts',
    'src/language/words/learned.json',
    'src/language/words/clusters.json',
    'src/catalog/appliances-table.ts',
    'src/places/data/world.txt',
    'src/quantity/units.ts',
    'src/tools/train/fit-slots.ts',
    'src/tools/train/words.ts',
    'tests/messages/loads.jsonl',
    'tests/messages/partial/cases.jsonl',
  ])
    expect(paths).toContain(path);
  expect(paths.filter(path => /closed|^src\/(?:engine|answer|telegram)\/|\.bin$/.test(path))).toEqual([]);
  expect(needsOf(['src/quantity/units.ts'])).toEqual(['src/quantity/units.ts']);
});

test('the fingerprint is the same each time, and another where a name, a content or an order is another', () => {
  expect(fingerprint()).toBe(fingerprint());
  expect(fingerprint()).toMatch(/^[0-9a-f]{16}$/);
  const of = (...parts: [string, string][]): string => digest(parts);
  const plain = of(['a', 'b'], ['c', 'd']);
  expect(of(['a', 'b'], ['c', 'd'])).toBe(plain);
  expect(of(['a', 'x'], ['c', 'd'])).not.toBe(plain);
  expect(of(['c', 'd'], ['a', 'b'])).not.toBe(plain);
  expect(of(['a', 'b\0c'], ['', 'd'])).not.toBe(plain);
  expect(of(['a', 'one\r\ntwo'])).toBe(of(['a', 'one\ntwo']));
});

describe('which messages are fitted', () => {
  test('closed ones are refused', () => {
    expect(() => groupsToFit(['tests/messages', 'tests/messages/closed'])).toThrow(/closed/);
    expect(() => groupsToFit(['elsewhere\\closed\\more'])).toThrow(/closed/);
    expect(isClosed('tests/disclosed')).toBe(false);
  });

  test('a folder gives its own files, not those below it', () => {
    const files = new Set(readGroups('tests/messages').map(group => group.file));
    expect(files).toContain('loads');
    expect(files).not.toContain('cases');
  });

  test('a sample is every N-th', () => {
    const groups = readGroups('tests/messages/partial').slice(0, 10);
    expect(everyNth(groups, 3)).toEqual([0, 3, 6, 9].map(i => groups[i]));
    expect(everyNth(groups, 5, 1)).toEqual([1, 6].map(i => groups[i]));
    expect(everyNth(groups, 1)).toEqual(groups);
  });
});
