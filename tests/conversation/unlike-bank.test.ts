import { expect, test } from 'vitest';
import { safe } from '#conversation/answering/safe.ts';

const bank = { headline: '2 in parallel: 200 Ah at 12 V.', verdict: null };

test.for([
  ['battery-bank', false, 'no'],
  ['battery-bank', true, 'no'],
  ['run-time', false, null],
] as const)('unlike batteries in a %s question (asked back: %s): verdict %s', ([intent, isBack, verdict]) => {
  const reply = safe(bank, { codes: ['mixed-parallel'], intent, facts: {}, isBack });
  expect(reply.headline).toMatch(/^No/);
  expect(reply.verdict).toBe(verdict);
});
