import { present } from '#basics/present.ts';
import type { Log } from '#telegram/ops/deps.ts';
import type { Hold } from '../hold.ts';

/** Work that waits for the end of a ban. */
export interface ParkedJob {
  /** When it was asked for, ms since 1970. */
  readonly askedMs: number;
  /** How old it may be when it is done at last (ms); older, its loss is told. */
  readonly goodForMs: number;
  /** Does it; where the chat has to wait again, it parks itself again. @throws what can be tried again later */
  run(): Promise<void>;
  /** Lets it go. */
  drop(): Promise<void>;
}

interface Lot {
  jobs: ParkedJob[];
  lost: number;
  timer?: NodeJS.Timeout;
  /** The work of its jobs, while that goes on. */
  running?: Promise<void>;
}

/** More of one chat are not kept: a group may hear twenty things a minute. */
const mostInChat = 100;
/** After a fault of the line or the store (ms). */
const againMs = 15_000;
/** What Node's timers can hold (ms). */
const longestMs = 2 ** 31 - 1;

/**
 * What can't be said yet because Telegram lets a chat wait (429). The update counts as done for everybody else: no
 * lock, no place in a poll and no call of a webhook is held meanwhile. The reply itself is kept by the store, and so
 * outlives the process; the order is that of asking.
 */
export class Parked {
  readonly #lots = new Map<number, Lot>();
  readonly #hold: Hold;
  readonly #now: () => number;
  readonly #log: Log;
  readonly #tellLoss: (chat: number, lost: number) => Promise<void>;

  constructor(
    hold: Hold,
    now: () => number,
    log: Log,
    tellLoss: (chat: number, lost: number) => Promise<void>,
  ) {
    this.#hold = hold;
    this.#now = now;
    this.#log = log;
    this.#tellLoss = tellLoss;
  }

  /** How many wait in all chats. */
  get size(): number {
    return [...this.#lots.values()].reduce((sum, { jobs }) => sum + jobs.length, 0);
  }

  async put(chat: number, job: ParkedJob): Promise<void> {
    const lot = this.#lots.get(chat) ?? { jobs: [], lost: 0 };
    this.#lots.set(chat, lot);
    lot.jobs.push(job);
    if (lot.jobs.length > mostInChat) await this.#lose(lot, present(lot.jobs.shift()));
    this.#wake(chat, lot, this.#hold.leftMs(chat));
  }

  /** Does what waits in a chat whose ban has ended, before anything new is said there. */
  async flush(chat: number): Promise<void> {
    const lot = this.#lots.get(chat);
    if (lot !== undefined && this.#hold.leftMs(chat) === 0) await this.#start(chat, lot);
  }

  #start(chat: number, lot: Lot): Promise<void> {
    clearTimeout(lot.timer);
    lot.running ??= this.#work(chat, lot).finally(() => {
      lot.running = undefined;
    });
    return lot.running;
  }

  #wake(chat: number, lot: Lot, inMs: number): void {
    clearTimeout(lot.timer);
    lot.timer = setTimeout(() => void this.#start(chat, lot), Math.min(inMs, longestMs)).unref();
  }

  async #work(chat: number, lot: Lot): Promise<void> {
    const left = this.#hold.leftMs(chat);
    if (left > 0) return this.#wake(chat, lot, left);
    const jobs = lot.jobs.splice(0);
    while (jobs.length > 0) {
      const job = present(jobs.shift());
      if (this.#now() - job.askedMs > job.goodForMs) await this.#lose(lot, job);
      else if (!(await this.#tried(job))) return this.#later(chat, lot, [job, ...jobs]);
      // One at its turn; the others keep their order before whatever came meanwhile.
      if (jobs.length > 0 && this.#hold.leftMs(chat) > 0) {
        lot.jobs.unshift(...jobs.splice(0));
        return this.#wake(chat, lot, this.#hold.leftMs(chat));
      }
    }
    await this.#settle(chat, lot);
  }

  async #tried(job: ParkedJob): Promise<boolean> {
    try {
      await job.run();
      return true;
    } catch (error) {
      this.#log.warn({ err: error }, 'an answer that waited could not be sent; trying again');
      return false;
    }
  }

  #later(chat: number, lot: Lot, jobs: ParkedJob[]): void {
    lot.jobs.unshift(...jobs);
    this.#wake(chat, lot, againMs);
  }

  async #lose(lot: Lot, job: ParkedJob): Promise<void> {
    lot.lost++;
    await job.drop().catch(error => this.#log.error({ err: error }, 'a lost answer could not be noted'));
  }

  async #settle(chat: number, lot: Lot): Promise<void> {
    if (lot.jobs.length === 0 && lot.lost === 0) return void this.#lots.delete(chat);
    if (lot.jobs.length > 0) return this.#wake(chat, lot, this.#hold.leftMs(chat));
    try {
      await this.#tellLoss(chat, lot.lost);
      lot.lost = 0;
    } catch (error) {
      this.#log.warn({ err: error }, 'a loss could not be told; trying again');
      return this.#wake(chat, lot, Math.max(againMs, this.#hold.leftMs(chat)));
    }
    if (lot.jobs.length === 0) this.#lots.delete(chat);
  }
}
