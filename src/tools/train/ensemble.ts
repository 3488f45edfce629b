import type { Net } from '#language/decide/model.ts';
import { Table } from '#language/decide/table.ts';

/** One of several nets fitted to the same lessons from other beginnings, with features in the same order. */
export interface Member {
  readonly units: number;
  /** Features × units. */
  readonly features: Float32Array;
  readonly bias: Float32Array;
  /** Outcomes × units. */
  readonly out: Float32Array;
  readonly outBias: Float32Array;
}

/** Number by number the mean of lists of one length. */
export const meanOf = (lists: readonly Float32Array[]): Float32Array =>
  lists[0]!.map((_, i) => lists.reduce((sum, list) => sum + list[i]!, 0) / lists.length);

/** Rows of several tables side by side: row k of each, then row k + 1. */
function beside(tables: readonly Float32Array[], units: number): Float32Array {
  const all = new Float32Array(tables.length * tables[0]!.length);
  const wide = tables.length * units;
  tables.forEach((table, k) => {
    for (let i = 0; i < table.length; i++)
      all[Math.floor(i / units) * wide + k * units + (i % units)] = table[i]!;
  });
  return all;
}

/**
 * One net whose scores are the means of its members' scores: their hidden units stand side by side, and each speaks
 * for its part only.
 */
export function together(index: ReadonlyMap<number, number>, members: readonly Member[]): Net {
  const { units } = members[0]!;
  const part = 1 / members.length;
  return {
    features: Table.of(
      index,
      beside(
        members.map(m => m.features),
        units,
      ),
      members.length * units,
    ),
    bias: beside(
      members.map(m => m.bias),
      units,
    ),
    out: beside(
      members.map(m => m.out),
      units,
    ).map(v => v * part),
    outBias: meanOf(members.map(m => m.outBias)),
    members: members.length,
  };
}
