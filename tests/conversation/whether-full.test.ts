import { expect, test } from 'vitest';
import { talk } from './talk.ts';

// Rest volts of lead-acid and lithium by the trade's tables: common practice.
test.for([
  ['AGM rested overnight, 12.9 V. Is it full?', 'yes'],
  ['AGM at rest reads 12.5 V, is that full?', 'no'],
  ['AGM at rest reads 12.5 V, how full is that?', null],
  ['is the lithium full at 13.6 V rested all night?', 'yes'],
])('%s: %s', ([asked, verdict]) => {
  const { last } = talk([`kim: ${asked}`]);
  expect(last.intent).toBe('charge-level');
  expect(last.verdict ?? null).toBe(verdict);
});
