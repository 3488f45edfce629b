import { describe, expect, test } from 'vitest';
import { read } from '#language/read.ts';
import type { Context } from '#language/said.ts';
import { files, read as readFile } from '../house/source.ts';
import { sayAll } from './foreign.ts';

const context: Context = { at: new Date('2026-01-15T09:00:00Z'), from: 'kim', people: [] };
const languageOf = (text: string, talk?: string) => read(text, { ...context, language: talk }).language;

/** Every message that the questions' own phrases, and our own cases, give as English. */
const english = files('intents/*/phrases.json', 'tests/cases/*.jsonl').flatMap(path =>
  [...readFile(path).matchAll(/"(?:say|text)":\s*"((?:[^"\\]|\\.)*)"/g)].map(
    ([, text]) => JSON.parse(`"${text}"`) as string,
  ),
);

describe('which language it is', () => {
  test('no English message is taken for another language', () => {
    expect(english.length).toBeGreaterThan(400);
    const taken = english.filter(text => languageOf(text) !== undefined);
    // These are written in it, or nearly.
    expect(taken.filter(text => !/kühl|wie lange|combien|cuánto|batería/i.test(text))).toEqual([]);
  });

  test.each([
    'will the genny and the batterie last, lol',
    "I'm on a des moines to los angeles trip, 100Ah, fridge 45W",
    'ma mate says 200 mA drain, mon to fri',
    'camping at la paz, el nido, las vegas',
    'die battery is dead again, was full on sat',
    'pour the kettle, 2000W, sans fuse',
    '100Ah AGM',
    'lol',
    'fridge 1.2A 100Ah 3 days',
    'de facto 12V, con artist',
    'hola mate, fridge 45W 100Ah AGM how long',
  ])('%s is English', text => expect(languageOf(text)).toBeUndefined());

  test.each([
    ['Kühlbox 45W, 100Ah AGM, wie lange hält das?', 'de'],
    ['Hilfe', 'de'],
    ['Wechselrichter 1500W, Toaster 900W', 'de'],
    ['combien de temps', 'fr'],
    ['aide', 'fr'],
    ['frigo 45W, batterie 100Ah, 3 jours ?', 'fr'],
    ['ayuda', 'es'],
    ['nevera 45W 100Ah', 'es'],
  ])('%s is %s', (text, language) => expect(languageOf(text)).toBe(language));

  test('a message that doesn’t tell is in the language of the talk', () => {
    expect(languageOf('200Ah AGM', 'de')).toBe('de');
    expect(languageOf('what if lithium?', 'de')).toBeUndefined();
    expect(languageOf('et si lithium, combien de temps ?', 'de')).toBe('fr');
  });

  test('a language that we don’t read is said so', () =>
    expect(read('quanto dura il frigo con la mia batteria', context).issues.map(issue => issue.code)).toEqual(
      ['other-language'],
    ));
});

describe('the language of a chat', () => {
  test.each([
    ['/language de', 'de'],
    ['auf deutsch bitte', 'de'],
    ['en français s’il te plaît', 'fr'],
    ['en español', 'es'],
    ['language: french', undefined],
    ['/language it', undefined],
  ])('%s sets %s', (text, language) => expect(sayAll([text]).memory.settings.language).toBe(language));

  test('once set it holds for all messages, also English ones, until another is set', () => {
    const { answers } = sayAll([
      '/language de',
      'how long will a 100Ah AGM run a 45W fridge',
      '/language en',
      'wie lange hält das?',
    ]);
    expect(answers[0]!.text).toMatch(/^Gut, ab jetzt/);
    expect(answers[1]!.text).toMatch(/^Das hält/);
    expect(answers[2]!.text).toMatch(/^I answer in English/);
    expect(answers[3]!.text).toMatch(/^It lasts/);
  });
});

describe('reading in another language', () => {
  test('each token keeps its place in the message', () => {
    const text = 'Wie lange hält eine 100Ahh AGM mit Kühlbox 45W?';
    const [issue] = read(text, context).issues;
    if (issue) expect(text.slice(issue.span.from, issue.span.to)).toContain('100');
    expect(read(text, context).words).toBeGreaterThan(5);
  });

  test('takes time in proportion to the length', () => {
    const of = (n: number) => {
      const text = 'wie lange hält die Kompressorkühlbox mit 1,2 A und '.repeat(n).slice(0, 4096);
      const began = performance.now();
      for (let i = 0; i < 20; i++) read(text, context);
      return performance.now() - began;
    };
    of(20);
    const short = Math.min(...Array.from({ length: 5 }, () => of(20)));
    const long = Math.min(...Array.from({ length: 5 }, () => of(80)));
    expect(long / short).toBeLessThan(10);
  });
});
