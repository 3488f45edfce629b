import type { Update } from 'grammy/types';
import { dropOldest } from '#basics/oldest.ts';
import { forTurns, Limits, type RateDecision } from './limits.ts';
import type { Job } from './sort.ts';

/** Updates whose verdict is remembered: one that comes again is not counted again. */
const mostKept = 5000;

/**
 * Decides as an update arrives, before it waits for anything, whether it is answered. What is passed over is done with
 * at once: it holds no place in a poll, no call of a webhook, and no turn in its chat.
 */
export class Judge {
  readonly #questions: Limits;
  readonly #turns: Limits;
  readonly #passed = new Map<number, RateDecision>();

  constructor(now: () => number) {
    this.#questions = new Limits(now);
    this.#turns = new Limits(now, forTurns);
  }

  of({ update_id }: Update, job: Job): RateDecision {
    const known = this.#passed.get(update_id);
    if (known !== undefined) return known;
    const verdict = this.#judge(job);
    this.#passed.set(update_id, verdict);
    if (this.#passed.size > mostKept) dropOldest(this.#passed);
    return verdict;
  }

  #judge(job: Job): RateDecision {
    switch (job.kind) {
      case 'question': {
        const { chat, from } = job.message;
        const limits = job.isEdit ? this.#turns : this.#questions;
        return limits.note(chat.id, from?.id ?? 0, chat.type === 'private');
      }
      case 'press': {
        const { message, from } = job.query;
        const chat = message?.chat;
        const isPrivate = chat === undefined || chat.type === 'private';
        return this.#turns.note(chat?.id ?? from.id, from.id, isPrivate);
      }
      case 'moved':
      case 'membership':
      case 'inline':
      case 'guest':
      case 'wordless':
      case 'left':
        return 'answer';
      default:
        return job satisfies never;
    }
  }
}
