import { expect, test } from 'vitest';
import { intentNames } from '#answer/answer.ts';
import { awaited } from '../intents/phrases.ts';
import { cases, judge, play, scoreOf } from './score.ts';

/** What the score must not fall below. Raise these when it rises; see README.md. */
const floors = { intent: 0.99, understood: 0.98, figures: 0.98, text: 0.98, whole: 0.97 } as const;

test('there are 200 cases or more, of every question, each with its own id', () => {
  expect(cases.length).toBeGreaterThanOrEqual(200);
  expect(new Set(cases.map(one => one.id)).size).toBe(cases.length);
  const asked = new Set(cases.flatMap(one => one.expect.intent));
  expect(intentNames.filter(name => !asked.has(name) && !awaited.includes(name))).toEqual([]);
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

test('no case is answered with a figure of another question', () => {
  const wrong = cases.filter(one => {
    const answer = play(one.turns);
    const isConfident = answer.intent !== 'unclear' && Object.keys(answer.figures).length > 0;
    return isConfident && (judge(one, answer).intent?.length ?? 0) > 0;
  });
  expect(wrong.map(one => `${one.id} ${one.turns.at(-1)!.text}`)).toEqual([]);
});
