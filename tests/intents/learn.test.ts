import { describe, expect, test } from 'vitest';
import type { Lesson } from '#answer/reply.ts';
import { print } from '#answer/text.ts';
import { cautions } from '#answer/words/en.ts';
import { present } from '#basics/present.ts';
import { liveLine } from '#intents/learn/compute.ts';
import { chosen, course, letterOf, stepOf } from '#intents/learn/course.ts';
import { learn } from '#intents/learn/intent.ts';
import { lex } from '#language/lex/lex.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Cue } from '#language/words/en/cues.ts';
import type { Facts } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const turn = (said: Partial<ParsedMessage>, lesson?: Lesson, facts: Facts = {}) => {
  const reply = learn.reply(learn.needs.parse(facts), settingWith({ lesson }, said));
  return { reply, text: print(reply), lesson: reply.remember?.lesson };
};
const say = (...cues: Cue[]): Partial<ParsedMessage> => ({ cues: new Set(cues) });
const inWords = (text: string) => ({ recognised: { text, tokens: lex(text), words: [], mentions: [] } });
const answer = (text: string, choice?: string): Partial<ParsedMessage> => ({ choice, ...inWords(text) });
const lesson = (text: string): Partial<ParsedMessage> => ({ ...say('learn'), ...inWords(text) });
const at = (step: number, changes: Partial<Lesson> = {}): Lesson => ({
  step,
  isQuiz: false,
  done: [],
  isOpen: true,
  ...changes,
});

describe('the course', () => {
  test('has about fifteen steps, short enough for a phone', () => {
    expect(course.length).toBeGreaterThanOrEqual(14);
    for (const step of course) {
      expect(step.text.length, step.key).toBeLessThan(480);
      expect(step.simpler.length, step.key).toBeLessThan(step.text.length);
    }
  });
  test('each question has its answer among three or four options', () => {
    for (const { quiz, key } of course) {
      expect([3, 4], key).toContain(quiz.options.length);
      expect(
        quiz.options.map((_, i) => letterOf(i)),
        key,
      ).toContain(quiz.answer);
    }
  });
  test('right answers are spread over the letters', () => {
    const letters = course.map(step => step.quiz.answer);
    for (const letter of ['a', 'b', 'c'])
      expect(letters.filter(l => l === letter).length).toBeGreaterThanOrEqual(3);
  });
  test('every caution is one that the bot knows', () => {
    expect(course.filter(step => step.caution && !(step.caution in cautions))).toEqual([]);
  });
  test.for([
    ['isolator', 'isolating'],
    ['smart alternator', 'smart-alternator'],
    ['solar', 'solar'],
    ['lithium', 'types'],
    ['fuse', 'cable'],
    ['depth of discharge', 'amp-hours'],
    ['the wave form of inverters', 'inverters'],
    ['safety', 'safety'],
  ] as const)('a lesson on %s is “%s”', ([topic, key]) => {
    expect(present(course[present(stepOf({ topic }))]).key).toBe(key);
  });
  test('numbers count from one, and stop at the last', () => {
    expect(stepOf({ number: 1 })).toBe(0);
    expect(stepOf({ number: course.length })).toBe(course.length - 1);
    expect(stepOf({ number: 0 })).toBeUndefined();
    expect(stepOf({ number: course.length + 1 })).toBeUndefined();
  });
});

describe('going through it', () => {
  test('begins with the first lesson', () => {
    const { text, lesson } = turn(say('learn'));
    expect(text).toMatch(/^Lesson 1 of 15: What the parts do/);
    expect(lesson).toEqual(at(0));
  });
  test('next, next and back', () => {
    const second = present(turn(say('next'), at(0)).lesson);
    const third = present(turn(say('next'), second).lesson);
    expect(third.step).toBe(2);
    expect(present(turn(say('previous'), third).lesson).step).toBe(1);
  });
  test('there is nothing before the first and nothing after the last', () => {
    expect(present(turn(say('previous'), at(0)).lesson).step).toBe(0);
    const end = turn(say('next'), at(course.length - 1));
    expect(end.text).toMatch(/last lesson/);
    expect(present(end.lesson).step).toBe(course.length - 1);
  });
  test('simpler keeps the step and is shorter', () => {
    const simple = turn(say('simpler'), at(5));
    expect(present(simple.lesson).step).toBe(5);
    expect(simple.text.length).toBeLessThan(turn(lesson('lesson 6'), at(5)).text.length);
  });
  test('a step by its number or topic', () => {
    expect(turn(lesson('lesson 6')).text).toMatch(/Lesson 6 of 15: Solar/);
    expect(turn(lesson('teach me about the inverter')).text).toMatch(/Inverters and wave form/);
    expect(turn(lesson('lesson 99')).text).toMatch(/1 to 15\?/);
  });
  test('comes back to where it was left', () => {
    expect(turn(say('learn'), at(4, { isOpen: false })).text).toMatch(/Where you left off.*Lesson 5/);
  });
  test('next after a break goes on where it was left', () => {
    expect(turn(say('next'), at(4, { isOpen: false })).lesson).toEqual(at(4));
  });
  test('start over goes back and keeps what was answered', () => {
    expect(turn(say('start-over'), at(9, { done: [1, 2] })).lesson).toEqual(at(0, { done: [1, 2] }));
  });
});

