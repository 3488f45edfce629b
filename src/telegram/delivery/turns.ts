import { dropOldest } from '#basics/oldest.ts';
import { present } from '#basics/present.ts';

/** Telegram's limits (Bot FAQ): about a message a second to a chat, and twenty a minute to a group. */
const gapMs = 1000;
const groupMost = 20;
const groupWithinMs = 60_000;
const mostKept = 10_000;

/**
 * When each chat may be told something next. The times of the last messages, by chat; bounded, those not told anything
 * for longest are forgotten first.
 */
export class Turns {
  readonly #sent = new Map<number, number[]>();
  readonly #now: () => number;

  constructor(now: () => number) {
    this.#now = now;
  }

  /** How long until it is the chat's turn, ms; 0 where it is now. */
  leftMs(chat: number): number {
    const sent = this.#sent.get(chat);
    const last = sent?.at(-1);
    if (sent === undefined || last === undefined) return 0;
    const full = chat < 0 && sent.length >= groupMost ? present(sent[0]) + groupWithinMs : 0;
    return Math.max(0, last + gapMs - this.#now(), full - this.#now());
  }

  /** Something is said there now. */
  take(chat: number): void {
    const sent = [...(this.#sent.get(chat) ?? []), this.#now()].slice(-groupMost);
    this.#sent.delete(chat);
    this.#sent.set(chat, sent);
    if (this.#sent.size > mostKept) dropOldest(this.#sent);
  }
}
