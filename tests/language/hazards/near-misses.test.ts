import { expect, test } from 'vitest';
import { dangersIn } from './dangers.ts';
import { nearMisses } from './near-misses.ts';

/** False alarms that stay; the list may only get shorter. */
const alarmedStill: readonly string[] = ['starter battery reads 12.7 V after the drive'];

test.for(nearMisses.filter(text => !alarmedStill.includes(text)))('quiet: %s', text => {
  expect(dangersIn(text)).toEqual([]);
});

test.for(alarmedStill)('alarmed still: %s', text => {
  expect(dangersIn(text)).not.toEqual([]);
});

test('nothing at all is no danger', () => {
  for (const text of ['', ' ', '???', '12', '🔥🔥🔥', 'ok', '\n\n', 'a'.repeat(4000)])
    expect(dangersIn(text)).toEqual([]);
});
