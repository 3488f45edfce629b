import { FluentResource } from '@fluent/bundle';
import { describe, expect, test } from 'vitest';
import { printAssumed } from '#answer/assumed.ts';
import { languages, speech } from '#answer/speech.ts';
import { assumptionLabels, cautions } from '#answer/words/en.ts';
import { intents } from '#intents';
import { foreign as german } from '#language/words/de/index.ts';
import { foreign as spanish } from '#language/words/es/index.ts';
import { foreign as french } from '#language/words/fr/index.ts';
import { files, read } from '../house/source.ts';
import { readPhrases } from '../intents/phrases.ts';
import { answerTo } from '../language/foreign.ts';

const others = languages().filter(language => language !== 'en');
/** The questions that speak other languages. */
const main = [
  'run-time',
  'battery-size',
  'solar-size',
  'charge-time',
  'inverter-check',
  'rig',
  'help',
  'unclear',
];
/** Shown in help with an example. */
const withExample = main.slice(0, 6);
const readers = { de: german, es: spanish, fr: french };

/** The keys that code asks for, as they stand in it: `say('key', …)`, `find('key')`, `key: 'need-…'`. */
const keysIn = (paths: readonly string[]): string[] => {
  const text = paths.map(read).join('\n');
  const found = [...text.matchAll(/\b(?:say|find)\(\s*'([^']+)'/g), ...text.matchAll(/\bkey: '([^']+)'/g)];
  return [...new Set(found.map(([, key]) => key!))];
};
const sharedCode = [...files('src/answer/*.ts', 'src/conversation/*.ts'), ...files('intents/*.ts')];
const codeOf = (intent: string): string[] => files(`intents/${intent}/*.ts`);

/** Messages of a file: key → the names of its gaps. */
const messages = (path: string): Map<string, string[]> =>
  new Map(
    new FluentResource(read(path)).body.map(({ id, value }) => [
      id,
      [...JSON.stringify(value).matchAll(/"type":"var","name":"(\w+)"/g)].map(([, name]) => name!),
    ]),
  );
const sharedMessages = (language: string): Map<string, string[]> =>
  new Map(files(`src/answer/words/${language}/*.ftl`).flatMap(path => [...messages(path)]));

test('German, French and Spanish are there', () => expect(languages()).toEqual(['en', 'de', 'es', 'fr']));

describe.each(others)('%s', language => {
  const shared = sharedMessages(language);
  const lacking = (keys: readonly string[], have: ReadonlyMap<string, unknown> = shared) =>
    keys.filter(key => !have.has(key));

  test('has what all answers share', () => {
    const ofQuestions = ['title', 'example'];
    expect(lacking(keysIn(sharedCode)).filter(key => !ofQuestions.includes(key))).toEqual([]);
    expect(lacking(Object.keys(cautions).map(code => `caution-${code}`))).toEqual([]);
    expect(lacking(Array.from({ length: 12 }, (_, i) => `month-${i + 1}`))).toEqual([]);
    expect(lacking(['agm', 'gel', 'flooded', 'lfp', 'lead-acid'].map(kind => `kind-${kind}`))).toEqual([]);
    expect(lacking(['dcdc', 'isolator', 'mains', 'generator'].map(kind => `charger-${kind}`))).toEqual([]);
    expect(lacking(['sky-sunny', 'sky-mixed', 'sky-overcast', 'locale'])).toEqual([]);
  });

  test.each(main)('has every message of %s, and none that nobody asks for', intent => {
    const own = messages(`intents/${intent}/words/${language}.ftl`);
    const asked = ['title', ...(withExample.includes(intent) ? ['example'] : []), ...keysIn(codeOf(intent))];
    expect(lacking(asked, new Map([...shared, ...own]))).toEqual([]);
    const code = codeOf(intent).map(read).join('\n');
    expect([...own.keys()].filter(key => !asked.includes(key) && !code.includes(`'${key}'`))).toEqual(
      // Shared messages that this question says in its own way.
      [...own.keys()].filter(key => !asked.includes(key) && shared.has(key)),
    );
  });

  test.each(main)('fills only gaps that %s knows', intent => {
    const code = [...codeOf(intent), ...sharedCode].map(read).join('\n');
    const own = messages(`intents/${intent}/words/${language}.ftl`);
    for (const [key, gaps] of own)
      for (const gap of gaps) expect(new RegExp(`\\b${gap}\\b`).test(code), `${key}: ${gap}`).toBe(true);
  });

  test('can name what it can read', () => {
    const { things, phrases } = readers[language as keyof typeof readers];
    const appliances = Object.keys(things[1]!).map(name => `thing-${name.replaceAll(' ', '-')}`);
    expect(lacking(appliances)).toEqual([]);
    expect(phrases.length).toBeGreaterThan(3);
  });

  test('tells every assumption that the main questions make, with its reason', () => {
    const words = speech(language);
    const all = main
      .flatMap(readPhrases)
      .filter(row => !row.not)
      .map(row => answerTo(row.say))
      .filter(answer => main.includes(answer.intent))
      .flatMap(answer => answer.assumed);
    expect(all.length).toBeGreaterThan(100);
    const told = new Map(all.map(a => [`${a.name} (${a.why})`, printAssumed(a, words)]));
    const mute = [...told].filter(
      ([, text]) =>
        !text.endsWith(')') || Object.values(assumptionLabels).some(label => text.startsWith(`${label} `)),
    );
    expect(mute.map(([name]) => name)).toEqual([]);
  });
});

test('what has no words in a language is answered in English', () => {
  const fuse = intents.find(intent => intent.name === 'fuse-size');
  expect(fuse?.words?.('de').language ?? 'en').toBe('en');
  expect(speech('xx').language).toBe('en');
  expect(speech('../en').language).toBe('en');
});

test('numbers are written as the language does', () => {
  expect(speech('de').significant(1234.5, 5)).toBe('1234,5');
  expect(speech('de').decimals(12345.6, 1)).toBe('12.345,6');
  expect(speech('fr').plain(3.71)).toBe('3,7');
  expect(speech('es').decimals(0.5, 2)).toBe('0,5');
});
