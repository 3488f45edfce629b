/** Lists of different lengths end to end: a hundred million small numbers fit where a list each would not. */
export interface Ragged {
  readonly values: Int32Array;
  /** Where each list ends. */
  readonly ends: Int32Array;
}

export function ragged(lists: readonly (readonly number[])[]): Ragged {
  const ends = new Int32Array(lists.length);
  let size = 0;
  lists.forEach((list, k) => {
    size += list.length;
    ends[k] = size;
  });
  const values = new Int32Array(size);
  lists.forEach((list, k) => {
    values.set(list, ends[k]! - list.length);
  });
  return { values, ends };
}

/** The same lists with other numbers; those below 0 are left out. */
export function renamed({ values, ends }: Ragged, to: (value: number) => number): Ragged {
  const out = new Int32Array(values.length);
  const outEnds = new Int32Array(ends.length);
  let at = 0;
  let size = 0;
  ends.forEach((end, k) => {
    for (; at < end; at++) {
      const value = to(values[at]!);
      if (value >= 0) out[size++] = value;
    }
    outEnds[k] = size;
  });
  return { values: out.slice(0, size), ends: outEnds };
}
