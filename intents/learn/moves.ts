import type { Lesson } from '#answer/reply.ts';
import { present } from '#basics/present.ts';
import { unhandled } from '#basics/unhandled.ts';
import type { ParsedMessage } from '#language/reading.ts';
import { chosen, course, stepOf } from './course.ts';

/** What happens next in a lesson. */
export type Move =
  | { readonly kind: 'show'; readonly step: number; readonly isSimpler?: boolean; readonly isBack?: boolean }
  | { readonly kind: 'ask'; readonly step: number }
  | { readonly kind: 'judge'; readonly step: number; readonly letter: string; readonly isRight: boolean }
  | { readonly kind: 'unclear-choice'; readonly step: number }
  | { readonly kind: 'no-question' }
  | { readonly kind: 'unknown-lesson' }
  | { readonly kind: 'progress' }
  | { readonly kind: 'end' }
  | { readonly kind: 'stop' };

const last = course.length - 1;

/** Where a person is, kept within the course; undefined where they never began. */
const placeOf = (lesson: Lesson | undefined): number | undefined =>
  lesson && Math.min(last, Math.max(0, lesson.step));

/** What a message says to a lesson, and its words. */
export type Learner = Pick<ParsedMessage, 'cues' | 'choice'> & { readonly words: readonly string[] };

/** The answer to the question that waits: a letter, or the words of an option; undefined where it is neither. */
function judged({ choice, words }: Learner, step: number): Move | undefined {
  const { quiz } = present(course[step]);
  const letter = chosen(quiz, { letter: choice, text: words.join(' ') });
  return letter === undefined ? undefined : { kind: 'judge', step, letter, isRight: letter === quiz.answer };
}

/** The step that a message names: "lesson 3", "teach me about fuses". */
function stepNamed(words: readonly string[]): { readonly step: number | undefined } | undefined {
  const number = Number(words[words.indexOf('lesson') + 1]);
  if (words.includes('lesson') && Number.isInteger(number)) return { step: stepOf({ number }) };
  const step = stepOf({ topic: words.join(' ') });
  return step === undefined ? undefined : { step };
}

/** What a message asks of the lesson, in order of urgency: to stop comes first. */
export function moveOf(said: Learner, lesson: Lesson | undefined): Move {
  const { cues } = said;
  const at = placeOf(lesson);
  const isWaiting = !!lesson?.isOpen && lesson.isQuiz;
  if (cues.has('progress')) return { kind: 'progress' };
  if (cues.has('stop')) return { kind: 'stop' };
  if (cues.has('start-over')) return { kind: 'show', step: 0 };
  const isMove = (['quiz', 'simpler', 'previous', 'next', 'learn'] as const).some(cue => cues.has(cue));
  if (isWaiting && !isMove) return judged(said, present(at)) ?? { kind: 'unclear-choice', step: present(at) };
  if (cues.has('learn') || cues.has('quiz')) {
    const named = stepNamed(said.words);
    if (named && named.step === undefined) return { kind: 'unknown-lesson' };
    if (named) return { kind: cues.has('quiz') ? 'ask' : 'show', step: present(named.step) };
  }
  if (cues.has('quiz')) return { kind: 'ask', step: at ?? 0 };
  if (cues.has('simpler')) return { kind: 'show', step: at ?? 0, isSimpler: true };
  if (cues.has('previous')) return { kind: 'show', step: Math.max(0, (at ?? 0) - 1) };
  if (cues.has('next') && at !== undefined && lesson?.isOpen)
    return at === last ? { kind: 'end' } : { kind: 'show', step: at + 1 };
  if (cues.has('next')) return { kind: 'show', step: at ?? 0, isBack: at !== undefined };
  if (said.choice || cues.has('quiz-answer')) return { kind: 'no-question' };
  return { kind: 'show', step: at ?? 0, isBack: at !== undefined && at > 0 };
}

/** The lesson as it is after a move; undefined where nothing has begun. */
export function after(move: Move, lesson: Lesson | undefined): Lesson | undefined {
  const old: Lesson = lesson ?? { step: 0, isQuiz: false, done: [], isOpen: true };
  switch (move.kind) {
    case 'show':
      return { ...old, step: move.step, isQuiz: false, isOpen: true };
    case 'ask':
      return { ...old, step: move.step, isQuiz: true, isOpen: true };
    case 'judge': {
      const done = move.isRight ? [...new Set([...old.done, move.step])].sort((a, b) => a - b) : old.done;
      return { step: move.step, isQuiz: !move.isRight, done, isOpen: true };
    }
    case 'stop':
      return lesson && { ...lesson, isQuiz: false, isOpen: false };
    case 'unclear-choice':
    case 'no-question':
    case 'unknown-lesson':
    case 'progress':
    case 'end':
      return lesson;
    default:
      return unhandled(move);
  }
}
