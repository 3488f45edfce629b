import { describe, expect, test } from 'vitest';
import { files, root } from '../house/source.ts';
import type { Row } from './row.ts';

const sources = files('tests/published/*.ts').filter(path => !/(\.test|\/row)\.ts$/.test(path));
const tables = await Promise.all(
  sources.map(async path => ({
    path,
    rows: ((await import(`${root}${path}`)) as { rows: readonly Row[] }).rows,
  })),
);
const all = tables.flatMap(({ rows }) => rows);

describe.for(tables.map(({ path, rows }) => [path.slice('tests/published/'.length, -3), rows] as const))(
  '%s',
  ([, rows]) => {
    test.for(rows.map(row => [row.id, row.from, row.how, row] as const))('%s: %s (%s)', ([, , , row]) => {
      const ours = row.run();
      const deviation = Math.abs(ours - row.gives);
      expect(
        deviation,
        `published ${row.gives}, ours ${ours}${row.differs ? ` (${row.differs})` : ''}`,
      ).toBeLessThanOrEqual(row.within + 1e-12);
    });
  },
);

test('every row has its own id, a source and a tolerance that can fail', () => {
  const ids = all.map(row => row.id);
  expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  for (const row of all) {
    expect(row.from.length, row.id).toBeGreaterThan(8);
    // A tolerance as wide as the figure itself would hold for nearly anything.
    if (row.gives !== 0) expect(row.within, row.id).toBeLessThan(Math.abs(row.gives));
  }
});

test('what nobody signed was not seen: common practice and sheets without a name are from memory', () => {
  const nameless = all.filter(({ from }) => /common practice|makers’|handbooks/i.test(from));
  expect(nameless.length).toBeGreaterThan(100);
  expect(nameless.filter(({ how }) => how === 'seen').map(({ id }) => id)).toEqual([]);
});

// How many rows of each kind were collected, strongest first: radiation, panels, batteries, cable, appliances, engines, units.
test.for([
  ['A', 110],
  ['B', 26],
  ['C', 48],
  ['D', 68],
  ['E', 36],
  ['F', 13],
  ['G', 8],
] as const)('section %s has %d published figures or more', ([section, least]) => {
  const figures = new Set(
    all.flatMap(({ id }) => new RegExp(`^(${section}\\d?[a-d]?-\\d+)`).exec(id)?.[1] ?? []),
  );
  expect(figures.size).toBeGreaterThanOrEqual(least);
});

test('each of the fourteen traps of the trade has a row of its own', () => {
  const named = new Set(all.flatMap(({ id }) => /(?:^|\.)trap-(\d+)/.exec(id)?.[1] ?? []));
  expect([...named].map(Number).sort((a, b) => a - b)).toEqual(Array.from({ length: 14 }, (_, i) => i + 1));
});
