import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/** What is asked of the engine. */
type Collect = (wish: Wish) => Promise<void>;

interface Wish {
  readonly type: 'major';
  readonly execution: 'async';
  /** Only this one gives pages back to the system. */
  readonly flavor: 'last-resort';
}

export interface IdleGcOptions {
  /** The engine's own, where not given. */
  readonly collect?: Collect;
  /** CPU time used so far, µs. */
  readonly usedUs?: () => number;
  readonly everyMs?: number;
  /** The same until it collected first. */
  readonly firstEveryMs?: number;
}

/** From here on something is going on: a hundredth of a core. */
const busyShare = 0.01;

/** The engine's collector, which it shows only on demand; the flag goes off again, as its cache of code hangs on all flags. */
function engineCollect(): Collect {
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc') as Collect;
  setFlagsFromString('--no-expose-gc');
  return collect;
}

const processUsedUs = (): number => {
  const { user, system } = process.cpuUsage();
  return user + system;
};

/**
 * Gives memory back when a rush is over. The engine collects by how much is asked of it, so a bot that falls silent
 * would keep for hours what it needed for a minute.
 */
export class IdleGc {
  readonly #collect: Collect;
  readonly #usedUs: () => number;
  readonly #everyMs: number;
  readonly #firstEveryMs: number;
  #hasCollected = false;
  #usedBefore: number;
  #isOwed = true;

  constructor({
    collect = engineCollect(),
    usedUs = processUsedUs,
    everyMs = 5000,
    firstEveryMs = 150,
  }: IdleGcOptions = {}) {
    this.#collect = collect;
    this.#usedUs = usedUs;
    this.#everyMs = everyMs;
    this.#firstEveryMs = firstEveryMs;
    this.#usedBefore = usedUs();
  }

  /** Looks every few seconds, at the start more often, and keeps no process alive for it. */
  start(): void {
    setTimeout(() => void this.look().finally(() => this.start()), this.#waitMs).unref();
  }

  get #waitMs(): number {
    return this.#hasCollected ? this.#everyMs : this.#firstEveryMs;
  }

  /** Collects once after each rush, when nothing is going on. @returns whether it did */
  async look(): Promise<boolean> {
    const used = this.#usedUs();
    const isBusy = used - this.#usedBefore > busyShare * this.#waitMs * 1000;
    this.#usedBefore = used;
    if (isBusy) this.#isOwed = true;
    if (isBusy || !this.#isOwed) return false;
    this.#isOwed = false;
    this.#hasCollected = true;
    await this.#collect({ type: 'major', execution: 'async', flavor: 'last-resort' });
    // What collecting itself cost is no rush.
    this.#usedBefore = this.#usedUs();
    return true;
  }
}
