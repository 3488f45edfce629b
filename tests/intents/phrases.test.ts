import { describe, expect, test } from 'vitest';
import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { intents } from '#intents';
import { read } from '#language/read.ts';
import { differences, figureDifferences } from './match.ts';
import { awaited, type Phrase, readPhrases } from './phrases.ts';

const at = new Date('2026-01-15T09:00:00Z');
const from = 'kim';

/** The last answer of a short talk in one chat. */
function ask({ before = [], say }: Phrase) {
  let memory = emptyMemory();
  let answer: ReturnType<typeof converse>['answer'] | undefined;
  for (const text of [...before, say])
    ({ memory, answer } = converse(memory, { chat: 'c', from, text, at, kind: 'group' }));
  return answer!;
}

/** What is wrong with the answer to a row, as lines to read. */
function wrong(name: string, row: Phrase): string[] {
  const answer = ask(row);
  if (row.not) return answer.intent === name ? [`taken for ${name}, which it only resembles`] : [];
  return [
    ...(answer.intent === name ? [] : [`taken for ${answer.intent}`]),
    ...differences(answer.understood, row.means ?? {}, true),
    ...figureDifferences(answer.figures, row.figures ?? {}),
    ...(row.verdict && row.verdict !== answer.verdict
      ? [`verdict ${answer.verdict}, wanted ${row.verdict}`]
      : []),
  ];
}

/** What helps to find out why: how it was read, and what was answered. */
function story(row: Phrase): string {
  const answer = ask(row);
  const said = read(row.say, { at, from, people: [] });
  return [
    `cues: ${[...said.cues].join(', ')}`,
    `passes: ${said.trace.join(', ')}`,
    `understood: ${JSON.stringify(answer.understood)}`,
    `figures: ${JSON.stringify(answer.figures)}`,
    `text: ${answer.text}`,
  ].join('\n');
}

describe.for(intents.map(intent => intent.name))('%s', name => {
  test.for(readPhrases(name).map(row => [row.say, row] as const))('%s', ([, row]) => {
    const problems = wrong(name, row);
    const isAwaited = awaited.includes(name) && !row.not;
    if (isAwaited) expect(problems, `${name} is chosen now: take it off "awaited"`).not.toEqual([]);
    else if (row.miss) expect(problems, `"${row.say}" works now: take "miss" away`).not.toEqual([]);
    else expect(problems, problems.length > 0 ? story(row) : '').toEqual([]);
  });
});
