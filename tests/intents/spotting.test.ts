import { expect, it } from 'vitest';
import { isSpotted, spotted } from '#intents/spotting.ts';
import { plainQuestions } from '#intents/term/plain/plain-questions.ts';

/** Every pattern by itself, in the table's order: what the look-up by beginnings must come to. */
const oneByOne = (words: readonly string[]) => plainQuestions.find(({ spots }) => isSpotted(words, spots));

it('finds by beginnings of words what it would find pattern by pattern', () => {
  // A line of words that each pattern wants, with the first of their alternatives and with the last.
  const lines = plainQuestions.flatMap(({ spots }) =>
    spots.flatMap(pattern =>
      [0, -1].map(at =>
        pattern
          .split(' ')
          .filter(term => !term.startsWith('-'))
          .flatMap(term => (term.split('|').at(at) ?? '').replaceAll('*', 'ing').split('_')),
      ),
    ),
  );
  expect(lines.filter(words => oneByOne(words)).length).toBeGreaterThan(lines.length / 2);
  for (const words of lines)
    expect(spotted(words, plainQuestions, ({ spots }) => spots)).toBe(oneByOne(words));
});

it.each([
  ['a whole word', ['fan'], ['my', 'fan', 'hums'], true],
  ['a longer word than the whole one', ['fan'], ['my', 'fans', 'hum'], false],
  ['any ending', ['fan*'], ['my', 'fans', 'hum'], true],
  ['an ending so early that any word may begin so', ['f*'], ['my', 'fans', 'hum'], true],
  ['a short word of a phrase', ['to_it'], ['go', 'to', 'it'], true],
  ['nothing that must be there', ['-fan'], ['a', 'lamp'], true],
  ['what must not be there', ['hum* -fan'], ['my', 'fan', 'hums'], false],
])('finds %s', (_what, patterns, words, isThere) => {
  expect(spotted(words, patterns, pattern => [pattern]) !== undefined).toBe(isThere);
});

it('takes the first row that is meant', () => {
  const rows = ['fan', 'hum*'];
  const found = spotted(
    ['fan', 'hums'],
    rows,
    pattern => [pattern],
    row => row !== 'fan',
  );
  expect(found).toBe('hum*');
});
