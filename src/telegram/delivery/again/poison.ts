import { GrammyError } from 'grammy';
import { dropOldest } from '#basics/oldest.ts';
import type { Cut } from './fault.ts';

/** With the waits between them, some minutes. */
const mostTries = 12;
const mostKept = 1000;

/**
 * Updates whose answer Telegram fails over (5xx) again and again. A line that is down fails over everything and is waited
 * for; an answer that alone fails is let go in the end, so that it holds up no chat for ever, and its loss is said.
 */
export class Poison {
  readonly #tries = new Map<number, number>();

  /** Notes one more failure. @returns whether it was one too many */
  isOne(update: number, { cause }: Cut): boolean {
    if (!(cause instanceof GrammyError)) return false;
    const tries = (this.#tries.get(update) ?? 0) + 1;
    this.#tries.delete(update);
    if (tries >= mostTries) return true;
    this.#tries.set(update, tries);
    if (this.#tries.size > mostKept) dropOldest(this.#tries);
    return false;
  }
}
