import { dropOldest } from '#basics/oldest.ts';
import type { Tally } from '#conversation/memory-store.ts';

const minuteMs = 60_000;
/** Tallies held; what was not counted for longest goes first. */
const mostKept = 20_000;

interface Row {
  readonly since: number;
  readonly count: number;
}

/** Tallies of a store that one process has to itself: in memory, nothing written. */
export class Tallies {
  readonly #rows = new Map<string, Row>();

  /** As `MemoryStore.tally`. */
  note(at: number, one: Tally, within?: Tally): { readonly count: number; readonly within?: number } {
    const count = this.#count(at, one);
    return count > one.most || within === undefined ? { count } : { count, within: this.#count(at, within) };
  }

  #count(at: number, { what, most }: Tally): number {
    const old = this.#rows.get(what);
    const isOver = old === undefined || at - old.since >= minuteMs || old.since > at;
    const count = isOver ? 1 : old.count + 1;
    const since = isOver || count === most + 1 ? at : old.since;
    // Taken out and put in again, the map's order is that of the last use.
    this.#rows.delete(what);
    this.#rows.set(what, { since, count });
    if (this.#rows.size > mostKept) dropOldest(this.#rows);
    return count;
  }
}
