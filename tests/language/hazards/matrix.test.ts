import { expect, test } from 'vitest';
import { read } from '#language/reading.ts';
import { hazardCodes } from '#rig/hazard-codes.ts';
import { guises } from './guises.ts';

const rows = hazardCodes.flatMap(code => guises[code].map(text => ({ code, text })));

test('the matrix has its 15 codes in 6 guises', () => {
  expect(hazardCodes).toHaveLength(15);
  expect(rows).toHaveLength(90);
  expect(new Set(rows.map(row => row.text)).size).toBe(90);
});

test('each guise is seen as its danger, or as one of its kin', () => {
  const missed = rows
    .map(row => ({ ...row, seen: read(row.text).hazards }))
    .filter(({ code, seen }) => !seen.includes(code));
  // The guises are fitted to nothing; what learns may miss one or two of ninety, or name their kin.
  expect(missed.length, JSON.stringify(missed, null, 1)).toBeLessThanOrEqual(5);
});
