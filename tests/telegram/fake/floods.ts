import { present } from '#basics/present.ts';
import { Refusal } from './rules.ts';

/** Chats that Telegram lets wait (429), each with the moment at which that ends. */
export class Floods {
  readonly #untilMs = new Map<number, number>();
  /** What a call too early adds to a ban (observed: early retries lengthen it). */
  earlySec = 10;
  /** What a ban tells less than it lasts, s. */
  shortSec = 0;
  /** Calls that came before the end of a ban. */
  early = 0;

  ban(chat: number, seconds: number, atMs: number): void {
    this.#untilMs.set(chat, atMs + seconds * 1000);
  }

  /** @throws Refusal where the chat is in a ban; the first refusal tells of it, each one after it is too early */
  check(chat: number, atMs: number, told: Set<number>): void {
    const until = this.#untilMs.get(chat);
    if (until === undefined) return;
    if (atMs >= until) {
      this.#untilMs.delete(chat);
      told.delete(chat);
      return;
    }
    if (told.has(chat)) {
      this.early++;
      this.#untilMs.set(chat, until + this.earlySec * 1000);
    }
    told.add(chat);
    const left = Math.max(1, Math.ceil((present(this.#untilMs.get(chat)) - atMs) / 1000) - this.shortSec);
    throw new Refusal(429, `Too Many Requests: retry after ${left}`, { retry_after: left });
  }
}
