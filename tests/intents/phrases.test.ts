import { describe, expect, test } from 'vitest';
import { intents } from '#intents';
import { ask, nameOf, wrong } from './ask.ts';
import { type Phrase, readMisses, readPhrases } from './phrases.ts';

// The reader is learned: what it doesn't read yet stands in a list that can only shrink.
const misses = new Set(readMisses());
const working: string[] = [];

/** What helps to find out why: how it was read, and what was answered. */
function story(row: Phrase): string {
  const answer = ask(row);
  return [
    `taken for: ${answer.intent}, by ${answer.reading?.margin} over ${JSON.stringify(answer.reading?.second)}`,
    `understood: ${JSON.stringify(answer.understood)}`,
    `unread: ${JSON.stringify(answer.unread)}`,
    `figures: ${JSON.stringify(answer.figures)}`,
    `text: ${answer.text}`,
  ].join('\n');
}

describe.for(intents.map(intent => intent.name))('%s', name => {
  test.for(readPhrases(name).map(row => [row.say, row] as const))('%s', ([, row]) => {
    const problems = wrong(name, row);
    if (misses.has(nameOf(name, row))) {
      if (problems.length === 0) working.push(nameOf(name, row));
      return;
    }
    expect(problems, problems.length > 0 ? story(row) : '').toEqual([]);
  });
});

test('the list of phrases not read yet names phrases, each once', context => {
  const all = new Set(intents.flatMap(({ name }) => readPhrases(name).map(row => nameOf(name, row))));
  const listed = readMisses();
  expect(listed.filter(name => !all.has(name))).toEqual([]);
  expect(listed).toEqual([...new Set(listed)].sort());
  void context.annotate(
    `${listed.length} of ${all.size} phrases are not read yet, ${working.length} of them work now (node tests/intents/ratchet.ts)`,
  );
});
