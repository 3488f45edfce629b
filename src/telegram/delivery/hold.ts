import { GrammyError } from 'grammy';
import { present } from '#basics/present.ts';
import type { Unsent } from './again/place.ts';
import type { Turns } from './turns.ts';

/** A chat that Telegram lets wait: nothing may be said there before that moment. */
export class Held extends Error {
  override readonly name = 'Held';
  readonly chat: number;
  /** ms since 1970 */
  readonly untilMs: number;
  /** What could not be said; none where its caller knows. */
  unsent?: Unsent;
  /** Whether the store has it already. */
  isKept = false;
  /** Whether nobody knows that it was not said before. */
  mayStand = false;
  constructor(chat: number, untilMs: number) {
    super('Telegram lets this chat wait');
    this.chat = chat;
    this.untilMs = untilMs;
  }
}

/** What is added to the seconds that Telegram names, which it rounds (ms). A call too early lengthens a ban. */
const marginMs = 250;
/** How much more for each ban that the chat's next call finds: what Telegram told was too little. At most a minute. */
const marginTimes = 4;
const mostTimes = marginTimes ** 4;

/**
 * Chats in a ban (429) and when each ends. A call into such a chat isn't made at all: it fails here, at once, so that
 * whoever makes it can go on and come back; nobody else waits for it.
 */
export class Hold {
  readonly #untilMs = new Map<number, number>();
  /** How many times the margin of a chat's next ban is, while no call got through. */
  readonly #times = new Map<number, number>();
  readonly #now: () => number;
  readonly #turns: Turns | undefined;

  /** @param turns the chats' turns, where the bot keeps within Telegram's limits by waiting */
  constructor(now: () => number, turns?: Turns) {
    this.#now = now;
    this.#turns = turns;
  }

  /** How long a chat has to wait still, for the end of a ban or for its turn, ms; 0 where it needn't. */
  leftMs(chat: number): number {
    return Math.max(this.banMs(chat), this.#turns?.leftMs(chat) ?? 0);
  }

  /** An answer is to go out: takes the chat's turn. @throws Held where it has to wait, and the answer is kept */
  takeTurn(chat: number): void {
    const left = this.leftMs(chat);
    if (left > 0) throw new Held(chat, this.#now() + left);
    this.#turns?.take(chat);
  }

  /** How long a ban lasts still, ms. */
  banMs(chat: number): number {
    const until = this.#untilMs.get(chat);
    if (until === undefined) return 0;
    const left = until - this.#now();
    if (left <= 0) this.#untilMs.delete(chat);
    return Math.max(0, left);
  }

  /** @throws Held where the chat is in a ban, or the call finds it in one */
  async during<T>(chat: number, call: () => Promise<T>): Promise<T> {
    this.#check(chat);
    try {
      const done = await call();
      this.#times.delete(chat);
      return done;
    } catch (error) {
      const seconds = error instanceof GrammyError ? error.parameters.retry_after : undefined;
      if (seconds === undefined) throw error;
      const times = this.#times.get(chat) ?? 1;
      this.#times.set(chat, Math.min(times * marginTimes, mostTimes));
      this.#untilMs.set(chat, this.#now() + seconds * 1000 + marginMs * times);
      throw new Held(chat, present(this.#untilMs.get(chat)));
    }
  }

  #check(chat: number): void {
    if (this.banMs(chat) > 0) throw new Held(chat, present(this.#untilMs.get(chat)));
  }
}
