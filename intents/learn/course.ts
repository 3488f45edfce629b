import type { CautionCode } from '#answer/words/en.ts';
import { present } from '#basics/present.ts';
import type { Live } from './compute.ts';
import steps from './course.json' with { type: 'json' };

export interface Quiz {
  readonly ask: string;
  /** Options a, b, c (d). */
  readonly options: readonly string[];
  /** The letter of the right one. */
  readonly answer: string;
  /** Follows "Right: ". */
  readonly right: string;
  /** A hint, a sentence by itself. */
  readonly wrong: string;
}

/** A step of the course. */
export interface Step {
  readonly key: string;
  readonly title: string;
  /** Words that ask for it. */
  readonly topics: readonly string[];
  readonly text: string;
  readonly simpler: string;
  /** Which number of the chat's own rig goes with it. */
  readonly live?: Live;
  readonly quiz: Quiz;
  readonly caution?: CautionCode;
}

export const course = steps as readonly Step[];

/** Letter of an option by its index. */
export const letterOf = (index: number): string => present('abcd'[index]);

const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);

/**
 * The letter that an answer to a quiz means: the letter itself, else the option that shares most words with
 * the text; undefined where none is clear.
 */
export function chosen(
  quiz: Quiz,
  choice: { readonly letter?: string; readonly text: string },
): string | undefined {
  const letter = choice.letter?.toLowerCase();
  if (letter !== undefined && quiz.options.some((_, i) => letterOf(i) === letter)) return letter;
  const said = new Set(wordsOf(choice.text.slice(0, 200)));
  const shared = quiz.options.map(option => wordsOf(option).filter(word => said.has(word)).length);
  const most = Math.max(...shared);
  if (most === 0 || shared.filter(n => n === most).length > 1) return undefined;
  return letterOf(shared.indexOf(most));
}

/** The index of a step by its number (from 1) or a word of its topic. */
export function stepOf(wanted: { readonly number?: number; readonly topic?: string }): number | undefined {
  if (wanted.number !== undefined)
    return course[wanted.number - 1] === undefined ? undefined : wanted.number - 1;
  const topic = wanted.topic?.toLowerCase().trim();
  if (!topic) return undefined;
  const exact = course.findIndex(step => step.key === topic || step.topics.includes(topic));
  if (exact >= 0) return exact;
  const part = course.findIndex(step => step.topics.some(t => ` ${topic} `.includes(` ${t} `)));
  return part < 0 ? undefined : part;
}
