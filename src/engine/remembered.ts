import type { Trace } from '#rule/trace.ts';
import type { AssumptionName, Values } from './assumption.ts';

/** What was made of some values. */
interface Entry<T> {
  readonly at: readonly (number | undefined)[];
  readonly made: T;
}

/**
 * A part of a calculation that hangs on a few of its values: explored, one assumption is moved at a time, so that most
 * parts of most runs are those of the likely run. Those of the first values and of the last others are kept. A run
 * with a trace is always made, so that it is recorded.
 * @param names of the assumptions that it hangs on
 */
export function remembered<T>(
  names: readonly AssumptionName[],
  make: (values: Values, trace?: Trace) => T,
): (values: Values, trace?: Trace) => T {
  const isOf = (entry: Entry<T> | undefined, values: Values): entry is Entry<T> => {
    if (!entry) return false;
    return names.every((name, i) => values[name] === entry.at[i]);
  };
  let first: Entry<T> | undefined;
  let last: Entry<T> | undefined;
  return (values, trace) => {
    if (!trace && isOf(first, values)) return first.made;
    if (!trace && isOf(last, values)) return last.made;
    const entry = { at: names.map(name => values[name]), made: make(values, trace) };
    if (first && !isOf(first, values)) last = entry;
    else first = entry;
    return entry.made;
  };
}
