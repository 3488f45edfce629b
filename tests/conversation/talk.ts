import type { Answer } from '#answer/answer.ts';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { emptyMemory, type Memory } from '#conversation/memory.ts';

/** One turn of a talk as a test writes it: `who: text`. */
export type Turn = `${string}: ${string}`;

/** Plays turns in one chat and gives the answers, with the memory after the last. The time is fixed, a Thursday in January, unless turns are told to be minutes apart. */
export function talk(
  turns: readonly Turn[],
  options: {
    kind?: 'private' | 'group';
    isAdmin?: boolean;
    memory?: Memory;
    at?: string;
    apartMin?: number;
  } = {},
): { answers: Answer[]; last: Answer; memory: Memory } {
  let memory = options.memory ?? emptyMemory();
  const answers: Answer[] = [];
  for (const [i, turn] of turns.entries()) {
    const colon = turn.indexOf(': ');
    const done = converse(memory, {
      chat: 'camp',
      from: turn.slice(0, colon),
      text: turn.slice(colon + 2),
      at: new Date(Date.parse(options.at ?? '2026-01-15T09:00:00Z') + i * (options.apartMin ?? 0) * 60_000),
      kind: options.kind ?? 'group',
      isAdmin: options.isAdmin,
    });
    memory = done.memory;
    answers.push(done.answer);
  }
  return {
    answers,
    get last() {
      return present(answers.at(-1), 'an answer: no turn was played');
    },
    memory,
  };
}

/** A figure's number, for comparing. */
export function value(answer: Answer, name: string): number {
  const found = answer.figures[name]?.value;
  return typeof found === 'number' ? found : Number.NaN;
}
