import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { pages } from '../../src/tools/pages.ts';
import { files, read, root } from './source.ts';

const written = await pages();

test.for(Object.entries(written))('%s is what npm run docs would write', ([path, text]) => {
  const isFresh = existsSync(`${root}${path}`) && read(path).replaceAll('\r\n', '\n') === text;
  expect(isFresh, `${path} is out of date: run "npm run docs"`).toBe(true);
});

test('the pages hold something', () => {
  expect(written['docs/method.md']).toMatch(/### usableCapacity\n/);
  expect(written['docs/questions.md']).toMatch(/## How long will it last\?\n/);
});

test('links between the pages lead to files', () => {
  const pagesOfOurs = files('*.md', 'docs/**/*.md', 'deploy/**/*.md', 'tests/**/*.md');
  const broken = pagesOfOurs.flatMap(path =>
    [...read(path).matchAll(/\]\(([^)#\s:]+)(?:#[^)]*)?\)/g)]
      .map(([, to]) => new URL(present(to), `file:///${path}`).pathname.slice(1))
      .filter(to => !existsSync(`${root}${to}`))
      .map(to => `${path} → ${to}`),
  );
  expect(broken).toEqual([]);
});

test('every command that the pages name is one of package.json', () => {
  const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };
  const named = files('*.md', 'docs/**/*.md', 'deploy/**/*').flatMap(path =>
    /\.(md|yml|yaml|service)$|Dockerfile$/.test(path)
      ? [...read(path).matchAll(/npm run (?:-s )?([a-z][a-z:-]*)/g)].map(([, name]) => present(name))
      : [],
  );
  expect([...new Set(named)].filter(name => !(name in scripts))).toEqual([]);
});
