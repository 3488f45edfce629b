import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { intents } from '#intents';
import { talk } from '../conversation/talk.ts';
import { readPhrases } from '../intents/phrases.ts';

/** One screen of a phone, in a size that people read: about 25 lines of 40 characters. Our own budget. */
const screen = 1000;
/** The answer itself: three lines on a phone. */
const firstLine = 120;

const textOf = (say: string, kind: 'private' | 'group'): string =>
  converse(emptyMemory(), { chat: 'c', from: 'Sam', text: say, at: new Date('2026-01-15'), kind }).answer
    .text;

const rows = intents.flatMap(intent =>
  readPhrases(intent.name).map(row => ({ ...row, intent: intent.name })),
);

describe('an answer fits one screen of a phone, its first line is the answer', () => {
  test.each(rows.filter(row => row.show))('$intent: $say', ({ say }) => {
    for (const kind of ['private', 'group'] as const) {
      const text = textOf(say, kind);
      expect(text.length).toBeLessThanOrEqual(screen);
      expect(present(text.split('\n')[0]).length).toBeLessThanOrEqual(firstLine);
    }
  });
});

test('so do the answers to all other phrases, near misses included', () => {
  const long = rows.map(({ say }) => textOf(say, 'group')).filter(text => text.length > screen);
  expect(long).toEqual([]);
});

test('so do all steps of the course', () => {
  const { answers } = talk(['Sam: teach me', ...Array.from({ length: 25 }, () => 'Sam: next' as const)]);
  expect(answers.filter(answer => answer.text.length > screen).map(answer => answer.text)).toEqual([]);
});
