import { present } from '#basics/present.ts';
import { spotOf } from '../../climate/grid.ts';
import type { Table } from './reference.ts';

/** A row of months at a point, bilinear between cell centres, as the reference is meant to be read. */
export function rowAt(table: Table, latitudeDeg: number, longitudeDeg: number): number[] {
  const { cells, shares } = spotOf(table, latitudeDeg, longitudeDeg);
  return (table.cells[0] as readonly number[]).map((_, m) =>
    cells.reduce((sum, cell, i) => sum + present(shares[i]) * present(present(table.cells[cell])[m]), 0),
  );
}
