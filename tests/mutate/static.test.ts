import { expect, test } from 'vitest';
import { type Report, staticSample } from './static.ts';

const mutant = (line: number, statusReason?: string) => ({
  status: statusReason === undefined ? 'Killed' : 'Ignored',
  ...(statusReason !== undefined && { statusReason }),
  location: { start: { line, column: 3 }, end: { line, column: 9 } },
});
const why = 'Static mutant (and "ignoreStatic" was enabled)';
const report: Report = {
  files: {
    'src/a.ts': { mutants: [mutant(1, why), mutant(1, why), mutant(2), mutant(3, 'Ignored by user')] },
    'src/b.ts': { mutants: Array.from({ length: 20 }, (_, i) => mutant(i + 1, why)) },
  },
};

test('static mutants alone, each place once, columns from 0', () => {
  const all = staticSample(report, 100, 7);
  expect(all).toHaveLength(21);
  expect(all).toContain('src/a.ts:1:2-1:8');
  expect(all.filter(place => place.startsWith('src/a.ts'))).toHaveLength(1);
});

test('as many as asked for; the same from the same seed, others from another', () => {
  expect(staticSample(report, 5, 7)).toHaveLength(5);
  expect(staticSample(report, 5, 7)).toEqual(staticSample(report, 5, 7));
  expect(staticSample(report, 5, 8)).not.toEqual(staticSample(report, 5, 7));
});
