import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { programFiles, read } from './source.ts';

/** Gone without a heir, with what they belonged to: ordered passes over a message, answers in other languages. */
const gone = ['turn', 'twins', 'colour', 'gloss', 'tells', 'languageMarkers', 'passing', 'aside'];

/** Old names that are a word of the code again, each where it means what it says. */
const again: ReadonlySet<string> = new Set(['Claim', 'Reply', 'Verdict', 'read', 'Reading']);

/** A row of a table of two columns. */
const row = /^\| ([^|]+) \| ([^|]+) \|$/gm;
const namesIn = (cell: string): string[] =>
  [...cell.matchAll(/`([\w$]+)`/g)].map(([, name]) => present(name));

/** Names that the project once made up, each row with the field's words that took their place, as the changes tell. */
const renamed = [...read('docs/changes/next.md').matchAll(row)]
  .map(([, old, now]) => ({ old: namesIn(present(old)), now: namesIn(present(now)) }))
  .filter(({ old, now }) => old.length > 0 && now.length > 0);

const declaration =
  /^export (?:async )?(?:abstract )?(?:const|let|function\*?|class|interface|type) ([A-Za-z_$][\w$]*)/gm;

/** What each file exports by name. */
const exported = programFiles().flatMap(path =>
  [...read(path).matchAll(declaration)].map(([, name]) => ({ path, name: present(name) })),
);

const declaredTwice = (): string[] => {
  const paths = Map.groupBy(exported, ({ name }) => name);
  return [...paths].filter(([, at]) => at.length > 1).map(([name]) => name);
};

test('exported names are found', () => {
  expect(exported.length).toBeGreaterThan(1500);
  expect(exported.map(({ name }) => name)).toContain('RequestContext');
});

test('the changes tell old names and new ones', () => {
  expect(renamed.length).toBeGreaterThan(25);
});

test('no exported name is one of the old ones', () => {
  const old = new Set([...renamed.flatMap(one => one.old), ...gone].filter(name => !again.has(name)));
  expect(old.size).toBeGreaterThan(30);
  expect(exported.filter(({ name }) => old.has(name))).toEqual([]);
});

test('each new name that the changes tell is one of the code', () => {
  const now = new Set(exported.map(({ name }) => name));
  const ofTests = read('tests/house/layers.ts');
  const isThere = (name: string): boolean =>
    now.has(name) ||
    ofTests.includes(`export const ${name}:`) ||
    ofTests.includes(`export function ${name}(`);
  expect(renamed.flatMap(one => one.now).filter(name => !isThere(name))).toEqual([]);
});

test('an old name that is a word again was one', () => {
  const old = new Set(renamed.flatMap(one => one.old));
  expect([...again].filter(name => !old.has(name))).toEqual([]);
});

test('names declared in two places grow no more', () => {
  expect(declaredTwice().length, declaredTwice().sort().join(' ')).toBeLessThanOrEqual(95);
});
