import type { Answer } from '#answer/answer.ts';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { intents } from '#intents';
import { differences, figureDifferences } from './match.ts';
import { type Phrase, readPhrases } from './phrases.ts';

/** The last answer of a short talk in one chat. */
export function ask({ before = [], say }: Phrase): Answer {
  let memory = emptyMemory();
  let answer: Answer | undefined;
  const at = new Date('2026-01-15T09:00:00Z');
  for (const text of [...before, say])
    ({ memory, answer } = converse(memory, { chat: 'c', from: 'kim', text, at, kind: 'group' }));
  return present(answer);
}

/** What is wrong with the answer to a row, as lines to read. */
export function wrong(name: string, row: Phrase): string[] {
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

/** The name of a row in the list of those not read yet. */
export const nameOf = (intent: string, { say }: Phrase): string => `${intent}: ${say}`;

/** All rows that are not answered as they should be. */
export const missing = (): string[] =>
  intents.flatMap(({ name }) =>
    readPhrases(name).flatMap(row => (wrong(name, row).length > 0 ? [nameOf(name, row)] : [])),
  );
