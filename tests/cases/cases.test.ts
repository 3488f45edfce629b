import { expect, test } from 'vitest';
import { intentNames } from '#answer/answer.ts';
import { present } from '#basics/present.ts';
import { answerTo, cases, judge, scoreOf } from './score.ts';

/** What the score must not fall below, and how many may be answered with a figure of another question. Raise the first and lower the second as they get better; see README.md. */
const floors = { intent: 0.85, understood: 0.83, figures: 0.77, text: 0.75, whole: 0.75 } as const;
const mostOfAnotherQuestion = 17;

/** Questions that no case asks yet. */
const unasked = ['emergency', 'solar-wiring', 'none'];

test('there are 200 cases or more, of every question, each with its own id', () => {
  expect(cases.length).toBeGreaterThanOrEqual(200);
  expect(new Set(cases.map(one => one.id)).size).toBe(cases.length);
  const asked = new Set(cases.flatMap(one => one.expect.intent));
  expect(intentNames.filter(name => !asked.has(name) && !unasked.includes(name))).toEqual([]);
  expect([...asked].filter(name => !(intentNames as readonly string[]).includes(name))).toEqual([]);
});

test('the score holds', context => {
  const { shares, failures } = scoreOf(cases);
  const score = Object.entries(shares).map(([part, share]) => `${part} ${(100 * share).toFixed(1)} %`);
  void context.annotate(`${score.join(', ')} of ${cases.length} cases`);
  for (const [part, floor] of Object.entries(floors))
    expect(
      shares[part as keyof typeof floors],
      `${score.join(', ')}\n${failures.join('\n')}`,
    ).toBeGreaterThanOrEqual(floor);
});

test('few cases are answered with a figure of another question', () => {
  const wrong = cases.filter(one => {
    const answer = answerTo(one);
    const isConfident = answer.intent !== 'unclear' && Object.keys(answer.figures).length > 0;
    return isConfident && (judge(one, answer).intent?.length ?? 0) > 0;
  });
  const names = wrong.map(one => `${one.id} ${present(one.turns.at(-1)).text}`);
  expect(wrong.length, names.join('\n')).toBeLessThanOrEqual(mostOfAnotherQuestion);
});
