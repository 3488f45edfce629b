import { present } from '#basics/present.ts';
import type { Patterns } from '../../climate/grid.ts';
import { eigenvectors } from './eigen.ts';
import type { Table } from './reference.ts';

const rounded = (x: number): number => Math.round(x * 1e5) / 1e5;

/** A table as a few patterns of months and, for each cell, whole steps of each: principal components. */
export interface LowRank {
  readonly patterns: Patterns;
  /** A plane for each pattern. */
  readonly planes: readonly Int16Array[];
}

/** The share of each pattern in a row of months, in steps of the quantum. */
const stepsOf = ({ mean, basis, quantum }: Patterns, row: readonly number[]): number[] =>
  basis.map(pattern =>
    Math.round(pattern.reduce((sum, x, m) => sum + x * (present(row[m]) - present(mean[m])), 0) / quantum),
  );

/**
 * @param weigh what a cell counts while the patterns are chosen
 * @param rank how many patterns
 */
export function lowRank(
  table: Table,
  { rank, quantum, weigh }: { rank: number; quantum: number; weigh: (cell: number) => number },
): LowRank {
  const { cells, ...lay } = table;
  const months = present(cells[0]).map((_, m) => m);
  let total = 0;
  const sums = months.map(() => 0);
  cells.forEach((row, cell) => {
    const weight = weigh(cell);
    total += weight;
    for (const m of months) sums[m] = present(sums[m]) + weight * present(row[m]);
  });
  const mean = sums.map(sum => rounded(sum / total));
  const products = months.map(() => months.map(() => 0));
  cells.forEach((row, cell) => {
    const weight = weigh(cell) / total;
    const off = row.map((x, m) => x - present(mean[m]));
    for (const a of months)
      for (const b of months)
        present(products[a])[b] =
          present(present(products[a])[b]) + weight * present(off[a]) * present(off[b]);
  });
  const basis = eigenvectors(products)
    .slice(0, rank)
    .map(vector => vector.map(rounded));
  const patterns: Patterns = { ...lay, mean, basis, quantum };
  const steps = cells.map(row => stepsOf(patterns, row));
  return { patterns, planes: basis.map((_, k) => Int16Array.from(steps, of => present(of[k]))) };
}
