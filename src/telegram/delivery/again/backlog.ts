import type { Say } from '#telegram/ui/say.ts';

/** An answer to a question that was hours old when it was read. */
export interface Late {
  readonly update: number;
  readonly said: Say;
  /** What was asked, for a line above its answer. */
  readonly question: string;
  /** s since 1970 */
  readonly askedSec: number;
}

/** More of the same kind come right behind, or not at all (ms). */
const quietMs = 1500;
/** A message holds no more with any use. */
const mostAtOnce = 20;

interface Pile {
  readonly lates: Late[];
  timer?: NodeJS.Timeout;
}

/**
 * Questions of a private chat that are hours old come in a heap when the bot was away; their answers go out as one
 * message. They are gathered here until no more come, and are kept by the store meanwhile.
 */
export class Backlog {
  readonly #piles = new Map<number, Pile>();
  readonly #send: (chat: number, lates: readonly Late[]) => void;

  constructor(send: (chat: number, lates: readonly Late[]) => void) {
    this.#send = send;
  }

  add(chat: number, late: Late): void {
    const pile: Pile = this.#piles.get(chat) ?? { lates: [] };
    this.#piles.set(chat, pile);
    if (pile.lates.some(({ update }) => update === late.update)) return;
    pile.lates.push(late);
    clearTimeout(pile.timer);
    const isFull = pile.lates.length >= mostAtOnce;
    if (isFull) this.#flush(chat);
    else pile.timer = setTimeout(() => this.#flush(chat), quietMs).unref();
  }

  #flush(chat: number): void {
    const pile = this.#piles.get(chat);
    this.#piles.delete(chat);
    if (pile !== undefined) this.#send(chat, pile.lates);
  }
}
