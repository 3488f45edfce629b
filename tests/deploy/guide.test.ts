import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { root } from './script.ts';
import { filledIn, isSetting } from './settings.ts';

const guide = readFileSync(`${root}docs/running.md`, 'utf8');
const headings = [...guide.matchAll(/^## (.+)$/gm)].map(([, title]) => present(title));
const section = (title: string): string => guide.split(`\n## ${title}\n`)[1]?.split('\n## ')[0] ?? '';

test.each(['Plain', 'systemd', 'Docker', 'Compose', 'Kubernetes'])(
  '%s: it can be set up, backed up, rotated, upgraded and rolled back by the guide alone',
  way => {
    expect(section(way)).toMatch(/```sh\n/);
    for (const title of ['Back up and restore', 'A new key', 'Upgrade and roll back'])
      expect(section(title), title).toMatch(new RegExp(`^(\\| )?${way}\\b`, 'im'));
  },
);

test('links within the guide lead to its sections', () => {
  const anchors = headings.map(title => title.toLowerCase().replaceAll(' ', '-'));
  const links = [...guide.matchAll(/\]\(#([^)]+)\)/g)].map(([, to]) => present(to));
  expect(links.length).toBeGreaterThan(5);
  expect(links.filter(link => !anchors.includes(link))).toEqual([]);
});

test('every file of deploy/ that an operator touches is named, and every file named is there', () => {
  const named = [...guide.matchAll(/(?<![\w/])(?:deploy|src)\/[\w./-]*\w/g)].map(([path]) => path);
  expect(named.filter(path => !existsSync(`${root}${path}`))).toEqual([]);
  const all = readdirSync(`${root}deploy`, { recursive: true }).map(name => `deploy/${name}`);
  const helpers = ['deploy/database.sh', 'deploy/sqlite.mjs', 'deploy/Dockerfile.dockerignore'];
  const files = all.filter(path => statSync(`${root}${path}`).isFile() && !helpers.includes(path));
  expect(files.filter(path => !named.includes(path))).toEqual([]);
});

test('every setting that the guide names is one', () => {
  const names = [...guide.matchAll(/\b([A-Z]+(?:_[A-Z]+)+)\b/g)].map(([, name]) => present(name));
  const unknown = [...new Set(names)].filter(name => !isSetting(name) && !(name in filledIn));
  expect(unknown).toEqual([]);
});

test('its time to stop is the program’s', () => {
  const [, ms] = present(/stopWithinMs = (\d+);/.exec(readFileSync(`${root}src/main.ts`, 'utf8')));
  expect(guide).toContain(`running answers get ${Number(ms) / 1000} seconds`);
});
