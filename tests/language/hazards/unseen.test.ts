import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { HazardCode } from '#rig/hazard-codes.ts';
import { dangersIn } from './dangers.ts';

interface Labelled {
  readonly before?: readonly unknown[];
  readonly wordings: readonly string[];
  readonly danger: HazardCode | null;
}

// Dangers, and harmless messages written to sound like them, that nothing was fitted to.
const rows = readFileSync(new URL('./unseen.jsonl', import.meta.url), 'utf8')
  .split('\n')
  .filter(Boolean)
  .map(line => JSON.parse(line) as Labelled)
  .filter(({ before = [] }) => before.length === 0)
  .flatMap(({ wordings, danger }) => wordings.map(text => ({ text, danger, seen: dangersIn(text) })));

const percent = (n: number, of: number): number => (100 * n) / of;

// Ratchets: raise the one and lower the other as they get better.
test('dangers that were never learned from are seen', () => {
  const dangers = rows.filter(({ danger }) => danger !== null);
  const seen = dangers.filter(row => row.seen.length > 0);
  console.log(`seen ${percent(seen.length, dangers.length).toFixed(1)} % of ${dangers.length}`);
  expect(percent(seen.length, dangers.length)).toBeGreaterThan(92);
});

test('what is written to sound like one alarms seldom', () => {
  const harmless = rows.filter(({ danger }) => danger === null);
  const alarmed = harmless.filter(row => row.seen.length > 0);
  console.log(`alarms ${percent(alarmed.length, harmless.length).toFixed(1)} % of ${harmless.length}`);
  expect(percent(alarmed.length, harmless.length)).toBeLessThan(25);
});
