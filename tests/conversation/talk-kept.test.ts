import { expect, test } from 'vitest';
import { talkRenamed, talkWithout } from '#conversation/kept/talk-kept.ts';

const talk = {
  lastFrom: 'bob',
  lastWriter: 'bob',
  named: 'ann',
  asks: [
    ['ann', 'run-time'],
    ['bob', 'trip'],
  ] as [string, string][],
  lines: [
    ['ann', '1a 2b'],
    ['bob', '3c'],
  ] as [string, string][],
  at: 1,
};

test('of somebody who leaves no line, no question and no mention stays', () => {
  expect(talkWithout(talk, 'ann')).toEqual({
    ...talk,
    named: undefined,
    asks: [['bob', 'trip']],
    lines: [['bob', '3c']],
  });
  expect(talkWithout(talk, 'bob')).toBeUndefined();
});

test('a new name takes the place of the old one everywhere', () => {
  const now = talkRenamed(talk, 'bob', 'rob');
  expect(JSON.stringify(now)).not.toContain('"bob"');
  expect(now).toMatchObject({
    lastFrom: 'rob',
    lastWriter: 'rob',
    lines: [
      ['ann', '1a 2b'],
      ['rob', '3c'],
    ],
  });
});
