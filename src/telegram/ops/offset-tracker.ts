import { setTimeout as wait } from 'node:timers/promises';
import type { Update } from 'grammy/types';

interface One {
  readonly sinceMs: number;
  state: 'in work' | 'done' | 'passed';
}

const usualOverdueMs = 60_000;

/**
 * What a poller has taken and not confirmed. Telegram forgets an update when it is asked for later ones, and a
 * process that is killed forgets what it had in work: so no call asks beyond the first update that is still in
 * work. Those behind it come again with each call, and are known here.
 */
export class OffsetTracker {
  readonly #ones = new Map<number, One>();
  readonly #working = new Set<Promise<void>>();
  readonly #overdueMs: number;
  #next = 0;

  constructor(overdueMs = usualOverdueMs) {
    this.#overdueMs = overdueMs;
  }

  /** What is in work. */
  get working(): ReadonlySet<Promise<void>> {
    return this.#working;
  }

  /** What to ask for next: the first that is not done. Forgets what this confirms. */
  get offset(): number {
    const open = [...this.#ones].filter(([, one]) => one.state === 'in work').map(([id]) => id);
    const offset = open.reduce((least, id) => Math.min(least, id), this.#next);
    for (const [id, { state }] of this.#ones) if (id < offset && state !== 'in work') this.#ones.delete(id);
    return offset;
  }

  /** Those that were not taken before. */
  fresh(updates: readonly Update[]): Update[] {
    return updates.filter(({ update_id }) => !this.#ones.has(update_id));
  }

  /** Takes an update. One whose work rejects stays unconfirmed for the next process. */
  add(id: number, work: Promise<void>): Promise<void> {
    const one: One = { sinceMs: performance.now(), state: 'in work' };
    this.#ones.set(id, one);
    // Ids go up, except after a week of silence, when they start anywhere.
    this.#next = id + 1;
    const done: Promise<void> = work
      .then(
        () => {
          one.state = 'done';
        },
        () => undefined,
      )
      .finally(() => this.#working.delete(done));
    this.#working.add(done);
    return done;
  }

  /** Lets pass what holds the others up for too long: it goes on, but a crash would lose it now. @returns whether */
  passOverdue(): boolean {
    const before = performance.now() - this.#overdueMs;
    const overdue = [...this.#ones.values()].filter(one => one.state === 'in work' && one.sinceMs <= before);
    for (const one of overdue) one.state = 'passed';
    return overdue.length > 0;
  }

  /** Waits until all that is in work is done. */
  async allDone(): Promise<void> {
    await Promise.all(this.#working);
  }
}

/** Waits until so many of these are done, or so long (ms). */
export async function someDone(
  jobs: Iterable<Promise<void>>,
  count: number,
  withinMs: number,
): Promise<void> {
  const timer = new AbortController();
  const enough = new Promise<void>(resolve => {
    let left = count;
    if (left <= 0) resolve();
    for (const job of jobs) job.then(() => --left === 0 && resolve());
  });
  await Promise.race([enough, wait(withinMs, undefined, { signal: timer.signal }).catch(() => undefined)]);
  timer.abort();
}
