import type { Answer } from '#answer/answer.ts';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import questions from './questions.json' with { type: 'json' };

/** A question of the list: what kind it is, its turns, and the answer to the last of them. */
export interface Sample {
  readonly kind: string;
  readonly turns: readonly string[];
  readonly answer: Answer;
}

/** The hour of every question, so that answers by the clock stay the same: nine in the evening by universal time. */
const at = new Date('2026-01-15T21:00:00Z');

/** Answers the turns of one person in a private chat of their own; gives the last answer. */
export function answerTo(turns: readonly string[]): Answer {
  let memory = emptyMemory();
  let answer: Answer | undefined;
  for (const text of turns)
    ({ memory, answer } = converse(memory, { chat: 'c', from: 'kim', text, at, kind: 'private' }));
  return present(answer);
}

/** One question of each kind and verdict, answered. */
export const samples = (): Sample[] =>
  (questions as string[][]).map(([kind, ...turns]) => ({
    kind: present(kind),
    turns,
    answer: answerTo(turns),
  }));

/** All of them as a page to read aloud. */
export const page = (all: readonly Sample[]): string =>
  [
    '# Sixty answers',
    '',
    'One of each kind and verdict, as the chat shows them. `npx vitest run --config tests/house/vitest.config.ts tests/voice -u` writes this file.',
    ...all.flatMap(({ kind, turns, answer }) => [
      '',
      `## ${kind}`,
      '',
      ...turns.map(turn => `> ${turn}`),
      '',
      '```text',
      answer.text,
      ...(answer.next.length > 0 ? ['', answer.next.map(next => `[${next}]`).join(' ')] : []),
      '```',
    ]),
    '',
  ].join('\n');
