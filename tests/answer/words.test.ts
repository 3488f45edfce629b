import { expect, test } from 'vitest';
import { english } from '#answer/speech.ts';
import { present } from '#basics/present.ts';
import { files, read } from '../house/source.ts';

/** The keys and sentences that code says: `say('key', 'text'`, in one line or two. */
const said = (paths: readonly string[]): (readonly [key: string, text: string])[] =>
  paths.flatMap(path =>
    [...read(path).matchAll(/\bsay\(\s*'([^']+)',\s*(?:'((?:[^'\\]|\\.)*)'|"((?:[^"\\]|\\.)*)")/g)].map(
      ([, key, single, double]) => [present(key), single ?? present(double)] as const,
    ),
  );

test('a key says one thing within a question and what all answers share', () => {
  const shared = said([...files('src/answer/*.ts', 'src/conversation/*.ts'), ...files('intents/*.ts')]);
  const twice = files('intents/*/').flatMap(folder => {
    const all = [...shared, ...said(files(`${folder}*.ts`))];
    const texts = new Map<string, Set<string>>();
    for (const [key, text] of all) texts.set(key, (texts.get(key) ?? new Set()).add(text));
    return [...texts].filter(([, found]) => found.size > 1).map(([key]) => `${folder} ${key}`);
  });
  expect(shared.length).toBeGreaterThan(20);
  expect(twice).toEqual([]);
});

test.each([
  ['{ah} Ah of {kind}', { ah: 100, kind: 'AGM' }, '100 Ah of AGM'],
  ['{missing} stays', {}, '{missing} stays'],
  ['{name} once', { name: '{name} {name}' }, '{name} {name} once'],
  ['no gaps', undefined, 'no gaps'],
])('%s filled with %j', (text, gaps, filled) => expect(english.say('key', text, gaps)).toBe(filled));
