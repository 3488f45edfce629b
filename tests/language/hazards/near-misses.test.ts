import { expect, test } from 'vitest';
import { dangersIn } from './dangers.ts';
import { nearMisses } from './near-misses.ts';

test.for(nearMisses)('quiet: %s', text => {
  expect(dangersIn(text)).toEqual([]);
});

test('nothing at all is no danger', () => {
  for (const text of ['', ' ', '???', '12', '🔥🔥🔥', 'ok', '\n\n', 'a'.repeat(4000)])
    expect(dangersIn(text)).toEqual([]);
});
