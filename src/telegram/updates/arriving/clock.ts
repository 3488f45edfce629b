import type { Update } from 'grammy/types';
import type { Log } from '#telegram/ops/deps.ts';

/** A message can't be from the future; so far off (s) it is no matter of rounding. */
const aheadSec = 120;
/** Telegram keeps an update for a day: what seems older by far was never kept so long. */
const behindSec = 36 * 60 * 60;
const againMs = 60 * 60_000;

/**
 * Says in the log that this machine's clock is wrong, by the times that Telegram gives to messages: else questions
 * would be taken for old, or the night for the day, and nobody would know why.
 */
export class Clock {
  readonly #now: () => number;
  readonly #log: Log;
  #saidAtMs = Number.NEGATIVE_INFINITY;

  constructor(now: () => number, log: Log) {
    this.#now = now;
    this.#log = log;
  }

  check({ message }: Update): void {
    if (message === undefined) return;
    const nowMs = this.#now();
    const offSec = Math.round(nowMs / 1000 - message.date);
    if (offSec >= -aheadSec && offSec <= behindSec) return;
    if (Math.abs(nowMs - this.#saidAtMs) < againMs) return;
    this.#saidAtMs = nowMs;
    this.#log.warn({ offSec }, 'the clock of this machine is wrong by Telegram’s: set it');
  }
}
