import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { read, root } from './source.ts';

const readme = read('README.md');
const folded = (text: string): string => text.replace(/\s+/g, ' ').trim();

const examples = [...readme.matchAll(/```\n(> [\s\S]*?)\n```/g)].flatMap(([, block]) =>
  present(block)
    .split(/\n\n(?=> )/)
    .map(one => present(/^> (.*)\n([\s\S]*)$/.exec(one)))
    .map(([, asked, answer]) => ({ asked: present(asked), answer: present(answer) })),
);

test('the README has examples', () => expect(examples.length).toBeGreaterThan(3));

test.for(examples)('the answer in the README is what the program says: $asked', ({ asked, answer }) => {
  const { stdout } = spawnSync(process.execPath, [`${root}src/boot.mjs`, 'ask', asked], {
    cwd: root,
    encoding: 'utf8',
    env: { ...process.env, BOT_TOKEN: '' },
  });
  expect(folded(answer)).toBe(folded(stdout));
});

test('pages and pictures that the README and DEVELOPERS.md name are there', () => {
  const named = [readme, read('DEVELOPERS.md')].flatMap(page => [
    ...[...page.matchAll(/src="([^"]+)"/g)].map(([, path]) => present(path)),
    ...[...page.matchAll(/`((?:docs|src|deploy|tests|intents)\/[\w./-]*)`/g)].map(([, path]) =>
      present(path),
    ),
  ]);
  expect(named.length).toBeGreaterThan(20);
  // `src/rule/trees.json` and its like are files; `intents/what-panel/` is what a command makes.
  expect(named.filter(path => !existsSync(`${root}${path}`) && path !== 'intents/what-panel/')).toEqual([]);
});

test('what it says of Node is what package.json says', () => {
  const { engines } = JSON.parse(read('package.json')) as { engines: { node: string } };
  expect(folded(readme)).toContain(`(${engines.node.replace('>=', '')} or newer)`);
  expect(read('docs/running.md')).toContain('Needs Node 20 or newer with npm');
});

test('its works are those that published checks name', () => {
  const checks = [...new Set(readme.match(/FAO-56|Duffie & Beckman|NREL|IEC 60228|IEEE 485|ISO 8820/g))];
  expect(checks.length).toBe(6);
  const published =
    read('docs/method.md') +
    ['battery', 'cable', 'solar-radiation', 'solar-panel', 'solar-tilt']
      .map(name => read(`tests/published/${name}.ts`))
      .join('');
  expect(checks.filter(work => !published.includes(present(work.split(' &')[0])))).toEqual([]);
});

test('the commands of package.json run in any shell, Windows too', () => {
  const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };
  expect(Object.values(scripts).filter(script => /\bexec\b|\$|;/.test(script))).toEqual([]);
});

test('DEVELOPERS.md is short', () => {
  expect(read('DEVELOPERS.md').trimEnd().split('\n').length).toBeLessThan(200);
});
