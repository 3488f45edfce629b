import { readFileSync } from 'node:fs';
import { parse } from 'dotenv';
import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { readConfig } from '../../src/config.ts';
import { root } from './script.ts';
import { isSetting } from './settings.ts';

const path = `${root}deploy/.env.example`;
const example = parse(readFileSync(path));

test('every setting of the program stands in the example, and nothing else', () => {
  const source = readFileSync(`${root}src/config.ts`, 'utf8');
  const named = new Set([...source.matchAll(/^ {2}([A-Z][A-Z_]+):/gm)].map(([, name]) => present(name)));
  expect(named.size).toBeGreaterThan(8);
  expect([...named].filter(name => !isSetting(name))).toEqual([]);
  expect(Object.keys(example).sort()).toEqual([...named].sort());
});

test('copied as it stands, the example changes nothing', () => {
  expect(readConfig({}, path)).toEqual(readConfig({}, '/nonexistent/.env'));
});
