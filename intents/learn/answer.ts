import type { Reply } from '#answer/reply.ts';
import { list } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import type { Facts } from '#rig/rig.ts';
import type { RequestContext } from '../intent.ts';
import { spotted } from '../spotting.ts';
import { liveLine } from './compute.ts';
import { course, letterOf, type Step } from './course.ts';
import { after, type Move, moveOf } from './moves.ts';

const count = course.length;
const heading = (step: number): string => `Lesson ${step + 1} of ${count}: ${present(course[step]).title}`;
const onwards = (step: number): string =>
  step + 1 < count
    ? `Say “quiz” for a question, or “next” for: ${present(course[step + 1]).title.toLowerCase()}.`
    : 'That is the last lesson. Say “quiz” for its question, or “progress”.';
const options = ({ quiz }: Step): string =>
  quiz.options.map((option, i) => `${letterOf(i)}) ${option}`).join('\n');

function show(move: Extract<Move, { kind: 'show' }>, facts: Facts, at: Date): Reply {
  const step = present(course[move.step]);
  const live = step.live && liveLine(step.live, facts, at);
  const welcome = move.isBack ? 'Where you left off. ' : '';
  return {
    headline: `${welcome}${heading(move.step)}`,
    lines: [move.isSimpler ? step.simpler : step.text, ...(live ? [live] : []), onwards(move.step)],
    cautions: step.caution && !move.isSimpler ? [step.caution] : [],
    next: ['quiz', 'next', move.isSimpler ? 'stop' : 'simpler'],
  };
}

function judge({ step, letter, isRight }: Extract<Move, { kind: 'judge' }>): Reply {
  const { quiz } = present(course[step]);
  if (!isRight)
    return {
      headline: `Not quite: ${letter} isn't it. ${quiz.wrong}`,
      lines: ['Try again with a letter, or say “next”.'],
      next: quiz.options.map((_, i) => letterOf(i)).filter(l => l !== letter),
    };
  const isLast = step + 1 >= count;
  return {
    headline: `Right, ${letter}: ${quiz.right}`,
    lines: [
      isLast
        ? 'That was the last lesson: well done.'
        : `Say “next” for: ${present(course[step + 1]).title.toLowerCase()}.`,
    ],
    next: isLast ? ['progress', 'start over'] : ['next', 'progress', 'stop'],
  };
}

/** Which questions are answered and which are open. */
function progress(setting: RequestContext): Reply {
  const { done = [], step = 0 } = setting.lesson ?? {};
  const open = course.flatMap((s, i) => (done.includes(i) ? [] : [`${i + 1} ${s.title.toLowerCase()}`]));
  if (done.length === 0 && !setting.lesson)
    return { headline: `You haven't begun: ${count} short lessons wait.`, next: ['teach me', 'quiz me'] };
  return {
    headline: `You are at lesson ${step + 1} of ${count}; ${done.length} of ${count} questions answered right.`,
    lines:
      open.length > 0
        ? [`Still open: ${list(open.slice(0, 5))}${open.length > 5 ? ' and more' : ''}.`]
        : ['All done.'],
    next: ['next', 'quiz', 'start over'],
  };
}

function words(move: Move, facts: Facts, setting: RequestContext): Reply {
  switch (move.kind) {
    case 'show':
      return show(move, facts, setting.at);
    case 'ask': {
      const step = present(course[move.step]);
      return {
        headline: `Question ${move.step + 1} of ${count}: ${step.quiz.ask}`,
        lines: [options(step), 'Answer with a letter, or say “stop”.'],
        next: step.quiz.options.map((_, i) => letterOf(i)),
      };
    }
    case 'judge':
      return judge(move);
    case 'unclear-choice': {
      const step = present(course[move.step]);
      return {
        headline: 'Which one do you mean? Answer with a letter:',
        lines: [options(step)],
        next: step.quiz.options.map((_, i) => letterOf(i)),
      };
    }
    case 'no-question':
      return { headline: 'No question is open. Say “quiz” and I ask one.', next: ['quiz', 'teach me'] };
    case 'unknown-lesson':
      return {
        headline: `Which lesson do you want, 1 to ${count}?`,
        lines: [course.map((s, i) => `${i + 1} ${s.title}`).join('\n')],
        next: ['lesson 1', 'next', 'progress'],
      };
    case 'progress':
      return progress(setting);
    case 'end':
      return {
        headline: 'That was the last lesson: you have been through them all.',
        lines: ['Ask me about your own rig now, or say “progress” to see what is open.'],
        next: ['progress', 'quiz', 'start over'],
      };
    case 'stop':
      return {
        headline: setting.lesson
          ? `Stopped. Say “teach me” to go on at lesson ${Math.min(count, setting.lesson.step + 1)}.`
          : 'Stopped.',
        next: ['teach me', 'help'],
      };
  }
}

/** Words of a wish for the course, and of a question about one thing. */
const wishes: readonly string[] = [
  'teach*|learn*|lesson*|course|quiz*|explain*|basics|beginner*|newbie|tutorial|start|from_scratch|understand|new_to|help|train*|study|go_on|carry_on',
];
const asks: readonly string[] = [
  'what|whats|which|where|why|how|when|who|is|are|can|could|do|does|will|would|should|shall',
];

/** A question that was taken for a wish to learn, and that no short answer stands ready for. */
const unanswered: Reply = {
  headline:
    'I have no short answer to that. Ask it with your battery and what runs on it, if it is about those.',
  lines: ['Or say “teach me” for fifteen short lessons on 12 V power, from the parts to the trip.'],
  verdict: null,
  next: ['teach me', 'help'],
};

const isJustAsked = (words: readonly string[], move: Move, lesson: RequestContext['lesson']): boolean =>
  (move.kind === 'show' || (move.kind === 'stop' && !lesson)) &&
  spotted(words, asks, one => [one]) !== undefined &&
  spotted(words, wishes, one => [one]) === undefined;

/** One turn of the course, for one person: what to show, and where they are after it. */
export function answerLearn(facts: Facts, setting: RequestContext): Reply {
  const { cues, choice, recognised } = setting.parsed;
  const move = moveOf({ cues, choice, words: recognised.tokens.map(({ text }) => text) }, setting.lesson);
  const isMoved = ['learn', 'quiz', 'simpler', 'previous', 'next', 'start-over'].some(cue =>
    cues.has(cue as never),
  );
  if (!isMoved && isJustAsked(recognised.words, move, setting.lesson)) return unanswered;
  const lesson = after(move, setting.lesson);
  return {
    ...words(move, facts, setting),
    verdict: null,
    ...(lesson ? { remember: { lesson } } : {}),
  };
}
