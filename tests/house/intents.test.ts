import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { intentNames } from '#answer/answer.ts';
import { present } from '#basics/present.ts';
import { intents } from '#intents';
import { readPhrases } from '../intents/phrases.ts';
import { files, importsOf, root } from './source.ts';

const folders = files('intents/*/').map(path => present(path.replace(/\/$/, '').split('/')[1]));
/** Said when nothing else fits; nobody asks for it, so it is in no list of examples. */
const unasked = ['none', 'unclear'];

test('every folder is listed and every listed question has its folder', () => {
  expect(intents.map(intent => intent.name).sort()).toEqual([...folders].sort());
});

test('no name is listed twice, and each is one of answer.ts', () => {
  expect(new Set(intents.map(intent => intent.name)).size).toBe(intents.length);
  expect(intents.map(i => i.name).filter(name => !intentNames.includes(name))).toEqual([]);
});

test('titles are there, short enough for a button, and differ', () => {
  const titles = intents.map(intent => intent.title);
  expect(titles.filter(title => title.length < 4 || title.length > 40)).toEqual([]);
  expect(new Set(titles).size).toBe(titles.length);
});

describe.for(folders)('intents/%s', folder => {
  test('has its files', () => {
    for (const name of ['intent.ts', 'answer.ts', 'phrases.json'])
      expect(existsSync(`${root}intents/${folder}/${name}`), name).toBe(true);
  });

  test('reaches the engine through compute.ts', () => {
    const users = files(`intents/${folder}/*.ts`).filter(path =>
      importsOf(path).some(i => i.how === 'static' && i.file?.startsWith('src/engine/')),
    );
    expect(users.filter(path => !path.endsWith('/compute.ts'))).toEqual([]);
  });

  test.skipIf(unasked.includes(folder))('has eight phrases, two shown in help, two near misses', () => {
    const phrases = readPhrases(folder);
    expect(phrases.filter(row => !row.not).length).toBeGreaterThanOrEqual(8);
    expect(phrases.filter(row => row.show === 'help').length).toBeGreaterThanOrEqual(2);
    expect(phrases.filter(row => row.not).length).toBeGreaterThanOrEqual(2);
  });

  test('says nothing twice', () => {
    const says = readPhrases(folder).map(row => row.say.toLowerCase());
    expect(says.filter((say, i) => says.indexOf(say) !== i)).toEqual([]);
  });
});
