import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { programFiles, read } from './source.ts';

/** Names that the project once made up, each with the field's word that took its place. */
const renamed: Readonly<Record<string, string>> = {
  Setting: 'RequestContext',
  Owed: 'PendingAcks',
  Taken: 'OffsetTracker',
  lay: 'render',
  isPassing: 'isTransient',
  Patience: 'RetryOptions',
  openPatiently: 'openWithRetry',
  GiveBack: 'IdleGc',
  Quiet: 'IdleGcOptions',
  Room: 'BotContext',
  Mind: 'AnswerDeps',
  Thought: 'Draft',
  Said: 'ParsedMessage',
  Last: 'Frame',
  Thing: 'Mention',
};

/** Gone without a heir, or a word of everyday speech for something that the field has a word for. */
const gone = ['standIn', 'turn', 'twins', 'colour', 'gloss', 'tells', 'languageMarkers', 'passing', 'aside'];

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

test('no exported name is one of the old ones', () => {
  const old = new Set([...Object.keys(renamed), ...gone]);
  expect(exported.filter(({ name }) => old.has(name))).toEqual([]);
});

test('the changes tell each old name and its new one', () => {
  const changes = read('docs/changes/next.md');
  const missing = Object.entries(renamed).filter(
    ([old, now]) => !new RegExp(`\\| \`${old}\`[^|]*\\| \`${now}\``).test(changes),
  );
  expect(missing).toEqual([]);
});

test('names declared in two places grow no more', () => {
  expect(declaredTwice().length, declaredTwice().sort().join(' ')).toBeLessThanOrEqual(95);
});