describe('questions', () => {
  const asked = at(0, { isQuiz: true });
  test('quiz asks with lettered options', () => {
    const { text, lesson } = turn(say('quiz'));
    expect(text).toMatch(/a\) amp hours\nb\) watts\nc\) ohms/);
    expect(lesson).toEqual(asked);
  });
  test('the right letter is noted', () => {
    const { text, lesson } = turn(answer('b', 'b'), asked);
    expect(text).toMatch(/^Right, b: volts × amps are watts/);
    expect(lesson).toEqual(at(0, { done: [0] }));
  });
  test('the right words do too', () => {
    expect(present(turn(answer('watts i think'), asked).lesson).done).toEqual([0]);
  });
  test('a wrong one gets a hint and another try', () => {
    const { text, lesson } = turn(answer('c, ohms', 'c'), asked);
    expect(text).toMatch(/^Not quite: c/);
    expect(text).not.toMatch(/Right/);
    expect(lesson).toEqual(asked);
  });
  test('a letter that is no option, or words of none, are asked again', () => {
    expect(turn(answer('d', 'd'), asked).text).toMatch(/Which one do you mean/);
    expect(turn(answer('bananas'), asked).lesson).toEqual(asked);
  });
  test('every right answer is told right, every other wrong', () => {
    for (const [i, { quiz }] of course.entries())
      for (const [j] of quiz.options.entries()) {
        const letter = letterOf(j);
        const { lesson } = turn(answer(letter, letter), at(i, { isQuiz: true }));
        expect(present(lesson).done, `${i}${letter}`).toEqual(letter === quiz.answer ? [i] : []);
      }
  });
  test('answered twice counts once', () => {
    expect(present(turn(answer('b', 'b'), at(0, { isQuiz: true, done: [0, 3] })).lesson).done).toEqual([
      0, 3,
    ]);
  });
  test('stop stops at once, also in the middle of a question', () => {
    const { text, lesson } = turn({ ...answer('stop'), cues: new Set(['stop', 'quiz-answer']) }, asked);
    expect(text).toMatch(/^Stopped/);
    expect(lesson).toEqual(at(0, { isOpen: false }));
  });
  test('an answer without a question is told so, and nothing is kept', () => {
    const { text, lesson } = turn(answer('b', 'b'));
    expect(text).toMatch(/No question is open/);
    expect(lesson).toBeUndefined();
  });
  test('next leaves a question behind', () => {
    expect(turn(say('next'), asked).lesson).toEqual(at(1));
  });
  test('two options that fit alike are no answer', () => {
    const quiz = { ask: '', options: ['red wire', 'black wire'], answer: 'a', right: '', wrong: '' };
    expect(chosen(quiz, { text: 'wire' })).toBeUndefined();
    expect(chosen(quiz, { text: 'the black wire' })).toBe('b');
  });
});

test('progress counts', () => {
  expect(turn(say('progress'), at(3, { done: [0, 2] })).text).toMatch(/lesson 4 of 15; 2 of 15/);
  expect(turn(say('progress')).text).toMatch(/haven't begun/);
});

describe('numbers of one’s own rig', () => {
  const rig: Facts = {
    batteries: [{ count: 1, capacityAh: 120, chemistry: 'agm' }],
    loads: [{ name: 'fridge', count: 1, currentA: 1, isAverage: true, supply: 'dc' }],
    solar: [{ count: 2, powerW: 100 }],
    chargers: [{ kind: 'dcdc', currentA: 25 }],
    inverter: { powerW: 1000 },
  };
  const now = new Date('2026-01-15T09:00:00Z');
  test.for([
    ['watts', /fridge 1 A at 12 V is 12 W/],
    ['starter', /about 24 Ah a day/],
    ['driving', /up to 50 Ah in two hours/],
    ['usable', /of your 120 Ah about 60 Ah/],
    ['runTime', /24 Ah a day from your 120 Ah last about 2½ days/],
    ['inverter', /about 9\d A/],
    ['drop', /0.4 V/],
    ['solar', /200 W make about \d\d Ah/],
    ['halfVolts', /about 12\.\d V/],
  ] as const)('%s', ([kind, says]) => {
    expect(liveLine(kind, rig, now)).toMatch(says);
  });
  test('say nothing where the rig is not known', () => {
    for (const { live } of course) if (live) expect(liveLine(live, {}, now)).toBeUndefined();
  });
  test('stand in the lesson', () => {
    expect(turn(lesson('lesson 10'), undefined, rig).text).toMatch(/Yours: of your 120 Ah/);
  });
});
