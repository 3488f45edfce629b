import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { talkRenamed, talkWithout } from '#conversation/kept/talk-kept.ts';
import type { Memory } from '#conversation/memory.ts';

const talk: NonNullable<Memory['talk']> = {
  lastFrom: 'eli',
  lastWriter: 'eli',
  lines: [
    ['dot', [1, 2]],
    ['eli', [3]],
  ],
  at: 0,
} as never;

test('the lines of who leaves go, also as hashes', () => {
  expect(present(talkWithout(talk, 'dot')).lines).toEqual([['eli', [3]]]);
});

test('a new name is theirs in the lines too', () => {
  expect(talkRenamed(talk, 'dot', 'dorothy').lines?.[0]).toEqual(['dorothy', [1, 2]]);
});
